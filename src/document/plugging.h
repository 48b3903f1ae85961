// SPDX-License-Identifier: MIT
// What inputs and mixes have in common: order, sockets, and the names of what was typed.
#pragma once

#include "document/context.h"

namespace dunnage {

/// Inputs in order of their channels.
std::vector<const Input*> by_channel(const Show& show);
/// What the plan found that an input of the show needs.
InputNeeds needs_of(const Context& context, const Input& input);
/// As typed, or because its pickup needs it.
bool wants_phantom(const Context& context, const Input& input);
/// "SB1 / 4", "SB1", or empty.
std::string socket_words(const Maybe<std::string>& box, const std::optional<Sourced<int>>& socket);
/// The name of an item or case where a code was typed, else the word itself.
std::string typed_thing(const Catalogue& catalogue, const Maybe<std::string>& typed, const std::string& language);

}  // namespace dunnage
