// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/pages/season/season_words.h"

#include "core/review/overdue_checks.h"
#include "core/schedule/season.h"
#include "ui/drawing/theme.h"
#include "ui/models/speaker.h"

#include <QDate>

#include <algorithm>

namespace padside {

SeasonWords::SeasonWords(const Catalogue& catalogue, const LocalSpeaker& speaker, const QLocale& locale)
    : m_catalogue(catalogue)
    , m_speaker(speaker)
    , m_locale(locale)
{
}

QString SeasonWords::keyText(UnitId unit)
{
    return QString::fromStdString(unit.text());
}

QString SeasonWords::link(const QString& target, const QString& text)
{
    return QStringLiteral("<a href=\"%1\">%2</a>").arg(target, text);
}

QString SeasonWords::counted(int checks, int units) const
{
    return tr("%1 at %2")
        .arg(checks == 1 ? tr("one check") : tr("%n checks", nullptr, checks),
             units == 1 ? tr("one unit") : tr("%n units", nullptr, units));
}

QString SeasonWords::word(std::string_view english) const
{
    return shown(m_speaker.translate(std::string(english)));
}

QString SeasonWords::said(const Sentence& sentence) const
{
    return m_speaker.said(sentence);
}

QString SeasonWords::day(Date date) const
{
    return tr("%1 %2", "weekday and date")
        .arg(m_locale.dayName(toQDate(date).dayOfWeek(), QLocale::LongFormat), m_speaker.shownDate(date));
}

/// That the day stays, where the trip would be without that, and what it costs.
QStringList SeasonWords::chosenDayRemarks(const SiteSeason& site, std::size_t index) const
{
    const SeasonTrip& trip = site.trips[index];
    QStringList all{trip.moved->isKept()
                        ? tr("This day is kept, whatever is found until then.")
                        : tr("Day chosen by hand; worked out was %1.").arg(m_speaker.shownDate(trip.moved->insteadOf))};
    if (trip.checks.empty())
        return all;
    const MoveCost cost = site.costOfChoice(index);
    const Date workedOut = cost.servedBefore[trip.forcedBy];
    if (workedOut != trip.moved->insteadOf)
        all << tr("Worked out today, it would be %1.").arg(m_speaker.shownDate(workedOut));
    if (cost.furtherTrips == 1 && cost.onlyThen.size() == 1)
        all << tr("Because this day stays, one more trip is needed, on %1.")
                   .arg(m_speaker.shownDate(cost.onlyThen.front()));
    else if (cost.furtherTrips > 0)
        all << tr("Because this day stays, more trips are needed: %n.", nullptr, cost.furtherTrips);
    for (const Sentence& sentence : riskSentences(riskOfMove(site, index, cost), m_catalogue))
        all << m_speaker.said(sentence);
    return all;
}

QStringList SeasonWords::remarks(const SiteSeason& site, const SeasonTrip& trip) const
{
    QStringList all;
    if (trip.checks.empty())
        all << tr("No check needs this day any more.");
    const auto overdue
        = std::ranges::count_if(trip.checks, [&](const SeasonCheck& one) { return one.check().latest < site.today; });
    const auto late = std::ranges::count_if(trip.checks, [](const SeasonCheck& one) { return one.daysLate > 0; });
    if (overdue > 0)
        all << (overdue == 1 ? tr("One check should have been done before today.")
                             : tr("%n checks should have been done before today.", nullptr, static_cast<int>(overdue)));
    if (late > overdue)
        all << (late - overdue == 1
                    ? tr("One check comes after its latest day.")
                    : tr("%n checks come after their latest day.", nullptr, static_cast<int>(late - overdue)));
    if (trip.moved) {
        all << chosenDayRemarks(site, static_cast<std::size_t>(&trip - site.trips.data()));
    } else if (const auto because = site.chosenTripThatNeeds(trip.on)) {
        all << tr("It is a trip of its own because the day of the trip on %1 stays.")
                   .arg(m_speaker.shownDate(site.trips[*because].on));
    }
    if (isWeekend(trip.on) && trip.on != site.today)
        all << tr("This is not a working day.");
    return all;
}

QString SeasonWords::trip(const SiteSeason& site, std::size_t index) const
{
    const SeasonTrip& trip = site.trips[index];
    const auto checks = static_cast<int>(trip.checks.size());
    const auto units = static_cast<int>(trip.units().size());
    QStringList sentences{tr("%1, %2: %3.").arg(shown(site.site.name), day(trip.on), counted(checks, units))};
    return (sentences + remarks(site, trip)).join(QLatin1Char(' '));
}

QString SeasonWords::cost(const SiteSeason& site, std::size_t trip, Date to, const MoveCost& cost) const
{
    QStringList sentences{tr("%1 instead of %2.").arg(day(to), m_speaker.shownDate(site.trips[trip].on))};
    for (const Sentence& sentence : costSentences(cost))
        sentences << m_speaker.said(sentence);
    if (!cost.late.empty() || !cost.tooEarly.empty()) {
        const SeasonCheck hit = site.checkOf(cost.late.empty() ? cost.tooEarly.front() : cost.late.front().window);
        sentences << tr("Hit hardest: %1, %2 (%3).")
                         .arg(shown(hit.unit->unit.tag), m_speaker.said(hit.check().what),
                              window(hit.check(), site.today));
    }
    for (const Sentence& sentence : riskSentences(riskOfMove(site, trip, cost), m_catalogue))
        sentences << m_speaker.said(sentence);
    if (isWeekend(to))
        sentences << tr("It is not a working day.");
    return sentences.join(QLatin1Char(' '));
}

QString SeasonWords::window(const Check& check, Date today) const
{
    const QString latest = m_speaker.shownDate(check.latest);
    if (check.latest < today)
        return tr("overdue since %1").arg(latest);
    return check.earliest == check.latest ? latest : tr("%1 to %2").arg(m_speaker.shownDate(check.earliest), latest);
}

QString SeasonWords::checkHtml(const SeasonCheck& one, const QString& soft) const
{
    const Check& check = one.check();
    QStringList needs;
    for (const Condition condition : check.conditions)
        needs << word(wordOf(condition));
    QString when = window(check, one.unit->review.today);
    if (check.latest < one.unit->review.today)
        when = QStringLiteral("<b>%1</b>").arg(when);
    if (one.daysLate > 0 && check.latest >= one.unit->review.today)
        when = one.daysLate == 1 ? tr("%1, <b>a day late</b>").arg(when)
                                 : tr("%1, <b>%n days late</b>", nullptr, one.daysLate).arg(when);
    QString text = QStringLiteral("<p style=\"margin: 6px 0 0 0\">%1").arg(html(m_speaker.said(check.what)));
    text += QStringLiteral("<br><span style=\"color: %1\">%2</span>").arg(soft, html(m_speaker.said(check.why)));
    text += QStringLiteral("<br><span style=\"color: %1\">%2%3</span></p>")
                .arg(soft, when, needs.isEmpty() ? QString() : tr(" · needs: %1").arg(html(needs.join(tr(", ")))));
    return text;
}

QString SeasonWords::unitHtml(const SeasonTrip& trip, const ReviewedUnit& unit, const QString& soft) const
{
    const QString id = keyText(unit.unit.id);
    QString head = QStringLiteral("<b>%1</b>").arg(html(shown(unit.unit.tag)));
    if (!unit.unit.place.empty())
        head += QStringLiteral(" · %1").arg(html(shown(unit.unit.place)));
    const auto isOfUnit = [&](const SeasonCheck& one) { return one.unit->unit.id == unit.unit.id; };
    const auto checks = static_cast<int>(std::ranges::count_if(trip.checks, isOfUnit));
    const auto overdue = static_cast<int>(std::ranges::count_if(
        trip.checks, [&](const SeasonCheck& one) { return isOfUnit(one) && one.check().latest < unit.review.today; }));
    const QString count = checks == 1 ? tr("one check") : tr("%n checks", nullptr, checks);
    head += QStringLiteral("<br>%1").arg(overdue == 0 ? count
                                                      : tr("%1, <b>%n overdue</b>", nullptr, overdue).arg(count));
    const VisitReason reason = reasonOnTrip(trip, unit);
    const QString start = reason == VisitReason::spring ? tr("Start spring visit")
        : reason == VisitReason::fall                   ? tr("Start fall visit")
                                                        : tr("Start call-out");
    QString text
        = QStringLiteral("<p style=\"margin: 16px 0 0 0\">%1<br>%2 &nbsp; %3 &nbsp; %4</p>")
              .arg(head, link(QStringLiteral("start:") + id, start), link(QStringLiteral("unit:") + id, tr("History")),
                   link(QStringLiteral("sheet:") + id, tr("Field sheet")));
    for (const SeasonCheck& check : trip.checks) {
        if (isOfUnit(check))
            text += checkHtml(check, soft);
    }
    return text;
}

QString SeasonWords::orderWords(Date orderBy, bool made, Date today) const
{
    if (!made)
        return tr("no longer made; look for one by %1").arg(m_speaker.shownDate(orderBy));
    return orderBy <= today ? tr("order now") : tr("order by %1").arg(m_speaker.shownDate(orderBy));
}

QString SeasonWords::needsHtml(const TripNeeds& needs, Date today) const
{
    QString text;
    if (!needs.bring.empty()) {
        QStringList words;
        for (const std::string& thing : needs.bring)
            words << html(word(thing));
        text += QStringLiteral("<p style=\"margin: 16px 0 0 0\"><a name=\"bring\"></a><b>%1</b><br>%2.</p>")
                    .arg(tr("Bring"), words.join(QStringLiteral(" · ")));
    }
    if (!needs.spares.empty()) {
        text += QStringLiteral("<p style=\"margin: 16px 0 0 0\"><a name=\"spares\"></a><b>%1</b>")
                    .arg(tr("Spares to order or ask for"));
        for (const SpareNeed& need : needs.spares) {
            text += QStringLiteral("<br>%1: %2").arg(html(shown(need.unit->unit.tag)), html(m_speaker.said(need.why)));
            if (need.orderBy)
                text += QStringLiteral(" <b>%1</b>").arg(html(orderWords(*need.orderBy, need.made, today)));
        }
        text += QStringLiteral("<br>%1</p>").arg(tr("How long a spare takes to come is an assumption."));
    }
    return text;
}

/// Where something is overdue the check that presses most, else the one that can wait least.
QString SeasonWords::whatFirst(const SiteSeason& site, const SeasonTrip& trip) const
{
    const bool isOverdue
        = std::ranges::any_of(trip.checks, [&](const SeasonCheck& one) { return one.check().latest < site.today; });
    const SeasonCheck& first = isOverdue
        ? *std::ranges::min_element(
            trip.checks,
            [&](const SeasonCheck& one, const SeasonCheck& other) { return pressesMore(one, other, site.today); })
        : trip.checks[trip.forcedBy];
    return (isOverdue ? tr("Look first at %1, %2 (%3).") : tr("Can wait least: %1, %2 (%3)."))
        .arg(shown(first.unit->unit.tag), m_speaker.said(first.check().what), window(first.check(), site.today));
}

QString SeasonWords::tripHtml(const SiteSeason& site, std::size_t index, const Theme& theme) const
{
    const SeasonTrip& trip = site.trips[index];
    const TripNeeds needs = tripNeeds(trip, m_catalogue);
    const QString soft = theme.softInk.name();
    QString text
        = QStringLiteral("<p style=\"margin: 0; font-size: large\"><b>%1</b></p><p style=\"margin: 2px 0\">%2</p>")
              .arg(html(shown(site.site.name)), html(day(trip.on)));
    for (const QString& remark : remarks(site, trip))
        text += QStringLiteral("<p style=\"margin: 2px 0\"><b>%1</b></p>").arg(html(remark));
    if (!trip.checks.empty()) {
        text += QStringLiteral("<p style=\"margin: 2px 0; color: %1\">%2</p>").arg(soft, html(whatFirst(site, trip)));
    }
    QStringList where;
    for (const std::string& line : {site.site.address, site.site.access, site.site.contact}) {
        if (!line.empty())
            where << html(shown(line));
    }
    if (!where.isEmpty())
        text += QStringLiteral("<p style=\"margin: 2px 0; color: %1\">%2</p>")
                    .arg(soft, where.join(QStringLiteral("<br>")));
    QStringList jumps;
    if (!needs.bring.empty())
        jumps << link(QStringLiteral("#bring"), tr("What to bring"));
    if (!needs.spares.empty())
        jumps << link(QStringLiteral("#spares"), tr("Spares"));
    if (!jumps.isEmpty())
        text += QStringLiteral("<p style=\"margin: 6px 0 0 0\">%1</p>").arg(jumps.join(QStringLiteral(" &nbsp; ")));
    for (const auto& unit : trip.units())
        text += unitHtml(trip, *unit, soft);
    text += needsHtml(needs, site.today);
    return text;
}

} // namespace padside
