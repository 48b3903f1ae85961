// SPDX-License-Identifier: MIT
// Drawn pictures: nothing outside their block, no words upon words, lines where their figures say.
#include <catch2/catch.hpp>
#include <cmath>

#include "layout/small_document.h"

using namespace dunnage;

namespace {

const std::string picture_layout = R"(
[page]
margin = "15 mm"
[type]
face = "narrow"
size = "11 pt"
floor = "11 pt"
[head]
face = "narrow-bold"
[[block]]
id = "picture"
height = "70 mm"
)";

Block drawn_block(picture::Any content) { return {"picture", block::Picture{std::move(content)}}; }

/// Words by their capitals and a descender, as boxes.
std::vector<Box> word_boxes(const Page& page) {
  std::vector<Box> boxes;
  for (const auto& words : all_of<ink::Words>(page))
    boxes.push_back({words.at.x, words.at.y - words.size * 0.72, words.width, words.size * 0.72});
  return boxes;
}

void check_clear(const Page& page) {
  const std::vector<Box> boxes = word_boxes(page);
  const auto words = all_of<ink::Words>(page);
  for (std::size_t i = 0; i < boxes.size(); ++i)
    for (std::size_t j = i + 1; j < boxes.size(); ++j) {
      const Box &a = boxes[i], &b = boxes[j];
      const bool meet = a.x < b.x + b.w && b.x < a.x + a.w && a.y < b.y + b.h && b.y < a.y + a.h;
      INFO(words[i].text << " and " << words[j].text);
      CHECK_FALSE(meet);
    }
}

void check_inside(const Page& page, double floor_pt = 11) {
  const Box ink = reach(page);
  CHECK(mm(ink.x) >= 14.99);
  CHECK(mm(ink.y) >= 14.99);
  CHECK(mm(ink.x + ink.w) <= pt(page.width) * 25.4 / 72 - 14.99);
  CHECK(mm(ink.y + ink.h) <= pt(page.height) * 25.4 / 72 - 14.99);
  for (const auto& words : all_of<ink::Words>(page)) {
    INFO(words.text);
    CHECK(pt(words.size) >= std::min(floor_pt, 10.0) - 1e-6);
  }
}

/// Margin falls with the square of the gust; what holds at 20 holds to 1.
picture::Chart chart() {
  picture::Chart out;
  out.across = {"gust, mph", 40, 10, 0};
  out.up = {"margin", 4, 1, 0};
  out.floor = 1;
  out.floor_name = "below 1: does not hold";
  picture::Curve curve{"as planned", picture::Pattern::solid, {}};
  for (int v = 1; v <= 40; ++v) curve.points.emplace_back(v, std::pow(20.0 / v, 2));
  out.curves.push_back(curve);
  return out;
}

picture::Upright upright(double at, const char* name) { return {at, name, picture::Pattern::solid, true}; }

LaidOut lay_picture(picture::Any content, const std::string& layout = picture_layout) {
  LaidOut out = lay_out(document_of({drawn_block(std::move(content))}), layout);
  CHECK(sentences(out.problems).empty());
  return out;
}

}  // namespace

TEST_CASE("a chart's curve passes where its figures say, and nowhere above its end") {
  const Page page = lay_picture(chart()).pages.pages.at(0);
  check_inside(page);
  check_clear(page);
  const auto x_of = [&](const char* figure) {
    const ink::Words words = words_on(page, figure);
    return mm(words.at.x + words.width / 2);
  };
  const double x20 = x_of("20"), x40 = x_of("40");
  const ink::Outline curve = all_of<ink::Outline>(page).at(0);
  const Spot first = curve.steps.front().a, last = curve.steps.back().a;
  CHECK(mm(last.x) == Approx(x40).margin(0.05));
  CHECK(mm(first.x) == Approx((x20 - (x40 - x20)) + (x40 - x20) / 2).margin(0.05));  // margin 4 at gust 10
  double floor_y = 0;  // where the curve crosses x = 20 the margin is 1
  for (std::size_t i = 0; i < curve.steps.size(); ++i)
    if (std::abs(mm(curve.steps[i].a.x) - x20) < 0.05) floor_y = mm(curve.steps[i].a.y);
  bool on_floor = false;
  for (const auto& line : all_of<ink::Line>(page))
    if (mm(line.from.y) == Approx(mm(line.to.y)) && mm(line.to.x - line.from.x) > 40)
      on_floor = on_floor || mm(line.from.y) == Approx(floor_y).margin(0.05);
  CHECK(on_floor);
}

