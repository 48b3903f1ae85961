// SPDX-License-Identifier: MIT
// What a person's terminal is given, and what is near in a long list.
#include "base/shown.h"

#include <catch2/catch.hpp>
#include <ctime>
#include <random>
#include <set>
#include <sstream>

#include "../effort.h"
#include "../shell.h"
#include "base/diagnostic.h"
#include "base/file_bytes.h"
#include "base/nearest.h"
#include "base/utf8.h"

using namespace dunnage;

TEST_CASE("every control and format character that Perl's copy of Unicode knows is spelled out, and no letter") {
  const Said said = shell(
      "perl -e 'for $c (0..0x10FFFF) { next if $c >= 0xD800 && $c <= 0xDFFF; $s = chr $c; "
      "print \"$c \" if $s =~ /\\p{Cc}|\\p{Cf}|\\p{Zl}|\\p{Zp}/; "
      "print \"-$c \" if $s =~ /\\p{L}|\\p{N}|\\p{P}|\\p{S}|\\p{Zs}/ && $s !~ /\\p{Default_Ignorable_Code_Point}/ }'");
  REQUIRE(said.status == 0);
  std::istringstream numbers(said.out);
  int controls = 0, letters = 0;
  for (long number; numbers >> number;) {
    const bool letter = number < 0;
    const auto sign = static_cast<char32_t>(letter ? -number : number);
    (letter ? letters : controls)++;
    if (is_unprinted(sign) == letter) FAIL_CHECK("U+" << std::hex << static_cast<long>(sign));
  }
  CHECK(controls > 200);
  CHECK(letters > 100000);
}

TEST_CASE("what a terminal would obey is spelled as TOML spells it, once") {
  CHECK(shown("a\x1B[31m\u009B\u202E\U000E0041\u2028\n\tz \u00E9") ==
        "a\\u001B[31m\\u009B\\u202E\\U000E0041\\u2028\\n\\tz \u00E9");
  CHECK(shown("\x9B"
              "2J\xE2\x80") == "\\x9B2J\\xE2\\x80");
  CHECK(shown(shown("\x07\n")) == shown("\x07\n"));
}

TEST_CASE("a stream shows the same however its text is cut into pieces") {
  const std::string text = "line\n\u202Eone\u009B\t\xE2\x80 \xF0\x9D\x84\x9E\x1B]0;x\x07 \xC2";
  for (std::size_t size = 1; size <= text.size(); ++size) {
    std::ostringstream out;
    {
      ShownStream shown_out(out);
      for (std::size_t at = 0; at < text.size(); at += size) shown_out << text.substr(at, size);
    }
    CHECK(out.str() == "line\n\\u202Eone\\u009B\t\\xE2\\x80 \xF0\x9D\x84\x9E\\u001B]0;x\\u0007 \\xC2");
  }
}

TEST_CASE("the caret stands under what is meant, behind and under signs that are spelled out") {
  Sources sources;
  const SourceFile* file = sources.add("k\x1B.toml", "\u202Ea\u200F = \u0007x\u009B\n");
  CHECK(render(Diagnostic{Severity::error, {file, 1, 7, 3}, "odd\nerror: no", "see\x1B", {}, {}}) ==
        "k\\u001B.toml:1:7: error: odd\\nerror: no\n"
        "  \\u202Ea\\u200F = \\u0007x\\u009B\n"
        "                  ^~~~~~~~~~~~~\n"
        "hint: see\\u001B\n");
}

TEST_CASE("a list that is asked many times answers as one that is asked once") {
  std::mt19937 dice(5);
  const auto word = [&](std::size_t letters) {
    std::string out;
    for (std::size_t n = 1 + dice() % letters; n > 0; --n) out += "aAbB1-"[dice() % 6];
    return out;
  };
  for (unsigned round = 0; round < turns(300); ++round) {
    std::vector<std::string> words;
    for (std::size_t n = dice() % 60; n > 0; --n) words.push_back(word(12));
    const NearestOf near(words);
    for (int i = 0; i < 40; ++i) {
      const std::string typed = word(14);
      CHECK(near(typed) == nearest(typed, words));
    }
  }
}

TEST_CASE("twenty thousand strange codes against as many known ones take no minute") {
  std::mt19937 dice(9);
  std::vector<std::string> known;
  for (int i = 0; i < 20000; ++i) known.push_back("CASE" + std::to_string(dice() % 1000000) + "-" + std::to_string(i));
  const NearestOf near(known);
  const std::clock_t before = std::clock();
  std::size_t found = 0;
  for (unsigned i = 0; i < turns(20000); ++i)
    found += near("OTHER" + std::to_string(dice() % 1000000) + "-" + std::to_string(i)).size();
  CHECK(found == 0);
  CHECK(static_cast<double>(std::clock() - before) / CLOCKS_PER_SEC < 20);
}

TEST_CASE("devices, pipes and files without end are not waited for, and no more than the limit is read") {
  using Fault = FileBytes::Fault;
  const Folder folder("bytes");
  const std::string in = folder.path.string();
  REQUIRE(shell("mkfifo " + in + "/pipe && ln -s /dev/zero " + in + "/zero && ln -s /nowhere " + in +
                "/dangling && truncate -s 8G " + in + "/huge")
              .status == 0);
  CHECK(file_bytes(folder.path / "pipe", 100).fault == Fault::not_plain);
  CHECK(file_bytes(folder.path / "zero", 100).fault == Fault::not_plain);
  CHECK(file_bytes(folder.path / "dangling", 100).fault == Fault::not_there);
  CHECK(file_bytes(folder.path / "huge", 64u << 20).fault == Fault::too_large);
  CHECK(first_bytes(folder.path / "huge", 100).bytes == std::string(100, '\0'));
  CHECK(first_bytes(folder.path / "zero", 100).fault == Fault::not_plain);
  CHECK(first_bytes(folder.file("short", "abc"), 100).bytes == "abc");
  CHECK(file_bytes(folder.path, 100).fault == Fault::folder);
  CHECK(file_bytes(folder.file("hundred", std::string(100, 'x')), 100).bytes.size() == 100);
  CHECK(file_bytes(folder.file("more", std::string(101, 'x')), 100).fault == Fault::too_large);
  CHECK(file_bytes("/proc/self/status", 1u << 20).bytes.find("Name:") !=
        std::string::npos);  // its size is said to be 0
  CHECK(file_bytes("/proc/self/maps", 10).fault == Fault::too_large);
}
