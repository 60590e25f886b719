// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/exchange/unit_plan.h"

#include <QAbstractTableModel>

#include <memory>
#include <optional>

namespace padside {

class LocalSpeaker;

/// A list of units as it was understood: a line for each row of the file, with what will be made of it or why not.
class UnitPlanModel : public QAbstractTableModel
{
    Q_OBJECT
public:
    enum Column { row, outcome, tag, site, kind, place, maker, model, serial, refrigerant, installed, columns };

    UnitPlanModel(const Catalogue& catalogue, const LocalSpeaker& speaker, QObject* parent = nullptr);

    void setPlan(std::shared_ptr<const UnitPlan> plan);
    /// Shows only the rows that will be skipped.
    void setOnlyBad(bool only);
    [[nodiscard]] std::optional<int> firstSkipped() const; ///< row of this model

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    void choose();
    [[nodiscard]] QString text(const PlannedUnit& unit, int column) const;
    [[nodiscard]] QString outcomeOf(const PlannedUnit& unit) const;

    const Catalogue& m_catalogue;
    const LocalSpeaker& m_speaker;
    std::shared_ptr<const UnitPlan> m_plan = std::make_shared<const UnitPlan>();
    bool m_onlyBad = false;
    std::vector<std::size_t> m_shown; ///< places in the plan
};

} // namespace padside
