// SPDX-License-Identifier: MIT
// Word files to words.
#include "read/words_file.h"

#include "read/table_reader.h"

namespace dunnage {
namespace {

void read_nested(TableReader& reader, const std::string& before, Words& words) {
  for (const Text& key : reader.keys()) {
    if (reader.is_list_or_table(key.value)) {
      reader.table(key.value, "\"" + before + key.value + "\"",
                   [&](TableReader& inner) { read_nested(inner, before + key.value + ".", words); });
    } else if (const auto text = reader.maybe_text(key.value)) {
      if (!words.by_key.emplace(before + key.value, text->value).second)
        reader.error(text->place, "the words \"" + before + key.value + "\" are given twice",
                     "keep one of the two");
    }
  }
}

std::optional<Words> from_file(const TomlFile& file, Diagnostics& diagnostics) {
  const std::size_t errors = diagnostics.errors();
  Words words;
  read_top(file, {"language"}, diagnostics, [&](TableReader& top) {
    words.language = top.text("language").value;
    words.read_by_native = top.flag("read_by_native", true);
    top.table("words", "[words]", [&](TableReader& reader) { read_nested(reader, "", words); });
  });
  if (diagnostics.errors() > errors) return std::nullopt;
  return words;
}

}  // namespace

std::optional<Words> read_words(std::string file, std::string text, Sources& sources,
                                Diagnostics& diagnostics) {
  const auto parsed = parse_toml(std::move(file), std::move(text), sources, diagnostics);
  return parsed ? from_file(*parsed, diagnostics) : std::nullopt;
}

std::optional<Words> load_words(const std::filesystem::path& path, Sources& sources, Diagnostics& diagnostics,
                                Place named_at) {
  const auto parsed = load_toml(path, sources, diagnostics, named_at);
  return parsed ? from_file(*parsed, diagnostics) : std::nullopt;
}

}  // namespace dunnage
