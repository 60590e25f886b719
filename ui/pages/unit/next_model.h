// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "ui/pages/unit/unit_snapshot.h"

#include <QAbstractListModel>

#include <optional>

namespace padside {

class LocalSpeaker;

/// What goes next and why: the likeliest outlooks, the flags, then the next checks, each under its heading. Said in the
/// person's words.
class NextModel : public QAbstractListModel
{
    Q_OBJECT
public:
    enum class Kind { heading, outlook, flag, check, nothing };
    enum Role {
        kindRole = Qt::UserRole, ///< int of Kind
        leadRole, ///< the word or dates that stand first
        reasonRole, ///< the second line: what clears a flag, why a check is due
        weightRole, ///< int 0..3: how pressing, 3 most
    };

    NextModel(const Catalogue& catalogue, const LocalSpeaker& speaker, QObject* parent = nullptr);

    void setSnapshot(const UnitSnapshotPtr& snapshot);

    [[nodiscard]] std::optional<ZoneId> zoneAt(const QModelIndex& index) const;
    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] Qt::ItemFlags flags(const QModelIndex& index) const override;

private:
    struct Row
    {
        Kind kind = Kind::heading;
        QString lead;
        QString main;
        QString reason;
        int weight = 0;
        std::optional<ZoneId> zone;

        friend bool operator==(const Row&, const Row&) = default;
    };

    [[nodiscard]] std::vector<Row> rowsOf(const UnitSnapshot& snapshot) const;
    [[nodiscard]] QString placeOf(const UnitRecord& record, ZoneId zone) const;
    [[nodiscard]] Row outlookRow(const UnitSnapshot& snapshot, const LeadingOutlook& zone) const;
    [[nodiscard]] std::vector<Row> outlookRows(const UnitSnapshot& snapshot) const;
    [[nodiscard]] Row flagRow(const Flag& flag) const;
    [[nodiscard]] Row checkRow(const Check& check, Date today) const;

    const Catalogue& m_catalogue;
    const LocalSpeaker& m_speaker;
    std::vector<Row> m_rows;
};

} // namespace padside
