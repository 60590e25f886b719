// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/track/track_record.h"

#include <QAbstractTableModel>

namespace padside {

class LocalSpeaker;

/// The scores of old forecasts, a line for each horizon.
class HorizonModel : public QAbstractTableModel
{
    Q_OBJECT
public:
    enum Column {
        within,
        told,
        zones,
        spent,
        expected,
        brier,
        brierOfShare,
        brierBetter,
        logScore,
        logOfShare,
        logBetter,
        waiting,
        untold,
        columns
    };

    explicit HorizonModel(const LocalSpeaker& speaker, QObject* parent = nullptr);

    void setHorizons(const std::array<Scores, horizonCount>& horizons);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    [[nodiscard]] QString text(std::size_t horizon, int column) const;
    [[nodiscard]] QString number(double value, int decimals) const;
    [[nodiscard]] QString better(const std::optional<double>& skill) const;

    const LocalSpeaker& m_speaker;
    std::array<Scores, horizonCount> m_horizons;
};

} // namespace padside
