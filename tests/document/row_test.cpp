// SPDX-License-Identifier: MIT
#include "model/row.h"

#include <catch2/catch.hpp>

using namespace dunnage;

TEST_CASE("a row gives back what was put in it, however long") {
  const std::string longest(70'000, 'x');
  const Row row{{Cell::Kind::tick, "", false},
                {Cell::Kind::text, "fifteen letters", true},
                {Cell::Kind::text, "", false},
                {Cell::Kind::blank, "kg", false},
                {Cell::Kind::text, longest, false}};
  const auto cells = row.cells();
  REQUIRE(cells.size() == 5);
  CHECK(cells[0].kind == Cell::Kind::tick);
  CHECK((cells[1].text == "fifteen letters" && cells[1].strong));
  CHECK((cells[2].text.empty() && cells[2].kind == Cell::Kind::text && !cells[2].strong));
  CHECK((cells[3].kind == Cell::Kind::blank && cells[3].text == "kg"));
  CHECK(row.cell(4).text == longest);
  CHECK(row.cell(5).text.empty());
  CHECK(Row(row.unpacked()).cell(3).text == "kg");
  CHECK(Row().empty());
}
