// SPDX-License-Identifier: MIT
// The generator refuses a text that is too long before it does any real work, so dropping line by line is
// cheap.
#include "symbol/qr.h"

#include <algorithm>
#include <cassert>
#include <qrcodegen/qrcodegen.hpp>

#include "symbol/qr_mask.h"

namespace dunnage {
namespace {

using Generator = qrcodegen::QrCode;

/// Reader programs guess the character set of bytes beyond ASCII, some of them wrongly; this says that it is
/// UTF-8 (ISO/IEC 18004, extended channel interpretation 26).
constexpr long kUtf8 = 26;

Generator::Ecc level(char correction) {
  switch (correction) {
    case 'L':
      return Generator::Ecc::LOW;
    case 'M':
      return Generator::Ecc::MEDIUM;
    case 'Q':
      return Generator::Ecc::QUARTILE;
    case 'H':
      return Generator::Ecc::HIGH;
  }
  assert(false && "no such level of correction");
  return Generator::Ecc::MEDIUM;
}

int format_bits(char correction) { return correction == 'L' ? 1 : correction == 'M' ? 0 : correction == 'Q' ? 3 : 2; }

Modules modules_of(const Generator& made) {
  Modules out(static_cast<std::size_t>(made.getSize()), ModuleRow{});
  for (int y = 0; y < made.getSize(); ++y)
    for (int x = 0; x < made.getSize(); ++x)
      if (made.getModule(x, y)) out[y][x / 64] |= std::uint64_t{1} << (x % 64);
  return out;
}

std::vector<qrcodegen::QrSegment> segments(std::string_view text) {
  std::vector<qrcodegen::QrSegment> parts;
  bool ascii = true;
  for (char c : text) ascii = ascii && static_cast<unsigned char>(c) < 0x80;
  if (!ascii) parts.push_back(qrcodegen::QrSegment::makeEci(kUtf8));
  for (auto& part : qrcodegen::QrSegment::makeSegments(std::string(text).c_str())) parts.push_back(std::move(part));
  return parts;
}

std::vector<std::string_view> lines_of(std::string_view text) {
  std::vector<std::string_view> lines;
  while (true) {
    const std::size_t end = text.find('\n');
    lines.push_back(text.substr(0, end));
    if (end == std::string_view::npos) return lines;
    text.remove_prefix(end + 1);
  }
}

std::string counted(std::string_view more, int n) {
  std::string words(more);
  if (const std::size_t at = words.find("{n}"); at != std::string::npos) words.replace(at, 3, std::to_string(n));
  return words;
}

/// The text without `dropped` lines before the last `keep_last`.
std::string shortened(const std::vector<std::string_view>& lines, int dropped, int keep_last, std::string_view more) {
  std::string text;
  const int total = static_cast<int>(lines.size()), gap = total - keep_last - dropped;
  const auto add = [&](std::string_view line) {
    if (!text.empty()) text += '\n';
    text += line;
  };
  for (int i = 0; i < gap; ++i) add(lines[i]);
  if (dropped > 0 && !more.empty()) add(counted(more, dropped));
  for (int i = total - keep_last; i < total; ++i) add(lines[i]);
  return text;
}

}  // namespace

std::optional<QrCode> qr(std::string_view text, char correction, int max_side) {
  const int largest = std::min(40, (max_side - 17) / 4);
  if (largest < 1) return std::nullopt;
  assert(text.find('\0') == std::string_view::npos);
  try {
    const Generator made = Generator::encodeSegments(segments(text), level(correction), 1, largest, 0);
    QrCode code{std::string(text), made.getSize(), {}, made.getVersion(), correction};
    code.correction = "LMQH"[static_cast<int>(made.getErrorCorrectionLevel())];
    const Modules best = best_masked(modules_of(made), code.version, format_bits(code.correction));
    code.dark.reserve(static_cast<std::size_t>(code.side) * code.side);
    for (const ModuleRow& row : best)
      for (int x = 0; x < code.side; ++x) code.dark.push_back((row[x / 64] >> (x % 64) & 1) != 0);
    return code;
  } catch (const qrcodegen::data_too_long&) {
    return std::nullopt;
  }
}

std::optional<QrFit> qr_fit(std::string_view text, std::string_view more, char correction, int max_side,
                            int keep_last) {
  const std::vector<std::string_view> lines = lines_of(text);
  assert(keep_last >= 0);
  const int droppable = static_cast<int>(lines.size()) - 1;
  for (int dropped = 0; dropped <= droppable; ++dropped) {
    const int kept = std::min(keep_last, droppable - dropped);
    if (auto code = qr(shortened(lines, dropped, kept, more), correction, max_side))
      return QrFit{std::move(*code), dropped};
  }
  if (auto code = qr(lines.front(), correction, max_side)) return QrFit{std::move(*code), droppable};
  return std::nullopt;
}

}  // namespace dunnage
