// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/flags/acknowledge.h"
#include "core/review/reviewed_fleet.h"
#include "core/store/record_reader.h"

#include <QAbstractTableModel>

#include <memory>
#include <unordered_map>

namespace padside {

class LocalSpeaker;

/// One unit of the fleet: what the file's list says at once, and the rest once it is reviewed.
struct FleetLine
{
    UnitLine unit;
    QString kindName; ///< in the person's language
    std::shared_ptr<const ReviewedUnit> reviewed; ///< null: not yet

    /// Those that stand: acknowledged ones are not counted. A retired unit asks for nothing any more: no flags, no
    /// checks.
    [[nodiscard]] std::size_t flagCount() const
    {
        return reviewed && !unit.retired ? standingFlags(reviewed->review.flags) : 0;
    }
    [[nodiscard]] std::size_t acknowledgedCount() const
    {
        return reviewed && !unit.retired ? reviewed->review.flags.size() - flagCount() : 0;
    }
    [[nodiscard]] const Flag* worstFlag() const;
    [[nodiscard]] const Check* nextCheck() const; ///< the one that can wait least
    [[nodiscard]] bool isOverdue(Date today) const;
};

/// All units as a table. A window on a snapshot: lines come from one pass over the file, flags and checks as they are
/// reviewed in the background.
class FleetModel : public QAbstractTableModel
{
    Q_OBJECT
public:
    enum Column { tag, site, place, kind, age, grade, flags, worstFlag, lastVisit, nextCheck, columns };
    enum Role {
        gradeRole = Qt::UserRole + 1, ///< int 1..5, or 0 where nothing was ever seen
        retiredRole, ///< bool
    };

    FleetModel(const Catalogue& catalogue, const LocalSpeaker& speaker, Date today, QObject* parent = nullptr);

    void setToday(Date today); ///< what is overdue, and every age, follow from it
    void setLines(std::vector<UnitLine> lines);
    void setReviewed(const std::shared_ptr<const ReviewedFleet>& fleet);

    [[nodiscard]] const FleetLine& line(int row) const { return m_lines[static_cast<std::size_t>(row)]; }
    [[nodiscard]] const std::string& searchText(int row) const { return m_searchTexts[static_cast<std::size_t>(row)]; }
    [[nodiscard]] int rowOf(UnitId unit) const; ///< -1 if it is not there
    [[nodiscard]] Date today() const { return m_today; }

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    void join();
    [[nodiscard]] QString text(const FleetLine& line, int column) const;
    [[nodiscard]] QString spoken(const FleetLine& line, int column) const;
    [[nodiscard]] static QString acknowledgedWords(const FleetLine& line); ///< nothing where there are none

    const Catalogue& m_catalogue;
    const LocalSpeaker& m_speaker;
    Date m_today;
    std::vector<FleetLine> m_lines;
    std::vector<std::string> m_searchTexts; ///< lower case: tag, site, place, kind
    std::unordered_map<UnitId, int> m_rows;
    std::shared_ptr<const ReviewedFleet> m_fleet;
};

/// Lower case, so that searching finds both; letters beyond ASCII too.
[[nodiscard]] std::string foldedForSearch(const QString& text);

} // namespace padside
