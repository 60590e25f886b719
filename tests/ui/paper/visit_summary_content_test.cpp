// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/ui/paper/summary_fixture.h"

#include <gtest/gtest.h>

namespace padside::test {

namespace {

using Qt::Literals::StringLiterals::operator""_s;

const std::vector<PaperCell>* rowOf(const TableBlock* table, const QString& first)
{
    if (!table)
        return nullptr;
    for (const auto& row : table->rows) {
        if (row.front().text == first)
            return &row;
    }
    return nullptr;
}

QString allText(const TableBlock& table)
{
    QString text = table.closing;
    for (const auto& row : table.rows) {
        for (const PaperCell& cell : row)
            text += cell.text + u' ' + cell.under + u'\n';
    }
    return text;
}

RecordBuilder visitToAContactor()
{
    return aUnit("HB-07").withPart("contactor", {"contact-points"}).visit("2026-05-04");
}

std::vector<std::vector<PaperCell>> workRows(UnitRecord record)
{
    const PaperContent content = visitSummaryContent(summaryOf(std::move(record)));
    const auto* work = blockCalled<TableBlock>(content, u"Work done"_s);
    EXPECT_TRUE(work);
    return work ? work->rows : std::vector<std::vector<PaperCell>>();
}

} // namespace

TEST(VisitSummaryContent, BlocksComeInTheirOrder)
{
    const PaperContent content = visitSummaryContent(summaryOf(ordinaryRecord(), 2, 2));
    QStringList headings;
    for (const PaperBlock& block : content.blocks) {
        if (const auto* table = std::get_if<TableBlock>(&block))
            headings << table->heading;
        else if (const auto* photos = std::get_if<PhotoBlock>(&block))
            headings << photos->heading;
    }
    EXPECT_EQ(headings,
              (QStringList{u"Note"_s, u"Flags"_s, u"Work done"_s, u"Photographs"_s, u"Next checks"_s, u"What changed"_s,
                           u"Readings"_s, u"Cautions"_s}))
        << "first what to decide on and what was done, then the evidence";
    EXPECT_TRUE(std::holds_alternative<TitleBlock>(content.blocks.front()));
    EXPECT_TRUE(std::holds_alternative<SignatureBlock>(content.blocks.back()));
}

TEST(VisitSummaryContent, TheTitleSaysWhoWhereWhenAndUntilWhenToKeepOff)
{
    const PaperContent content = visitSummaryContent(summaryOf(ordinaryRecord()));
    const auto& title = std::get<TitleBlock>(content.blocks.front());
    EXPECT_EQ(title.contractor, u"Breakwater Cooling and Heating"_s);
    EXPECT_EQ(title.title, u"HB-03, Quay House"_s);
    EXPECT_EQ(title.subtitle, u"Split air conditioner  ·  Brightwater BW-36C  ·  serial 11-20457  ·  R-22"_s);
    EXPECT_EQ(title.facts.at(0).text, u"2026-05-04, spring"_s);
    EXPECT_EQ(title.facts.at(2).text, u"18.0 °C, 62 % humidity, cloudy"_s);
    EXPECT_EQ(title.notice, u"Keep the unit off and dry until 16:30."_s);
}

TEST(VisitSummaryContent, AnOpenVisitSaysThatItIsOpen)
{
    UnitRecord record = ordinaryRecord();
    record.visits.back().closedAt.reset();
    const PaperContent content = visitSummaryContent(summaryOf(std::move(record)));
    EXPECT_TRUE(std::get<TitleBlock>(content.blocks.front()).notice.contains(u"still open"));
}

TEST(VisitSummaryContent, AWorseZoneShowsThenAndNowWithTheCataloguesSentence)
{
    const PaperContent content = visitSummaryContent(summaryOf(ordinaryRecord()));
    const auto* row = rowOf(blockCalled<TableBlock>(content, u"What changed"_s), u"Suction accumulator, bottom"_s);
    ASSERT_TRUE(row);
    EXPECT_EQ(row->at(1).marks, (std::vector<Mark>{Grade::marked, Grade::poor}));
    EXPECT_EQ(row->at(2).text.toStdString(), shipped().gradeSentence("suction-accumulator", "bottom", Grade::poor));
    EXPECT_FALSE(row->at(2).text.isEmpty());
    EXPECT_EQ(row->at(2).under, u"Worse since 2025-10-09."_s);
}

TEST(VisitSummaryContent, AZoneNotSeenIsHatchedWithItsReasonAndNeverCountsAsSound)
{
    const PaperContent content = visitSummaryContent(summaryOf(ordinaryRecord()));
    const auto* row = rowOf(blockCalled<TableBlock>(content, u"What changed"_s), u"Suction accumulator, joints"_s);
    ASSERT_TRUE(row);
    EXPECT_EQ(row->at(1).marks, (std::vector<Mark>{Grade::sound, NotSeenMark{}}));
    EXPECT_EQ(row->at(2).text, u"Not seen: covered by a panel or jacket"_s);
}

TEST(VisitSummaryContent, SoundZonesThatStayedSoAreSummedUpInOneLine)
{
    const PaperContent content = visitSummaryContent(summaryOf(ordinaryRecord()));
    const auto* changed = blockCalled<TableBlock>(content, u"What changed"_s);
    ASSERT_TRUE(changed);
    // 25 zones: three worse and marked at least, one worse but only worn, one not seen, three unchanged at grade 3.
    EXPECT_EQ(changed->rows.size(), 4U);
    EXPECT_TRUE(changed->closing.contains(u"Sound before, worn now: "_s)) << changed->closing.toStdString();
    EXPECT_TRUE(changed->closing.contains(u"(grade 1 or 2): 17.")) << changed->closing.toStdString();
    EXPECT_TRUE(changed->closing.contains(u"Unchanged at grade 3, marked: ")) << changed->closing.toStdString();
    for (const char* zone : {"Suction accumulator, strap", "Contactor, contactor-a", "Cabinet, cabinet-b"})
        EXPECT_TRUE(changed->closing.contains(QString::fromLatin1(zone))) << changed->closing.toStdString();
}

TEST(VisitSummaryContent, AVisitWithoutFindingsSaysSo)
{
    const UnitRecord record = aUnit("HB-09").withPart("cabinet", {"seams"}).visit("2026-05-04").build();
    const PaperContent content = visitSummaryContent(summaryOf(record));
    const auto* changed = blockCalled<TableBlock>(content, u"What changed"_s);
    ASSERT_TRUE(changed);
    EXPECT_EQ(changed->closing, u"No zone was graded at this visit. Zones not looked at this time: 1."_s);
    EXPECT_FALSE(blockCalled<TableBlock>(content, u"Readings"_s));
    EXPECT_FALSE(blockCalled<TableBlock>(content, u"Flags"_s));
    EXPECT_FALSE(blockCalled<PhotoBlock>(content, u"Photographs"_s));
}

TEST(VisitSummaryContent, AReadingShowsTheReadersUnitTheTypedTextAndTheLastValue)
{
    const PaperContent content = visitSummaryContent(summaryOf(ordinaryRecord()));
    const auto* row = rowOf(blockCalled<TableBlock>(content, u"Readings"_s), u"Suction pressure"_s);
    ASSERT_TRUE(row);
    // 468843 Pa - 21000 Pa and 468843 Pa + 9000 Pa, in whole kilopascal.
    EXPECT_EQ(row->at(1).text, u"448 kPa (typed: 65 psig)"_s);
    EXPECT_EQ(row->at(2).text, u"478 kPa on 2025-10-09"_s);
}

TEST(VisitSummaryContent, AReadingTypedAsItIsShownIsNotRepeated)
{
    UnitRecord record = ordinaryRecord();
    record.readings[18].value.typed = "12.2°C";
    const PaperContent content = visitSummaryContent(summaryOf(std::move(record)));
    const auto* readings = blockCalled<TableBlock>(content, u"Readings"_s);
    ASSERT_TRUE(readings);
    EXPECT_EQ(readings->rows.at(2).at(1).text, u"12.2 °C"_s);
}

TEST(VisitSummaryContent, WorkShowsAsFoundAsLeftTheProductAndTheDryByTime)
{
    const auto rows = workRows(ordinaryRecord());
    ASSERT_EQ(rows.size(), 3U);
    EXPECT_EQ(rows[0][1].marks, (std::vector<Mark>{Grade::poor, Grade::worn}));
    EXPECT_EQ(rows[1][1].marks, (std::vector<Mark>{Grade::poor, NoMark{}}));
    EXPECT_EQ(rows[1][2].text, u"Brush and coat: zinc-free primer, two coats"_s);
    EXPECT_EQ(rows[1][2].under, u"Keep off and dry until 16:30."_s);
}

TEST(VisitSummaryContent, APartReplacedAndTheNewOneFittedShareARow)
{
    RecordBuilder unit = visitToAContactor();
    unit.treated("contact-points", TreatmentKind::replace).replacedPart("contactor", "2026-05-04");
    const auto rows = workRows(unit.build());
    ASSERT_EQ(rows.size(), 1U);
    EXPECT_EQ(rows[0][2].text, u"Replace"_s);
    EXPECT_EQ(rows[0][2].under, u"New part fitted."_s);
}

TEST(VisitSummaryContent, ANewPartFittedWithoutAWordOfTheOldHasARowOfItsOwn)
{
    RecordBuilder unit = visitToAContactor();
    unit.replacedPart("contactor", "2026-05-04");
    const auto rows = workRows(unit.build());
    ASSERT_EQ(rows.size(), 1U);
    EXPECT_EQ(rows[0][2].text, u"New part fitted."_s);
}

TEST(VisitSummaryContent, ADryByTimeOnAnotherDayNamesTheDay)
{
    UnitRecord record = ordinaryRecord();
    record.treatments[1].dryBy->utc += std::chrono::hours(24);
    const PaperContent content = visitSummaryContent(summaryOf(std::move(record)));
    EXPECT_EQ(std::get<TitleBlock>(content.blocks.front()).notice,
              u"Keep the unit off and dry until 2026-05-05 16:30."_s);
}

TEST(VisitSummaryContent, RefrigerantInIsListed)
{
    UnitRecord record = ordinaryRecord();
    ChargeEntry charge;
    charge.id = ChargeId(UuidBytes{7});
    charge.unitId = record.unit.id;
    charge.visitId = record.visits.back().id;
    charge.on = record.visits.back().on;
    charge.refrigerant = "R-22";
    charge.mass = Measure{0.35, QuantityKind::mass, "kg", "0.35 kg"};
    charge.cylinder = "C-12";
    charge.because = "leak";
    record.charges.push_back(charge);
    const PaperContent content = visitSummaryContent(summaryOf(std::move(record)));
    const auto* row = rowOf(blockCalled<TableBlock>(content, u"Refrigerant"_s), u"R-22 added"_s);
    ASSERT_TRUE(row);
    EXPECT_TRUE(row->at(1).text.startsWith(u"0.35")) << row->at(1).text.toStdString();
    EXPECT_EQ(row->at(2).text, u"C-12, leak"_s);
}

/// The ordinary record, its unit holding 3 kg, with this much added on a day.
UnitRecord withCharge(double kilograms, const char* on, const UnitRecord& base)
{
    UnitRecord record = base;
    ChargeEntry charge;
    charge.id = ChargeId(UuidBytes{static_cast<std::uint8_t>(1 + record.charges.size())});
    charge.unitId = record.unit.id;
    charge.visitId = record.visits.front().id;
    for (const Visit& visit : record.visits) {
        if (visit.on == day(on))
            charge.visitId = visit.id;
    }
    charge.on = day(on);
    charge.refrigerant = record.unit.refrigerant;
    charge.mass = Measure{kilograms, QuantityKind::mass, "kg", {}};
    record.charges.push_back(charge);
    std::erase_if(record.unit.nameplate, [](const NameplateValue& one) { return one.item == "charge"; });
    record.unit.nameplate.push_back(NameplateValue{"charge", Measure{3, QuantityKind::mass, "kg", {}}});
    return record;
}

TEST(VisitSummaryContent, WhereRefrigerantWasMovedTheAccountSaysWhatItMeans)
{
    const PaperContent content = visitSummaryContent(summaryOf(withCharge(0.6, "2026-05-04", ordinaryRecord())));
    const auto* refrigerant = blockCalled<TableBlock>(content, u"Refrigerant"_s);
    ASSERT_TRUE(refrigerant);
    EXPECT_TRUE(refrigerant->closing.contains(u"20.0 % of the full charge a year"_s))
        << refrigerant->closing.toStdString();
    EXPECT_TRUE(refrigerant->closing.contains(u"Limit: 10.0 % a year, advisory"_s));
}

TEST(VisitSummaryContent, ALeakKnownFromTheYearBeforeIsToldAgain)
{
    const UnitRecord record = ordinaryRecord();
    ASSERT_GE(record.visits.size(), 2U);
    const Date before = record.visits[record.visits.size() - 2].on;
    ASSERT_LE((day("2026-05-04") - before).count(), 365);
    const PaperContent content = visitSummaryContent(summaryOf(withCharge(0.6, isoText(before).c_str(), record)));
    const auto* refrigerant = blockCalled<TableBlock>(content, u"Refrigerant"_s);
    ASSERT_TRUE(refrigerant);
    EXPECT_TRUE(refrigerant->rows.empty());
    EXPECT_TRUE(refrigerant->closing.contains(u"Leak rate"_s));
    EXPECT_EQ(blockCalled<TableBlock>(visitSummaryContent(summaryOf(record)), u"Refrigerant"_s), nullptr);
}

TEST(VisitSummaryContent, PhotosAreTheTellingPairsAndTheRestIsCounted)
{
    const PaperContent content = visitSummaryContent(summaryOf(ordinaryRecord()));
    const auto* photos = blockCalled<PhotoBlock>(content, u"Photographs"_s);
    ASSERT_TRUE(photos);
    ASSERT_EQ(photos->pairs.size(), 4U);
    EXPECT_EQ(photos->pairs[0].zone, u"Base pan, base-pan-b"_s); // worse, and shown before and after the work
    EXPECT_EQ(photos->pairs[0].first.when, u"As found, 2026-05-04"_s);
    ASSERT_TRUE(photos->pairs[0].second);
    EXPECT_EQ(photos->pairs[0].second->when, u"As left, 2026-05-04"_s);
    EXPECT_EQ(photos->pairs[0].second->mark, Mark(Grade::worn));
    EXPECT_EQ(photos->pairs[1].first.when, u"Last time, 2025-10-09"_s);
    EXPECT_EQ(photos->pairs[1].first.mark, Mark(Grade::marked));
    EXPECT_EQ(photos->closing, u"More of this visit in the record: 1"_s);
}

TEST(VisitSummaryContent, CautionsAreThoseForAlwaysAndThoseOfThePartsWorkedOn)
{
    const auto cautions = [](const UnitRecord& record) {
        return allText(*blockCalled<TableBlock>(visitSummaryContent(summaryOf(record)), u"Cautions"_s));
    };
    const QString worked = cautions(ordinaryRecord());
    EXPECT_TRUE(worked.contains(u"pitted vessel"));
    EXPECT_TRUE(worked.contains(u"licensed technician come first"));
    UnitRecord idle = ordinaryRecord();
    idle.treatments.clear();
    EXPECT_FALSE(cautions(idle).contains(u"pitted vessel"));
    EXPECT_TRUE(cautions(idle).contains(u"licensed technician come first"));
    // What nearly every caution ends in is printed once.
    EXPECT_EQ(worked.count(u"Follow local codes and the maker's instructions"_s), 1);
}

TEST(VisitSummaryContent, ChecksNameTheirWindowConditionsAndReason)
{
    const PaperContent content = visitSummaryContent(summaryOf(ordinaryRecord(), 0, 1));
    const auto* checks = blockCalled<TableBlock>(content, u"Next checks"_s);
    ASSERT_TRUE(checks);
    EXPECT_EQ(checks->rows.at(0).at(0).text, u"Suction accumulator, bottom: look again, number 0"_s);
    EXPECT_EQ(checks->rows.at(0).at(0).under, u"It was damp today; what lies under the water was not seen."_s);
    EXPECT_EQ(checks->rows.at(0).at(1).text, u"2026-09-04 to 2026-11-04"_s);
    EXPECT_EQ(checks->rows.at(0).at(1).under, u"Dry, unit off"_s);
}

TEST(VisitSummaryContent, ACheckWhoseWindowIsOverIsOverdueAndNotAnAppointmentInThePast)
{
    SummaryInput input = summaryOf(ordinaryRecord(), 0, 1);
    input.review.today = input.review.checks.front().latest + std::chrono::days(1);
    const PaperContent content = visitSummaryContent(input);
    EXPECT_EQ(blockCalled<TableBlock>(content, u"Next checks"_s)->rows.at(0).at(1).text, u"Overdue since 2026-11-04"_s);
}

TEST(VisitSummaryContent, OnlyTheFirstFiveChecksStandOnPaperAndTheRestAreCounted)
{
    const PaperContent content = visitSummaryContent(summaryOf(ordinaryRecord(), 0, 9));
    const auto* checks = blockCalled<TableBlock>(content, u"Next checks"_s);
    EXPECT_EQ(checks->rows.size(), 5U);
    EXPECT_EQ(checks->closing, u"Later checks in the record: 4."_s);
}

TEST(VisitSummaryContent, OnlyTheFirstSixFlagsStandOnPaperAndTheRestAreCounted)
{
    const PaperContent content = visitSummaryContent(summaryOf(ordinaryRecord(), 9));
    const auto* flags = blockCalled<TableBlock>(content, u"Flags"_s);
    EXPECT_EQ(flags->rows.size(), 6U);
    EXPECT_TRUE(flags->closing.endsWith(u"less pressing: 3."_s)) << flags->closing.toStdString();
}

TEST(VisitSummaryContent, WhatClearsMostFlagsIsSaidOnceAndOnlyTheOthersSayTheirOwn)
{
    SummaryInput input = summaryOf(ordinaryRecord(), 3);
    input.review.flags[1].clears = Sentence{"The leak found.", {}};
    const PaperContent content = visitSummaryContent(input);
    const auto* flags = blockCalled<TableBlock>(content, u"Flags"_s);
    ASSERT_TRUE(flags);
    ASSERT_EQ(flags->rows.size(), 3U);
    EXPECT_TRUE(flags->rows[0][1].under.isEmpty());
    EXPECT_EQ(flags->rows[1][1].under, u"Cleared by: The leak found."_s);
    EXPECT_TRUE(flags->closing.contains(u"cleared by: a grade of 3 or better after work"_s))
        << flags->closing.toStdString();
}

TEST(VisitSummaryContent, ACheckOfAFlaggedZoneLeavesTheReasonToItsFlag)
{
    SummaryInput input = summaryOf(ordinaryRecord(), 1, 2);
    const ZoneId zone = input.record.parts.front().zones.front().id;
    input.review.flags[0].zoneId = zone;
    input.review.checks[0].zoneId = zone;
    const PaperContent content = visitSummaryContent(input);
    const auto* checks = blockCalled<TableBlock>(content, u"Next checks"_s);
    ASSERT_TRUE(checks);
    EXPECT_TRUE(checks->rows[0][0].under.isEmpty());
    EXPECT_FALSE(checks->rows[1][0].under.isEmpty());
}

TEST(VisitSummaryContent, FlagsSayHowSoonAndWhatClearsThem)
{
    const PaperContent content = visitSummaryContent(summaryOf(ordinaryRecord(), 1));
    const auto* flags = blockCalled<TableBlock>(content, u"Flags"_s);
    ASSERT_TRUE(flags);
    EXPECT_EQ(flags->rows.at(0).at(0).text, u"Act"_s);
    EXPECT_TRUE(flags->rows.at(0).at(1).under.contains(u"a grade of 3 or better after work"));
}

TEST(VisitSummaryContent, ReadingsPastTheirLimitAreExplainedWithTheirSource)
{
    UnitRecord record = ordinaryRecord();
    record.unit.metering = Metering::thermostaticValve;
    for (Reading& reading : record.readings) {
        if (reading.kind == "suction-line-temperature")
            reading.value.si = 297; // R-22 at this pressure boils near 4 °C: superheat about 20 K
    }
    const PaperContent content = visitSummaryContent(summaryOf(std::move(record)));
    const auto* table = blockCalled<TableBlock>(content, u"What the readings mean"_s);
    ASSERT_TRUE(table);
    const auto* row = rowOf(table, u"Outside"_s);
    ASSERT_TRUE(row) << allText(*table).toStdString();
    EXPECT_TRUE(row->at(1).text.startsWith(u"Superheat"_s));
    EXPECT_TRUE(row->at(1).under.contains(u"Title 24"_s)) << "where the limit comes from";
    EXPECT_TRUE(table->closing.contains(u"as asked for"_s));
}

TEST(VisitSummaryContent, WhereAllIsAsAskedForNoMeaningTakesRoom)
{
    const PaperContent content = visitSummaryContent(summaryOf(ordinaryRecord()));
    const auto* table = blockCalled<TableBlock>(content, u"What the readings mean"_s);
    EXPECT_FALSE(table) << (table ? allText(*table).toStdString() : std::string());
}

TEST(VisitSummaryContent, AGaugedWallSaysHowLongItLasts)
{
    UnitRecord record = ordinaryRecord();
    const Part& vessel = *std::ranges::find(record.parts, "suction-accumulator", &Part::kind);
    const auto gauged = [&](const Visit& visit, double millimetres) {
        Reading reading;
        reading.id = ReadingId(UuidBytes{static_cast<std::uint8_t>(record.readings.size() + 1)});
        reading.unitId = record.unit.id;
        reading.visitId = visit.id;
        reading.on = visit.on;
        reading.kind = "wall-thickness";
        reading.partId = vessel.id;
        reading.zoneId = vessel.zones.front().id;
        reading.value = {millimetres * 1e-3, QuantityKind::length, "mm", std::to_string(millimetres)};
        record.readings.push_back(reading);
    };
    gauged(record.visits.front(), 3.2);
    gauged(record.visits.back(), 2.1);
    const PaperContent content = visitSummaryContent(summaryOf(std::move(record)));
    const auto* table = blockCalled<TableBlock>(content, u"What the readings mean"_s);
    ASSERT_TRUE(table);
    EXPECT_TRUE(allText(*table).contains(u"70.0 %"_s) || allText(*table).contains(u"must be left"_s))
        << allText(*table).toStdString();
}

} // namespace padside::test
