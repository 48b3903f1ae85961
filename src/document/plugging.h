// SPDX-License-Identifier: MIT
// What inputs and mixes have in common: order, sockets, and the names of what was typed.
#pragma once

#include "document/context.h"

namespace dunnage {

/// Inputs in order of their channels.
std::vector<const Input*> by_channel(const Show& show);
/// "SB1 / 4", "SB1", or empty.
std::string socket_words(const Maybe<std::string>& box, const std::optional<Sourced<int>>& socket);
/// The name of an item or case where a code was typed, else the word itself.
std::string typed_thing(const Catalogue& catalogue, const Maybe<std::string>& typed, const std::string& language);

}  // namespace dunnage
