// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/catalogue/own_fields.h"
#include "core/quantity/problem.h"

#include <QString>
#include <QStringList>

namespace padside {

class RecordBook;

/// Ours as the person reads it: texts in their language, figures in their number style, shares in per cent.
[[nodiscard]] QString ourValueText(const RecordBook& book, const OwnField& field);

/// Their own as they would type it; empty where ours holds.
[[nodiscard]] QString ownValueText(const RecordBook& book, const OwnField& field);

/// What was typed into a field; a Problem where it is not of its form.
[[nodiscard]] Result<CatalogueValue> readValue(const RecordBook& book, const OwnField& field, const QString& typed);

/// What may be typed, where only so much can be; else empty.
[[nodiscard]] QStringList valueChoices(const RecordBook& book, const OwnField& field);

/// What the field decides and where ours comes from, as sentences; may be empty.
[[nodiscard]] QString valueAbout(const RecordBook& book, const OwnField& field);

} // namespace padside
