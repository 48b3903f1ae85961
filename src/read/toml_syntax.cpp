// SPDX-License-Identifier: MIT
// One table, searched from the top: the first row whose words occur in the description.
#include "read/toml_syntax.h"

namespace dunnage {
namespace {

struct Remedy {
  std::string_view in_description, cause, hint;
};

constexpr std::string_view quotes = "put words and quantities in double quotes: name = \"Front trunk\"";

constexpr std::string_view control_sign = "control characters other than TAB";

constexpr Remedy rows[] = {
    {"is not representable in 64 bits", "this number is too long", "a whole number has 18 digits at most: check it"},
    {control_sign, "there is a sign here that does not print", "delete it; spaces stand between words"},
    {"exceeded maximum nested", "there are too many brackets inside brackets",
     "a list holds texts, numbers or { ... }"},
    {"cannot redefine existing array-of-tables", "this name was used above with two brackets, [[...]]",
     "write two brackets here too"},
    {"as array-of-tables", "this name was used above in another way", "use one way: [name] once, or [[name]] for each"},
    {"cannot redefine existing table", "this section stands twice",
     "put all its keys under the first; what there are several of has two brackets, [[case]]"},
    {"cannot redefine existing", "this key is already given above, in the same section", "keep one of the two"},
    {"could not determine value type", "this is not a value", quotes},
    {"expected a comment or whitespace", "there is more on the line after the value", quotes},
    {"expected value, saw", "the key has no value", "write one after the =, or remove the line"},
    {"parsing time: ", "a time by itself is not understood here", "put it in double quotes: at = \"14:30\""},
    {"parsing date: ", "this is not a day of the calendar", "write year, month, day: 2027-06-19"},
    {"parsing string: encountered end-of-file", "the text has no closing quote", "close it with \""},
    {"parsing string: ", "the text is broken here",
     "close it with \" on the same line, and write \\\\ for a backslash"},
    {"parsing literal string", "the text has no closing quote", "close it with '"},
    {"dangling comma", "there is a comma with nothing after it", "remove the last comma before }"},
    {"parsing inline table", "the braces { } are broken here",
     "keep all of { ... } on one line, with commas between and one } at the end"},
    {"parsing array", "the list is broken here", "put commas between its entries and one ] at the end"},
    {"parsing table header", "the section's name is broken here",
     "write [show] for what there is one of, [[case]] for what there are several of"},
    {"expected '='", "there is no = after the key", "write key = value; a key is one word"},
};

}  // namespace

SyntaxMistake in_plain_words(std::string_view description, bool line_ends) {
  for (const Remedy& row : rows)
    if (description.find(row.in_description) != std::string_view::npos &&
        !(line_ends && row.in_description == control_sign))
      return {std::string(row.cause), std::string(row.hint)};
  constexpr std::string_view lead = "Error while parsing ";
  if (description.starts_with(lead)) description.remove_prefix(lead.size());
  return {"the text is not TOML here: " + std::string(description), {}};
}

}  // namespace dunnage
