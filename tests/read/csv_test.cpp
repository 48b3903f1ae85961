// SPDX-License-Identifier: MIT
// Spreadsheets as office programs save them and as people fill them.
#include <catch2/catch.hpp>

#include "read/csv_bytes.h"
#include "read/csv_cell.h"
#include "read/csv_contents.h"
#include "read/csv_text.h"

using namespace dunnage;

namespace {

/// "line:column text" of each cell.
std::vector<std::string> cells(const std::string& bytes, std::string* told = nullptr) {
  Sources sources;
  Diagnostics diagnostics;
  std::vector<std::string> out;
  for (const CsvRow& row : read_csv("a.csv", bytes, sources, diagnostics).rows)
    for (const Text& cell : row.cells)
      out.push_back(std::to_string(cell.place.line) + ":" + std::to_string(cell.place.column) + " " + cell.value);
  if (told) *told = render(diagnostics, sources);
  return out;
}
using Cells = std::vector<std::string>;

/// The text that a cell becomes, or "! cause"; a guess follows in brackets.
std::string quantity(const std::string& cell, const std::string& unit = "", Decimals decimals = Decimals::point) {
  const ReadCell read = read_quantity_cell(cell, {Measure::mass}, unit, decimals);
  return (read.value ? std::get<std::string>(*read.value) : "! " + read.cause) +
         (read.guess.empty() ? "" : " (" + read.guess + ")");
}

std::string of_kind(const std::string& cell, const std::string& kind, const std::string& unit = "") {
  const ReadCell read = read_cell(cell, {"key", kind, false, false, {}, {}, {}, {}}, unit, Decimals::point);
  if (!read.cause.empty()) return "! " + read.cause;
  if (!read.value) return "nothing";
  if (const auto* text = std::get_if<std::string>(&*read.value)) return *text;
  if (const auto* raw = std::get_if<RawToml>(&*read.value)) return raw->text;
  return listed(std::get<std::vector<std::string>>(*read.value));
}

std::string contents(const std::string& cell) {
  std::string out;
  for (const ContentWords& one : read_contents(cell))
    out += std::to_string(one.count) + (one.counted ? "" : "?") + " " + one.name + "|";
  return out;
}

}  // namespace

TEST_CASE("cells keep their places through quotes, line ends and blank lines") {
  CHECK(cells("a,b\nc,\"d\ne\",f\n\n\ng,h\n") ==
        Cells{"1:1 a", "1:3 b", "2:1 c", "2:3 d\ne", "3:4 f", "6:1 g", "6:3 h"});
  CHECK(cells("a;b\r\n\"x;\"\"y\"\"\"; z \r\n") == Cells{"1:1 a", "1:3 b", "2:1 x;\"y\"", "2:11 z"});
  CHECK(cells("sep=;\na,b;c\n") == Cells{"2:1 a,b", "2:5 c"});
  CHECK(cells("a,b\rc,d\r") == Cells{"1:1 a", "1:3 b", "2:1 c", "2:3 d"});  // carriage returns alone
  CHECK(cells("é\tb\n29\" x 21\"\td\n") == Cells{"1:1 é", "1:3 b", "2:1 29\" x 21\"", "2:11 d"});
}

TEST_CASE("a quote that is never closed is told where it begins") {
  std::string told;
  cells("a,b\nc,\"d\ne,f\n", &told);
  CHECK(told.find("a.csv:2:3: error: the quote that begins this cell is never closed") == 0);
}

TEST_CASE("the encoding is told by its marks, its zeros, or what is left") {
  CHECK(to_utf8("\xEF\xBB\xBF"
                "a")
            .text == "a");
  CHECK(to_utf8(std::string("\xFF\xFE"
                            "a\0\xE9\0",
                            6))
            .text == "aé");
  CHECK(to_utf8(std::string("\xFE\xFF\0a\xD8\x3D\xDE\x00", 8)).text == "a😀");
  CHECK(to_utf8(std::string("a\0;\0b\0", 6)).encoding == "UTF-16");
  CHECK(to_utf8("Ba\xFAl \x80 \x93x\x94").text == "Baúl € “x”");
  CHECK(to_utf8("Baúl").encoding == "UTF-8");
  CHECK(to_utf8("\x81").lost == 1);
}

