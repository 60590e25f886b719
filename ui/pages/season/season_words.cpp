// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/pages/season/season_words.h"

#include "core/schedule/season.h"
#include "ui/drawing/theme.h"
#include "ui/models/speaker.h"

#include <QDate>

#include <algorithm>

namespace padside {

namespace {

QString key(UnitId unit)
{
    return QString::fromStdString(unit.text());
}

QString link(const QString& target, const QString& text)
{
    return QStringLiteral("<a href=\"%1\">%2</a>").arg(target, text);
}

} // namespace

SeasonWords::SeasonWords(const Catalogue& catalogue, const LocalSpeaker& speaker, const QLocale& locale)
    : m_catalogue(catalogue)
    , m_speaker(speaker)
    , m_locale(locale)
{
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
    if (trip.moved)
        all << tr("Day chosen by hand; worked out was %1.").arg(m_speaker.shownDate(trip.moved->insteadOf));
    if (const auto risk = riskOfChosenDay(site, static_cast<std::size_t>(&trip - site.trips.data()))) {
        for (const Sentence& sentence : riskSentences(*risk, m_catalogue))
            all << m_speaker.said(sentence);
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
    QStringList sentences{tr("%1, %2: %3 at %4.")
                              .arg(shown(site.site.name), day(trip.on),
                                   checks == 1 ? tr("one check") : tr("%n checks", nullptr, checks),
                                   units == 1 ? tr("one unit") : tr("%n units", nullptr, units))};
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
    const QString id = key(unit.unit.id);
    QString head = QStringLiteral("<b>%1</b>").arg(html(shown(unit.unit.tag)));
    if (!unit.unit.place.empty())
        head += QStringLiteral(" · %1").arg(html(shown(unit.unit.place)));
    const VisitReason reason = reasonOnTrip(trip, unit);
    const QString start = reason == VisitReason::spring ? tr("Start spring visit")
        : reason == VisitReason::fall                   ? tr("Start fall visit")
                                                        : tr("Start call-out");
    QString text
        = QStringLiteral("<p style=\"margin: 16px 0 0 0\">%1<br>%2 &nbsp; %3 &nbsp; %4</p>")
              .arg(head, link(QStringLiteral("start:") + id, start), link(QStringLiteral("unit:") + id, tr("History")),
                   link(QStringLiteral("sheet:") + id, tr("Field sheet")));
    for (const SeasonCheck& check : trip.checks) {
        if (check.unit->unit.id == unit.unit.id)
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
        const SeasonCheck& first = trip.checks[trip.forcedBy];
        text += QStringLiteral("<p style=\"margin: 2px 0; color: %1\">%2</p>")
                    .arg(soft,
                         html(tr("Can wait least: %1, %2 (%3).")
                                  .arg(shown(first.unit->unit.tag), m_speaker.said(first.check().what),
                                       window(first.check(), site.today))));
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

QString SeasonWords::ordersHtml(const std::vector<PartToOrder>& orders, Date today, const Theme& theme) const
{
    const QString soft = theme.softInk.name();
    QString text = QStringLiteral("<p style=\"margin: 0; font-size: large\"><b>%1</b></p>").arg(tr("Parts to order"));
    if (orders.empty())
        return text + QStringLiteral("<p>%1</p>").arg(tr("No part is likely to be needed before it could be there."));
    text += QStringLiteral("<p style=\"margin: 2px 0; color: %1\">%2</p>")
                .arg(soft,
                     tr("Parts whose chance of being spent passes what is tolerated within %n months. How long a "
                        "spare takes to come is an assumption.",
                        nullptr, riskMonths));
    for (const PartToOrder& order : orders) {
        const Unit& unit = order.unit->unit;
        text += QStringLiteral("<p style=\"margin: 12px 0 0 0\"><b>%1</b> · %2 · %3<br>%4</p>")
                    .arg(html(orderWords(order.orderBy, order.made, today)),
                         link(QStringLiteral("unit:") + key(unit.id), html(shown(unit.tag))),
                         html(shown(order.unit->site.name)), html(m_speaker.said(order.why)));
    }
    return text;
}

} // namespace padside
