// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

// What changed, and the flags.

#include "ui/paper/visit_summary_content.h"

#include <QStringList>

#include <algorithm>
#include <map>

namespace padside {

namespace {

Mark markOf(const std::optional<Grade>& grade)
{
    return grade ? Mark(*grade) : Mark(NoMark{});
}

bool leftBetter(const ZoneChange& change)
{
    return change.kind == ZoneChangeKind::betterAfterWork && change.asLeft && change.asFound
        && numeral(*change.asLeft) < numeral(*change.asFound);
}

std::optional<Grade> gradeNow(const ZoneChange& change)
{
    return leftBetter(change) ? change.asLeft : (change.asFound ? change.asFound : change.asLeft);
}

std::vector<Mark> thenAndNow(const ZoneChange& change)
{
    if (leftBetter(change))
        return {markOf(change.asFound), markOf(change.asLeft)};
    const Mark then = change.before ? Mark(change.before->grade) : Mark(NoMark{});
    if (change.kind == ZoneChangeKind::notSeen)
        return {then, NotSeenMark{}};
    return {then, markOf(gradeNow(change))};
}

/// Whether the work done on it today, which has its own table with both grades, is all there is to say.
bool isToldByItsWork(const SummaryView& view, const ZoneChange& change)
{
    return change.kind == ZoneChangeKind::betterAfterWork && leftBetter(change) && change.note.empty()
        && std::ranges::any_of(view.changes.treatments,
                               [&](const Treatment& treatment) { return treatment.zoneId == change.zoneId; });
}

/// A zone gets a row of its own unless nothing about it needs saying, or it was said above.
bool deservesRow(const SummaryView& view, const ZoneChange& change)
{
    const auto grade = gradeNow(change);
    switch (change.kind) {
    case ZoneChangeKind::worse:
        return !grade || *grade > Grade::worn || !change.note.empty();
    case ZoneChangeKind::betterWithoutWork:
        return true;
    case ZoneChangeKind::betterAfterWork:
        return !isToldByItsWork(view, change);
    case ZoneChangeKind::notSeen: // a good zone skipped for lack of time is told in the line below
        return change.notSeenBecause != NotSeenReason::noTime || !change.note.empty() || !change.before
            || numeral(change.before->grade) >= 3;
    case ZoneChangeKind::firstSeen:
        return !grade || numeral(*grade) >= 3;
    case ZoneChangeKind::same:
        return grade && numeral(*grade) >= 4 && (!change.note.empty() || !toldFlags(view).hasZone(change.zoneId));
    }
    return true;
}

QString kindWords(const SummaryView& view, const ZoneChange& change)
{
    const QString since = change.before ? view.words.day(change.before->on) : QString();
    switch (change.kind) {
    case ZoneChangeKind::worse:
        return SummaryText::tr("Worse since %1").arg(since);
    case ZoneChangeKind::betterWithoutWork:
        return SummaryText::tr("Better than on %1 without work: one of the two grades is doubtful").arg(since);
    case ZoneChangeKind::betterAfterWork:
        return leftBetter(change) ? SummaryText::tr("Better after today's work")
                                  : SummaryText::tr("Better after work, since %1").arg(since);
    case ZoneChangeKind::firstSeen:
        return SummaryText::tr("Seen for the first time");
    case ZoneChangeKind::same:
        return SummaryText::tr("Unchanged since %1").arg(since);
    case ZoneChangeKind::notSeen:
        return since.isEmpty() ? SummaryText::tr("Never seen so far") : SummaryText::tr("Last seen on %1").arg(since);
    }
    return {};
}

PaperCell meaning(const SummaryView& view, const ZoneChange& change)
{
    PaperCell cell;
    const auto grade = gradeNow(change);
    if (change.kind == ZoneChangeKind::notSeen)
        cell.text = change.notSeenBecause
            ? SummaryText::tr("Not seen: %1").arg(view.words.word(wordOf(*change.notSeenBecause)))
            : SummaryText::tr("Not seen");
    else if (grade && numeral(*grade) >= 3)
        cell.text = view.words.gradeSentence(change.zoneId, *grade);
    if (cell.text.isEmpty() && grade)
        cell.text = capitalised(view.words.word(wordOf(*grade)));
    QStringList under{kindWords(view, change)};
    if (change.wetness && *change.wetness != Wetness::dry)
        under << view.words.word(wordOf(*change.wetness));
    cell.under = under.join(QStringLiteral(", ")) + QLatin1Char('.');
    if (!change.note.empty())
        cell.under += SummaryText::tr(" “%1”", "a note, quoted").arg(fromCore(change.note));
    return cell;
}

/// One sentence for all the zones without a row.
QString quietZones(const SummaryView& view)
{
    int sameLow = 0;
    int firstLow = 0;
    QStringList wornNow;
    QStringList poor; ///< and flagged
    QStringList marked;
    QStringList noTime;
    for (const ZoneChange& change : view.changes.zones) {
        if (deservesRow(view, change) || isToldByItsWork(view, change))
            continue;
        const auto grade = gradeNow(change);
        if (change.kind == ZoneChangeKind::notSeen)
            noTime << view.words.zone(change.zoneId);
        else if (change.kind == ZoneChangeKind::worse)
            wornNow << view.words.zone(change.zoneId);
        else if (change.kind == ZoneChangeKind::firstSeen)
            ++firstLow;
        else if (grade && numeral(*grade) >= 4)
            poor << view.words.zone(change.zoneId);
        else if (grade && numeral(*grade) >= 3)
            marked << view.words.zone(change.zoneId);
        else
            ++sameLow;
    }
    QStringList sentences;
    if (!wornNow.isEmpty())
        sentences << SummaryText::tr("Sound before, worn now: %1.").arg(wornNow.join(QStringLiteral("; ")));
    if (sameLow > 0)
        sentences << SummaryText::tr("Zones unchanged and sound or worn (grade 1 or 2): %1.").arg(sameLow);
    if (firstLow > 0)
        sentences << SummaryText::tr("Zones seen for the first time, sound or worn: %1.").arg(firstLow);
    if (!poor.isEmpty())
        sentences << SummaryText::tr("Unchanged, and flagged above: %1.").arg(poor.join(QStringLiteral("; ")));
    if (!marked.isEmpty())
        sentences << SummaryText::tr("Unchanged at grade 3, marked: %1.").arg(marked.join(QStringLiteral("; ")));
    if (!noTime.isEmpty())
        sentences << SummaryText::tr("Not seen for lack of time, sound or worn before: %1.")
                         .arg(noTime.join(QStringLiteral("; ")));
    if (!view.changes.notLookedAt.empty())
        sentences << SummaryText::tr("Zones not looked at this time: %1.").arg(view.changes.notLookedAt.size());
    return sentences.join(QLatin1Char(' '));
}

std::vector<PaperCell> flagRow(const SummaryView& view, const Flag& flag, const QString& sentence)
{
    return {PaperCell{capitalised(view.words.word(wordOf(flag.severity))), {}, {}, true},
            PaperCell{sentence, view.words.said(flag.clears), {}, false}};
}

/// Below each row what clears its flag; what clears most of them is said once, in the sentence this answers.
QString sayWhatClears(TableBlock& flags)
{
    std::map<QString, int> times;
    for (const std::vector<PaperCell>& row : flags.rows)
        ++times[row[1].under];
    times.erase(QString());
    const auto usual = std::ranges::max_element(times, {}, &std::pair<const QString, int>::second);
    const bool isUsual = usual != times.end() && usual->second > 1;
    for (std::vector<PaperCell>& row : flags.rows) {
        QString& under = row[1].under;
        if (isUsual && under == usual->first)
            under.clear();
        else if (!under.isEmpty())
            under = SummaryText::tr("Cleared by: %1").arg(under);
    }
    return isUsual ? SummaryText::tr("Unless said otherwise, a flag is cleared by: %1").arg(usual->first) : QString();
}

/// The rule whose flags share one row.
constexpr std::string_view longUnseenRule = "not-seen-too-long";

} // namespace

ToldFlags toldFlags(const SummaryView& view)
{
    constexpr std::size_t mostFlags = 6;
    ToldFlags told;
    for (const Flag& flag : view.input.review.flags) { // most severe first
        if (flag.acknowledged)
            continue; // settled between those who read this
        if (flag.rule == longUnseenRule && flag.zoneId)
            told.longUnseen.push_back(&flag);
        else if ((flag.zoneId && told.hasZone(*flag.zoneId)) || told.each.size() == mostFlags)
            ++told.leftOut;
        else
            told.each.push_back(&flag);
    }
    return told;
}

bool ToldFlags::hasZone(const ZoneId& zone) const
{
    return std::ranges::any_of(each, [&](const Flag* flag) { return flag->zoneId == zone; });
}

TableBlock changedSection(const SummaryView& view)
{
    TableBlock table;
    table.heading = SummaryText::tr("What changed");
    table.columns = {{SummaryText::tr("Zone"), 1, false},
                     {SummaryText::tr("Then, now"), 1, true},
                     {SummaryText::tr("What it looks like"), 1.8, false}};
    for (const ZoneChange& change : view.changes.zones) {
        if (deservesRow(view, change))
            table.rows.push_back({PaperCell{view.words.zone(change.zoneId), {}, {}, false},
                                  PaperCell{{}, {}, thenAndNow(change), false}, meaning(view, change)});
    }
    table.closing = quietZones(view);
    if (view.changes.zones.empty())
        table.closing
            = (SummaryText::tr("No zone was graded at this visit.") + QLatin1Char(' ') + table.closing).trimmed();
    return table;
}

TableBlock flagsSection(const SummaryView& view)
{
    TableBlock table;
    table.heading = SummaryText::tr("Flags");
    table.columns = {{{}, 0.12, false}, {{}, 1, false}};
    const ToldFlags told = toldFlags(view);
    for (const Flag* flag : told.each)
        table.rows.push_back(flagRow(view, *flag, view.words.said(flag->sentence)));
    if (told.longUnseen.size() == 1) {
        const Flag& flag = *told.longUnseen.front();
        table.rows.push_back(flagRow(view, flag, view.words.said(flag.sentence)));
    } else if (!told.longUnseen.empty()) {
        QStringList zones;
        for (const Flag* flag : told.longUnseen)
            zones << view.words.zone(*flag->zoneId);
        table.rows.push_back(flagRow(view, *told.longUnseen.front(),
                                     SummaryText::tr("Not seen for long: %1.").arg(zones.join(QStringLiteral("; ")))));
    }
    table.closing = sayWhatClears(table);
    if (told.leftOut > 0) {
        if (!table.closing.isEmpty())
            table.closing += u' ';
        table.closing
            += SummaryText::tr("More flags in the record, on these zones or less pressing: %1.").arg(told.leftOut);
    }
    return table;
}

} // namespace padside
