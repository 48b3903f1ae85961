// SPDX-License-Identifier: MIT
// Every QR code of both examples' paper, on every stock at its printer's dots and on the cards inside the lids: read by
// two decoders, clean and through a camera that takes up to three frames nearer and farther, and held against what the
// label says. Ends with 1 when one is not read.
#include <fmt/format.h>

#include <cmath>
#include <sstream>

#include "../run/camera.h"
#include "../shell.h"
#include "check/lifting.h"
#include "check/rules.h"
#include "document/case_label.h"
#include "document/contents_card.h"
#include "export/pdf_file.h"
#include "layout/lay_out.h"
#include "layout/lay_out_labels.h"
#include "plan/plan_show.h"
#include "read/faces_file.h"
#include "run/house_style.h"
#include "run/load_show.h"

using namespace dunnage;

namespace {

struct Score {
  int codes = 0, small = 0;                                      ///< small: a module below five dots
  int clean[2] = {0, 0}, frame[2] = {0, 0}, camera[2] = {0, 0};  ///< frame: in the first
  double least = 100;                                            ///< dots a module
};

constexpr const char* decoders[] = {"ZXingReader -bytes ", "zbarimg -q --raw -Sdisable -Sqrcode.enable -Sbinary "};

std::string read_by(int decoder, const std::string& image) {
  return shell(decoders[decoder] + image + " 2>/dev/null").out;
}

/// Each line that was read is the label's, or counts what was left out.
bool is_of(const std::string& said, const std::string& whole) {
  std::istringstream lines(said);
  bool first = true, right = !said.empty();
  for (std::string line; std::getline(lines, line); first = false)
    right = right && (first ? whole.rfind(line, 0) == 0
                            : line.rfind("+ ", 0) == 0 || whole.find("\n" + line) != std::string::npos);
  return right;
}

/// All codes of the pages, printed at `dpi`; `whole` is what they may say, in their order.
Score score(const Pages& pages, int dpi, const Faces& faces, const std::vector<std::string>& whole,
            const Folder& folder) {
  Score out;
  const std::string pdf = folder.file("codes.pdf", pdf_bytes({pages}, faces)), stem = (folder.path / "page").string();
  const Paper dot = 1.0 / dpi * unit::paper_in;
  for (std::size_t number = 1; number <= pages.pages.size(); ++number) {
    shell(fmt::format("pdftoppm -mono -r {} -singlefile -f {} {} {}", dpi, number, pdf, stem));
    const Picture paper = read_pbm(stem + ".pbm");
    for (const Ink& ink : pages.pages[number - 1].ink) {
      const auto* code = std::get_if<ink::Modules>(&ink);
      if (!code) continue;
      const double dots = code->module / dot;
      const int quiet = static_cast<int>(std::lround(4 * dots)),
                side = static_cast<int>(std::lround(code->side * dots));
      const Picture seen =
          cut_out(paper, static_cast<int>(std::lround(code->at.x / dot)) - quiet,
                  static_cast<int>(std::lround(code->at.y / dot)) - quiet, side + 2 * quiet, side + 2 * quiet);
      write_pgm(seen, stem + "-clean.pgm");
      const std::string& text = whole.at(static_cast<std::size_t>(out.codes++));
      out.least = std::min(out.least, dots);
      out.small += dots < 4.999;
      for (const int decoder : {0, 1}) {
        out.clean[decoder] += is_of(read_by(decoder, stem + "-clean.pgm"), text);
        for (const double pixels : {5.0, 6.0, 4.0}) {  // a module; whoever holds a phone moves it until it reads
          write_pgm(through_camera(seen, dots, pixels), stem + "-camera.pgm");
          if (!is_of(read_by(decoder, stem + "-camera.pgm"), text)) continue;
          out.frame[decoder] += pixels == 5;
          ++out.camera[decoder];
          break;
        }
      }
    }
  }
  return out;
}

void tell(const std::string& what, const Score& s, int& missed) {
  fmt::print("{:<38} {:>5} {:>6.1f} {:>7} {:>7} {:>7} {:>7} {:>7} {:>7}\n", what, s.codes, s.least, s.clean[0],
             s.clean[1], s.frame[0], s.frame[1], s.camera[0], s.camera[1]);
  std::fflush(stdout);
  for (const int decoder : {0, 1}) missed += 2 * s.codes - s.clean[decoder] - s.camera[decoder];
  missed += s.small;
}

void run_show(const std::string& name, const Faces& faces, int& missed) {
  const Folder folder("qr-bench");
  Loaded loaded;
  std::ostringstream told;
  if (!load_show(std::string(PROJECT_DIR) + "/examples/" + name + ".toml", loaded, told))
    throw std::runtime_error(told.str());
  const Plan plan = plan_show(loaded.catalogue, loaded.show);
  const Findings findings = check_all(loaded.catalogue, loaded.show, plan);
  Sources sources;
  Diagnostics style;
  const Words words = load_words_for(SHARE_DIR, {"en"}, loaded.catalogue.kit, sources, style).front();
  std::vector<int> units;
  std::vector<std::string> texts, firsts;
  for (const PlanRow& row : plan.rows) {
    if (!row.goes) continue;
    units.push_back(row.unit);
    texts.push_back(label_text(loaded.catalogue, findings.handling[static_cast<std::size_t>(row.unit)], row.unit, words,
                               UnitSystem::us, "1a2b3c4d"));
  }
  const Document labels = case_labels(loaded.catalogue, findings.handling, units, words, UnitSystem::us, "1a2b3c4d");
  std::vector<LayoutProblem> problems;
  for (const std::string& stock_name : style_names(SHARE_DIR, "", "stock")) {
    const Stock stock = load_stock_for(SHARE_DIR, "", stock_name, sources, style);
    const Layout layout = load_layout_for(SHARE_DIR, "", stock.layout, sources, style);
    tell(name + ", " + stock_name,
         score(lay_out_labels(labels, layout, stock, 1, 1, faces, problems), stock.dpi, faces, texts, folder), missed);
  }
  Context context{loaded.catalogue, loaded.show, plan, findings, words, UnitSystem::us, "mph", "1a2b3c4d", {}, {}, {}};
  const Made cards = contents_card(context);
  for (const Section& card : std::get<Document>(cards).sections)
    for (const Block& block : card.blocks)
      if (const auto* code = std::get_if<block::Qr>(&block.content)) firsts.push_back(code->text);
  const auto [width, height] = sides(PaperSize::letter);
  const Layout layout = load_layout_for(SHARE_DIR, "", "contents-card", sources, style);
  tell(name + ", contents cards at 300 dpi",
       score(lay_out(std::get<Document>(cards), layout, width, height, faces, problems), 300, faces, firsts, folder),
       missed);
}

}  // namespace

int main() {
  const Faces faces(read_faces(SHARE_DIR "/fonts"));
  fmt::print("{:<38} {:>5} {:>6} {:>7} {:>7} {:>7} {:>7} {:>7} {:>7}\n", "QR codes read", "codes", "dots", "zxing",
             "zbar", "zxing", "zbar", "zxing", "zbar");
  fmt::print("{:<38} {:>5} {:>6} {:>15} {:>15} {:>15}\n", "", "", "least", "clean", "first frame", "any of three");
  int missed = 0;
  for (const char* name : {"outdoor-evening", "indoor-afternoon"}) run_show(name, faces, missed);
  fmt::print("not read, or read wrong: {}\n", missed);
  return missed == 0 ? 0 : 1;
}
