// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/pages/season/moved_trips.h"

#include "core/store/drafts.h"
#include "core/store/store.h"
#include "ui/models/record_book.h"

#include <QCoreApplication>
#include <QStringList>

namespace padside {

namespace {

QString keyOf(SiteId site)
{
    return QStringLiteral("season/") + QString::fromStdString(site.text());
}

} // namespace

QString movedTripsText(const std::vector<MovedTrip>& moves)
{
    QStringList lines;
    for (const MovedTrip& move : moves) {
        const std::string from = move.takesAlongFrom ? " " + isoText(*move.takesAlongFrom) : std::string();
        lines << QString::fromStdString(isoText(move.insteadOf) + " " + isoText(move.to) + from);
    }
    return lines.join(QLatin1Char('\n'));
}

std::optional<std::vector<MovedTrip>> parseMovedTrips(const QString& text)
{
    std::vector<MovedTrip> moves;
    for (const QString& line : text.split(QLatin1Char('\n'), Qt::SkipEmptyParts)) {
        const QStringList days = line.split(QLatin1Char(' '));
        const auto insteadOf = parseDate(days.value(0).toStdString());
        const auto to = parseDate(days.value(1).toStdString());
        std::optional<Date> from;
        if (days.size() == 3)
            from = parseDate(days[2].toStdString());
        if ((days.size() != 2 && !from) || days.size() > 3 || !insteadOf || !to)
            return std::nullopt;
        moves.push_back({*insteadOf, *to, from});
    }
    return moves;
}

std::vector<MovedTrip> MovedTrips::of(SiteId site) const
{
    std::optional<QString> text;
    if (!m_book.attempt([&] { text = m_book.store().drafts().text(keyOf(site)); }) || !text)
        return {};
    auto moves = parseMovedTrips(*text);
    if (!moves) {
        Q_EMIT m_book.failed(QCoreApplication::translate(
            "MovedTrips", "The days chosen for the trips to a site can't be read, so its trips stand as worked out."));
        return {};
    }
    std::erase_if(*moves, [today = m_book.today()](const MovedTrip& move) { return move.to < today; });
    return *moves;
}

bool MovedTrips::keep(SiteId site, const std::vector<MovedTrip>& moves)
{
    return m_book.attempt([&] {
        if (moves.empty())
            m_book.store().drafts().remove(keyOf(site));
        else
            m_book.store().drafts().setText(keyOf(site), movedTripsText(moves));
    });
}

} // namespace padside
