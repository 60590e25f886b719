// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/paper/day_sheet.h"

#include "core/catalogue/subject.h"
#include "core/quantity/sentence.h"
#include "ui/paper/cautions_table.h"
#include "ui/paper/part_words.h"
#include "ui/paper/unit_line.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>

namespace padside {

namespace {

struct DaySheetText
{
    Q_DECLARE_TR_FUNCTIONS(DaySheet)
};

QString day(const DaySheetInput& input, Date date)
{
    return fromCore(input.speaker.date(date));
}

QString said(const DaySheetInput& input, const Sentence& sentence)
{
    return fromCore(say(sentence, input.speaker));
}

const UnitRecord* recordOf(const DaySheetInput& input, UnitId unit)
{
    const auto record = std::ranges::find(input.records, unit, [](const UnitRecord& one) { return one.unit.id; });
    return record == input.records.end() ? nullptr : &*record;
}

void addFact(std::vector<Fact>& facts, const QString& label, const std::string& text)
{
    if (!text.empty())
        facts.push_back({label, fromCore(text)});
}

TitleBlock title(const DaySheetInput& input, const QString& contractor)
{
    TitleBlock block;
    block.contractor = contractor;
    block.kind = DaySheetText::tr("Day's sheet");
    block.title = fromCore(input.site.name);
    block.subtitle = input.day;
    addFact(block.facts, DaySheetText::tr("Address"), input.site.address);
    addFact(block.facts, DaySheetText::tr("Access"), input.site.access);
    addFact(block.facts, DaySheetText::tr("Contact"), input.site.contact);
    addFact(block.facts, DaySheetText::tr("Note"), input.site.note);
    if (const int late = input.trip.daysLate(); late > 0)
        block.notice = late == 1 ? DaySheetText::tr("Some of this comes a day late.")
                                 : DaySheetText::tr("Some of this comes late, by up to %n days.", nullptr, late);
    return block;
}

TableBlock bring(const TripNeeds& needs, const Speaker& speaker)
{
    constexpr std::size_t perRow = 3;
    TableBlock table{DaySheetText::tr("Bring"), {{}, {}, {}}, {}, {}};
    for (std::size_t i = 0; i < needs.bring.size(); ++i) {
        if (i % perRow == 0)
            table.rows.emplace_back(perRow);
        table.rows.back()[i % perRow].text = capitalised(fromCore(speaker.translate(needs.bring[i])));
    }
    return table;
}

/// By when to order it; nothing where the outlook doesn't press.
QString orderWords(const DaySheetInput& input, const SpareNeed& need)
{
    if (!need.orderBy)
        return {};
    if (!need.made)
        return DaySheetText::tr("No longer made; look for one by %1.").arg(day(input, *need.orderBy));
    return DaySheetText::tr("Order by %1.").arg(day(input, *need.orderBy));
}

TableBlock order(const DaySheetInput& input, const TripNeeds& needs)
{
    TableBlock table{DaySheetText::tr("Order first"), {PaperColumn{{}, 1, false}, PaperColumn{{}, 5, false}}, {}, {}};
    for (const SpareNeed& need : needs.spares)
        table.rows.push_back({PaperCell{fromCore(need.unit->unit.tag), {}, {}, true},
                              PaperCell{said(input, need.why), orderWords(input, need)}});
    if (!table.rows.empty())
        table.closing = DaySheetText::tr("How long a spare takes to come is an assumption.");
    return table;
}

PaperCell whenCell(const DaySheetInput& input, const SeasonCheck& one)
{
    const Check& check = one.check();
    PaperCell cell;
    cell.text = DaySheetText::tr("until %1").arg(day(input, check.latest));
    if (one.daysLate > 0)
        cell.under = one.daysLate == 1 ? DaySheetText::tr("a day late")
                                       : DaySheetText::tr("%n days late", nullptr, one.daysLate);
    return cell;
}

TableBlock unitTable(const DaySheetInput& input, const ReviewedUnit& unit)
{
    TableBlock table;
    table.heading = fromCore(unit.unit.tag);
    table.columns = {{DaySheetText::tr("What and why"), 3.4, false},
                     {DaySheetText::tr("When"), 1.2, false},
                     {DaySheetText::tr("Needs"), 1, false},
                     {DaySheetText::tr("Done"), 0.45, false}};
    for (const SeasonCheck& one : input.trip.checks) {
        if (one.unit->unit.id != unit.unit.id)
            continue;
        QStringList needs;
        for (const Condition condition : one.check().conditions)
            needs << fromCore(input.speaker.translate(std::string(wordOf(condition))));
        PaperCell done;
        done.boxes = {QString()};
        table.rows.push_back({PaperCell{said(input, one.check().what), said(input, one.check().why)},
                              whenCell(input, one), PaperCell{needs.join(QStringLiteral(", "))}, done});
    }
    table.closing = unitLine(unit.unit, input.catalogue, input.speaker);
    if (!unit.unit.place.empty())
        table.closing = fromCore(unit.unit.place) + QStringLiteral("  ·  ") + table.closing;
    return table;
}

/// Zones looked for in vain since they were last seen, and visits begun and not closed. Promises are checks of their
/// own.
TableBlock leftOpen(const DaySheetInput& input)
{
    TableBlock table{DaySheetText::tr("Left open"), {PaperColumn{{}, 1, false}, PaperColumn{{}, 5, false}}, {}, {}};
    for (const auto& unit : input.trip.units()) {
        const UnitRecord* record = recordOf(input, unit->unit.id);
        if (record == nullptr)
            continue;
        const PartWords words(*record, input.catalogue, input.speaker);
        const auto add = [&](const QString& text) {
            table.rows.push_back({PaperCell{fromCore(unit->unit.tag), {}, {}, true}, PaperCell{text}});
        };
        for (const Visit& visit : record->visits) {
            if (visit.isOpen())
                add(DaySheetText::tr("The visit of %1 is not closed yet.").arg(day(input, visit.on)));
        }
        for (const ZoneHistory& zone : unit->review.zones) {
            if (zone.notSeenLast)
                add(DaySheetText::tr("%1: not seen on %2 (%3).")
                        .arg(words.zone(zone.zoneId), day(input, *zone.notSeenLast),
                             words.word(wordOf(zone.lastNotSeenReason.value_or(NotSeenReason::other)))));
        }
    }
    return table;
}

std::vector<std::string> cautionCodes(const DaySheetInput& input)
{
    std::vector<std::string> codes{"roofs-and-ladders"};
    for (const SeasonCheck& one : input.trip.checks) {
        for (const Part& part : one.unit->fitted) {
            const bool isMeant = one.check().checklist || one.check().partId == part.id;
            const PartKind* kind = isMeant ? input.catalogue.partKind(part.kind) : nullptr;
            if (kind != nullptr)
                codes.insert(codes.end(), kind->cautions.begin(), kind->cautions.end());
        }
    }
    return codes;
}

void addTable(PaperContent& content, TableBlock table)
{
    if (!table.rows.empty())
        content.blocks.emplace_back(std::move(table));
}

} // namespace

PaperContent daySheetContent(const DaySheetInput& input, const QString& contractor)
{
    const TripNeeds needs = tripNeeds(input.trip, input.catalogue);
    PaperContent content;
    content.documentTitle
        = DaySheetText::tr("%1, day's sheet, %2").arg(fromCore(input.site.name), day(input, input.trip.on));
    content.runningHead = QStringLiteral("%1  ·  %2").arg(fromCore(input.site.name), input.day);
    content.footer = DaySheetText::tr("Printed %1").arg(day(input, input.printedOn));
    content.blocks.emplace_back(title(input, contractor));
    addTable(content, bring(needs, input.speaker));
    addTable(content, order(input, needs));
    for (const auto& unit : input.trip.units())
        addTable(content, unitTable(input, *unit));
    addTable(content, leftOpen(input));
    addTable(content, cautionsTable(input.catalogue, input.speaker, cautionCodes(input)));
    return content;
}

} // namespace padside
