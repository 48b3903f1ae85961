// SPDX-License-Identifier: MIT
#include "write/weigh_edit.h"

#include <algorithm>
#include <cmath>
#include <set>

#include "base/nearest.h"
#include "base/toml_quote.h"

namespace dunnage {
namespace {

struct TextEdit {
  std::size_t at = 0, length = 0;
  std::string text;
};

/// Byte of a place; columns count code points.
std::size_t byte_of(const Place& place) {
  const std::string& text = place.file->text;
  auto at = static_cast<std::size_t>(place.file->line(place.line).data() - text.data());
  for (std::uint32_t column = 1; column < place.column; ++column) {
    ++at;
    while (at < text.size() && (static_cast<unsigned char>(text[at]) & 0xC0) == 0x80) ++at;
  }
  return at;
}

std::string line_end_of(const SourceFile& file) {
  const std::size_t at = file.text.find('\n');
  return at != std::string::npos && at > 0 && file.text[at - 1] == '\r' ? "\r\n" : "\n";
}

bool alike(Mass a, Mass b) { return std::abs(a.si() - b.si()) <= 1e-9 * std::max(1.0, b.si()); }

/// Where a file has its units in one list in brackets: TOML lets no [[unit]] follow it.
std::optional<Place> inline_units(const SourceFile& file) {
  const auto lines = static_cast<std::uint32_t>(std::count(file.text.begin(), file.text.end(), '\n') + 1);
  for (std::uint32_t number = 1; number <= lines; ++number) {
    const std::string line(file.line(number));
    const std::size_t key = line.find_first_not_of(" \t\"'");
    if (key == std::string::npos || !line.substr(key).starts_with("unit")) continue;
    const std::size_t sign = line.find_first_not_of(" \t\"'", key + 4);
    if (sign != std::string::npos && line[sign] == '=')
      return Place{&file, number, static_cast<std::uint32_t>(key + 1), 4};
  }
  return std::nullopt;
}

class Editor {
 public:
  Editor(const Catalogue& catalogue, Diagnostics& diagnostics) : diagnostics_(diagnostics) {
    for (const UnitChange& change : catalogue.kit.changes) changes_.emplace(change.code.value, &change);
  }

  void set_case(const Case& box, const ScaleReading& reading) {
    const UnitChange* own = box.count == 1 ? change_of(box.code.value) : nullptr;
    if (own && own->weighed)  // goes before the case's, which nobody would see
      set(box.code.value, own->code.place, own->weighed, reading);
    else if (set(box.code.value, box.code.place, box.weighed, reading))
      of_case_[&box] = reading.mass.value;
  }

  void set_unit(const Case& box, const std::string& code, const ScaleReading& reading) {
    const UnitChange* own = change_of(code);
    const auto now = of_case_.find(&box);
    const bool like_case = now != of_case_.end() ? alike(now->second, reading.mass.value)
                                                 : box.weighed && alike(box.weighed->value, reading.mass.value);
    if (like_case && !(own && own->weighed))
      out_.same.push_back(code);
    else if (own)
      set(code, own->code.place, own->weighed, reading);
    else
      add_unit(box, code, reading);
  }

  WeighEdit finish() {
    for (auto& [file, edits] : edits_) {
      std::stable_sort(edits.begin(), edits.end(), [](const TextEdit& a, const TextEdit& b) { return a.at < b.at; });
      std::string text;
      std::size_t from = 0;
      for (const TextEdit& edit : edits) {
        text += file->text.substr(from, edit.at - from) + edit.text;
        from = edit.at + edit.length;
      }
      out_.files[file->name] = text + file->text.substr(from);
    }
    return std::move(out_);
  }

 private:
  const UnitChange* change_of(const std::string& code) const {
    const auto at = changes_.find(code);
    return at == changes_.end() ? nullptr : at->second;
  }

