// SPDX-License-Identifier: MIT
#include "run/packet_sheets.h"

#include <fmt/format.h>

#include <algorithm>

#include "base/error.h"
#include "base/nearest.h"
#include "document/two_languages.h"

namespace dunnage {

std::vector<std::string> sheet_names() {
  std::vector<std::string> out;
  for (const DocumentKind& kind : document_kinds()) out.emplace_back(kind.name);
  return out;
}

namespace {

void check_names(const std::vector<std::string>& asked) {
  const auto known = sheet_names();
  for (const std::string& name : asked) {
    if (std::find(known.begin(), known.end(), name) != known.end()) continue;
    const std::string guess = did_you_mean(name, known);
    throw UsageError("there is no sheet \"" + name + "\"" +
                     (guess.empty() ? "; there are " + fmt::format("{}", fmt::join(known, ", ")) : ": " + guess));
  }
}

}  // namespace

std::vector<const DocumentKind*> sheets_asked_for(const PrintOptions& options, const House& house) {
  check_names(options.only);
  std::vector<std::string> names = options.only;
  if (names.empty())
    for (const Text& name : house.packet) names.push_back(name.value);
  std::vector<const DocumentKind*> out;
  for (const DocumentKind& kind : document_kinds())
    if (names.empty() && kind.in_packet) out.push_back(&kind);
  for (const std::string& name : names)
    for (const DocumentKind& kind : document_kinds())
      if (kind.name == name && std::find(out.begin(), out.end(), &kind) == out.end()) out.push_back(&kind);
  return out;
}

namespace {

/// What each kind makes in one language. Every sheet but the cover first, since the cover tells what the packet holds.
std::vector<Made> write_documents(const std::vector<const DocumentKind*>& kinds, Context& context) {
  std::vector<Made> all(kinds.size(), Skipped{});
  for (const bool cover : {false, true})
    for (std::size_t i = 0; i < kinds.size(); ++i) {
      if ((kinds[i]->name == "cover") != cover) continue;
      all[i] = kinds[i]->make(context);
      if (const Skipped* skipped = std::get_if<Skipped>(&all[i]))
        context.skipped.push_back(*skipped);
      else if (!cover)
        context.made.push_back(std::get<Document>(all[i]).title);
    }
  return all;
}

}  // namespace

std::vector<Sheet> make_sheets(const std::vector<const DocumentKind*>& kinds, std::vector<Layout>& layouts,
                               std::vector<Context>& contexts) {
  std::vector<Made> made = write_documents(kinds, contexts.front());
  if (contexts.size() > 1) {
    const std::vector<Made> second = write_documents(kinds, contexts.back());
    for (std::size_t i = 0; i < made.size(); ++i)
      if (Document* document = std::get_if<Document>(&made[i]))
        *document = kinds[i]->apart ? in_two_parts(std::move(*document), std::get<Document>(second[i]))
                                    : in_two_languages(std::move(*document), std::get<Document>(second[i]));
  }
  std::vector<Sheet> out;
  for (std::size_t i = 0; i < made.size(); ++i)
    if (Document* document = std::get_if<Document>(&made[i]))
      out.push_back({kinds[i], std::move(layouts[i]), std::move(*document)});
  return out;
}

}  // namespace dunnage
