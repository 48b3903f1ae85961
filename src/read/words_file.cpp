// SPDX-License-Identifier: MIT
// Word files to words.
#include "read/words_file.h"

#include <set>

#include "base/nearest.h"
#include "read/table_reader.h"

namespace dunnage {
namespace {

/// The text of a QR code is read back line by line: each of its words is one line, a line of contents begins with its
/// figure, and those that hold what a house typed begin with a word of their own.
void check_placeholders(TableReader& reader, const std::string& key, const Text& text) {
  if (key.starts_with("label.") && text.value.find('\n') != std::string::npos)
    reader.error(text.place, "the words \"" + key + "\" are of several lines", "write them on one line");
  if ((key == "label.mass-line" || key == "label.owner-line" || key == "label.phone-line") &&
      text.value.starts_with("{"))
    reader.error(text.place, "the words \"" + key + "\" must begin with a word", "put the name or figure behind it");
  if (key == "label.content" && !text.value.starts_with("{n}"))
    reader.error(text.place, "the words \"label.content\" must begin with {n}",
                 "a line of contents is told from others by its count in front");
}

/// False where nothing would be printed, which is told: a line that one of two languages lacks pairs with no other.
bool says_something(TableReader& reader, const std::string& what, const Text& text) {
  if (text.value.find_first_not_of(" \t\r\n") != std::string::npos) return true;
  reader.error(text.place, what + " are empty", "write the words, or take the line out to have ours");
  return false;
}

using Take = std::function<void(const std::string& key, const Text& text)>;

/// Every text of a table that may be nested, its keys joined with dots.
void each_text(TableReader& reader, const std::string& before, const Take& take) {
  for (const Text& key : reader.keys()) {
    if (reader.is_list_or_table(key.value)) {
      reader.table(key.value, "\"" + before + key.value + "\"",
                   [&](TableReader& inner) { each_text(inner, before + key.value + ".", take); });
    } else if (const auto text = reader.maybe_text(key.value)) {
      if (!says_something(reader, "the words " + in_quotes(before + key.value), *text)) continue;
      check_placeholders(reader, before + key.value, *text);
      take(before + key.value, *text);
    }
  }
}

/// The first {name} of `text` that `known` has not; empty where there is none.
std::string strange_braces(const std::string& text, const std::string& known) {
  for (std::size_t at = 0; (at = text.find('{', at)) != std::string::npos; ++at) {
    const std::size_t close = text.find('}', at);
    if (close == std::string::npos) return {};
    const std::string name = text.substr(at, close - at + 1);
    if (known.find(name) == std::string::npos) return name;
  }
  return {};
}

/// Whether the program would ever print it so.
bool is_known(const Words& ours, const std::string& key, const Text& text, Diagnostics& diagnostics) {
  const auto known = ours.by_key.find(key);
  if (known == ours.by_key.end()) {
    std::vector<std::string> keys;
    for (const auto& [name, words] : ours.by_key) keys.push_back(name);
    diagnostics.error(text.place, "no sheet prints the words \"" + key + "\"", did_you_mean(key, keys));
    return false;
  }
  const std::string strange = strange_braces(text.value, known->second);
  if (strange.empty()) return true;
  diagnostics.error(text.place, "nothing is filled in for " + strange + " here", "ours is: " + known->second);
  return false;
}

/// A sentence in another language fills the places of the English one, each of them: a figure that is left out may be
/// the limit. `own`: of a house, which may say no sentence that the program has not.
void take_sentence(TableReader& reader, Sentences& sentences, const Text& english, const Text& text, bool own) {
  if (own && !sentences.contains(english.value)) {
    std::vector<std::string> known;
    for (const auto& [pattern, said] : sentences) known.push_back(pattern);
    reader.error(english.place, "no sheet prints the sentence \"" + english.value + "\"",
                 did_you_mean(english.value, known));
  } else if (const std::string odd = odd_place(english.value, text.value); !odd.empty()) {
    reader.error(text.place, odd + " is in one of the two sentences alone",
                 "its places are those of: " + english.value);
  } else {
    sentences[english.value] = text.value;
  }
}

/// The words of a file over `base`; without `own` a file of ours, from nothing.
std::optional<Words> words_from(const TomlFile& file, Diagnostics& diagnostics, Words words, bool own) {
  const std::size_t errors = diagnostics.errors();
  const Words ours = own ? words : Words{};
  std::set<std::string> told;
  read_top(
      file, {"language"}, diagnostics,
      [&](TableReader& top) {
        words.language = top.text("language").value;
        words.read_by_native = top.flag("read_by_native", words.read_by_native);
        top.table("words", "[words]", [&](TableReader& reader) {
          each_text(reader, "", [&](const std::string& key, const Text& text) {
            if (!told.insert(key).second)
              reader.error(text.place, "the words \"" + key + "\" are given twice", "keep one of the two");
            else if (!own || is_known(ours, key, text, diagnostics))
              words.by_key[key] = text.value;
          });
        });
        top.table("sentences", "[sentences]", [&](TableReader& reader) {
          for (const Text& english : reader.keys())
            if (const auto text = reader.maybe_text(english.value);
                text && says_something(reader, "the words of a sentence", *text))
              take_sentence(reader, words.sentences, english, *text, own);
        });
      },
      true);
  if (diagnostics.errors() > errors) return std::nullopt;
  return words;
}

}  // namespace

std::optional<Words> read_words(std::string file, std::string text, Sources& sources, Diagnostics& diagnostics) {
  const auto parsed = parse_toml(std::move(file), std::move(text), sources, diagnostics);
  return parsed ? words_from(*parsed, diagnostics, {}, false) : std::nullopt;
}

std::optional<Words> load_words(const std::filesystem::path& path, Sources& sources, Diagnostics& diagnostics,
                                Place named_at) {
  const auto parsed = load_toml(path, sources, diagnostics, named_at);
  return parsed ? words_from(*parsed, diagnostics, {}, false) : std::nullopt;
}

std::optional<Words> load_own_words(Words base, const std::filesystem::path& path, Sources& sources,
                                    Diagnostics& diagnostics) {
  const auto parsed = load_toml(path, sources, diagnostics);
  return parsed ? words_from(*parsed, diagnostics, std::move(base), true) : std::nullopt;
}

}  // namespace dunnage
