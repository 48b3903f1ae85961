// SPDX-License-Identifier: MIT
// A sentence is kept as its English text with places, and said in a language whole.
#include "base/sentence.h"

#include <catch2/catch.hpp>

using namespace dunnage;

namespace {

const Sentences spanish = {{"Down at {} gust.", "Abajo con ráfaga de {}."},
                           {"{} pieces", "{} piezas"},
                           {"nothing", "nada"},
                           {"{} of {}", "de {2} van {1}"}};

}  // namespace

TEST_CASE("a sentence is said in English, and in a language as far as that has it") {
  const Sentence down = said("Down at {} gust.", std::string("14 mph"));
  CHECK(down.english() == "Down at 14 mph gust.");
  CHECK(down.in(spanish) == "Abajo con ráfaga de 14 mph.");
  CHECK(said("Leave it down.").in(spanish) == "Leave it down.");
}

TEST_CASE("a place takes a name, a number or another sentence") {
  CHECK(said("{} of {}", 3, said("{} pieces", 8)).english() == "3 of 8 pieces");
  CHECK(said("{} of {}", 3, said("{} pieces", 8)).in(spanish) == "de 8 piezas van 3");
  CHECK(said("{} of {}", std::string("{}"), std::string("{1}")).in(spanish) ==
        "de {1} van {}");  // as typed by somebody
}

TEST_CASE("sentences follow each other, and lists are strung") {
  Sentence says = said("Down at {} gust.", std::string("9 m/s"));
  CHECK(says.then(said("Name somebody.")).english() == "Down at 9 m/s gust. Name somebody.");
  CHECK(Sentence().then(said("nothing")).english() == "nothing");
  CHECK(strung({said("nothing"), Sentence(), Sentence(std::string("BAG"))}, ", ").in(spanish) == "nada, BAG");
}

TEST_CASE("the same text is the same sentence, however it was put together") {
  Sentence a = as_is("12");
  a += as_is("3");
  CHECK(a == Sentence(123));
  CHECK_FALSE(said("nothing") == as_is("nothing"));
}

TEST_CASE("a place that only one of two languages has is named") {
  CHECK(odd_place("{} of {}", "{2} {1}").empty());
  CHECK(odd_place("{} of {}", "{} {}").empty());
  CHECK(odd_place("{} of {}", "{1}") == "{2}");
  CHECK(odd_place("{}", "{} {}") == "{}");
  CHECK(odd_place("{}", "{1} {3}") == "{3}");
}
