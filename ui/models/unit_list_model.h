// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/store/record_reader.h"

#include <QAbstractItemModel>

#include <vector>

namespace padside {

/// The units grouped under their sites, as a tree of two levels. A window on a snapshot: give it new lines when the
/// record changed; rows that stayed keep their selection.
class UnitListModel : public QAbstractItemModel
{
    Q_OBJECT
public:
    enum Role {
        unitIdRole = Qt::UserRole + 1, ///< QByteArray of 16 bytes; empty on a site
        worstGradeRole, ///< int 1..5, or 0 where nothing was ever seen
        openVisitRole, ///< bool
        retiredRole, ///< bool
        placeRole, ///< QString
        searchTextRole, ///< QString: tag, place and site, for filtering
    };

    explicit UnitListModel(QObject* parent = nullptr);

    /// Takes a new snapshot; lines must be in order of site.
    void setLines(std::vector<UnitLine> lines);

    [[nodiscard]] QModelIndex indexOf(UnitId unit) const;
    [[nodiscard]] std::optional<UnitId> unitAt(const QModelIndex& index) const;

    [[nodiscard]] QModelIndex index(int row, int column, const QModelIndex& parent = {}) const override;
    [[nodiscard]] QModelIndex parent(const QModelIndex& child) const override;
    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
    /// A site is a heading: arrow keys go from unit to unit.
    [[nodiscard]] Qt::ItemFlags flags(const QModelIndex& index) const override;

private:
    struct SiteGroup
    {
        QString name;
        std::size_t first = 0; ///< index of its first line
        std::size_t count = 0;
    };

    [[nodiscard]] const UnitLine& lineAt(const QModelIndex& index) const;
    [[nodiscard]] QVariant siteData(const SiteGroup& site, int role) const;
    [[nodiscard]] QVariant unitData(const UnitLine& line, int role) const;
    [[nodiscard]] bool sameUnitsAs(const std::vector<UnitLine>& lines) const;

    std::vector<UnitLine> m_lines;
    std::vector<SiteGroup> m_sites;
};

} // namespace padside
