// SPDX-License-Identifier: MIT
// `dunnage list kit-keys`, `show-keys`, `layout-keys`, `stock-keys`: what may be typed, as the readers ask for it.
#include <fmt/format.h>

#include "export/schema_json.h"
#include "read/kit_file.h"
#include "read/layout_file.h"
#include "read/show_file.h"
#include "read/stock_file.h"
#include "run/commands.h"
#include "run/on_screen.h"

namespace dunnage {

namespace {

std::string kind_words(const Key& key) {
  std::string out = key.kind.empty() ? "any" : key.kind;
  if (!key.words.empty())
    out = on_screen("{}{}", key.kind == "list of texts" ? "list of: " : "", fmt::join(key.words, " | "));
  if (key.kind == "list of sections" && !key.words.empty()) out += " | list of sections";
  if (key.needed) out += ", needed";
  return out;
}

void list(const std::vector<Key>& keys, std::size_t depth, std::ostream& out) {
  for (const Key& key : keys) {
    out << on_screen("{:<{}}{}\n", std::string(2 * depth, ' ') + key.name, 30, kind_words(key));
    list(key.inner, depth + 1, out);
  }
}

}  // namespace

int list_keys(const ListOptions& options, Desk& desk) {
  struct Kind {
    const char *what, *title;
    std::vector<Key> (*keys)();
  };
  constexpr Kind kinds[] = {{"kit-keys", "A file of a kit", keys_of_a_kit},
                            {"show-keys", "A show", keys_of_a_show},
                            {"layout-keys", "A layout", keys_of_a_layout},
                            {"stock-keys", "A stock of labels", keys_of_a_stock}};
  for (const Kind& kind : kinds) {
    if (options.what != kind.what) continue;
    if (options.json)
      desk.out << schema_json(kind.title, kind.keys());
    else
      list(kind.keys(), 0, desk.out);
  }
  return 0;
}

}  // namespace dunnage
