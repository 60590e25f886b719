// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/catalogue/catalogue.h"
#include "core/record/unit_record.h"
#include "ui/models/visit_words.h"

#include <QLabel>
#include <QString>

#include <functional>

class QAbstractButton;
class QKeyEvent;

namespace padside {

class RecordBook;

[[nodiscard]] QLabel* quietLabel(const QString& text = {}); ///< second-rank text, wraps
[[nodiscard]] QLabel* headingLabel(const QString& text = {}); ///< larger, bold
[[nodiscard]] bool isUndoOrRedo(const QKeyEvent& key);
/// The bare key that writes a digit with Shift on a French keyboard; it does as well. 1 to 7.
[[nodiscard]] QString frenchDigit(int digit);
/// A digit presses `button` wherever the focus is within `panel`, except in text.
void addDigit(QWidget& panel, int digit, QAbstractButton& button);
void makeLarge(QWidget& control); ///< as a target for a gloved hand
/// Makes a button one that can be chosen; the style shows it in the accent colour. `chosen` is called however it comes
/// about: by mouse or keys, or because a screen reader toggles it. Chosen again, it stays chosen.
void makeChoice(QAbstractButton& button, std::function<void()> chosen);
void showChosen(QAbstractButton& button, bool chosen); ///< shows what stands, without choosing it

[[nodiscard]] QString gradeText(const RecordBook& book, const Part& part, const Zone& zone,
                                Grade grade); ///< its describing sentence
[[nodiscard]] QString sightText(const RecordBook& book,
                                const Finding& finding); ///< "3 marked" or "not seen: no access"

} // namespace padside
