// SPDX-License-Identifier: MIT
#include "document/documents.h"

#include "document/ballast_sheet.h"
#include "document/case_label.h"
#include "document/contents_card.h"
#include "document/cover_sheet.h"
#include "document/crew_sheet.h"
#include "document/fader_strip.h"
#include "document/input_list.h"
#include "document/load_sheet.h"
#include "document/mix_sheet.h"
#include "document/patch_sheet.h"
#include "document/place_tag.h"
#include "document/power_sheet.h"
#include "document/pull_sheet.h"
#include "document/return_sheet.h"
#include "document/safety_walk.h"
#include "document/sign_in.h"
#include "document/weather_card.h"

namespace dunnage {

const std::vector<DocumentKind>& document_kinds() {
  static const std::vector<DocumentKind> kinds = {
      {"cover", "cover.title", "hand.runs-show", cover, true},
      {"crew-sheet", "crew.title", "hand.everyone", crew_sheet, true, true},
      {"pull-sheet", "pull.title", "hand.team", pull_sheet, true},
      {"load-sheet", "load.title", "hand.loads", load_sheet, true},
      {"place-tag", "tag.title", "hand.case-show", place_tag, false},
      {"contents-card", "card.title", "hand.lid", contents_card, true},
      {"case-label", "label.title", "hand.case", case_label, false},
      {"sign-in", "sign.title", "hand.gate", sign_in, true},
      {"input-list", "input.title", "hand.front-of-house", input_list, true},
      {"patch-sheet", "patch.title", "hand.stage", patch_sheet, true},
      {"mix-sheet", "mix.title", "hand.monitors", mix_sheet, true},
      {"fader-strip", "strip.title", "hand.console", fader_strip, true},
      {"power-sheet", "power.title", "hand.plugs-power", power_sheet, true, true},
      {"ballast-sheet", "ballast.title", "hand.builds", ballast_sheet, true, true},
      {"weather-card", "weather.title", "hand.watches", weather_card, true, true},
      {"safety-walk", "walk.title", "hand.signs", safety_walk, true, true},
      {"return-sheet", "return.title", "hand.load-out", return_sheet, true},
  };
  return kinds;
}

}  // namespace dunnage
