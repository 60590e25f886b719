// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/shell/place.h"

#include <QStringList>

#include <algorithm>
#include <array>
#include <utility>

using namespace Qt::Literals::StringLiterals;

namespace padside {

namespace {

const std::array<std::pair<Place::Page, QString>, 7> pageNames{{{Place::Page::unit, u"unit"_s},
                                                                {Place::Page::visit, u"visit"_s},
                                                                {Place::Page::summary, u"summary"_s},
                                                                {Place::Page::season, u"season"_s},
                                                                {Place::Page::fleet, u"fleet"_s},
                                                                {Place::Page::track, u"track"_s},
                                                                {Place::Page::rates, u"rates"_s}}};

} // namespace

QString placeText(const Place& place)
{
    const auto* name = std::ranges::find(pageNames, place.page, &std::pair<Place::Page, QString>::first);
    return name->second + u'/' + QString::fromStdString(place.unit.text()) + u'/'
        + QString::fromStdString(place.visit.text());
}

std::optional<Place> parsePlace(const QString& text)
{
    const QStringList words = text.split(u'/');
    if (words.size() != 3)
        return std::nullopt;
    const auto* name = std::ranges::find(pageNames, words[0], &std::pair<Place::Page, QString>::second);
    const auto unit = parseUuid(words[1].toStdString());
    const auto visit = parseUuid(words[2].toStdString());
    if (name == pageNames.end() || !unit || !visit)
        return std::nullopt;
    return Place{name->first, UnitId(*unit), VisitId(*visit)};
}

} // namespace padside
