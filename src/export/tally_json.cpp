// SPDX-License-Identifier: MIT
#include "export/tally_json.h"

#include <nlohmann/json.hpp>

#include "export/json_text.h"

namespace dunnage {
namespace {

using Json = nlohmann::ordered_json;

Json unit_json(const Catalogue& c, int unit) {
  return {{"code", c.units[static_cast<std::size_t>(unit)].code}, {"name", c.case_at(unit).name.value}};
}

Json seen_json(const Seen& seen) {
  return {{"stage", name(seen.stage)}, {"list", seen.list}, {"time", seen.time}, {"where", seen.place.words()}};
}

Json unknown_json(const std::vector<UnknownCode>& codes) {
  Json out = Json::array();
  for (const UnknownCode& one : codes)
    out.push_back({{"typed", one.typed},
                   {"nearest", one.nearest.empty() ? Json(nullptr) : Json(one.nearest)},
                   {"units", one.units},
                   {"where", one.place.words()}});
  return out;
}

}  // namespace

std::string tally_json(const Catalogue& c, const Tally& tally) {
  Json missing = Json::array(), extra = Json::array(), twice = Json::array(), notes = Json::array();
  for (const MissingUnit& one : tally.missing) {
    Json row = unit_json(c, one.unit);
    row["last_seen"] = one.last ? seen_json(*one.last) : Json(nullptr);
    row["pulled_by"] = one.pulled_by;
    row["like_it"] = one.like < 0 ? Json(nullptr) : Json(c.units[static_cast<std::size_t>(one.like)].code);
    missing.push_back(row);
  }
  for (std::size_t i = 0; i < tally.extra.size(); ++i) {
    Json row = unit_json(c, tally.extra[i]);
    row["seen"] = seen_json(tally.extra_seen[i]);
    extra.push_back(row);
  }
  for (const auto& [unit, places] : tally.twice) {
    Json row = unit_json(c, unit);
    row["seen"] = Json::array();
    for (const Seen& seen : places) row["seen"].push_back(seen_json(seen));
    twice.push_back(row);
  }
  for (const Scan& scan : tally.notes)
    notes.push_back({{"code", scan.typed},
                     {"note", scan.note},
                     {"stage", name(scan.stage)},
                     {"list", scan.list},
                     {"time", scan.time},
                     {"where", scan.place.words()}});
  const Json out = {{"schema", 1},
                    {"stage", name(tally.stage)},
                    {"scans", tally.scans},
                    {"expected", tally.expected.size()},
                    {"present", tally.present.size()},
                    {"missing", missing},
                    {"extra", extra},
                    {"twice", twice},
                    {"unclear", unknown_json(tally.unclear)},
                    {"not_ours", unknown_json(tally.not_ours)},
                    {"notes", notes}};
  return json_text(out);
}

}  // namespace dunnage
