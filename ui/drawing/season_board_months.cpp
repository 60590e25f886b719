// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/drawing/season_board_months.h"

namespace padside {

namespace {

std::chrono::year_month_day calendarDay(Date day)
{
    return {day};
}

int weeksToNextMonth(const BoardGeometry& geometry, int week)
{
    int next = week + 1;
    while (next < geometry.weeks && !beginsMonth(geometry, next))
        ++next;
    return next - week;
}

struct MonthName
{
    QString text;
    bool withYear = false;
};

/// What fits above a month's weeks: the year too where it is a new one, in two figures rather than not at all (a year
/// told only at March would leave it open which January this is).
MonthName monthName(const QString& month, std::chrono::year year, bool newYear, const QFontMetricsF& metrics,
                    double room)
{
    const auto fits = [&](const QString& text) { return metrics.horizontalAdvance(text) + 6 < room; };
    const QString whole = QStringLiteral("%1 %2").arg(month).arg(int(year));
    const QString brief = QStringLiteral("%1 \u2019%2").arg(month).arg(int(year) % 100, 2, 10, QLatin1Char('0'));
    if (newYear && fits(whole))
        return {whole, true};
    if (newYear && fits(brief))
        return {brief, true};
    return {fits(month) ? month : QString(), false};
}

} // namespace

Date dayOfWeek(const BoardGeometry& geometry, int week)
{
    return geometry.firstMonday + std::chrono::days(7 * week);
}

bool beginsMonth(const BoardGeometry& geometry, int week)
{
    return week > 0
        && calendarDay(dayOfWeek(geometry, week)).month() != calendarDay(dayOfWeek(geometry, week - 1)).month();
}

std::vector<MonthHead> monthHeads(const BoardGeometry& geometry, const QStringList& months,
                                  const QFontMetricsF& metrics)
{
    std::vector<MonthHead> heads;
    std::chrono::year lastYear{};
    for (int week = 0; week < geometry.weeks; ++week) {
        if (week > 0 && !beginsMonth(geometry, week))
            continue;
        const auto date = calendarDay(dayOfWeek(geometry, week));
        const QString month = months.value(static_cast<int>(unsigned(date.month())) - 1);
        const double room = weeksToNextMonth(geometry, week) * geometry.week;
        const MonthName name = monthName(month, date.year(), date.year() != lastYear, metrics, room);
        if (name.withYear)
            lastYear = date.year();
        heads.push_back({week, room, name.text});
    }
    return heads;
}

} // namespace padside
