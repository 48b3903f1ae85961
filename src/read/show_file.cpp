// SPDX-License-Identifier: MIT
// The keys above the first section, and the sections by group.
#include "read/show_file.h"

#include "read/key_list.h"
#include "read/mistaken.h"
#include "read/show_sections.h"

namespace dunnage {
namespace {

void read_overrides(TableReader& top, std::string_view key, std::vector<Override>& out) {
  top.entries(key, [&](TableReader& entry) {
    Override one;
    one.place = entry.place();
    one.code = entry.text("code");
    one.because = entry.text("because").value;
    one.count = entry.count("count", 1, 9999, 0);
    if (!one.code.value.empty()) out.push_back(std::move(one));
  });
}

void read_sections(TableReader& top, Show& show) {
  show.kit_folder = top.text("kit");
  read_overrides(top, "bring", show.bring);
  read_overrides(top, "leave", show.leave);
  if (!top.table("show", "[show]", [&](TableReader& section) { read_show_facts(section, show); }) && !top.has("show"))
    top.error(top.place(), "the show has no [show]", "add [show] with title = \"...\" and date = 2027-06-19");
  read_site_sections(top, show);
  read_demand_sections(top, show);
  read_use_sections(top, show);
  read_power_and_load_sections(top, show);
  read_people_sections(top, show);
}

Show read_parsed(const TomlFile& file, Diagnostics& diagnostics) {
  Show show;
  show.file = file.source->name;
  read_top(file, {"kit", "bring", "leave"}, diagnostics, [&](TableReader& top) { read_sections(top, show); });
  return show;
}

}  // namespace

std::optional<Show> read_show(const std::filesystem::path& path, Sources& sources, Diagnostics& diagnostics) {
  if (const Mistaken mistaken = kit_named_as_show(path); !mistaken.cause.empty()) {
    diagnostics.error({sources.add(path.string(), {}), 0, 0, 1}, mistaken.cause, mistaken.hint);
    return std::nullopt;
  }
  const auto file = load_toml(path, sources, diagnostics);
  if (!file) return std::nullopt;
  return read_parsed(*file, diagnostics);
}

std::optional<Show> read_show_text(const std::string& name, std::string text, Sources& sources,
                                   Diagnostics& diagnostics) {
  const auto file = parse_toml(name, std::move(text), sources, diagnostics);
  if (!file) return std::nullopt;
  return read_parsed(*file, diagnostics);
}

std::filesystem::path kit_folder_of(const Show& show, const std::filesystem::path& show_path) {
  return (show_path.parent_path() / show.kit_folder.value).lexically_normal();
}

std::vector<Key> keys_of_a_show() {
  return learn_keys([](TableReader& top) {
    Show show;
    read_sections(top, show);
  });
}

}  // namespace dunnage
