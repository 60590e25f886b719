// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/review/move_risk.h"
#include "core/review/overdue_checks.h"
#include "core/review/parts_to_order.h"
#include "core/review/trip_needs.h"

#include <QCoreApplication>
#include <QLocale>
#include <QString>
#include <QStringList>

namespace padside {

class LocalSpeaker;
struct Theme;

/// Trips in words.
class SeasonWords
{
    Q_DECLARE_TR_FUNCTIONS(padside::SeasonWords)
public:
    /// All outlive it.
    SeasonWords(const Catalogue& catalogue, const LocalSpeaker& speaker, const QLocale& locale);

    /// "Friday 2026-05-08".
    [[nodiscard]] QString day(Date date) const;
    /// "Harbour Lane, Friday 2026-05-08: 7 checks at 3 units. …"
    [[nodiscard]] QString trip(const SiteSeason& site, std::size_t trip) const;
    /// Where a trip would go and what that costs, in risk too, the check it hits hardest named.
    [[nodiscard]] QString cost(const SiteSeason& site, std::size_t trip, Date to, const MoveCost& cost) const;
    /// What stands beside the board: units with their checks, what to bring and to order. Links go to "start:", "unit:"
    /// and "sheet:" with a unit's key.
    [[nodiscard]] QString tripHtml(const SiteSeason& site, std::size_t trip, const Theme& theme) const;
    /// How many checks at how many units are overdue.
    [[nodiscard]] QString overdue(const OverdueCount& count) const;
    /// What is overdue, unit by unit, and for each why its first check presses; links go to "trip:" and "unit:" with a
    /// unit's key.
    [[nodiscard]] QString overdueHtml(const std::vector<OverdueUnit>& units, const OverdueCount& total,
                                      const Theme& theme) const;
    /// The parts to order, soonest first; links go to "unit:" with a unit's key.
    [[nodiscard]] QString ordersHtml(const std::vector<PartToOrder>& orders, Date today, const Theme& theme) const;

    [[nodiscard]] QString said(const Sentence& sentence) const;

private:
    [[nodiscard]] static QString keyText(UnitId unit);
    [[nodiscard]] static QString link(const QString& target, const QString& text);
    [[nodiscard]] QString counted(int checks, int units) const; ///< "7 checks at 3 units"
    [[nodiscard]] QString whatFirst(const SiteSeason& site, const SeasonTrip& trip) const;
    [[nodiscard]] QString html(const QString& text) const { return text.toHtmlEscaped(); }
    [[nodiscard]] QString word(std::string_view english) const;
    [[nodiscard]] QString window(const Check& check, Date today) const;
    [[nodiscard]] QString checkHtml(const SeasonCheck& check, const QString& soft) const;
    [[nodiscard]] QString unitHtml(const SeasonTrip& trip, const ReviewedUnit& unit, const QString& soft) const;
    [[nodiscard]] QString needsHtml(const TripNeeds& needs, Date today) const;
    [[nodiscard]] QString orderWords(Date orderBy, bool made, Date today) const; ///< "order by 2027-05-12"
    [[nodiscard]] QStringList chosenDayRemarks(const SiteSeason& site, std::size_t trip) const;
    [[nodiscard]] QStringList remarks(const SiteSeason& site, const SeasonTrip& trip) const;

    const Catalogue& m_catalogue;
    const LocalSpeaker& m_speaker;
    QLocale m_locale;
};

} // namespace padside
