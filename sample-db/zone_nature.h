// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/record/grade.h"
#include "sample-db/photo_subjects.h"

#include <optional>
#include <span>
#include <string_view>

namespace padside {

/// What sort of remarks fit a zone.
enum class Remarks { steel, copper, electrical, dirt, moving, general };

/// How one kind of zone behaves in the scenario.
struct ZoneNature
{
    std::string_view part;
    std::string_view zone;
    double yearly; ///< grades per year in town, for an average unit
    bool salt; ///< goes faster where the air is salty
    double wetChance;
    double looked; ///< how often it is looked at
    double hidden; ///< how often that fails
    NotSeenReason because;
    Remarks remarks;
    bool coatable; ///< brush and coat helps
    std::optional<PhotoSubject> picture;
};

/// The nature of a zone; one of our making for zones the scenario does not know.
[[nodiscard]] const ZoneNature& natureOf(std::string_view part, std::string_view zone);

/// Something a technician would write about this, or nothing (sound zones mostly get no remark).
[[nodiscard]] std::span<const std::string_view> remarksFor(Remarks remarks, Grade grade);

} // namespace padside
