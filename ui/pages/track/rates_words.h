// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/outlook/kind_lesson.h"

#include <QString>

namespace padside {

class RecordBook;

/// How a lesson is called: "Fan motor", "Fins (dirt)".
[[nodiscard]] QString lessonName(const RecordBook& book, const KindLesson& lesson);

/// A number of years: "9.4".
[[nodiscard]] QString yearsText(const RecordBook& book, double years);

/// The years in grades 1 to 4: "4.9 · 3.7 · 2.5 · 1.2".
[[nodiscard]] QString gradeYearsText(const RecordBook& book, const LifeInYears& life);

/// "62 %".
[[nodiscard]] QString shareText(const RecordBook& book, double share);

/// A lesson in whole sentences, as one would say it to a colleague.
[[nodiscard]] QString lessonText(const RecordBook& book, const KindLesson& lesson);

} // namespace padside
