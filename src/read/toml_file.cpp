// SPDX-License-Identifier: MIT
// The guards come before the parser: it takes a folder for an empty file, and overflows the stack on a key of
// tens of thousands of parts (toml++ 3.3.0, both measured).
#include "read/toml_file.h"

#include <cerrno>
#include <fstream>
#include <iterator>
#include <system_error>

#include "base/utf8.h"
#include "read/toml_syntax.h"

namespace dunnage {
namespace {

namespace fs = std::filesystem;

constexpr std::uintmax_t most_bytes = 64u * 1024 * 1024;
constexpr int most_key_parts = 64;

/// A place in a file that could not be read: its name alone.
Place file_itself(const fs::path& path, Sources& sources) {
  return {sources.add(utf8::repaired(path.string()), {}), 0, 0, 1};
}

/// What is wrong with the file before it is opened; empty: nothing.
std::pair<std::string, std::string> refusal(const fs::path& path) {
  std::error_code error;
  const fs::file_status status = fs::status(path, error);
  const std::string quoted = "\"" + utf8::repaired(path.string()) + "\"";
  if (utf8::first_fault(path.string()))
    return {"the name of the file " + quoted + " is not UTF-8", "give it another name"};
  if (status.type() == fs::file_type::not_found)
    return {"there is no file " + quoted, "check the name and the folder it is in"};
  if (error) return {quoted + " cannot be read: " + error.message(), "check who may read it"};
  if (fs::is_directory(status)) return {quoted + " is a folder, not a file", "name a file inside it"};
  if (!fs::is_regular_file(status)) return {quoted + " is not a plain file", "name a text file"};
  if (fs::file_size(path, error) > most_bytes)
    return {quoted + " is larger than 64 MiB", "this is no text that a person typed; check the name"};
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

/// Walks the text as TOML does, over strings and comments, and finds the first key with too many parts.
class KeyPartCounter {
 public:
  explicit KeyPartCounter(std::string_view text) : text_(text) {}

  /// Byte of the dot too many, or npos.
  std::size_t first_excess() {
    int parts = 1;
    while (at_ < text_.size()) {
      const char c = text_[at_];
      if (c == '"' || c == '\'') {
        skip_string(c);
        continue;
      }
      if (c == '#') {
        at_ = std::min(text_.find('\n', at_), text_.size());
        continue;
      }
      if (c == '.' && ++parts > most_key_parts) return at_;
      if (c == '\n' || c == '=' || c == ',' || c == '[' || c == ']' || c == '{' || c == '}') parts = 1;
      ++at_;
    }
    return std::string_view::npos;
  }

 private:
  void skip_string(char quote) {
    const std::string three(3, quote);
    const bool many_lines = text_.substr(at_, 3) == three;
    at_ += many_lines ? 3 : 1;
    while (at_ < text_.size()) {
      if (quote == '"' && text_[at_] == '\\') {
        at_ += 2;
      } else if (many_lines && text_.substr(at_, 3) == three) {
        at_ += 3;
        return;
      } else if (!many_lines && (text_[at_] == quote || text_[at_] == '\n')) {
        ++at_;  // a line end: not closed, which the parser will tell
        return;
      } else {
        ++at_;
      }
    }
  }

  std::string_view text_;
  std::size_t at_ = 0;
};

std::optional<TomlFile> parse(const SourceFile* source, Diagnostics& diagnostics) {
  if (const auto fault = utf8::first_fault(source->text)) {
    diagnostics.error(place_of_byte(source, *fault), "the text is not UTF-8 from here",
                      "save the file as UTF-8 in your editor");
    return std::nullopt;
  }
  const std::size_t excess = KeyPartCounter(source->text).first_excess();
  if (excess != std::string_view::npos) {
    diagnostics.error(place_of_byte(source, excess), "a key has more than 64 parts between dots",
                      "a dotted name has two or three parts, such as names.es");
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
  auto [cause, hint] = refusal(path);
  std::string text;
  if (cause.empty()) {
    std::ifstream in(path, std::ios::binary);
    try {
      if (in) text.assign(std::istreambuf_iterator<char>(in), std::istreambuf_iterator<char>());
    } catch (const std::ios_base::failure&) {  // the disk failed: the library throws, whatever was asked of the stream
      in.setstate(std::ios::badbit);
    }
    if (!in || in.bad()) {
      cause = "\"" + path.string() + "\" cannot be read: " + std::generic_category().message(errno);
      hint = "check who may read it";
    }
  }
  if (!cause.empty()) {
    diagnostics.error(named_at.known() ? named_at : file_itself(path, sources), cause, hint);
    return nullptr;
  }
  return sources.add(path.string(), without_mark(std::move(text)));
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
