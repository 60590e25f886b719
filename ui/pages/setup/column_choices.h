// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/exchange/unit_columns.h"

#include <QWidget>

#include <map>

class QComboBox;

namespace padside {

class LocalSpeaker;

/// Which column of a list holds what: a choice for each field of a unit.
class ColumnChoices : public QWidget
{
    Q_OBJECT
public:
    explicit ColumnChoices(const LocalSpeaker& speaker, QWidget* parent = nullptr);

    /// Offers these columns and shows those that were recognised.
    void show(const std::vector<std::string>& headings, const UnitColumns& columns);
    [[nodiscard]] UnitColumns columns() const;

    using QWidget::show;

Q_SIGNALS:
    void chosen(); ///< by the person

private:
    std::map<UnitField, QComboBox*> m_choices;
};

} // namespace padside
