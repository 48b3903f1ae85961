// SPDX-License-Identifier: MIT
// How a typed text is shown to a person at a terminal: a sign that a terminal would obey, or that nobody sees, is
// spelled out. A file that came by mail must not colour, clear or reorder what is said about it.
#pragma once

#include <ostream>
#include <streambuf>
#include <string>
#include <string_view>

namespace dunnage {

/// Control and format characters and the separators of lines and paragraphs (general categories Cc, Cf, Zl and Zp of
/// Unicode 15.0), and the characters without a glyph that stand in for such (U+034F, Hangul fillers).
bool is_unprinted(char32_t sign);

/// On one line: each such sign as TOML spells it, "\n", "\u202E", "\U000E0041"; a byte that is no part of a character
/// as
/// "\x9B". What is shown once is not changed by being shown again.
std::string shown(std::string_view text);

/// A stream in front of another, for text that leaves for a person's terminal. Line ends and tabs pass; all else is as
/// `shown` has it. Holds back nothing but a character that has not come whole.
class ShownStream : public std::ostream {
 public:
  explicit ShownStream(std::ostream& to);
  ~ShownStream() override;

 private:
  class Guard : public std::streambuf {
   public:
    explicit Guard(std::ostream& to) : to_(to) {}
    void finish();

   protected:
    int_type overflow(int_type sign) override;
    std::streamsize xsputn(const char* text, std::streamsize size) override;
    int sync() override;

   private:
    std::ostream& to_;
    std::string begun_;  ///< the first bytes of a character
  };
  Guard guard_;
};

}  // namespace dunnage
