// SPDX-License-Identifier: MIT
#include "read/key_list.h"

#include <algorithm>

namespace dunnage {
namespace {

void merge(std::vector<Key>& into, const std::vector<Key>& more);

/// A key is needed where every way needs it; of two kinds the one that says something counts.
void merge(Key& into, const Key& more) {
  if (into.kind.empty() || (into.inner.empty() && !more.inner.empty())) into.kind = more.kind;
  into.needed = into.needed && more.needed;
  into.or_list = into.or_list || more.or_list;
  if (into.words.empty()) into.words = more.words;
  if (!into.low) into.low = more.low;
  if (!into.high) into.high = more.high;
  merge(into.inner, more.inner);
}

void merge(std::vector<Key>& into, const std::vector<Key>& more) {
  for (const Key& key : more) {
    const auto same = [&](const Key& other) { return other.name == key.name; };
    const auto found = std::find_if(into.begin(), into.end(), same);
    if (found != into.end()) {
      merge(*found, key);
      continue;
    }
    Key once = key;
    once.inner.clear();
    merge(once.inner, key.inner);
    into.push_back(std::move(once));
  }
}

std::vector<Key> one_way(const TableReader::Fill& fill, bool there) {
  static const SourceFile no_file;
  static const toml::table nothing;
  Diagnostics unheard;
  const Reading reading{&no_file, &unheard, {}, there, false};
  TableReader top(reading, nothing, "the top of the file", {});
  fill(top);
  std::vector<Key> once;  // a reader may ask twice
  merge(once, top.asked());
  return once;
}

/// What only one of the ways asks for is not needed.
void soften(std::vector<Key>& keys, const std::vector<Key>& other) {
  for (Key& key : keys) {
    const auto same = [&](const Key& one) { return one.name == key.name; };
    const auto found = std::find_if(other.begin(), other.end(), same);
    if (found == other.end())
      key.needed = false;
    else
      soften(key.inner, found->inner);
  }
}

}  // namespace

std::vector<Key> learn_keys(const TableReader::Fill& fill) {
  std::vector<Key> with = one_way(fill, true), without = one_way(fill, false);
  const std::vector<Key> first = with;
  soften(with, without);
  soften(without, first);
  merge(with, without);
  return with;
}

}  // namespace dunnage
