// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/paper/field_sheet.h"

#include "core/quantity/sentence.h"
#include "ui/paper/cautions_table.h"
#include "ui/paper/part_words.h"
#include "ui/paper/unit_line.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>

namespace padside {

namespace {

struct FieldSheetText
{
    Q_DECLARE_TR_FUNCTIONS(FieldSheet)
};

QString describedScale(const PartWords& words)
{
    QStringList grades;
    for (int numeral = 1; numeral <= 5; ++numeral)
        grades << QStringLiteral("%1 %2").arg(numeral).arg(words.word(wordOf(*gradeFromNumeral(numeral))));
    return FieldSheetText::tr("Grades: %1. N: not seen (say why). W wet, M damp, D dry.")
        .arg(grades.join(QStringLiteral(", ")));
}

TitleBlock title(const FieldSheetInput& input, const PartWords& words, const QString& contractor)
{
    const Unit& unit = input.record.unit;
    const Site& site = input.record.site;
    TitleBlock block;
    block.contractor = contractor;
    block.kind = FieldSheetText::tr("Field sheet, %1").arg(words.word(wordOf(input.reason)));
    block.title = QStringLiteral("%1, %2").arg(fromCore(unit.tag), fromCore(site.name));
    block.subtitle = unitLine(unit, input.catalogue, input.speaker);
    const auto blank = QStringLiteral("________________");
    block.facts = {{FieldSheetText::tr("Day"), blank},
                   {FieldSheetText::tr("Technician"), blank},
                   {FieldSheetText::tr("Weather"), blank},
                   {FieldSheetText::tr("Unit on arrival"), blank}};
    for (const auto& [label, text] :
         {std::pair{FieldSheetText::tr("Place of the unit"), unit.place},
          std::pair{FieldSheetText::tr("Address"), site.address}, std::pair{FieldSheetText::tr("Access"), site.access},
          std::pair{FieldSheetText::tr("Contact"), site.contact}}) {
        if (!text.empty())
            block.facts.push_back({label, fromCore(text)});
    }
    block.notice = describedScale(words);
    return block;
}

PaperCell toWriteOn()
{
    PaperCell cell;
    cell.toWriteOn = true;
    return cell;
}

PaperCell boxes(std::vector<QString> signs)
{
    PaperCell cell;
    cell.boxes = std::move(signs);
    return cell;
}

PaperCell lastSeen(const ZoneHistory& zone)
{
    PaperCell cell;
    if (zone.known)
        cell.marks = {zone.known->grade};
    else
        cell.marks = {zone.notSeenLast ? Mark(NotSeenMark{}) : Mark(NoMark{})};
    return cell;
}

TableBlock partTable(const FieldSheetInput& input, const PartWords& words, PartId part)
{
    TableBlock table;
    table.heading = words.part(part);
    table.columns = {{FieldSheetText::tr("Zone"), 1.7, false},
                     {FieldSheetText::tr("Last"), 1, true},
                     {FieldSheetText::tr("Today"), 2.2, false},
                     {FieldSheetText::tr("Wet?"), 1.05, false},
                     {FieldSheetText::tr("Note"), 1.7, false}};
    const QString notSeen = FieldSheetText::tr("N", "not seen, one letter");
    for (const ZoneHistory& zone : input.review.zones) {
        const Zone* named = zone.partId == part ? findZone(input.record, zone.zoneId) : nullptr;
        if (named == nullptr)
            continue;
        const QString since = zone.known ? words.day(zone.known->on) : FieldSheetText::tr("never seen");
        table.rows.push_back(
            {PaperCell{capitalised(words.word(named->name)), since, {}, false, true}, lastSeen(zone),
             boxes({QStringLiteral("1"), QStringLiteral("2"), QStringLiteral("3"), QStringLiteral("4"),
                    QStringLiteral("5"), notSeen}),
             boxes({FieldSheetText::tr("W", "wet, one letter"), FieldSheetText::tr("M", "damp, one letter"),
                    FieldSheetText::tr("D", "dry, one letter")}),
             toWriteOn()});
    }
    return table;
}

bool isAskedFor(const FieldSheetInput& input, const ReadingKind& kind)
{
    const bool inSeason = kind.seasons.empty() || std::ranges::find(kind.seasons, input.reason) != kind.seasons.end();
    const bool isFitted = kind.partKind.empty() || std::ranges::any_of(input.record.parts, [&](const Part& part) {
                              return part.kind == kind.partKind && !part.removedOn;
                          });
    return isFitted && (inSeason || input.reason == VisitReason::callOut);
}

TableBlock readings(const FieldSheetInput& input, const PartWords& words)
{
    TableBlock table;
    table.heading = FieldSheetText::tr("Readings");
    table.columns = {{FieldSheetText::tr("What and where"), 3, false},
                     {FieldSheetText::tr("Last"), 1.4, false},
                     {FieldSheetText::tr("Today, with its unit"), 1.6, false}};
    const std::vector<Reading> all = standing(input.record.readings);
    for (const ReadingKind& kind : input.catalogue.readingKinds()) {
        if (!isAskedFor(input, kind))
            continue;
        PaperCell last;
        const auto reading
            = std::find_if(all.rbegin(), all.rend(), [&](const Reading& one) { return one.kind == kind.code; });
        if (reading != all.rend()) {
            last.text = words.amount(reading->value.si, reading->value.kind);
            last.under = words.day(reading->on);
        }
        table.rows.push_back({PaperCell{capitalised(words.word(kind.name)), words.word(kind.where), {}, false, true},
                              last, toWriteOn()});
    }
    return table;
}

TableBlock workAndNotes()
{
    TableBlock table{FieldSheetText::tr("Work done, to come back for"), {PaperColumn{}}, {}, {}};
    for (int line = 0; line < 5; ++line)
        table.rows.push_back({toWriteOn()});
    return table;
}

std::vector<std::string> cautionCodes(const FieldSheetInput& input)
{
    std::vector<std::string> codes{"roofs-and-ladders"};
    for (const Part& part : input.record.parts) {
        const PartKind* kind = part.removedOn ? nullptr : input.catalogue.partKind(part.kind);
        if (kind != nullptr)
            codes.insert(codes.end(), kind->cautions.begin(), kind->cautions.end());
    }
    return codes;
}

} // namespace

PaperContent fieldSheetContent(const FieldSheetInput& input, const QString& contractor)
{
    const PartWords words(input.record, input.catalogue, input.speaker);
    const QString tag = fromCore(input.record.unit.tag);
    PaperContent content;
    content.documentTitle = FieldSheetText::tr("%1, field sheet").arg(tag);
    content.runningHead = QStringLiteral("%1  ·  %2").arg(tag, fromCore(input.record.site.name));
    content.footer = FieldSheetText::tr("Printed %1").arg(words.day(input.printedOn));
    content.blocks.emplace_back(title(input, words, contractor));
    std::vector<PartId> parts;
    for (const ZoneHistory& zone : input.review.zones) {
        if (std::ranges::find(parts, zone.partId) == parts.end())
            parts.push_back(zone.partId);
    }
    for (const PartId part : parts)
        content.blocks.emplace_back(partTable(input, words, part));
    if (TableBlock table = readings(input, words); !table.rows.empty())
        content.blocks.emplace_back(std::move(table));
    content.blocks.emplace_back(workAndNotes());
    content.blocks.emplace_back(cautionsTable(input.catalogue, input.speaker, cautionCodes(input)));
    content.blocks.emplace_back(SignatureBlock{{FieldSheetText::tr("Technician"), FieldSheetText::tr("Day")}});
    return content;
}

} // namespace padside
