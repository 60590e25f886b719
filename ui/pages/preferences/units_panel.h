// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/quantity/unit_choice.h"

#include <QWidget>

#include <map>

class QComboBox;

namespace padside {

class RecordBook;
struct Preferences;

/// The units quantities are shown in, and that a number typed without one is taken to be in.
class UnitsPanel : public QWidget
{
    Q_OBJECT
public:
    /// `usual`: the units usual where the computer is.
    UnitsPanel(const RecordBook& book, const Preferences& preferences, UnitSystem usual, QWidget* parent = nullptr);
    void writeTo(Preferences& preferences) const;

private:
    void showUsual();

    UnitSystem m_usual;
    QComboBox* m_all;
    std::map<QuantityKind, QComboBox*> m_own;
};

} // namespace padside
