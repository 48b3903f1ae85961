// SPDX-License-Identifier: MIT
// Mistakes such as people make in TOML: a line gone, twice or elsewhere, a value under another key. Bytes changed at
// random seldom get beyond the parser, so half of the changes are of this kind.
#include <cstring>
#include <random>
#include <string>
#include <vector>

extern "C" std::size_t LLVMFuzzerMutate(std::uint8_t* data, std::size_t size, std::size_t most);

namespace {

const char* const odd_values[] = {
    "-0",
    "-1",
    "0",
    "1",
    "9999",
    "10000",
    "9223372036854775807",
    "1e308",
    "-1e308",
    "nan",
    "inf",
    "0.5",
    "true",
    "false",
    "\"\"",
    "\"x\"",
    "\" \"",
    "[]",
    "{}",
    "[[]]",
    "[{}]",
    "2027-02-29",
    "0001-01-01",
    "9999-12-31",
    "2028-02-29",
    "23:59",
    "2027-06-19T12:00:00Z",
    "\"1e308 kg\"",
    "\"-0 kg\"",
    "\"0 kg\"",
    "\"nan kg\"",
    "\"0.0001 kg\"",
    "\"99999 kg\"",
    "\"0 mm\"",
    "\"1e-300 mm\"",
    "\"1e9 km\"",
    "\"0 pt\"",
    "\"1 pt\"",
    "\"500 mm\"",
    "\"0 W\"",
    "\"1e9 kW\"",
    "\"0 in\"",
    "\"-20 in\"",
    "\"10 x 10 ft\"",
    "\"0 x 0 ft\"",
    "\"1 x 1 x 1 in\"",
    "\"100 %\"",
    "\"mph\"",
    "\"120 V\"",
    "\"0 V\"",
    "\"20 A\"",
    "\"1 mm2\"",
    "\"12 AWG\"",
    "\"0 C\"",
    "\"-100 F\"",
    "\"\\u202e\"",
    "\"\\u0000\"",
    "\"a\\nb\"",
    "\"\\U0001F4A9\"",
    "\"{n}\"",
    "\"{\"",
    "\"WWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWW\"",
    "\"asked\"",
    "\"always\"",
    "\"itself\"",
    "\"each\"",
    "\"wrap\"",
    "\"shrink\"",
    "\"refuse\""};

std::vector<std::string> split(const std::string& text) {
  std::vector<std::string> lines;
  std::size_t at = 0;
  while (at < text.size()) {
    const std::size_t end = std::min(text.find('\n', at), text.size());
    lines.push_back(text.substr(at, end - at));
    at = end + 1;
  }
  if (lines.empty()) lines.emplace_back();
  return lines;
}

/// The byte after "key = ", or npos.
std::size_t value_at(const std::string& line) {
  const std::size_t equals = line.find('=');
  return equals == std::string::npos ? equals : line.find_first_not_of(' ', equals + 1);
}

class Typist {
 public:
  Typist(std::vector<std::string> lines, unsigned seed) : lines_(std::move(lines)), random_(seed) {}

  void slip() {
    const std::size_t a = any(), b = any();
    switch (below(8)) {
      case 0:
        lines_.erase(lines_.begin() + static_cast<std::ptrdiff_t>(a));
        break;
      case 1:
        lines_.insert(lines_.begin() + static_cast<std::ptrdiff_t>(b), std::string(lines_[a]));
        break;
      case 2:
        std::swap(lines_[a], lines_[b]);
        break;
      case 3:
        set_value(a, odd_values[below(std::size(odd_values))]);
        break;
      case 4:
        set_value(a, value(b));
        break;
      case 5:
        set_number(a);
        break;
      case 6:
        copy_section(a, b);
        break;
      default:
        add_key(a, b);
        break;
    }
    if (lines_.empty()) lines_.emplace_back();
  }

  std::string text() const {
    std::string out;
    for (const std::string& line : lines_) out += line + "\n";
    return out;
  }

 private:
  std::size_t below(std::size_t n) { return random_() % n; }
  std::size_t any() { return below(lines_.size()); }
  std::string value(std::size_t line) const {
    const std::size_t at = value_at(lines_[line]);
    return at == std::string::npos ? "\"" + lines_[line] + "\"" : lines_[line].substr(at);
  }
  void set_value(std::size_t line, const std::string& value) {
    const std::size_t at = value_at(lines_[line]);
    if (at != std::string::npos) lines_[line].replace(at, std::string::npos, value);
  }
  /// One figure within a line becomes another.
  void set_number(std::size_t line) {
    std::string& text = lines_[line];
    const std::size_t at = text.find_first_of("0123456789", below(text.size() + 1));
    if (at == std::string::npos) return;
    std::size_t end = at;
    while (end < text.size() && std::strchr("0123456789.", text[end])) ++end;
    static const char* const numbers[] = {"0", "1", "2", "3", "10", "0.001", "100", "9999", "1e308", "-1", "64", "0.5"};
    text.replace(at, end - at, numbers[below(std::size(numbers))]);
  }
  /// The table that line `a` stands in, once more before line `b`.
  void copy_section(std::size_t a, std::size_t b) {
    std::size_t first = a, last = a + 1;
    while (first > 0 && !lines_[first].starts_with("[")) --first;
    while (last < lines_.size() && !lines_[last].starts_with("[")) ++last;
    const std::vector<std::string> copy(lines_.begin() + static_cast<std::ptrdiff_t>(first),
                                        lines_.begin() + static_cast<std::ptrdiff_t>(last));
    lines_.insert(lines_.begin() + static_cast<std::ptrdiff_t>(b), copy.begin(), copy.end());
  }
  /// The key of one line with the value of another, below it.
  void add_key(std::size_t a, std::size_t b) {
    const std::size_t at = value_at(lines_[a]);
    if (at == std::string::npos) return;
    lines_.insert(lines_.begin() + static_cast<std::ptrdiff_t>(any()), lines_[a].substr(0, at) + value(b));
  }

  std::vector<std::string> lines_;
  std::minstd_rand random_;
};

}  // namespace

extern "C" std::size_t LLVMFuzzerCustomMutator(std::uint8_t* data, std::size_t size, std::size_t most, unsigned seed) {
  if (seed % 2 == 0) return LLVMFuzzerMutate(data, size, most);
  Typist typist(split(std::string(reinterpret_cast<const char*>(data), size)), seed);
  for (unsigned n = 1 + seed / 2 % 3; n > 0; --n) typist.slip();
  const std::string text = typist.text();
  const std::size_t kept = std::min(text.size(), most);
  std::memcpy(data, text.data(), kept);
  return kept;
}
