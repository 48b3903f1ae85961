// SPDX-License-Identifier: MIT
// Findings as lines of a sheet. Their sentences come from the checks; the words of the sheet say them in its language.
#pragma once

#include <string>
#include <vector>

#include "document/context.h"

namespace dunnage {

/// What it is about: a code or a name as it is, "crew" in the language.
std::string about(const Finding& finding, const Words& words);
/// "A: what is so", in the language; the other alone where one is empty.
std::string told_of(const std::string& subject, const std::string& sentence, const Words& words);
/// "SUBJECT: sentence"; the sentence alone where it begins with the subject.
std::string said(const Finding& finding, const Words& words);
/// One line a sentence, subjects that share it together: "A, B, C: the mass is not given". In the findings' order.
std::vector<std::string> said_lines(const Findings& findings, Outcome outcome, const Words& words);
/// The first `most` lines, then one that counts the rest ("+ 4 more on the cover").
std::vector<std::string> first_lines(std::vector<std::string> lines, std::size_t most, const Words& words);
/// Findings of the lifting rule, the worst first: over, then what only the house's aid moves, then by measured over
/// limit; what was not checked last, since the notices name it.
std::vector<const Finding*> worst_lifts(const Findings& findings);
/// Sources or assumptions of several findings, each once, in order.
std::vector<Sentence> each_once(const std::vector<const Finding*>& findings, std::vector<Sentence> Finding::*list);
/// The same on one line.
std::string list_words(const std::vector<const Finding*>& findings, std::vector<Sentence> Finding::*list,
                       const Words& words);
/// Cautions of several findings, each once, in order.
std::string caution_words(const std::vector<const Finding*>& findings, const Words& words);
/// Who may stop the show, or that nobody is named: the figures decide nothing.
std::string who_decides(const Context& context);

}  // namespace dunnage