TEST_CASE("names of uprights never meet, however close the lines are") {
  for (const double shift : {0.0, 0.3, 1.0, 5.0}) {
    for (const double at : {3.0, 20.0, 30.0}) {
      picture::Chart close = chart();
      close.uprights = {upright(at, "forecast gust 16"), upright(at + shift, "DOWN 17"),
                        upright(at + 2 * shift, "maker's limit 25"), upright(39, "last")};
      const Page page = lay_picture(close).pages.pages.at(0);
      check_inside(page);
      check_clear(page);
      for (const auto& words : all_of<ink::Words>(page)) {
        if (words.text != "DOWN 17") continue;
        for (const auto& mast : all_of<ink::Outline>(page)) {
          if (mast.steps.size() != 2 || mm(mast.steps[0].a.x) != Approx(mm(mast.steps[1].a.x))) continue;
          const bool through = mast.steps[0].a.x > words.at.x && mast.steps[0].a.x < words.at.x + words.width &&
                               mast.steps[1].a.y < words.at.y - words.size * 0.1;
          CHECK_FALSE(through);
        }
      }
    }
  }
}

TEST_CASE("a chart without room for its curves is told") {
  std::string low = picture_layout;
  low.replace(low.find("70 mm"), 5, "30 mm");
  const LaidOut out = lay_out(document_of({drawn_block(chart())}), low);
  REQUIRE(out.problems.size() == 1);
  CHECK(sentence(out.problems[0]).find("without room for its curves") != std::string::npos);
}

namespace {

picture::PlanView plan(int legs) {
  picture::PlanView out;
  out.caption = "10 x 10 ft, seen from above";
  out.up = "N";
  const Length half = 5 * unit::foot;
  const picture::GroundSpot spots[] = {{-half, half}, {half, half}, {half, -half}, {-half, -half},
                                       {{}, half},    {{}, -half},  {half, {}},    {-half, {}}};
  for (int i = 0; i < 4; ++i) out.lines.push_back({spots[i], spots[(i + 1) % 4], picture::GroundLine::Kind::edge});
  for (int i = 0; i < legs; ++i)
    out.stands.push_back({spots[i],
                          "L" + std::to_string(i),
                          {"2 x BAG", "has 70 lb", "needs 42 lb"},
                          i == 1 ? picture::State::lacking : picture::State::enough});
  return out;
}

}  // namespace

TEST_CASE("a plan is to scale, its legs marked, its words clear; what has no room is shortened together") {
  for (const int legs : {1, 4, 6, 8}) {
    const Page page = lay_picture(plan(legs)).pages.pages.at(0);
    check_inside(page);
    check_clear(page);
    for (int i = 0; i < legs; ++i) CHECK(says(page, "L" + std::to_string(i) + "\n"));
  }
  const Page page = lay_picture(plan(4)).pages.pages.at(0);
  const auto rects = all_of<ink::Rect>(page);
  REQUIRE(rects.size() == 4);  // a square for each leg; crossed where it lacks
  const auto middle = [](const ink::Rect& r) {
    return std::pair{mm(r.box.x + r.box.w / 2), mm(r.box.y + r.box.h / 2)};
  };
  CHECK(middle(rects[1]).first - middle(rects[0]).first ==
        Approx(middle(rects[2]).second - middle(rects[1]).second).margin(0.01));  // 10 ft either way
  CHECK(rects[0].fill == 0.0);
  CHECK(rects[1].fill == 1.0);
}

