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

/// A zone gets a row of its own unless nothing about it needs saying.
bool deservesRow(const ZoneChange& change)
{
    const auto grade = gradeNow(change);
    switch (change.kind) {
    case ZoneChangeKind::worse:
    case ZoneChangeKind::betterWithoutWork:
    case ZoneChangeKind::betterAfterWork:
        return true;
    case ZoneChangeKind::notSeen: // a good zone skipped for lack of time is told in the line below
        return change.notSeenBecause != NotSeenReason::noTime || !change.note.empty() || !change.before
            || numeral(change.before->grade) >= 3;
    case ZoneChangeKind::firstSeen:
        return !grade || numeral(*grade) >= 3;
    case ZoneChangeKind::same:
        return grade && numeral(*grade) >= 4;
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
    QStringList marked;
    QStringList noTime;
    for (const ZoneChange& change : view.changes.zones) {
        if (deservesRow(change))
            continue;
        const auto grade = gradeNow(change);
        if (change.kind == ZoneChangeKind::notSeen)
            noTime << view.words.zone(change.zoneId);
        else if (change.kind == ZoneChangeKind::firstSeen)
            ++firstLow;
        else if (grade && numeral(*grade) >= 3)
            marked << view.words.zone(change.zoneId);
        else
            ++sameLow;
    }
    QStringList sentences;
    if (sameLow > 0)
        sentences << SummaryText::tr("Zones unchanged and sound or worn (grade 1 or 2): %1.").arg(sameLow);
    if (firstLow > 0)
        sentences << SummaryText::tr("Zones seen for the first time, sound or worn: %1.").arg(firstLow);
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
    const QString clears = view.words.said(flag.clears);
    return {
        PaperCell{capitalised(view.words.word(wordOf(flag.severity))), {}, {}, true},
        PaperCell{sentence, clears.isEmpty() ? QString() : SummaryText::tr("Cleared by: %1").arg(clears), {}, false}};
}

/// The rule whose flags share one row.
constexpr std::string_view longUnseenRule = "not-seen-too-long";

} // namespace

TableBlock changedSection(const SummaryView& view)
{
    TableBlock table;
    table.heading = SummaryText::tr("What changed");
    table.columns = {{SummaryText::tr("Zone"), 1, false},
                     {SummaryText::tr("Then, now"), 1, true},
                     {SummaryText::tr("What it looks like"), 1.8, false}};
    for (const ZoneChange& change : view.changes.zones) {
        if (deservesRow(change))
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
    // What a customer can take in: the gravest flag of each zone, the gravest zones first, and one row for all that was
    // long unseen. The record keeps every flag.
    constexpr std::size_t mostFlags = 6;
    TableBlock table;
    table.heading = SummaryText::tr("Flags");
    table.columns = {{{}, 0.12, false}, {{}, 1, false}};
    std::vector<ZoneId> told;
    std::vector<const Flag*> longUnseen;
    std::size_t leftOut = 0;
    for (const Flag& flag : view.input.review.flags) { // most severe first
        if (flag.acknowledged)
            continue; // settled between those who read this
        const bool zoneTold = flag.zoneId && std::ranges::find(told, *flag.zoneId) != told.end();
        if (flag.rule == longUnseenRule && flag.zoneId) {
            longUnseen.push_back(&flag);
        } else if (zoneTold || table.rows.size() == mostFlags) {
            ++leftOut;
        } else {
            table.rows.push_back(flagRow(view, flag, view.words.said(flag.sentence)));
            if (flag.zoneId)
                told.push_back(*flag.zoneId);
        }
    }
    if (longUnseen.size() == 1) {
        table.rows.push_back(flagRow(view, *longUnseen.front(), view.words.said(longUnseen.front()->sentence)));
    } else if (!longUnseen.empty()) {
        QStringList zones;
        for (const Flag* flag : longUnseen)
            zones << view.words.zone(*flag->zoneId);
        table.rows.push_back(flagRow(view, *longUnseen.front(),
                                     SummaryText::tr("Not seen for long: %1.").arg(zones.join(QStringLiteral("; ")))));
    }
    if (leftOut > 0)
        table.closing = SummaryText::tr("More flags in the record, on these zones or less pressing: %1.").arg(leftOut);
    return table;
}

} // namespace padside
