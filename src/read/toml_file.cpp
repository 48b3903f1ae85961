// SPDX-License-Identifier: MIT
// The guards come before the parser: it takes a folder for an empty file, and overflows the stack on a key of
// tens of thousands of parts (toml++ 3.3.0, both measured).
#include "read/toml_file.h"

#include <tuple>

#include "base/file_bytes.h"
#include "base/utf8.h"
#include "read/toml_depth.h"
#include "read/toml_syntax.h"

namespace dunnage {
namespace {

namespace fs = std::filesystem;

constexpr std::size_t most_bytes = 64u * 1024 * 1024;
// Together a tree of some two thousand levels at most, which any stack holds.
constexpr int most_key_parts = 64, most_brackets = 32;

/// A place in a file that could not be read: its name alone.
Place file_itself(const fs::path& path, Sources& sources) {
  return {sources.add(utf8::repaired(path.string()), {}), 0, 0, 1};
}

/// Why the file is no text of ours; empty: it is one.
std::pair<std::string, std::string> refusal(const fs::path& path, const FileBytes& read) {
  const std::string quoted = in_quotes(path.string());
  switch (read.fault) {
    case FileBytes::Fault::not_there:
      return {"there is no file " + quoted, "check the name and the folder it is in"};
    case FileBytes::Fault::folder:
      return {quoted + " is a folder, not a file", "name a file inside it"};
    case FileBytes::Fault::not_plain:
      return {quoted + " is not a plain file", "name a text file"};
    case FileBytes::Fault::too_large:
      return {quoted + " is larger than 64 MiB", "this is no text that a person typed; check the name"};
    case FileBytes::Fault::unreadable:
      return {quoted + " cannot be read: " + read.why, "check who may read it"};
    case FileBytes::Fault::none:
      break;
  }
  return {};
}

/// Line and column of a byte, in text that is well formed up to there.
Place place_of_byte(const SourceFile* file, std::size_t byte) {
  const std::string_view before = std::string_view(file->text).substr(0, byte);
  Place place{file, 1, 1, 1};
  for (const char c : before)
    if (c == '\n') ++place.line;
  const std::size_t line_begin = before.rfind('\n') == std::string_view::npos ? 0 : before.rfind('\n') + 1;
  place.column = static_cast<std::uint32_t>(utf8::length(before.substr(line_begin)) + 1);
  return place;
}

std::optional<TomlFile> parse(const SourceFile* source, Diagnostics& diagnostics) {
  if (const auto fault = utf8::first_fault(source->text)) {
    diagnostics.error(place_of_byte(source, *fault), "the text is not UTF-8 from here",
                      "save the file as UTF-8 in your editor");
    return std::nullopt;
  }
  if (const auto excess = too_deep(source->text, most_key_parts, most_brackets)) {
    const bool dots = excess->what == TooDeep::What::key_parts;
    diagnostics.error(
        place_of_byte(source, excess->byte),
        dots ? "a key has more than 64 parts between dots" : "there are too many brackets inside brackets",
        dots ? "a dotted name has two or three parts, such as names.es" : "a list holds texts, numbers or { ... }");
    return std::nullopt;
  }
  try {
    return TomlFile{source, toml::parse(std::string_view(source->text), std::string_view(source->name))};
  } catch (const toml::parse_error& error) {
    const Place place = place_of(error.source(), source);
    const bool line_ends = place.column > utf8::length(source->line(place.line));
    const SyntaxMistake mistake = in_plain_words(error.description(), line_ends);
    diagnostics.error(place, mistake.cause, mistake.hint);
    return std::nullopt;
  }
}

std::string without_mark(std::string text) {
  if (text.starts_with("\xEF\xBB\xBF")) text.erase(0, 3);
  return text;
}

}  // namespace

Place place_of(const toml::source_region& region, const SourceFile* file) {
  Place place{file, region.begin.line, region.begin.column, 1};
  if (region.end.line == region.begin.line && region.end.column > region.begin.column)
    place.width = region.end.column - region.begin.column;
  return place;
}

const SourceFile* load_text(const fs::path& path, Sources& sources, Diagnostics& diagnostics, Place named_at) {
  std::string cause, hint;
  FileBytes read;
  if (utf8::first_fault(path.string())) {
    cause = "the name of the file " + in_quotes(utf8::repaired(path.string())) + " is not UTF-8";
    hint = "give it another name";
  } else {
    read = file_bytes(path, most_bytes);
    std::tie(cause, hint) = refusal(path, read);
  }
  if (!cause.empty()) {
    diagnostics.error(named_at.known() ? named_at : file_itself(path, sources), cause, hint);
    return nullptr;
  }
  return sources.add(path.string(), without_mark(std::move(read.bytes)));
}

std::optional<TomlFile> parse_toml(std::string name, std::string text, Sources& sources, Diagnostics& diagnostics) {
  return parse(sources.add(std::move(name), without_mark(std::move(text))), diagnostics);
}

std::optional<TomlFile> parse_toml(const SourceFile* source, Diagnostics& diagnostics) {
  return parse(source, diagnostics);
}

std::optional<TomlFile> load_toml(const fs::path& path, Sources& sources, Diagnostics& diagnostics, Place named_at) {
  const SourceFile* source = load_text(path, sources, diagnostics, named_at);
  if (!source) return std::nullopt;
  return parse(source, diagnostics);
}

}  // namespace dunnage
