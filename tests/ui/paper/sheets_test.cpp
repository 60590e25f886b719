// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

// The day's sheet and the field sheet, read back by poppler.

#include "core/quantity/sentence.h"
#include "tests/support/record_builder.h"
#include "tests/ui/paper/summary_fixture.h"
#include "ui/paper/day_sheet.h"
#include "ui/paper/field_sheet.h"
#include "ui/paper/page_maker.h"
#include "ui/paper/sheet.h"
#include "ui/paper/visit_summary.h"

#include <QProcess>
#include <QTemporaryDir>

#include <gtest/gtest.h>

namespace padside::test {

namespace {

using Qt::Literals::StringLiterals::operator""_s;

const Date today = day("2026-05-10");

QString textOf(const PaperContent& content, PaperSize size = PaperSize::a4)
{
    const QTemporaryDir folder;
    const QString path = folder.filePath(u"sheet.pdf"_s);
    EXPECT_TRUE(writePdf(makePages(content, size), {}, path));
    QProcess process;
    process.start(u"pdftotext"_s, {u"-raw"_s, path, u"-"_s});
    EXPECT_TRUE(process.waitForFinished(30000)) << "pdftotext is missing: install poppler-utils";
    return QString::fromUtf8(process.readAllStandardOutput()).simplified();
}

void expectAll(const QString& text, std::initializer_list<QString> expected)
{
    for (const QString& one : expected)
        EXPECT_TRUE(text.contains(one)) << one.toStdString() << "\n in \n" << text.toStdString();
}

/// Every check of the ordinary record on one day.
DaySheetInput oneDay(UnitRecord record)
{
    record.site.address = "3 Harbour Lane";
    record.site.access = "Gate at the back, beware of the dog";
    record.site.contact = "Ask at the desk";
    record.unit.place = "north wall";
    const auto unit
        = std::make_shared<const ReviewedUnit>(reviewedUnit(record, shipped(), OutlookModel(shipped()), today));
    SeasonTrip trip;
    trip.on = day("2026-06-01");
    for (std::size_t i = 0; i < unit->review.checks.size(); ++i)
        trip.checks.push_back(SeasonCheck{unit, i, 0});
    return DaySheetInput{record.site, trip, {record}, shipped(), plainEnglish(), u"Monday 2026-06-01"_s, today};
}

FieldSheetInput blank(UnitRecord record, VisitReason reason = VisitReason::fall)
{
    UnitReview reviewed = review(record, shipped(), today);
    return FieldSheetInput{std::move(record), std::move(reviewed), reason, shipped(), plainEnglish(), today};
}

} // namespace

TEST(DaySheet, SaysWhereHowToGetInAndWhomToAsk)
{
    expectAll(textOf(daySheetContent(oneDay(ordinaryRecord()), u"Breakwater"_s)),
              {u"Quay House"_s, u"Monday 2026-06-01"_s, u"3 Harbour Lane"_s, u"Gate at the back, beware of the dog"_s,
               u"Ask at the desk"_s, u"Breakwater"_s, u"Page 1 of"_s});
}

TEST(DaySheet, NamesEveryCheckWithItsReasonConditionsAndLastDay)
{
    const DaySheetInput input = oneDay(ordinaryRecord());
    const PaperContent content = daySheetContent(input, {});
    const auto* table = blockCalled<TableBlock>(content, u"HB-03"_s);
    ASSERT_TRUE(table);
    ASSERT_EQ(table->rows.size(), input.trip.checks.size());
    for (std::size_t i = 0; i < table->rows.size(); ++i) {
        const Check& check = input.trip.checks[i].check();
        EXPECT_EQ(table->rows[i][0].text.toStdString(), say(check.what));
        EXPECT_EQ(table->rows[i][0].under.toStdString(), say(check.why));
        EXPECT_TRUE(table->rows[i][1].text.contains(QString::fromStdString(isoText(check.latest))));
        EXPECT_EQ(table->rows[i][2].text.isEmpty(), check.conditions.empty());
        EXPECT_EQ(table->rows[i][3].boxes.size(), 1) << "a box to tick";
    }
    EXPECT_TRUE(table->closing.contains(u"north wall"));
}

TEST(DaySheet, NamesWhatToBringToOrderAndWhatWasLeftOpen)
{
    const QString text = textOf(daySheetContent(oneDay(ordinaryRecord()), {}));
    expectAll(text,
              {u"Bring"_s, u"Leak detector"_s, u"Clip-on ammeter"_s, u"Order first"_s, u"Suction accumulator, bottom"_s,
               u"Left open"_s, u"not seen on 2026-05-04"_s});
}

TEST(DaySheet, CarriesTheCautionsOfWhatIsWorkedOn)
{
    expectAll(textOf(daySheetContent(oneDay(ordinaryRecord()), {})),
              {u"Cautions"_s, u"locked, tagged and proved dead"_s, u"Capacitors hold a charge"_s,
               u"under pressure and its strength is unknown"_s, u"recovered, never vented"_s, u"On roofs and ladders"_s,
               u"licensed work only"_s});
}

TEST(DaySheet, SaysWhenTheDayComesTooLate)
{
    DaySheetInput input = oneDay(ordinaryRecord());
    input.trip.checks.front().daysLate = 12;
    expectAll(textOf(daySheetContent(input, {})), {u"comes late, by up to 12 days."_s, u"12 days late"_s});
}

TEST(FieldSheet, EveryZoneHasItsLastGradeAndEmptyBoxesForToday)
{
    const FieldSheetInput input = blank(ordinaryRecord());
    std::size_t zones = 0;
    for (const PaperBlock& block : fieldSheetContent(input, {}).blocks) {
        const auto* table = std::get_if<TableBlock>(&block);
        if (!table || table->columns.size() != 5)
            continue;
        for (const auto& row : table->rows) {
            ++zones;
            EXPECT_EQ(row[1].marks.size(), 1);
            EXPECT_EQ(row[2].boxes.size(), 6) << "1 to 5 and not seen";
            EXPECT_EQ(row[3].boxes.size(), 3);
            EXPECT_TRUE(row[4].toWriteOn);
        }
    }
    EXPECT_EQ(zones, input.review.zones.size());
}

TEST(FieldSheet, IsReadBackFromThePdfOnBothPapers)
{
    for (const PaperSize size : {PaperSize::a4, PaperSize::letter})
        expectAll(textOf(fieldSheetContent(blank(ordinaryRecord()), u"Breakwater"_s), size),
                  {u"HB-03, Quay House"_s, u"Field sheet, fall"_s, u"Suction accumulator"_s, u"2026-05-04"_s,
                   u"1 2 3 4 5 N"_s, u"1 sound, 2 worn, 3 marked, 4 poor, 5 spent"_s, u"Readings"_s, u"Technician"_s,
                   u"Cautions"_s, u"Page 2 of"_s});
}

TEST(FieldSheet, AsksForTheReadingsOfItsSeasonAndOfThePartsThatAreFitted)
{
    const FieldSheetInput input = blank(ordinaryRecord());
    const PaperContent content = fieldSheetContent(input, {});
    const auto* table = blockCalled<TableBlock>(content, u"Readings"_s);
    ASSERT_TRUE(table);
    std::size_t expected = 0;
    for (const ReadingKind& kind : shipped().readingKinds()) {
        const bool fitted = kind.partKind.empty()
            || std::ranges::any_of(input.record.parts, [&](const Part& part) { return part.kind == kind.partKind; });
        expected
            += fitted && (kind.seasons.empty() || std::ranges::count(kind.seasons, VisitReason::fall) > 0) ? 1U : 0U;
    }
    EXPECT_EQ(table->rows.size(), expected);
    EXPECT_GT(expected, 0);
}

TEST(FieldSheet, AUnitWithoutAnyPartStillGivesASheet)
{
    expectAll(textOf(fieldSheetContent(blank(aUnit("HB-09").build()), {})), {u"HB-09"_s, u"Cautions"_s});
}

TEST(Sheet, ItsFileNameHoldsNoForbiddenSign)
{
    EXPECT_EQ(pdfFileName(u"Quay/House: 2026 "_s), u"QuayHouse 2026.pdf"_s);
}

} // namespace padside::test
