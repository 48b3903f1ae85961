// SPDX-License-Identifier: MIT
// Where things stand on a page and how large: what layouts/*.toml says. Never what is computed.
#pragma once

#include <cstddef>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "base/quantity.h"
#include "base/source.h"

namespace dunnage {

/// Of one document: all are held in memory until the last is set.
inline constexpr std::size_t most_pages = 200000;

enum class Fit { wrap, shrink, refuse, cut };  ///< cut: whole lines, and "+ N more" is said
enum class Align { left, right, centre };

struct TypeStyle {
  std::string face = "text";  ///< a role of fonts/faces.toml
  Paper size, floor;          ///< floor: as small as shrinking may go
  Paper leading;              ///< zero: 1.3 x size
  Align align = Align::left;
  Fit fit = Fit::wrap;
};

/// Width of a column: fixed, a share of what is left, or as wide as its widest cell.
struct ColumnSpec {
  std::string id;
  enum class Kind { fixed, share, content } kind = Kind::share;
  Paper width;
  double share = 1;
  std::string under;  ///< id of the column in whose cells it stands as a further line; empty: its own
  TypeStyle type;
  Place place;
};

/// One block of the layout: which block of the document, how it is set.
struct BlockSpec {
  std::string id;
  std::vector<std::string> also;  ///< further ids set the same way, in the document's order
  TypeStyle type;                 ///< words
  TypeStyle head;                 ///< heads of tables, labels of facts, signal words
  Paper space_before;
  bool keep_with_next = false;
  bool new_page = false;  ///< begins on one
  // tables
  std::vector<ColumnSpec> columns;
  std::vector<std::string> omit_columns;  ///< columns that the house leaves out on purpose
  Paper row_height;                       ///< at least
  Paper tick;                             ///< side of a tick box
  int rows_per_group = 0;                 ///< a white gap after so many; 0: none
  Paper group_gap;
  int heavy_every = 0;  ///< a heavy rule after so many rows
  // facts, listings, fills, marks
  int across = 1;     ///< columns
  Paper line_height;  ///< of lines to write on; of marks and pictograms
  // pictures
  Paper height;  ///< of a picture in the flow, of a strip, of a branch or a level
  Paper pitch;   ///< from one fader to the next; `across` of them a bank
  // qr
  int dots = 5;  ///< printer dots a module, at least
  char correction = 'M';
  /// On a label or card: its box as shares of the inner label, from the top left. Absent: in the flow.
  struct Area {
    double x, y, w, h;
  };
  std::optional<Area> area;
  bool frame = false;
  double beside = 0;  ///< share of the width that it takes to the right of the block before; 0: below it
  Paper max_width;    ///< of running text; zero: as wide as there is room
  Place place;
};

struct Layout {
  std::string name;
  bool landscape = false;
  Paper margin_top, margin_right, margin_bottom, margin_left;
  int across = 1, down = 1;  ///< cards on a sheet
  Paper gutter;
  bool cut_marks = false;
  TypeStyle title, running;       ///< head and foot
  bool furniture = true;          ///< head and foot at all
  int most_pages = 0;             ///< of one section; more are printed and told. 0: as many as it takes
  std::vector<BlockSpec> blocks;  ///< in order
  std::vector<std::string> omit;  ///< blocks that the house leaves out on purpose
  const SourceFile* file = nullptr;
};

/// A stock of labels as geometry.
struct Stock {
  std::string name, says;
  bool roll = false;
  Paper page_width, page_height;
  Paper label_width, label_height;
  int across = 1, down = 1;
  Paper left, top;  ///< of the first label
  Paper pitch_x, pitch_y;
  Paper inner;  ///< kept clear inside each label's edge
  int dpi = 300;
  std::string layout;  ///< the label layout that suits it
  Place layout_place;
};

}  // namespace dunnage
