// SPDX-License-Identifier: MIT
// The mask is the packaged generator's own choice, module for module.
#include <catch2/catch.hpp>
#include <qrcodegen/qrcodegen.hpp>
#include <random>

#include "symbol/qr.h"

using namespace dunnage;

namespace {

std::string random_text(std::mt19937& dice, std::size_t length) {
  static const std::string letters = "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789 .,;:/-+\n";
  std::string text;
  const int kind = static_cast<int>(dice() % 4);
  while (text.size() < length) {
    if (kind == 0)
      text += static_cast<char>('0' + dice() % 10);
    else if (kind == 1)
      text += 'a';
    else
      text += letters[dice() % letters.size()];
  }
  return text;
}

/// What the generator makes by itself; a text of ASCII alone.
std::vector<bool> by_generator(const std::string& text, char correction, int version) {
  using Generator = qrcodegen::QrCode;
  const std::string levels = "LMQH";
  const auto level = static_cast<Generator::Ecc>(levels.find(correction));
  const Generator made = Generator::encodeSegments(qrcodegen::QrSegment::makeSegments(text.c_str()), level, 1, version);
  std::vector<bool> dark;
  for (int y = 0; y < made.getSize(); ++y)
    for (int x = 0; x < made.getSize(); ++x) dark.push_back(made.getModule(x, y));
  return dark;
}

}  // namespace

TEST_CASE("modules are those that the generator chooses by itself, in every version and level") {
  std::mt19937 dice(11);
  std::vector<bool> seen(41, false);
  int checked = 0;
  for (int i = 0; i < 3000; ++i) {
    const char correction = "LMQH"[dice() % 4];
    const std::size_t longest = i % 20 == 0 ? 1270 : i % 5 == 0 ? 500 : 220;
    const std::string text = random_text(dice, 1 + dice() % longest);
    const auto code = qr(text, correction, 177);
    REQUIRE(code);
    INFO(text << " version " << code->version << " " << correction);
    REQUIRE((code->dark == by_generator(text, correction, 40)));
    seen[static_cast<std::size_t>(code->version)] = true;
    ++checked;
  }
  CHECK(checked == 3000);
  CHECK(std::count(seen.begin(), seen.end(), true) > 35);
}

TEST_CASE("the alignment patterns of every version stand where the generator draws them") {
  std::vector<bool> seen(41, false);
  for (std::size_t length = 1; length <= 2953;
       length += 14) {  // no version takes fewer than 14 bytes more than the last
    const std::string text(length, 'a');
    const auto code = qr(text, 'L', 177);
    REQUIRE(code);
    INFO("version " << code->version);
    REQUIRE((code->dark == by_generator(text, 'L', 40)));
    seen[static_cast<std::size_t>(code->version)] = true;
  }
  CHECK(std::count(seen.begin() + 1, seen.end(), true) == 40);
}
