// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/catalogue/catalogue.h"
#include "core/record/unit_record.h"

#include <QLabel>
#include <QString>

class QAbstractButton;

namespace padside {

struct Theme;
class RecordBook;

/// Gloves: nothing that is pressed is lower than this, in pixels.
constexpr int targetHeight = 40;

[[nodiscard]] QLabel* quietLabel(const Theme& theme, const QString& text = {}); ///< second-rank text, wraps
[[nodiscard]] QLabel* headingLabel(const QString& text = {}); ///< larger, bold
void makeLarge(QWidget& control);
void makeChoice(QAbstractButton& button, const Theme& theme); ///< can be chosen, and shows it in the accent colour

/// A word or sentence of the core or the catalogue in the person's language.
[[nodiscard]] QString translated(const RecordBook& book, std::string_view english);
[[nodiscard]] QString partTitle(const RecordBook& book, const Part& part); ///< "Fan motor, upper"
[[nodiscard]] QString zoneTitle(const RecordBook& book, const Part& part, const Zone& zone); ///< the zone's own name
[[nodiscard]] QString gradeText(const RecordBook& book, const Part& part, const Zone& zone,
                                Grade grade); ///< its describing sentence
[[nodiscard]] QString sightText(const RecordBook& book,
                                const Finding& finding); ///< "3 marked" or "not seen: no access"

} // namespace padside