  void add_unit(const Case& box, const std::string& code, const ScaleReading& reading) {
    const SourceFile* file = box.code.place.file;
    if (const auto list = inline_units(*file)) {
      cannot_write(reading, "write { code = " + toml_quoted(code) + ", weighed = " + toml_quoted(reading.typed) +
                                " } into this list yourself: " + list->words());
      return;
    }
    const std::string end = line_end_of(*file);
    std::string text = file->text.empty() || file->text.back() == '\n' || tails_[file] ? "" : end;
    tails_[file] = true;
    text +=
        end + "[[unit]]" + end + "code = " + toml_quoted(code) + end + "weighed = " + toml_quoted(reading.typed) + end;
    edits_[file].push_back({file->text.size(), 0, text});
    out_.changes.push_back({code, typed_before(box.weighed), reading.typed, reading.mass.value, box.code.place});
  }

  void cannot_write(const ScaleReading& reading, const std::string& hint) {
    diagnostics_.warning(reading.code.place,
                         "the mass of " + in_quotes(reading.code.value) + " cannot be written into the kit for you",
                         hint);
  }

  /// False where the text cannot be edited, which is told.
  bool set(const std::string& code, Place code_place, const Maybe<Mass>& now, const ScaleReading& reading) {
    if (now && alike(now->value, reading.mass.value)) {
      out_.same.push_back(code);
      return true;
    }
    const auto edit = now ? replace(now->place, reading.typed) : insert(code_place, reading.typed);
    if (!edit) {
      cannot_write(reading, "write weighed = " + toml_quoted(reading.typed) +
                                " there yourself: " + (now ? now->place : code_place).words());
      return false;
    }
    edits_[code_place.file].push_back(*edit);
    out_.changes.push_back({code, typed_before(now), reading.typed, reading.mass.value, now ? now->place : code_place});
    return true;
  }

  /// What stands there now, without quotes.
  std::string typed_before(const Maybe<Mass>& now) const {
    if (!now) return {};
    const auto edit = replace(now->place, "");
    return edit ? now->place.file->text.substr(edit->at + 1, edit->length - 2) : "";
  }

  std::optional<TextEdit> replace(const Place& place, const std::string& typed) const {
    const std::string& text = place.file->text;
    const std::size_t at = byte_of(place);
    if (at >= text.size() || (text[at] != '"' && text[at] != '\'')) return std::nullopt;
    const std::size_t end = text.find(text[at], at + 1), line_end = text.find('\n', at);
    if (end == std::string::npos || end > line_end || end == at + 1) return std::nullopt;
    return TextEdit{at, end + 1 - at, toml_quoted(typed)};
  }

  /// A line of its own after the line of the code; only where that line holds nothing else.
  std::optional<TextEdit> insert(const Place& code, const std::string& typed) const {
    const std::string& text = code.file->text;
    const std::size_t at = byte_of(code),
                      begin = text.rfind('\n', at) == std::string::npos ? 0 : text.rfind('\n', at) + 1;
    const std::size_t line_end = std::min(text.find('\n', at), text.size());
    const std::string before = text.substr(begin, at - begin);
    const std::size_t key = before.find_first_not_of(" \t");
    if (key == std::string::npos || !before.substr(key).starts_with("code")) return std::nullopt;
    if (before.find_first_not_of(" \t=", key + 4) != std::string::npos) return std::nullopt;
    const std::size_t close = text.find(text[at], at + 1);
    if (close == std::string::npos || close > line_end) return std::nullopt;
    const std::size_t rest = text.find_first_not_of(" \t\r", close + 1);
    if (rest < line_end && text[rest] != '#') return std::nullopt;
    const std::string end = line_end_of(*code.file), line = before.substr(0, key) + "weighed = " + toml_quoted(typed);
    if (line_end == text.size()) return TextEdit{line_end, 0, end + line};
    return TextEdit{line_end + 1, 0, line + end};
  }

