// SPDX-License-Identifier: MIT
#include "model/row.h"

namespace dunnage {
namespace {

std::size_t head_of(const Cell& cell) {
  return cell.text.size() << 3 | static_cast<std::size_t>(cell.kind) << 1 | static_cast<std::size_t>(cell.strong);
}

std::size_t bytes_of(std::size_t head) {
  std::size_t bytes = 1;
  while (head >>= 7) ++bytes;
  return bytes;
}

}  // namespace

Row::Row(const Cell* begin, const Cell* end) {
  std::size_t size = 0;
  for (const Cell* cell = begin; cell != end; ++cell) size += bytes_of(head_of(*cell)) + cell->text.size();
  packed_.reserve(size);  // to the byte: this is what a large table weighs
  for (const Cell* cell = begin; cell != end; ++cell) {
    std::size_t head = head_of(*cell);
    for (; head > 0x7f; head >>= 7) packed_ += static_cast<char>(head | 0x80);
    packed_ += static_cast<char>(head);
    packed_ += cell->text;
  }
}

std::vector<CellView> Row::cells() const {
  std::vector<CellView> cells;
  for (std::size_t at = 0; at < packed_.size();) {
    std::size_t head = 0;
    for (int shift = 0;; shift += 7) {
      const auto byte = static_cast<unsigned char>(packed_[at++]);
      head |= static_cast<std::size_t>(byte & 0x7fU) << shift;
      if (byte < 0x80) break;
    }
    const std::string_view text = std::string_view(packed_).substr(at, head >> 3);
    cells.push_back({static_cast<Cell::Kind>(head >> 1 & 3U), text, (head & 1U) != 0});
    at += text.size();
  }
  return cells;
}

CellView Row::cell(std::size_t column) const {
  const std::vector<CellView> all = cells();
  return column < all.size() ? all[column] : CellView{};
}

std::vector<Cell> Row::unpacked() const {
  std::vector<Cell> cells;
  for (const CellView& cell : this->cells()) cells.push_back({cell.kind, std::string(cell.text), cell.strong});
  return cells;
}

}  // namespace dunnage
