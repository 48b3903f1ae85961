// SPDX-License-Identifier: MIT
#include "read/scans.h"

#include <algorithm>
#include <filesystem>
#include <map>
#include <regex>
#include <set>

#include "base/nearest.h"
#include "base/utf8.h"
#include "read/csv_bytes.h"
#include "read/csv_cell.h"
#include "read/csv_number.h"

namespace dunnage {
namespace {

/// Dates and times as phones and spreadsheets write them.
const std::regex& stamp() {
  static const std::regex one(
      "(?:[0-9]{4}[-/.][0-9]{1,2}[-/.][0-9]{1,2}|[0-9]{1,2}[-/.][0-9]{1,2}[-/.][0-9]{2,4})(?:[T, "
      "]+[0-9]{1,2}:[0-9]{2}(?::[0-9]{2}(?:\\.[0-9]+)?)?(?: ?[AaPp]\\.?[Mm]\\.?)?(?:Z|[+-][0-9]{2}:?[0-9]{2})?)?"
      "|[0-9]{1,2}:[0-9]{2}(?::[0-9]{2}(?:\\.[0-9]+)?)?(?: ?[AaPp]\\.?[Mm]\\.?)?");
  return one;
}

bool sign_beside(char c) { return std::string_view(" \t\r,;|\"'[]<>*").find(c) != std::string_view::npos; }

std::string stripped(const std::string& text) {
  std::size_t from = 0, to = text.size();
  while (from < to && sign_beside(text[from])) ++from;
  while (to > from && sign_beside(text[to - 1])) --to;
  return text.substr(from, to - from);
}

struct Line {
  std::string text, time;
  std::uint32_t number = 0;
};

/// Takes a stamp off either end. No stamp is longer than `most`, and the expressions recurse once a sign.
Line clean(const std::string& raw, std::uint32_t number) {
  constexpr std::size_t most = 100;
  Line line{stripped(raw), {}, number};
  std::smatch m;
  const std::string head = line.text.substr(0, most);
  if (std::regex_search(head, m, stamp(), std::regex_constants::match_continuous)) {
    const std::string rest = line.text.substr(static_cast<std::size_t>(m.length()));
    if (rest.empty() || sign_beside(rest.front())) {
      line.time = m.str();
      line.text = stripped(rest);
    }
  }
  static const std::regex at_end(
      "(?:^|[ \\t,;|\"\\[(]+)(" +
      std::string(
          "(?:[0-9]{4}[-/.][0-9]{1,2}[-/.][0-9]{1,2}|[0-9]{1,2}[-/.][0-9]{1,2}[-/.][0-9]{2,4})?[T, "
          "]*[0-9]{1,2}:[0-9]{2}(?::[0-9]{2}(?:\\.[0-9]+)?)?(?: ?[AaPp]\\.?[Mm]\\.?)?(?:Z|[+-][0-9]{2}:?[0-9]{2})?") +
      ")[\\])\"]*$");
  const std::size_t cut = line.text.size() > most ? line.text.size() - most : 0;
  const std::string tail = line.text.substr(cut);
  if (line.time.empty() &&
      std::regex_search(tail, m, at_end,
                        cut > 0 ? std::regex_constants::match_not_bol : std::regex_constants::match_default)) {
    line.time = stripped(m[1]);
    line.text = stripped(line.text.substr(0, cut + static_cast<std::size_t>(m.position())));
  }
  return line;
}

/// Letters with a digit or a dash among them: what a code looks like, and no plain word.
bool looks_like_code(const std::string& word) {
  const bool letter = !word.empty() && std::isalpha(static_cast<unsigned char>(word.front()));
  return letter &&
         word.find_first_not_of("ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_") ==
             std::string::npos &&
         word.find_first_of("0123456789-_") != std::string::npos;
}

/// Whether these words are the case's name in some language, whatever signs stand around it.
bool is_name(const Catalogue& c, int unit, const std::string& words) {
  const Case& box = c.case_at(unit);
  const auto same = [&](const std::string& name) {
    return stripped(utf8::lower(name)) == stripped(utf8::lower(words));
  };
  return same(box.name.value) ||
         std::any_of(box.names.begin(), box.names.end(), [&](const auto& name) { return same(name.second.value); });
}

std::set<std::string> codes_of(const Catalogue& c) {
  std::set<std::string> out;
  for (const Case& box : c.kit.cases) out.insert(utf8::lower(box.code.value));
  for (const CaseUnit& unit : c.units) out.insert(utf8::lower(unit.code));
  return out;
}

class Reader {
 public:
  Reader(const Catalogue& c, const SourceFile* file, Stage stage, std::string list)
      : c_(c),
        file_(file),
        stage_(stage),
        list_(std::move(list)),
        known_(codes_of(c)),
        codes_({known_.begin(), known_.end()}) {
    for (std::size_t u = 0; u < c.units.size(); ++u) units_[utf8::lower(c.units[u].code)] = static_cast<int>(u);
  }

  void line(const std::string& raw, std::uint32_t number) {
    if (begins_label(raw, number) || is_mass_or_lift(raw)) return;
    const Line line = clean(raw, number);
    if (line.text.empty() || line.text.front() == '#') return;
    const std::vector<std::string> words = split_words(commas_apart(line.text));
    if (words.empty()) return;
    if (known(words.front())) return of_code(line, words);
    if (note_line(line)) return;
    const bool near = words.size() == 1 && !codes_(words.front()).empty();
    if (in_qr_ && !near && !looks_like_code(words.front())) return after_code(line);
    in_qr_ = line.text.substr(words.front().size()).starts_with("  ");
    add(words.front(), -1, line, {});
  }

