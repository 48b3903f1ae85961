// SPDX-License-Identifier: MIT
// UTF-8, the nearest word, and how a mistake is shown.
#include <catch2/catch.hpp>

#include "base/diagnostic.h"
#include "base/nearest.h"
#include "base/utf8.h"

using namespace dunnage;

TEST_CASE("Broken UTF-8 is found at its first byte (Unicode 15.0, table 3-7)") {
  CHECK_FALSE(utf8::first_fault("plain, é, €, 𝄞"));
  CHECK(utf8::first_fault("ab\x80") == 2);
  CHECK(utf8::first_fault("\xC0\xAF") == 0);          // overlong
  CHECK(utf8::first_fault("\xE0\x80\xAF") == 0);      // overlong
  CHECK(utf8::first_fault("\xED\xA0\x80") == 0);      // surrogate
  CHECK(utf8::first_fault("\xF4\x90\x80\x80") == 0);  // above U+10FFFF
  CHECK(utf8::first_fault("a\xE2\x82") == 1);         // cut short
  CHECK(utf8::encode(utf8::decode("é€𝄞")) == "é€𝄞");
  CHECK(utf8::length("é€𝄞") == 3);
}

TEST_CASE("The nearest word is near") {
  const std::vector<std::string> keys = {"holds", "hold", "home", "weighed", "after_dark"};
  CHECK(nearest("holdz", keys) == "holds");
  CHECK(nearest("HOME", keys) == "home");
  CHECK(nearest("wieghed", keys) == "weighed");
  CHECK(nearest("afterdark", keys) == "after_dark");
  CHECK(nearest("colour", keys).empty());
  CHECK(nearest("x", {"m", "g"}).empty());
  CHECK(did_you_mean("holdz", keys) == "did you mean \"holds\"?");
  CHECK(edit_distance("ab", "ba") == 1);
}

TEST_CASE("A mistake shows its place, its line, a caret and the remedy") {
  Sources sources;
  const SourceFile* file = sources.add("kit/cases.toml", "[[case]]\r\ncode = \"É\"\thomme = 1\r\n");
  Diagnostics diagnostics;
  diagnostics.error({file, 2, 12, 5}, "\"homme\" is not a key of [[case]]", "did you mean \"home\"?");
  CHECK(render(diagnostics.all()[0]) ==
        "kit/cases.toml:2:12: error: \"homme\" is not a key of [[case]]\n"
        "  code = \"É\" homme = 1\n"
        "             ^~~~~\n"
        "hint: did you mean \"home\"?\n");
}

TEST_CASE("Mistakes come in order of file and line, with both places where two lines disagree") {
  Sources sources;
  const SourceFile* first = sources.add("a.toml", "one\ntwo\n");
  const SourceFile* second = sources.add("b.toml", "three\n");
  Diagnostics diagnostics;
  diagnostics.note({second, 1, 1, 1}, "last");
  diagnostics.error({first, 2, 1, 3}, "again", "keep one", {first, 1, 1, 3}, "first here");
  diagnostics.warning({first, 1, 1, 1}, "early");
  CHECK(render(diagnostics, sources) ==
        "a.toml:1:1: warning: early\n  one\n  ^\n"
        "a.toml:2:1: error: again\n  two\n  ^~~\nhint: keep one\n"
        "a.toml:1:1: note: first here\n  one\n  ^~~\n"
        "b.toml:1:1: note: last\n  three\n  ^\n"
        "1 error\n");
}

TEST_CASE("A long line is shown around the caret only") {
  Sources sources;
  const SourceFile* file = sources.add("long.toml", std::string(500, 'x') + "!" + std::string(500, 'y'));
  Diagnostics diagnostics;
  diagnostics.error({file, 1, 501, 1}, "here");
  CHECK(render(diagnostics.all()[0]) == "long.toml:1:501: error: here\n  ..." + std::string(32, 'x') + "!" +
                                            std::string(63, 'y') + "...\n" + std::string(37, ' ') + "^\n");
}
