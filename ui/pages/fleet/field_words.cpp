// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/pages/fleet/field_words.h"

#include "ui/models/speaker.h"

#include <QCoreApplication>

#include <algorithm>

namespace padside {

namespace {

struct FieldText
{
    Q_DECLARE_TR_FUNCTIONS(padside::FleetField)
};

std::size_t placeOf(Horizon horizon)
{
    return static_cast<std::size_t>(horizon);
}

bool wasEverSeen(const UnitReview& review)
{
    return std::ranges::any_of(review.zones, [](const ZoneHistory& zone) { return zone.known.has_value(); });
}

std::optional<Grade> worstOf(const UnitReview& review, PartId part)
{
    std::optional<Grade> worst;
    for (const ZoneHistory& zone : review.zones) {
        if (zone.partId == part && zone.known && (!worst || zone.known->grade > *worst))
            worst = zone.known->grade;
    }
    return worst;
}

} // namespace

QStringList tollNames(const LocalSpeaker& speaker)
{
    QStringList names;
    for (const auto& row : codesOf(Toll{}))
        names << shown(speaker.translate(std::string(row.word)));
    return names;
}

std::optional<FieldUnit> fieldUnit(const FleetLine& line, Horizon horizon)
{
    if (line.unit.retired || !line.reviewed)
        return std::nullopt;
    const auto& loss = line.reviewed->losses[placeOf(horizon)];
    if (!loss)
        return std::nullopt;
    return FieldUnit{line.unit.unitId, shown(line.unit.tag), loss->toll, loss->chance,
                     worstOf(line.reviewed->review, loss->partId)};
}

QString fieldSentence(const FleetLine& line, Horizon horizon, Date today, const Catalogue& catalogue,
                      const LocalSpeaker& speaker)
{
    const LikelyLoss& loss = *line.reviewed->losses[placeOf(horizon)];
    const PartKind* kind = catalogue.partKind(loss.partKind);
    QString part = kind != nullptr ? shown(speaker.translate(kind->name)) : shown(loss.partKind);
    if (!loss.position.empty())
        part = FieldText::tr("%1 (%2)", "part, position").arg(part, shown(speaker.translate(loss.position)));
    const QString by = speaker.shownDate(horizonsAfter(today)[placeOf(horizon)]);
    const auto grade = worstOf(line.reviewed->review, loss.partId);
    QStringList said;
    said << FieldText::tr("%1, %2: %3 is spent by %4 with a chance of %5.", "unit, site, part, date, chance")
                .arg(shown(line.unit.tag), shown(line.unit.siteName), part, by, speaker.shownChance(loss.chance));
    said << (grade ? FieldText::tr("Its worst grade is %1 %2.", "numeral, word")
                         .arg(numeral(*grade))
                         .arg(shown(speaker.translate(std::string(wordOf(*grade)))))
                   : FieldText::tr("It was never seen."));
    said << FieldText::tr("At stake: %1.").arg(shown(speaker.translate(std::string(wordOf(loss.toll)))));
    if (loss.by != OutlookBy::grades)
        said << FieldText::tr("What leads is %1.").arg(shown(speaker.translate(std::string(wordOf(loss.by)))));
    if (wasEverSeen(line.reviewed->review))
        said << FieldText::tr("By then the unit stops with a chance of %1.")
                    .arg(speaker.shownChance(line.reviewed->stops[placeOf(horizon)]));
    else
        said << FieldText::tr("Nothing of this unit was seen yet: only the usual lives of its parts speak here.");
    return said.join(QLatin1Char(' '));
}

} // namespace padside