  std::vector<Scan> scans;

 private:
  static std::string commas_apart(std::string text) {
    std::replace_if(
        text.begin(), text.end(), [](char c) { return c == ',' || c == ';' || c == '|' || c == '\t' || c == '"'; },
        ' ');
    return text;
  }
  bool known(const std::string& word) const { return known_.count(utf8::lower(word)) > 0; }
  int unit(const std::string& word) const {
    const auto at = units_.find(utf8::lower(word));
    return at == units_.end() ? -1 : at->second;
  }

  void add(const std::string& typed, int unit, const Line& line, const std::string& note) {
    const std::string_view text = file_->line(line.number);
    const std::size_t at = text.find(typed);
    const auto column =
        static_cast<std::uint32_t>(at == std::string_view::npos ? 1 : utf8::length(text.substr(0, at)) + 1);
    scans.push_back({stage_,
                     list_,
                     typed,
                     unit,
                     line.time,
                     note,
                     {file_, line.number, column, static_cast<std::uint32_t>(typed.size())}});
  }

  /// The first line of a QR code, to the letter: a name may look like a time or be the code of another case.
  bool begins_label(const std::string& raw, std::uint32_t number) {
    const std::size_t gap = raw.find("  ");
    const int found = gap == std::string::npos ? -1 : unit(raw.substr(0, gap));
    if (found < 0 || !is_name(c_, found, raw.substr(gap))) return false;
    add(raw.substr(0, gap), found, {raw, {}, number}, {});
    in_qr_ = mass_next_ = true;
    of_label_ = lift_next_ = false;
    return true;
  }

  /// The two lines below a label's first: they begin with words that may be some case's code.
  bool is_mass_or_lift(const std::string& raw) {
    const bool mass = mass_next_ && stripped(raw).ends_with(")"), lift = lift_next_ && raw.find(';') != raw.npos;
    mass_next_ = false;
    lift_next_ = mass;
    of_label_ = of_label_ || mass;
    return mass || lift;
  }

  void of_code(const Line& line, const std::vector<std::string>& words) {
    in_qr_ = of_label_ = false;
    if (std::all_of(words.begin(), words.end(), [&](const std::string& word) { return known(word); })) {
      for (const std::string& word : words) add(word, unit(word), line, {});
      return;
    }
    const int first = unit(words.front());
    std::string rest = stripped(line.text.substr(words.front().size()));
    const bool qr = line.text.substr(words.front().size()).starts_with("  ");
    if (first >= 0 && (qr || is_name(c_, first, rest))) {
      in_qr_ = true;
      rest.clear();
    }
    Line stamped = clean(rest, line.number);  // "BAG-1 16:10 wheel squeaks"
    if (stamped.time.empty()) stamped.time = line.time;
    while (!stamped.text.empty() && std::string_view("-:( ").find(stamped.text.front()) != std::string_view::npos)
      stamped.text.erase(0, 1);
    add(words.front(), first, stamped, stamped.text);
  }

  /// "damaged: wheel" under a scan.
  bool note_line(const Line& line) {
    if (scans.empty()) return false;
    const std::string low = utf8::lower(line.text);
    for (const char* word : {"damage", "broken", "note", "missing part", "lost part"}) {
      if (!low.starts_with(word)) continue;
      add_note(line.text);
      return true;
    }
    return false;
  }

  /// Under a code and its name. A label goes on with a mass and ends with the owner's phone; where no figure follows
  /// the name, somebody typed by hand, and what was typed is kept.
  void after_code(const Line& line) {
    if (!of_label_ && line.text.find_first_of("0123456789") == std::string::npos) return add_note(line.text);
    of_label_ = true;
    const House& house = c_.kit.house;
    const std::string phone = stripped(house.phone.value);
    const bool contents = std::isdigit(static_cast<unsigned char>(line.text.front())) != 0;
    const bool owner = line.text.ends_with(stripped(house.name.value));
    if (!phone.empty() && !contents && !owner && line.text.ends_with(phone)) in_qr_ = false;
  }

  void add_note(const std::string& text) {
    std::string& note = scans.back().note;
    note += (note.empty() ? "" : "; ") + text;
  }

  const Catalogue& c_;
  const SourceFile* file_;
  Stage stage_;
  std::string list_;
  std::map<std::string, int> units_;
  std::set<std::string> known_;  ///< codes of cases and of units, in small letters
  NearestOf codes_;
  bool in_qr_ = false;     ///< under the first line of a QR text
  bool of_label_ = false;  ///< which a label printed
  bool mass_next_ = false, lift_next_ = false;
};

}  // namespace

std::vector<Scan> read_scans(const std::string& name, const std::string& bytes, Stage stage, const Catalogue& catalogue,
                             Sources& sources, Diagnostics& diagnostics) {
  Recoded recoded = to_utf8(bytes);
  std::replace(recoded.text.begin(), recoded.text.end(), '\0', ' ');
  const SourceFile* file = sources.add(name, std::move(recoded.text));
  Reader reader(catalogue, file, stage, std::filesystem::path(name).stem().string());
  std::uint32_t number = 1;
  std::size_t at = 0;
  const std::string& text = file->text;
  while (at <= text.size()) {
    const std::size_t end = std::min(text.find('\n', at), text.size());
    reader.line(plain_signs(text.substr(at, end - at)).empty() ? "" : text.substr(at, end - at), number++);
    at = end + 1;
  }
  if (reader.scans.empty())
    diagnostics.warning({file, 0, 0, 1}, "there is no scan in this list",
                        "one code a line, or the whole text of each QR code");
  return std::move(reader.scans);
}

}  // namespace dunnage
