// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/drawing/cutaway_words.h"

#include <QStringList>

#include <algorithm>

using namespace Qt::Literals::StringLiterals;

namespace padside {

CutawayWords::CutawayWords(const UnitRecord& record, const Catalogue& catalogue, const Speaker& speaker)
    : m_record(record)
    , m_catalogue(catalogue)
    , m_speaker(speaker)
{
}

QString CutawayWords::word(std::string_view english) const
{
    return QString::fromStdString(m_speaker.translate(std::string(english)));
}

QString CutawayWords::day(Date date) const
{
    return QString::fromStdString(m_speaker.date(date));
}

QString CutawayWords::gradeText(Grade grade) const
{
    return tr("%1 %2", "numeral and word of a grade").arg(numeral(grade)).arg(word(wordOf(grade)));
}

QString CutawayWords::partName(const Part& part) const
{
    const PartKind* kind = m_catalogue.partKind(part.kind);
    const QString name = word(kind ? kind->name : part.kind);
    return part.position.empty() ? name : tr("%1, %2", "part, position").arg(name, word(part.position));
}

QString CutawayWords::zoneName(const Part& part, ZoneId id) const
{
    const auto zone = std::ranges::find(part.zones, id, &Zone::id);
    if (zone == part.zones.end())
        return partName(part);
    const ZoneKind* kind = m_catalogue.zoneKind(part.kind, zone->kind);
    const std::string& name = zone->name.empty() ? (kind ? kind->name : zone->kind) : zone->name;
    return tr("%1, %2", "part, zone").arg(partName(part), word(name));
}

QString CutawayWords::since(Date date) const
{
    const auto visit = std::ranges::find(m_record.visits, date, &Visit::on);
    const QString year = QString::number(yearOf(date));
    if (visit != m_record.visits.end() && visit->reason == VisitReason::spring)
        return tr("spring %1").arg(year);
    if (visit != m_record.visits.end() && visit->reason == VisitReason::fall)
        return tr("fall %1").arg(year);
    return day(date);
}

QString CutawayWords::lastFound(const Part& part, const ZoneHistory& history) const
{
    const QString name = zoneName(part, history.zoneId);
    const QString reason = history.lastNotSeenReason ? word(wordOf(*history.lastNotSeenReason)) : QString();
    if (!history.lastSeen)
        return history.notSeenLast ? tr("%1: not seen on %2 (%3).").arg(name, day(*history.notSeenLast), reason)
                                   : tr("%1: nothing recorded yet.").arg(name);
    QStringList said{tr("%1: %2 on %3").arg(name, gradeText(history.lastSeen->grade), day(history.lastSeen->on))};
    const int delta = history.delta.value_or(0);
    if (delta != 0 && history.previousSeen) {
        const QString from = since(history.previousSeen->on);
        if (delta > 0)
            said << (delta == 1 ? tr("worse by one since %1").arg(from)
                                : tr("worse by %1 since %2").arg(delta).arg(from));
        else
            said << (delta == -1 ? tr("better by one since %1").arg(from)
                                 : tr("better by %1 since %2").arg(-delta).arg(from));
    }
    if (history.known && history.known->grade != history.lastSeen->grade)
        said << tr("left as %1").arg(gradeText(history.known->grade));
    if (history.notSeenSince)
        said << (reason.isEmpty() ? tr("not seen since") : tr("not seen since (%1)").arg(reason));
    return tr("%1.", "ends a sentence").arg(said.join(u", "_s));
}

QString CutawayWords::nothingRecorded(const Part& part) const
{
    return tr("%1: nothing recorded yet.").arg(partName(part));
}

QString CutawayWords::foundAtVisit(const Part& part, const Finding& worst, std::size_t looked) const
{
    const QString progress = tr("%1 of %2 zones looked at").arg(looked).arg(part.zones.size());
    if (const auto grade = worst.grade())
        return tr("%1: %2 at this visit; %3.").arg(zoneName(part, worst.zoneId), gradeText(*grade), progress);
    return tr("%1: not seen at this visit (%2); %3.")
        .arg(zoneName(part, worst.zoneId), word(wordOf(std::get<NotSeenReason>(worst.sight))), progress);
}

QString CutawayWords::notLookedAtYet(const Part& part) const
{
    return tr("%1: not looked at yet at this visit.").arg(partName(part));
}

std::vector<const Part*> fittedParts(const UnitRecord& record, const Catalogue& catalogue, Date on)
{
    std::vector<const Part*> parts;
    for (const Part& part : record.parts) {
        if ((!part.fittedOn || *part.fittedOn <= on) && (!part.removedOn || *part.removedOn > on))
            parts.push_back(&part);
    }
    std::ranges::stable_sort(parts, {}, [&catalogue](const Part* part) {
        const auto& kinds = catalogue.partKinds();
        return std::ranges::find(kinds, part->kind, &PartKind::code) - kinds.begin();
    });
    return parts;
}

} // namespace padside
