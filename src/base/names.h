// SPDX-License-Identifier: MIT
// What the values of an enum are called: one table beside the enum, looked up by value and never by position.
#pragma once

#include <cstddef>

namespace dunnage {

template <class Enum>
struct Named {
  Enum value;
  const char* name;
};

/// Empty for a value that the table lacks.
template <class Enum, std::size_t Count>
constexpr const char* name_in(const Named<Enum> (&table)[Count], Enum value) {
  for (const Named<Enum>& one : table)
    if (one.value == value) return one.name;
  return "";
}

}  // namespace dunnage
