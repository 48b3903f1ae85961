// SPDX-License-Identifier: MIT
#include "document/plugging.h"

#include <algorithm>

#include "document/phrase.h"

namespace dunnage {

std::vector<const Input*> by_channel(const Show& show) {
  std::vector<const Input*> inputs;
  for (const Input& input : show.inputs) inputs.push_back(&input);
  std::stable_sort(inputs.begin(), inputs.end(),
                   [](const Input* a, const Input* b) { return a->channel.value < b->channel.value; });
  return inputs;
}

InputNeeds needs_of(const Context& context, const Input& input) {
  const auto index = static_cast<std::size_t>(&input - context.show.inputs.data());
  return index < context.plan.inputs.size() ? context.plan.inputs[index] : InputNeeds{};
}

bool wants_phantom(const Context& context, const Input& input) {
  return input.phantom ? input.phantom->value : needs_of(context, input).phantom;
}

std::string socket_words(const Maybe<std::string>& box, const std::optional<Sourced<int>>& socket) {
  return joined({box ? box->value : std::string(), socket ? std::to_string(socket->value) : std::string()}, " / ");
}

std::string typed_thing(const Catalogue& catalogue, const Maybe<std::string>& typed, const std::string& language) {
  if (!typed) return {};
  if (const Item* item = catalogue.item(typed->value)) return name_in(*item, language);
  if (const Case* box = catalogue.case_of(typed->value)) return name_in(*box, language);
  return typed->value;
}

}  // namespace dunnage
