// SPDX-License-Identifier: MIT
// The user's mistakes, collected so that one run tells them all, and the one voice that says them.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "base/source.h"

namespace dunnage {

enum class Severity { error, warning, note };

/// One message: where, what is wrong, what to do about it.
struct Diagnostic {
  Severity severity = Severity::error;
  Place place;
  std::string cause;
  std::string hint;  ///< the remedy; empty where the cause says it
  Place other;       ///< a second place, when two lines disagree
  std::string other_says;
};

class Diagnostics {
 public:
  void error(Place place, std::string cause, std::string hint = {});
  void error(Place place, std::string cause, std::string hint, Place other, std::string other_says);
  void warning(Place place, std::string cause, std::string hint = {});
  void note(Place place, std::string cause, std::string hint = {});

  /// Errors beyond this many are counted and not kept: a file of another kind may have millions.
  static constexpr std::size_t most_errors = 10000;
  bool has_errors() const { return errors_ > 0; }
  std::size_t errors() const { return errors_; }
  const std::vector<Diagnostic>& all() const { return all_; }
  /// In order of file (as read), line, column; messages alike in all of these keep their order.
  std::vector<Diagnostic> sorted(const Sources& sources) const;

 private:
  void add(Diagnostic d);
  std::vector<Diagnostic> all_;
  std::size_t errors_ = 0;
};

/// What was typed, as messages show it: in double quotes.
inline std::string in_quotes(std::string_view typed) { return "\"" + std::string(typed) + "\""; }

/// "a, b, c".
std::string listed(const std::vector<std::string>& words);

/// `file:line:column: error: cause`, the line, a caret, `hint: remedy`. Ends with a line end.
/// Long lines are shown around the caret only.
std::string render(const Diagnostic& diagnostic);
/// Every message, and a last line that counts the errors.
std::string render(const Diagnostics& diagnostics, const Sources& sources);

}  // namespace dunnage
