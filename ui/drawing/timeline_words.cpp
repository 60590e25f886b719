// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/drawing/timeline_words.h"

#include "core/quantity/chance_words.h"

#include <QStringList>
#include <QTime>

#include <algorithm>
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

QString TimelineWords::chargesText(const TimelineMark& mark) const
{
    QStringList texts;
    for (const ChargeEntry& charge : mark.charges)
        texts << chargeText(charge);
    return texts.join(u' ');
}

QString TimelineWords::wasBefore(const TimelineMark& mark) const
{
    if (!mark.before)
        return {};
    const QString on = mark.beforeOn ? QString::fromStdString(m_speaker.date(*mark.beforeOn)) : QString();
    if (mark.notSeen && !mark.found)
        return on.isEmpty() ? tr("last known %1").arg(gradeText(*mark.before))
                            : tr("last known %1 on %2", "grade, date").arg(gradeText(*mark.before), on);
    if (mark.found == mark.before)
        return on.isEmpty() ? tr("as before") : tr("as on %1").arg(on);
    return on.isEmpty() ? tr("was %1").arg(gradeText(*mark.before))
                        : tr("was %1 on %2", "grade, date").arg(gradeText(*mark.before), on);
}

QString TimelineWords::treatmentText(const Treatment& treatment) const
{
    QString text = word(wordOf(treatment.kind));
    if (!treatment.product.empty())
        text = tr("%1 with %2", "treatment, product").arg(text, QString::fromStdString(treatment.product));
    if (!treatment.note.empty())
        text = tr("%1 (%2)", "treatment, note").arg(text, QString::fromStdString(treatment.note));
    if (treatment.dryBy) {
        const auto local = treatment.dryBy->utc + treatment.dryBy->offset;
        const auto day = std::chrono::floor<std::chrono::days>(local);
        const QTime clock
            = QTime::fromMSecsSinceStartOfDay(static_cast<int>(std::chrono::milliseconds(local - day).count()));
        text = tr("%1, dry by %2 %3", "treatment, date, clock")
                   .arg(text, QString::fromStdString(m_speaker.date(Date(day))), clock.toString(u"HH:mm"_s));
    }
    return text;
}

QString TimelineWords::whatOfZone(const TimelineMark& mark) const
{
    QStringList parts;
    if (mark.found)
        parts << (mark.worstZone.empty()
                      ? gradeText(*mark.found)
                      : tr("%1 (%2)", "grade, zone").arg(gradeText(*mark.found), word(mark.worstZone)));
    if (mark.notSeen)
        parts << tr("not seen (%1)").arg(word(wordOf(*mark.notSeen)));
    if (const QString before = wasBefore(mark); !before.isEmpty() && (mark.found || mark.notSeen))
        parts << before;
    if (mark.wetness)
        parts << word(wordOf(*mark.wetness));
    if (!mark.worstZone.empty() && mark.zonesNotSeen > 0)
        parts << tr("zones not seen: %1").arg(mark.zonesNotSeen);
    for (const Treatment& treatment : mark.treatments) {
        if (!mark.fitted || treatment.kind != TreatmentKind::replace)
            parts << treatmentText(treatment);
    }
    if (mark.fitted)
        parts << (mark.fittedBecause.empty()
                      ? tr("new part fitted")
                      : tr("new part fitted because of: %1").arg(QString::fromStdString(mark.fittedBecause)));
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

QString TimelineWords::nameSentence(const Timeline& timeline, const MarkPlace& place) const
{
    const TimelineGroup& group = timeline.groups.at(place.group);
    const bool heading = place.lane == partHeading;
    const TimelineLane& lane = heading ? group.worst : laneOf(timeline, place.group, place.lane);
    const QString where = heading || place.lane == worstLane
        ? partName(group)
        : tr("%1, %2", "part, zone").arg(partName(group), zoneName(lane));
    QStringList parts;
    if (heading)
        parts << tr("zones: %1").arg(group.lanes.size());
    if (!lane.bands.empty() && lane.bands.back().to == timeline.today) {
        const TimelineBand& now = lane.bands.back();
        const QString grade = gradeText(now.grade);
        // Each sighting begins a band of its own; the grade holds since the first of the equal ones.
        const TimelineBand* first = &now;
        while (now.sure && first != lane.bands.data() && first[-1].to == first->from && first[-1].grade == now.grade)
            --first;
        const QString since = QString::fromStdString(m_speaker.date(first->from));
        parts << (now.sure ? heading ? tr("worst now %1, since %2").arg(grade, since)
                                     : tr("now %1, since %2").arg(grade, since)
                           : tr("last known %1; not seen since %2").arg(grade, since));
    } else {
        parts << (group.fitted ? tr("no grade yet") : tr("removed"));
    }
    QString said = tr("%1: %2.", "where, what").arg(where, parts.join(u", "_s));
    if (heading)
        said += u' ' + tr("Enter folds or unfolds its lanes.");
    else if (!lane.zones.empty())
        said += u' ' + tr("Enter shows its photographs through the years.");
    return said;
}

QString TimelineWords::todayName() const
{
    return tr("today");
}

QString TimelineWords::outlookSentence(const Timeline& timeline, const MarkPlace& place) const
{
    const TimelineGroup& group = timeline.groups.at(place.group);
    const TimelineLane& lane = laneOf(timeline, place.group, place.lane);
    const TimelineOutlook& outlook = *lane.outlook;
    const QString zone = place.lane == worstLane ? word(outlook.zone) : zoneName(lane);
    QStringList said{tr("%1, what comes: %2", "place, a sentence")
                         .arg(tr("%1, %2", "part, zone").arg(partName(group), zone),
                              QString::fromStdString(say(outlook.when, m_speaker)))};
    const GradesBy& end = outlook.course.back();
    const auto grade = std::ranges::max_element(end.chances) - end.chances.begin();
    const auto chance = [this](double share) { return QString::fromStdString(say(chanceWords(share), m_speaker)); };
    said << tr("On %1 likeliest %2 (%3), spent %4.", "date, grade, chance, chance")
                .arg(QString::fromStdString(m_speaker.date(end.by)), gradeText(static_cast<Grade>(grade + 1)),
                     chance(end.chances[static_cast<std::size_t>(grade)]), chance(end.chances.back()));
    for (const Sentence& because : outlook.because)
        said << QString::fromStdString(say(because, m_speaker));
    return said.join(u' ');
}

QString TimelineWords::more(int marks) const
{
    return u' '
        + (marks == 1 ? tr("Another entry lies close by: zoom in to see it.")
                      : tr("%1 more entries lie close by: zoom in to see them.").arg(marks));
}

QString TimelineWords::sentence(const Timeline& timeline, const MarkPlace& place,
                                std::span<const Sentence> raised) const
{
    if (place.mark == laneName)
        return nameSentence(timeline, place);
    if (place.mark == outlookMark)
        return outlookSentence(timeline, place);
    const TimelineGroup& group = timeline.groups.at(place.group);
    const TimelineLane& lane = laneOf(timeline, place.group, place.lane);
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
    if (!raised.empty())
        said += tr(" Flag: %1").arg(QString::fromStdString(say(raised.front(), m_speaker)));
    if (raised.size() > 1)
        said += tr(" More flags of it: %1.").arg(raised.size() - 1);
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
        + (timeline.until
               ? tr("What may come is told until %1. ").arg(QString::fromStdString(m_speaker.date(*timeline.until)))
               : QString())
        + (grades.isEmpty() ? tr("No grades yet.") : tr("Zones now at each grade: %1.").arg(grades.join(u", "_s)));
}

} // namespace padside
