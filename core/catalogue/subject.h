// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/catalogue/catalogue.h"
#include "core/quantity/sentence.h"
#include "core/record/unit_record.h"

#include <vector>

namespace padside {

/// What a sentence is about, as its first arguments: {0} the part's name, {1} its position in brackets where the unit
/// has several of its kind (else nothing), {2} the zone's name. Patterns open with "{0}{1}, {2}: " (or "{0}{1}: " for a
/// part). Parts and zones the catalogue doesn't know are named by their code or by the name the person gave.
[[nodiscard]] std::vector<Argument> subjectOf(const UnitRecord& record, const Catalogue& catalogue, const Part& part,
                                              const Zone* zone = nullptr);

/// The subject and what else stands in the sentence.
[[nodiscard]] Sentence about(std::vector<Argument> subject, std::string pattern, std::vector<Argument> rest = {});

} // namespace padside
