// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/outlook/grade_course.h"
#include "core/record/unit_record.h"
#include "core/review/known_unit.h"

#include <vector>

namespace padside {

/// How a zone's grade is expected to go on.
struct ZoneCourse
{
    ZoneId zoneId;
    std::vector<GradesBy> grades; ///< today first, then every two months
};

/// The years that a picture of what comes runs on, for a record that began `first`: half of those it has, from 2 to 5.
[[nodiscard]] int yearsAhead(Date first, Date today);

/// Those of all zones of fitted parts over so many years, as of `today`. A retired unit has none.
[[nodiscard]] std::vector<ZoneCourse> zoneCourses(const UnitRecord& record, const Catalogue& catalogue,
                                                  const OutlookModel& model, Date today, int years);

/// The same of a unit already worked out.
[[nodiscard]] std::vector<ZoneCourse> zoneCourses(const KnownUnit& known, int years);

} // namespace padside
