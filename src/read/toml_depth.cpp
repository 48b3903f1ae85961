// SPDX-License-Identifier: MIT
#include "read/toml_depth.h"

#include <algorithm>

namespace dunnage {
namespace {

class Walk {
 public:
  Walk(std::string_view text, int most_parts, int most_brackets)
      : text_(text), most_parts_(most_parts), most_brackets_(most_brackets) {}

  std::optional<TooDeep> first_excess() {
    while (at_ < text_.size()) {
      const char c = text_[at_];
      if (c == '"' || c == '\'') {
        pass_string(c);
      } else if (c == '#') {
        at_ = std::min(text_.find('\n', at_), text_.size());
      } else {
        if (const auto what = excess(c)) return TooDeep{*what, at_};
        ++at_;
      }
    }
    return std::nullopt;
  }

 private:
  /// Counts a sign outside strings and comments; what there is too much of with it.
  std::optional<TooDeep::What> excess(char c) {
    if (c == '.' && ++parts_ > most_parts_) return TooDeep::What::key_parts;
    if (c == '\n' || c == '=' || c == ',' || c == '[' || c == ']' || c == '{' || c == '}') parts_ = 1;
    if ((c == '[' || c == '{') && ++brackets_ > most_brackets_) return TooDeep::What::brackets;
    if (c == ']' || c == '}') brackets_ = std::max(0, brackets_ - 1);
    return std::nullopt;
  }

  /// Quotes in a row from here, at most `most`.
  std::size_t quotes(char quote, std::size_t most) const {
    std::size_t n = 0;
    while (n < most && at_ + n < text_.size() && text_[at_ + n] == quote) ++n;
    return n;
  }

  void pass_string(char quote) {
    const bool many_lines = quotes(quote, 3) == 3;
    at_ += many_lines ? 3 : 1;
    while (at_ < text_.size()) {
      if (quote == '"' && text_[at_] == '\\') {
        at_ += 2;
      } else if (!many_lines && text_[at_] == '\n') {
        return;  // not closed, which the parser will tell
      } else if (text_[at_] != quote) {
        ++at_;
      } else if (!many_lines) {
        ++at_;
        return;
      } else if (const std::size_t n = quotes(quote, 5); n < 3) {
        at_ += n;
      } else {  // one or two quotes may stand before the three that close: """a""""" ends in two
        at_ += n;
        return;
      }
    }
  }

  std::string_view text_;
  std::size_t at_ = 0;
  int parts_ = 1, brackets_ = 0;
  const int most_parts_, most_brackets_;
};

}  // namespace

std::optional<TooDeep> too_deep(std::string_view text, int most_parts, int most_brackets) {
  return Walk(text, most_parts, most_brackets).first_excess();
}

}  // namespace dunnage
