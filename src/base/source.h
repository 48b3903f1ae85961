// SPDX-License-Identifier: MIT
// Where a value was typed. Every value that a message may have to point at keeps its place.
#pragma once

#include <cstdint>
#include <deque>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "base/sentence.h"

namespace dunnage {

/// One input file, as read (BOM removed, CRLF kept).
struct SourceFile {
  std::string name;  ///< as the user named it, relative where they did
  std::string text;

  /// The text of line `number` (from 1) without its line end; empty beyond the last. The first call finds where
  /// the lines begin, so that a file with a mistake on each of a million lines is told in one pass.
  std::string_view line(std::uint32_t number) const;

  mutable std::vector<std::size_t> line_begins = {};  ///< empty until asked for
};

/// A stretch of one line. Columns count code points from 1. `file` null: no place (a default).
struct Place {
  const SourceFile* file = nullptr;
  std::uint32_t line = 0;
  std::uint32_t column = 0;
  std::uint32_t width = 1;

  bool known() const { return file != nullptr; }
  /// "kit/cases.toml:12:8", or "(not typed)".
  std::string words() const;
  /// The same without folders, for paper: the page must not depend on where the files lie.
  Sentence short_words() const;
  /// File order is the order in which the files were read.
  friend bool operator==(const Place&, const Place&) = default;
};

/// Owns every file of a run; places point into it, so it outlives them all.
class Sources {
 public:
  const SourceFile* add(std::string name, std::string text) {
    return &files_.emplace_back(SourceFile{std::move(name), std::move(text), {}});
  }
  const std::deque<SourceFile>& files() const { return files_; }

 private:
  std::deque<SourceFile> files_;
};

/// A value and where it was typed.
template <class T>
struct Sourced {
  T value{};
  Place place{};

  operator const T&() const { return value; }
  const T* operator->() const { return &value; }
  const T& operator*() const { return value; }
  bool typed() const { return place.known(); }
};

}  // namespace dunnage
