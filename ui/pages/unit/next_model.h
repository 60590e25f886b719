// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "ui/pages/unit/unit_snapshot.h"

#include <QAbstractListModel>

#include <optional>

namespace padside {

class LocalSpeaker;

/// What goes next and why: the likeliest outlooks, the flags, then the next checks, each under its heading.
/// Acknowledged flags are folded under a line that counts them. Said in the person's words.
class NextModel : public QAbstractListModel
{
    Q_OBJECT
public:
    enum class Kind { heading, outlook, flag, check, nothing, fold };
    enum Role {
        kindRole = Qt::UserRole, ///< int of Kind
        leadRole, ///< the word or dates that stand first
        reasonRole, ///< the second line: what clears a flag, why a check is due
        weightRole, ///< int 0..3: how pressing, 3 most
    };

    NextModel(const Catalogue& catalogue, const LocalSpeaker& speaker, QObject* parent = nullptr);

    void setSnapshot(const UnitSnapshotPtr& snapshot);

    [[nodiscard]] std::optional<ZoneId> zoneAt(const QModelIndex& index) const;
    [[nodiscard]] const Flag* flagAt(const QModelIndex& index) const; ///< nullptr where no flag stands
    [[nodiscard]] bool isFold(const QModelIndex& index) const; ///< the line that counts the acknowledged flags
    [[nodiscard]] bool acknowledgedShown() const { return m_acknowledgedShown; }
    void showAcknowledged(bool shown);
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
        std::optional<std::size_t> flag{}; ///< into the review's

        friend bool operator==(const Row&, const Row&) = default;
    };

    [[nodiscard]] std::vector<Row> rowsOf(const UnitSnapshot& snapshot) const;
    [[nodiscard]] QString placeOf(const UnitRecord& record, ZoneId zone) const;
    [[nodiscard]] Row outlookRow(const UnitSnapshot& snapshot, const ZoneForecast& zone) const;
    [[nodiscard]] std::vector<Row> outlookRows(const UnitSnapshot& snapshot) const;
    [[nodiscard]] Row flagRow(const UnitReview& review, std::size_t index) const;
    void addFlagRows(std::vector<Row>& rows, const UnitSnapshot& snapshot) const;
    void showRows(std::vector<Row> rows);
    [[nodiscard]] Row checkRow(const Check& check, Date today) const;

    const Catalogue& m_catalogue;
    const LocalSpeaker& m_speaker;
    UnitSnapshotPtr m_snapshot;
    std::vector<Row> m_rows;
    bool m_acknowledgedShown = false;
};

} // namespace padside