TEST_CASE("masses in every spelling that crews use") {
  CHECK(quantity("27 lb") == "27 lb");
  CHECK(quantity("27lbs.") == "27 lb");
  CHECK(quantity("27#") == "27 lb");
  CHECK(quantity("12,5 kg", "", Decimals::comma) == "12.5 kg");
  CHECK(quantity("1.250,5 kg") == "1250.5 kg");
  CHECK(quantity("1,250 lb") == "1250 lb (\"1,250\" read as 1250)");
  CHECK(quantity("1,250 kg", "", Decimals::comma) == "1.250 kg (\"1,250\" read as 1.250)");
  CHECK(quantity("1 250 kg") == "1250 kg");
  CHECK(quantity("1,250,000 g") == "1250000 g");
  CHECK(quantity("1.000 kg", "", Decimals::comma) == "1.000 kg (\"1.000\" read as 1.000, not as 1000)");
  CHECK(quantity("1.000", "kg", Decimals::comma) == "1.000 kg (\"1.000\" read as 1.000, not as 1000)");
  CHECK(quantity("1.000 kg") == "1.000 kg");
  CHECK(quantity("0.250 kg", "", Decimals::comma) == "0.250 kg");
  CHECK(quantity("26 1/2 lb") == "26.5 lb");
  CHECK(quantity("26½", "lb") == "26.5 lb");
  CHECK(quantity("27", "lb") == "27 lb");
  CHECK(quantity("~30 lb") == "30 lb (\"about\" left out)");
  CHECK(quantity("6 lb 4 oz") == "6 lb 4 oz");
  CHECK(quantity("1/2 lb") == "0.5 lb (\"1/2\" read as 0.5)");
  CHECK(quantity("12/14", "lb") == "0.857143 lb (\"12/14\" read as 0.857143)");
  for (const std::string none : {"1.2.3", "1,25,0", "1.250,5,5", "1.25,250.5", "14/12", "5 14/12", "-1/2", "1/0"})
    CHECK(quantity(none, "lb") == "! \"" + none + "\" is no mass");
  CHECK(quantity("27") == "! \"27\" has no unit");
  CHECK(quantity("27 stone") == "! \"27 stone\" is no mass");
  CHECK(quantity("heavy") == "! \"heavy\" is no mass");
}

TEST_CASE("sizes, counts, flags, dates and lists") {
  CHECK(of_kind("29\" x 21\" x 18\"", "lengths") == "29 in x 21 in x 18 in");
  CHECK(of_kind("60*40*30cm", "lengths") == "60 x 40 x 30 cm");
  CHECK(of_kind("29 by 21 by 18", "lengths", "in") == "29 x 21 x 18 in");
  CHECK(of_kind("29x21x18", "lengths") == "! \"29x21x18\" has no unit");
  CHECK(of_kind("4 pcs", "whole number") == "4");
  CHECK(of_kind("x2", "whole number") == "2");
  CHECK(of_kind("4.0", "whole number") == "4");
  CHECK(of_kind("1,000", "whole number") == "1000");
  CHECK(of_kind("1.000", "whole number") == "! \"1.000\" is no whole number");
  CHECK(of_kind("some", "whole number") == "! \"some\" is no whole number");
  CHECK(of_kind("Yes", "true or false") == "true");
  CHECK(of_kind("n", "true or false") == "false");
  CHECK(of_kind("n/a", "true or false") == "nothing");
  CHECK(of_kind("2027-9-1", "date") == "2027-09-01");
  CHECK(of_kind("13/9/2027", "date") == "2027-09-13");
  CHECK(of_kind("3/9/2027", "date") == "! \"3/9/2027\" may be two dates: day first or month first");
  CHECK(of_kind("2027-13-01", "date") == "! \"2027-13-01\" is no day of the calendar");
  CHECK(of_kind("vocal; speech", "list of texts") == "vocal, speech");
  CHECK(of_kind("[ { a = 1 },\n{ b = 'x' } ]", "list of sections") == "[{ a = 1 }, { b = \"x\" }]");
}

TEST_CASE("contents: how many of what") {
  CHECK(contents("6 x vocal mic, 2 DI box; stands") == "6 vocal mic, 2 DI box|1? stands|");
  CHECK(contents("6 x vocal mic, 2 DI box, stands") == "6 vocal mic|2 DI box|1? stands|");
  CHECK(contents("mic clips (12)\n- 50 ft cable x4\n25 ft cable") == "12 mic clips|4 50 ft cable|1? 25 ft cable|");
  CHECK(contents("12 x 50 ft cable") == "12 50 ft cable|");
}
