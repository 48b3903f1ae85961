// SPDX-License-Identifier: MIT
// A sheet of paper in words, before anyone has thought of its size: named blocks that a layout arranges.
#pragma once

#include <map>
#include <string>
#include <utility>
#include <variant>
#include <vector>

#include "base/sentence.h"
#include "model/kit.h"
#include "model/picture.h"
#include "model/row.h"

namespace dunnage {

/// A text in two languages holds the first, `second_language`, then the second. It is never one run of words: the
/// layout begins a new line there and sets the second in the plain cut. `first_language` leads back, where texts
/// follow each other. (LINE and PARAGRAPH SEPARATOR of Unicode.)
inline constexpr char32_t second_language = U'\u2028', first_language = U'\u2029';
/// Both languages, or the text once where they say the same.
std::string in_two(const std::string& first, const std::string& second);
/// The two apart again; the second is empty where there is but one.
std::pair<std::string, std::string> apart(const std::string& text);
/// For bookmarks and messages: "first / second".
std::string on_one_line(const std::string& text);

struct Group {
  std::string title;
  std::vector<Row> rows;
};

namespace block {
struct Heading {
  std::string text;
};
struct Paragraph {
  std::string text;
};  ///< line ends are kept
struct Listing {
  std::vector<std::string> lines;
};  ///< one bullet a line
struct Fact {
  std::string label, value;
};
struct Facts {
  std::vector<Fact> facts;
};
/// Columns are named; heads and totals go by column. Widths, sizes and order are the layout's.
struct Table {
  std::vector<std::string> columns;
  std::map<std::string, std::string> heads;
  std::vector<Group> groups;
  Row total;  ///< empty, or one cell a column
};
/// Lines to write on: label, then a rule.
struct Fill {
  std::vector<std::string> labels;
};
/// Something framed that must be read first. Word: "CAUTION", or empty for a plain frame.
struct Notice {
  std::string word;
  std::vector<std::string> lines;
};
struct Signature {
  std::string statement;
  std::vector<std::string> fields;
};
/// more: "+ {n} more", for what had to be cut; the last `keep_last` lines are cut only when nothing else is left.
struct Qr {
  std::string text;
  std::string more;
  int keep_last = 0;
};
struct Marks {
  std::vector<Mark> marks;
  std::vector<std::string> words;
};
/// Pictograms of moving and lifting, each with its word. People 0: the aid's picture.
struct Handle {
  bool rolls = false;
  std::string move_word;
  int people = 0;
  std::string lift_word;
  int ramp_people = 1;  ///< who roll it on a ramp
};
/// A chart, a plan, a diagram: model/picture.h.
struct Picture {
  picture::Any content;
};
}  // namespace block

using BlockContent =
    std::variant<block::Heading, block::Paragraph, block::Listing, block::Facts, block::Table, block::Fill,
                 block::Notice, block::Signature, block::Qr, block::Marks, block::Handle, block::Picture>;

/// The id is what a layout calls it by.
struct Block {
  std::string id;
  BlockContent content;
};

/// What is numbered by itself ("page 1 of 2") and begins a page, a card or a label of its own.
struct Section {
  std::string recipient;  ///< a team, a case; empty for everyone
  std::vector<Block> blocks;
};

struct Document {
  std::string name;                  ///< "pull-sheet"
  std::string title;                 ///< at most 4 words
  std::string show, date, revision;  ///< on every page
  std::string page_words;            ///< "page {n} of {total}"
  std::string continued;             ///< "continued"
  std::string more = "+ {n} more";   ///< said where lines had to be cut
  std::string language = "en";
  std::vector<Section> sections;
};

/// Printed words of one language, by key. Placeholders: {name}.
struct Words {
  std::string language;
  bool read_by_native = true;  ///< false: nobody who grew up with the language has read them, and sheets say so
  std::map<std::string, std::string> by_key;
  Sentences sentences;  ///< of the checks and the plan
  /// The text of `key`; a key that no file has is our mistake and stops the run with its name.
  const std::string& operator()(const std::string& key) const;
  std::string say(const Sentence& sentence) const { return sentence.in(sentences); }
  /// The same with placeholders filled.
  std::string say(const std::string& key, const std::map<std::string, std::string>& values) const;
};

}  // namespace dunnage