TEST_CASE("a one-line diagram goes on over pages, branch by branch") {
  picture::OneLine diagram;
  diagram.supply = {"barn pedestal", "mains, 120 V"};
  for (int i = 0; i < 30; ++i)
    diagram.branches.push_back({{"Circuit " + std::to_string(i), "20 A, leg A"},
                                {"EXT-100, 90 ft", "loses 1.8 %"},
                                {"1 x AMP, 900 W", "draws 9.4 A"},
                                picture::State::enough,
                                "within limit"});
  std::string layout = picture_layout;
  layout.replace(layout.find("70 mm"), 5, "15 mm");
  const LaidOut out = lay_picture(diagram, layout);
  CHECK(out.pages.pages.size() == 2);
  int found = 0;
  for (const Page& page : out.pages.pages) {
    check_inside(page);
    check_clear(page);
    for (const auto& words : all_of<ink::Words>(page)) found += words.text.starts_with("Circuit ");
  }
  CHECK(found == 30);
}

TEST_CASE("fader strips stand at the pitch to a tenth of a millimetre, and ask not to be scaled") {
  picture::FaderStrips strips;
  strips.bank = "{from} to {to}";
  strips.check = "this line is {length}";
  for (int i = 1; i <= 12; ++i) strips.cells.push_back({std::to_string(i), "voice " + std::to_string(i)});
  std::string layout = picture_layout;
  layout.replace(layout.find("height = \"70 mm\""), 16, "height = \"24 mm\"\npitch = \"20.5 mm\"\nacross = 8");
  const LaidOut out = lay_picture(strips, layout);
  CHECK(out.pages.to_scale);
  const Page& page = out.pages.pages.at(0);
  check_inside(page);
  check_clear(page);
  CHECK(says(page, "1 to 8"));
  CHECK(says(page, "9 to 12"));
  const ink::Words first = words_on(page, "1"), second = words_on(page, "8");
  CHECK(mm(second.at.x + second.width / 2 - first.at.x - first.width / 2) == Approx(7 * 20.5).margin(0.1));
  CHECK(says(page, "this line is 164 mm"));
  layout.replace(layout.find("20.5 mm"), 7, "30.0 mm");
  const LaidOut wide = lay_out(document_of({drawn_block(strips)}), layout);
  CHECK(wide.problems.empty());  // a bank that is wider than the paper stands in two lengths
  CHECK(says(wide.pages.pages.at(0), "1 to 4"));
  CHECK(says(wide.pages.pages.at(0), "5 to 8"));
  strips.pitch = 20 * unit::paper_mm;  // the console's own go before the layout's
  strips.per_bank = 6;
  const LaidOut own = lay_out(document_of({drawn_block(strips)}), layout);
  CHECK(says(own.pages.pages.at(0), "1 to 6"));
  CHECK(says(own.pages.pages.at(0), "this line is 120 mm"));
}

TEST_CASE("levels: the worst first, told apart by shape and hatch") {
  picture::Levels levels;
  using Shape = picture::Level::Shape;
  levels.levels = {{Shape::octagon, "DOWN", "14 mph", "gust", {"Clear off.", "Sound off."}},
                   {Shape::diamond, "START", "11 mph", "gust", {"Begin."}},
                   {Shape::disc, "READY", "8 mph", "gust", {"Count people."}}};
  const Page page = lay_picture(levels).pages.pages.at(0);
  check_inside(page);
  check_clear(page);
  CHECK(words_on(page, "DOWN").at.y < words_on(page, "START").at.y);
  CHECK(words_on(page, "START").at.y < words_on(page, "READY").at.y);
}