  Diagnostics& diagnostics_;
  std::map<std::string, const UnitChange*> changes_;
  WeighEdit out_;
  std::map<const SourceFile*, std::vector<TextEdit>> edits_;
  std::map<const SourceFile*, bool> tails_;
  std::map<const Case*, Mass> of_case_;  ///< what a case weighs by these readings
};

/// Readings that can be used: one a code, of codes that the kit has.
std::vector<const ScaleReading*> usable(const Catalogue& c, const std::vector<ScaleReading>& readings,
                                        Diagnostics& diagnostics) {
  std::vector<std::string> known;
  for (const Case& box : c.kit.cases) known.push_back(box.code.value);
  for (const CaseUnit& unit : c.units) known.push_back(unit.code);
  const NearestOf nearest_code(std::move(known));
  std::map<std::string, const ScaleReading*> first;
  std::set<std::string> twice;
  std::vector<const ScaleReading*> out;
  for (const ScaleReading& reading : readings) {
    const std::string& code = reading.code.value;
    if (!c.case_of(code) && c.unit_index(code) < 0) {
      const std::string guess = nearest_code.did_you_mean(code);
      diagnostics.warning(reading.code.place, "the kit has no case " + in_quotes(code),
                          guess.empty() ? "see `dunnage list cases KIT`" : guess);
      continue;
    }
    const auto [at, fresh] = first.emplace(code, &reading);
    if (fresh) {
      out.push_back(&reading);
    } else if (!alike(at->second->mass.value, reading.mass.value)) {
      diagnostics.warning(reading.mass.place,
                          in_quotes(code) + " was weighed twice, " + at->second->typed + " and " + reading.typed,
                          "take one of the rows out; neither is written");
      twice.insert(code);
    }
  }
  std::erase_if(out, [&](const ScaleReading* reading) { return twice.count(reading->code.value) > 0; });
  return out;
}

/// For each case whose units were weighed: the reading that all of them share, where each of several has one, no
/// [[unit]] says a mass and the case has no reading of its own; else null.
std::map<const Case*, const ScaleReading*> shared_readings(const Catalogue& c,
                                                           const std::vector<const ScaleReading*>& readings) {
  std::map<const Case*, std::vector<const ScaleReading*>> by_case;
  std::set<const Case*> own;
  for (const ScaleReading* reading : readings) {
    if (const Case* box = c.case_of(reading->code.value))
      own.insert(box);
    else
      by_case[&c.case_at(c.unit_index(reading->code.value))].push_back(reading);
  }
  for (const UnitChange& change : c.kit.changes)
    if (const int unit = c.unit_index(change.code.value); change.weighed && unit >= 0) own.insert(&c.case_at(unit));
  std::map<const Case*, const ScaleReading*> out;
  for (const auto& [box, found] : by_case) {
    const bool all = box->count > 1 && static_cast<int>(found.size()) == box->count && own.count(box) == 0 &&
                     std::all_of(found.begin(), found.end(), [&](const ScaleReading* reading) {
                       return alike(found.front()->mass.value, reading->mass.value);
                     });
    out[box] = all ? found.front() : nullptr;
  }
  return out;
}

}  // namespace

WeighEdit weigh_edit(const Catalogue& c, const std::vector<ScaleReading>& readings, Diagnostics& diagnostics) {
  const std::vector<const ScaleReading*> used = usable(c, readings, diagnostics);
  Editor editor(c, diagnostics);
  const auto shared = shared_readings(c, used);
  std::set<const Case*> done;
  for (const ScaleReading* reading : used)
    if (const Case* box = c.case_of(reading->code.value)) editor.set_case(*box, *reading);
  for (const ScaleReading* reading : used) {
    if (c.case_of(reading->code.value)) continue;
    const Case& box = c.case_at(c.unit_index(reading->code.value));
    if (const ScaleReading* all = shared.at(&box)) {
      if (done.insert(&box).second) editor.set_case(box, *all);
      continue;
    }
    editor.set_unit(box, reading->code.value, *reading);
  }
  return editor.finish();
}

}  // namespace dunnage
