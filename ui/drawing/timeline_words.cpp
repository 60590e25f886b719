// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/drawing/timeline_words.h"

#include <QStringList>

#include <array>

using namespace Qt::Literals::StringLiterals;

namespace padside {

TimelineWords::TimelineWords(const Speaker& speaker)
    : m_speaker(speaker)
{
}

QString TimelineWords::word(std::string_view english) const
{
    return QString::fromStdString(m_speaker.translate(std::string(english)));
}

QString TimelineWords::partName(const TimelineGroup& group) const
{
    const QString name = word(group.name);
    return group.position.empty() ? name : tr("%1, %2", "part, position").arg(name, word(group.position));
}

QString TimelineWords::zoneName(const TimelineLane& lane) const
{
    return word(lane.name);
}

QString TimelineWords::gradeText(Grade grade) const
{
    return tr("%1 %2", "numeral and word of a grade").arg(numeral(grade)).arg(word(wordOf(grade)));
}

QString TimelineWords::chargeText(const ChargeEntry& charge) const
{
    const QString mass = QString::fromStdString(m_speaker.amount(Amount{charge.mass.si, QuantityKind::mass}));
    const QString sign = charge.direction == ChargeDirection::added ? u"+"_s : u"\u2212"_s;
    return sign + mass;
}

QString TimelineWords::whatOfZone(const TimelineMark& mark) const
{
    QStringList parts;
    if (mark.found)
        parts << gradeText(*mark.found);
    if (mark.notSeen)
        parts << tr("not seen (%1)").arg(word(wordOf(*mark.notSeen)));
    if (mark.wetness)
        parts << word(wordOf(*mark.wetness));
    for (const Treatment& treatment : mark.treatments) {
        const QString kind = word(wordOf(treatment.kind));
        parts << (treatment.product.empty()
                      ? kind
                      : tr("%1 with %2", "treatment, product").arg(kind, QString::fromStdString(treatment.product)));
    }
    if (mark.fitted)
        parts << tr("new part fitted");
    if (mark.left)
        parts << tr("left as %1").arg(gradeText(*mark.left));
    if (mark.photos > 0)
        parts << (mark.photos == 1 ? tr("1 photo") : tr("%n photos", nullptr, mark.photos));
    return parts.join(u", "_s);
}

QString TimelineWords::whatOfVisit(const TimelineMark& mark) const
{
    QStringList parts;
    parts << tr("zones seen: %1").arg(mark.zonesSeen);
    if (mark.zonesNotSeen > 0)
        parts << tr("not seen: %1").arg(mark.zonesNotSeen);
    if (mark.photos > 0)
        parts << (mark.photos == 1 ? tr("1 photo") : tr("%n photos", nullptr, mark.photos));
    if (mark.openVisit)
        parts << tr("still open");
    return parts.join(u", "_s);
}

QString TimelineWords::whatOfCharge(const TimelineMark& mark) const
{
    QStringList parts;
    for (const ChargeEntry& charge : mark.charges) {
        const QString mass = QString::fromStdString(m_speaker.amount(Amount{charge.mass.si, QuantityKind::mass}));
        QString part = tr("%1 of %2 %3", "mass, refrigerant, added or recovered")
                           .arg(mass, QString::fromStdString(charge.refrigerant), word(wordOf(charge.direction)));
        if (!charge.because.empty())
            part = tr("%1 because of %2").arg(part, QString::fromStdString(charge.because));
        parts << part;
    }
    return parts.join(u", "_s);
}

QString TimelineWords::what(const TimelineMark& mark) const
{
    switch (mark.subject) {
    case TimelineMark::Subject::zone:
        return whatOfZone(mark);
    case TimelineMark::Subject::visit:
        return whatOfVisit(mark);
    case TimelineMark::Subject::charge:
        return whatOfCharge(mark);
    }
    return {};
}

QString TimelineWords::sentence(const Timeline& timeline, const MarkPlace& place) const
{
    const TimelineGroup& group = timeline.groups.at(place.group);
    const TimelineLane& lane = group.lanes.at(place.lane);
    const TimelineMark& mark = lane.marks.at(place.mark);
    QString when = QString::fromStdString(m_speaker.date(mark.on));
    if (mark.reason)
        when += u' ' + word(wordOf(*mark.reason));
    const QString where = mark.subject == TimelineMark::Subject::visit ? tr("visit")
        : mark.subject == TimelineMark::Subject::charge
        ? tr("refrigerant")
        : tr("%1, %2", "part, zone").arg(partName(group), zoneName(lane));
    QString said = tr("%1: %2: %3.", "date and reason, where, what").arg(when, where, what(mark));
    if (!mark.note.empty())
        said += tr(" “%1”", "a note, after a sentence").arg(QString::fromStdString(mark.note));
    if (!mark.correction.empty())
        said += tr(" Corrected: %1").arg(QString::fromStdString(mark.correction));
    return said;
}

QString TimelineWords::summary(const Timeline& timeline) const
{
    std::array<int, 5> count{};
    int zones = 0;
    for (const TimelineGroup& group : timeline.groups) {
        for (const TimelineLane& lane : group.lanes) {
            zones += lane.zones.empty() ? 0 : 1;
            if (!lane.bands.empty() && lane.bands.back().to == timeline.today)
                ++count[static_cast<std::size_t>(numeral(lane.bands.back().grade)) - 1];
        }
    }
    const auto& visits = timeline.groups.front().lanes.front().marks;
    if (visits.empty())
        return tr("No visits yet.");
    QStringList grades;
    for (std::size_t i = count.size(); i-- > 0;) {
        if (count[i] > 0)
            grades << tr("%1: %2", "grade, count of zones").arg(gradeText(static_cast<Grade>(i + 1))).arg(count[i]);
    }
    return tr("Visits from %1 to %2: %3. Zones followed: %4. ")
               .arg(QString::fromStdString(m_speaker.date(visits.front().on)),
                    QString::fromStdString(m_speaker.date(visits.back().on)))
               .arg(visits.size())
               .arg(zones)
        + (grades.isEmpty() ? tr("No grades yet.") : tr("Zones now at each grade: %1.").arg(grades.join(u", "_s)));
}

} // namespace padside
