// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "ui/pages/unit/unit_snapshot.h"

#include <QAbstractItemModel>

#include <optional>

namespace padside {

class LocalSpeaker;

/// The fitted parts of a unit and under each its zones, with what was last found of them.
class FindingTreeModel : public QAbstractItemModel
{
    Q_OBJECT
public:
    enum Column {
        nameColumn,
        gradeColumn,
        sinceColumn,
        changeColumn,
        wetnessColumn,
        notSeenColumn,
        noteColumn,
        columnsEnd
    };
    enum Role {
        gradeRole = Qt::UserRole, ///< int 1..5; invalid if never seen
        notSeenRole, ///< bool: looked for in vain since it was last seen, or never seen
        worseRole, ///< bool: worse than the time before
    };

    FindingTreeModel(const Catalogue& catalogue, const LocalSpeaker& speaker, QObject* parent = nullptr);

    /// Shows another snapshot. The same parts and zones keep their rows, so selection and scroll stay.
    void setSnapshot(UnitSnapshotPtr snapshot);

    [[nodiscard]] std::optional<ZoneId> zoneAt(const QModelIndex& index) const; ///< empty for a part
    [[nodiscard]] QModelIndex indexOf(ZoneId zone) const; ///< invalid if it is not of a fitted part
    /// The visit at which a zone was last found or looked for; null if never.
    [[nodiscard]] VisitId lastVisitOf(ZoneId zone) const;

    [[nodiscard]] QModelIndex index(int row, int column, const QModelIndex& parent = {}) const override;
    [[nodiscard]] QModelIndex parent(const QModelIndex& index) const override;
    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    struct ZoneRow
    {
        ZoneId zoneId;
        const ZoneHistory* history = nullptr; ///< into the snapshot
        QString name;
        QString meaning; ///< what the grade means for this zone
        QString note;
    };

    struct PartRow
    {
        PartId partId;
        QString name;
        QString fitted; ///< since when, if it took another's place
        std::optional<Grade> worst;
        std::vector<ZoneRow> zones;
    };

    [[nodiscard]] std::vector<PartRow> rowsOf(const UnitSnapshot& snapshot) const;
    [[nodiscard]] ZoneRow zoneRow(const std::vector<Finding>& findings, const Part& part,
                                  const ZoneHistory& history) const;
    [[nodiscard]] QString noteOf(const std::vector<Finding>& findings, const ZoneHistory& history) const;
    [[nodiscard]] QVariant partData(const PartRow& part, int column, int role) const;
    [[nodiscard]] QVariant zoneData(const PartRow& part, const ZoneRow& zone, int column, int role) const;
    [[nodiscard]] QString zoneText(const ZoneRow& zone, int column) const;
    [[nodiscard]] QString sentence(const PartRow& part, const ZoneRow& zone) const;

    const Catalogue& m_catalogue;
    const LocalSpeaker& m_speaker;
    UnitSnapshotPtr m_snapshot;
    std::vector<PartRow> m_parts;
};

} // namespace padside
