// SPDX-License-Identifier: MIT
// How deep a text nests, counted before it is parsed, against the tree that the parser makes of it.
#include "read/toml_depth.h"

#include <toml++/toml.h>

#include <catch2/catch.hpp>
#include <random>

#include "../effort.h"
#include "telling.h"

using namespace dunnage;

namespace {

using Dice = std::mt19937;

const std::string& one_of(Dice& dice, const std::vector<std::string>& words) { return words[dice() % words.size()]; }

/// What may stand in a text of each form, and looks like the end of one, a key, a comment or a bracket.
std::string inside(Dice& dice, bool literal, bool many_lines) {
  std::vector<std::string> signs = {"a",        ".", "#", "[", "]", "{", "}", ",", "=", " ", literal ? "\"" : "'",
                                    "x.y.z = 1"};
  if (literal)
    signs.insert(signs.end(), {"\\", "\\\"", "\"\"\"", "\\u0041"});
  else
    signs.insert(signs.end(), {"\\\"", "\\\\", "\\n", "\\u0022", "'''", "\\\\\\\""});
  if (many_lines) signs.insert(signs.end(), {"\n", "\r\n", "\n[t.u.v]\n"});
  if (many_lines && !literal) signs.insert(signs.end(), {"\\\n  ", "\\  \r\n\n "});
  std::string out;
  bool quote = false;  // of this form, one or two of which may stand inside, with another sign after them
  for (std::size_t n = dice() % 6; n > 0; --n) {
    if (many_lines && !quote && dice() % 4 == 0) {
      out += std::string(1 + dice() % 2, literal ? '\'' : '"');
      quote = true;
    } else {
      const std::string& sign = one_of(dice, signs);
      if (quote && sign.front() == (literal ? '\'' : '"')) continue;
      out += sign;
      quote = false;
    }
  }
  return quote ? out + "z" : out;
}

std::string text(Dice& dice, bool key) {
  const bool literal = dice() % 2 == 0, many_lines = !key && dice() % 3 > 0;
  const char quote = literal ? '\'' : '"';
  std::string body = inside(dice, literal, many_lines);
  if (!many_lines) return quote + body + quote;
  return std::string(3, quote) + body + std::string(3 + dice() % 3, quote);
}

std::string key(Dice& dice, std::size_t parts) {
  std::string out;
  for (std::size_t i = 0; i < parts; ++i) {
    if (i > 0) out += one_of(dice, {".", " . ", "\t.", ". "});
    out += dice() % 2 == 0 ? one_of(dice, {"a", "b-c", "1", "_"}) : text(dice, true);
  }
  return out;
}

std::string value(Dice& dice, int levels) {
  switch (levels > 0 ? dice() % 6 : dice() % 3) {
    case 0:
    case 1:
      return text(dice, false);
    case 2:
      return one_of(dice, {"1.5", "true", "2027-06-19", "-0.25", "07:30:00.5"});
    case 3:
    case 4:
      return "[" + value(dice, levels - 1) + ", # x.y ]\n " + value(dice, levels - 1) + "]";
    default:
      return "{ " + key(dice, 1 + dice() % 4) + " = " + value(dice, levels - 1) + " }";
  }
}

std::size_t depth(const toml::node& node) {
  std::size_t deepest = 0;
  if (const auto* table = node.as_table())
    for (const auto& [name, inner] : *table) deepest = std::max(deepest, 1 + depth(inner));
  if (const auto* list = node.as_array())
    for (const toml::node& inner : *list) deepest = std::max(deepest, 1 + depth(inner));
  return deepest;
}

int most_parts(const std::string& text) {
  int parts = 1;
  while (too_deep(text, parts, 1 << 20)) ++parts;
  return parts;
}
int most_brackets(const std::string& text) {
  int brackets = 0;
  while (too_deep(text, 1 << 20, brackets)) ++brackets;
  return brackets;
}

}  // namespace

TEST_CASE("keys are counted to the part, whatever quoted texts stand before them") {
  Dice dice(3);
  int read = 0;
  for (unsigned i = 0; i < turns(40000); ++i) {
    // The long key stands last and in a table of its own, on the line of a text or on the next.
    const std::size_t parts = 6 + dice() % 20;
    const bool same_line = dice() % 2 == 0;
    const std::string before =
        same_line ? "x = { first = " + text(dice, false) + ", last." : "x = " + value(dice, 3) + "\nlast.";
    const std::string typed = before + key(dice, parts - 1) + " = " + value(dice, 0) + (same_line ? " }\n" : "\n");
    INFO(typed);
    try {
      const toml::table tree = toml::parse(std::string_view(typed));
      ++read;
      const toml::node* last = same_line ? tree["x"]["last"].node() : tree.get("last");
      REQUIRE(last);
      const std::size_t in_tree = 1 + depth(*last);
      CHECK(in_tree == parts);
      CHECK(static_cast<std::size_t>(most_parts(typed)) == parts);
      CHECK(depth(tree) <= static_cast<std::size_t>((most_brackets(typed) + 1) * most_parts(typed)));
    } catch (const toml::parse_error& error) {
      INFO(error.description());
      CHECK(typed.empty());
    }
  }
  CHECK(read > 1000);
}

TEST_CASE("brackets in texts and comments are none, and a closed one is closed") {
  CHECK(most_brackets("x = '[[[' # [[[[\ny = \"\"\"[\"\"\"\"\"\nz = [[1], [2], { a = [1] }]\n") == 3);
  CHECK(most_brackets("[a]\n[[b]]\n[c]\n") == 2);
}

TEST_CASE("a text that ends in four or five quotes hides no key of a hundred thousand parts") {
  std::string dots = "a";
  for (int i = 0; i < 100000; ++i) dots += ".a";
  for (const std::string first : {"'''a''''", "'''a'''''", "\"\"\"a\"\"\"\"", "\"\"\"a\\\"\"\"\"\"\""})
    CHECK(told_of_kit({small_kit + "x = { b = " + first + ", " + dots + " = 1 }\n"})
              .find("a key has more than 64 parts between dots") != std::string::npos);
}

TEST_CASE("what may be nested does not overflow a stack, in tables within lists within tables") {
  std::string typed = "looks = ";
  std::string key = "a";
  for (int i = 1; i < 64; ++i) key += ".a";
  for (int i = 0; i < 16; ++i) typed += "[{ " + key + " = ";
  typed += "1";
  for (int i = 0; i < 16; ++i) typed += " }]";
  CHECK(told_of_kit({small_kit + typed + "\n"}).find("must be a text") != std::string::npos);
  CHECK(told_of_kit({small_kit + "looks = [" + typed.substr(8) + "]\n"}).find("too many brackets") !=
        std::string::npos);
}