TEST_CASE("a block beside another shares its strip; alone it has the whole width") {
  const std::string pair = R"(
[[block]]
id = "left"
[[block]]
id = "right"
beside = 0.5
)";
  const LaidOut both = lay_out(
      document_of({{"left", block::Paragraph{"left words"}}, {"right", block::Paragraph{"right words"}}}), pair);
  const Page& page = both.pages.pages.at(0);
  CHECK(mm(words_on(page, "left words").at.y) == Approx(mm(words_on(page, "right words").at.y)));
  CHECK(mm(words_on(page, "right words").at.x) > 105);
  const LaidOut alone = lay_out(document_of({{"right", block::Paragraph{"right words"}}}), pair);
  CHECK(mm(words_on(alone.pages.pages.at(0), "right words").at.x) == Approx(18));
}

namespace {

/// Two rows of three boxes, one of which hides what stands behind it.
picture::BoxViews boxes() {
  const auto m = [](double value) { return value * unit::metre; };
  picture::BoxView view{m(3), m(1.6), {}, {{m(1.2), "bar 1"}}, "bulkhead", "From above", "rear"};
  for (int i = 0; i < 6; ++i)
    view.boxes.push_back({m(0.6 * (i % 2)),
                          m(0.5 * (i / 2)),
                          m(0.6),
                          m(0.5),
                          {std::to_string(i + 1), "CASE-" + std::to_string(i + 1), "on 4"},
                          false});
  view.boxes.push_back({m(1.3), m(0.2), m(0.5), m(0.5), {"hidden"}, false});
  view.boxes.push_back({m(1.2), m(0.1), m(0.7), m(0.7), {"front"}, false});
  view.boxes.push_back({m(2), {}, m(0.8), m(0.15), {}, true});
  return {{view, view}};
}

}  // namespace

TEST_CASE("boxes in a space: to scale, each named inside what is seen of it, hidden ones not at all") {
  const Page page = lay_picture(boxes()).pages.pages.at(0);
  check_inside(page);
  check_clear(page);
  CHECK(says(page, "CASE-6"));
  CHECK(says(page, "front"));
  CHECK_FALSE(says(page, "hidden"));
  CHECK(says(page, "From above"));
  const auto rects = all_of<ink::Rect>(page);
  const Box a = rects[1].box, b = rects[3].box;  // each box first white, then its edge
  CHECK(mm(a.w) / mm(a.h) == Approx(0.6 / 0.5).margin(0.001));
  CHECK(mm(b.x - a.x) == Approx(mm(a.w)).margin(0.001));
}

TEST_CASE("a code, signs and pictograms may stand in the flow of a page, each with its words") {
  const std::string layout =
      "[page]\nmargin = \"15 mm\"\n[[block]]\nid = \"code\"\n[[block]]\nid = \"signs\"\n[[block]]\nid = \"move\"\n";
  const std::vector<Mark> marks = {Mark::this_way_up,   Mark::fragile,  Mark::keep_dry, Mark::keep_cool,
                                   Mark::no_hand_truck, Mark::no_stack, Mark::heavy};
  const std::vector<std::string> words = {"up", "fragile", "dry", "cool", "no truck", "no stack", "heavy"};
  const LaidOut out = lay_out(document_of({{"code", block::Qr{"BAG-7", "+ {n} more", 0}},
                                           {"signs", block::Marks{marks, words}},
                                           {"move", block::Handle{true, "roll", 2, "lift: 2 people", 1}}}),
                              layout);
  CHECK(sentences(out.problems).empty());
  REQUIRE(out.pages.pages.size() == 1);
  const Page& page = out.pages.pages[0];
  REQUIRE(all_of<ink::Modules>(page).size() == 1);
  CHECK(all_of<ink::Modules>(page)[0].side >= 21);
  for (const std::string& word : words) words_on(page, word);
  CHECK(says(page, "roll"));
  CHECK(all_of<ink::Outline>(page).size() >= marks.size());
  check_inside(page, 6);
}
