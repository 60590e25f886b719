// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/record/unit_record.h"

#include <QString>

#include <string_view>

namespace padside {

class RecordBook;

/// A word or sentence of the core or the catalogue in the person's language.
[[nodiscard]] QString translated(const RecordBook& book, std::string_view english);
[[nodiscard]] QString partTitle(const RecordBook& book, const Part& part); ///< "Fan motor, upper"
[[nodiscard]] QString zoneTitle(const RecordBook& book, const Part& part, const Zone& zone); ///< the zone's own name
/// "Fan motor, upper: shaft"; for a zone that is not in the record, "a zone".
[[nodiscard]] QString placeTitle(const RecordBook& book, const UnitRecord& record, ZoneId zone);

/// The name of a step that can be taken back, a text of the context "Visit".
[[nodiscard]] QString stepName(const char* english);
/// What was done, as it follows "Undo": "grade 3 on Fan motor: shaft", "brush and coat".
[[nodiscard]] QString nameOf(const RecordBook& book, const Reading& reading);
[[nodiscard]] QString nameOf(const RecordBook& book, const Treatment& work);
[[nodiscard]] QString nameOf(const RecordBook& book, const ChargeEntry& charge);

} // namespace padside
