// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/store/forecast_book.h"
#include "core/store/photo_files.h"
#include "core/store/site_book.h"
#include "core/store/verify.h"
#include "core/store/visit_book.h"
#include "tests/sample-db/sample_fixture.h"

#include <QFile>
#include <QImage>

#include <algorithm>
#include <gtest/gtest.h>
#include <set>

using namespace padside;
using namespace padside::test;

namespace {

template <typename Count> auto over(const std::vector<UnitRecord>& records, Count count)
{
    std::ptrdiff_t sum = 0;
    for (const UnitRecord& record : records)
        sum += count(record);
    return sum;
}

} // namespace

TEST(Sample, HasTheTownOfTheIssueInItsNumbers)
{
    const auto records = plainSample().records();
    EXPECT_EQ(records.size(), 14U);
    EXPECT_EQ(plainSample().store->sites().sites().size(), 8U);
    const auto visits = over(records, [](const UnitRecord& one) { return std::ssize(one.visits); });
    EXPECT_GE(visits, 180);
    EXPECT_LE(visits, 230);
    std::set<int> years;
    std::set<std::string> refrigerants;
    std::set<std::string> kinds;
    for (const UnitRecord& record : records) {
        refrigerants.insert(record.unit.refrigerant);
        kinds.insert(record.unit.kind);
        for (const Visit& visit : record.visits)
            years.insert(yearOf(visit.on));
    }
    EXPECT_EQ(years.size(), 8U);
    EXPECT_EQ(refrigerants, (std::set<std::string>{"R-22", "R-32", "R-410A", "R-454B"}));
    EXPECT_EQ(kinds.size(), 2U);
}

TEST(Sample, KeepsWhatWasForetoldAtEachClosing)
{
    std::size_t forecasts = 0;
    for (const UnitRecord& record : plainSample().records()) {
        std::set<VisitId> foretold;
        for (const KeptForecast& one : plainSample().store->forecasts().of(record.unit.id)) {
            foretold.insert(one.visitId);
            const Part* part = partOfZone(record, one.zoneId);
            ASSERT_NE(part, nullptr);
            EXPECT_TRUE(!part->fittedOn || *part->fittedOn <= one.on) << "a part that was not there yet";
            EXPECT_TRUE(!part->removedOn || *part->removedOn > one.on) << "a part that was gone";
            ++forecasts;
        }
        for (const Visit& visit : record.visits) {
            const bool retiredThen = record.unit.retiredOn && *record.unit.retiredOn <= visit.on;
            EXPECT_EQ(foretold.contains(visit.id), !visit.isOpen() && !retiredThen) << record.unit.tag;
        }
    }
    EXPECT_GT(forecasts, 5000U);
}

TEST(Sample, IsFoundSoundByVerify)
{
    const VerifyReport report = verify(*plainSample().store);
    for (const Sentence& complaint : report.complaints)
        ADD_FAILURE() << say(complaint);
    EXPECT_GT(report.findings, 2000);
    EXPECT_GT(report.readings, 1000);
}

TEST(Sample, UsesOnlyCodesTheCatalogueKnows)
{
    for (const UnitRecord& record : plainSample().records()) {
        EXPECT_NE(shipped().unitKind(record.unit.kind), nullptr);
        for (const NameplateValue& line : record.unit.nameplate)
            EXPECT_NE(shipped().nameplateItem(line.item), nullptr) << line.item;
        for (const Reading& reading : record.readings) {
            const ReadingKind* kind = shipped().readingKind(reading.kind);
            ASSERT_NE(kind, nullptr) << reading.kind;
            EXPECT_EQ(kind->quantity, reading.value.kind) << reading.kind;
        }
    }
}

TEST(Sample, ReadingsLieWhereTheCatalogueFindsThemPlausible)
{
    for (const UnitRecord& record : plainSample().records()) {
        for (const Reading& reading : record.readings) {
            const ReadingKind* kind = shipped().readingKind(reading.kind);
            EXPECT_GE(reading.value.si, kind->lowest)
                << record.unit.tag << ' ' << reading.kind << ' ' << reading.value.typed;
            EXPECT_LE(reading.value.si, kind->highest)
                << record.unit.tag << ' ' << reading.kind << ' ' << reading.value.typed;
        }
    }
}

TEST(Sample, TellsEveryPromisedSortOfContent)
{
    const auto records = plainSample().records();
    const auto replaced = over(records, [](const UnitRecord& one) {
        return std::ranges::count_if(one.parts, [](const Part& part) { return part.replaces.has_value(); });
    });
    EXPECT_GE(replaced, 10);
    EXPECT_GE(over(records,
                   [](const UnitRecord& one) {
                       return std::ranges::count(one.visits, VisitReason::callOut, &Visit::reason);
                   }),
              8);
    EXPECT_GE(over(records,
                   [](const UnitRecord& one) {
                       return std::ranges::count_if(one.findings,
                                                    [](const Finding& finding) { return !finding.seen(); });
                   }),
              200);
    EXPECT_EQ(over(records,
                   [](const UnitRecord& one) {
                       return std::ranges::count_if(
                           one.findings, [](const Finding& finding) { return finding.correction.has_value(); });
                   }),
              1);
    EXPECT_EQ(plainSample().store->visits().openVisits().size(), 1U);
    EXPECT_EQ(std::ranges::count_if(records, [](const UnitRecord& one) { return one.unit.retiredOn.has_value(); }), 1);
    EXPECT_GE(over(records,
                   [](const UnitRecord& one) {
                       return std::ranges::count_if(one.followUps,
                                                    [](const FollowUp& promise) { return !promise.settledAt; });
                   }),
              1);
    EXPECT_GE(over(records,
                   [](const UnitRecord& one) {
                       return std::ranges::count_if(one.treatments,
                                                    [](const Treatment& work) { return work.dryBy.has_value(); });
                   }),
              20);
    std::set<TreatmentKind> work;
    std::set<std::string> units;
    for (const UnitRecord& record : records) {
        for (const Treatment& treatment : record.treatments)
            work.insert(treatment.kind);
        for (const Reading& reading : record.readings)
            units.insert(reading.value.unitCode);
    }
    EXPECT_EQ(work.size(), codesOf(TreatmentKind{}).size());
    EXPECT_TRUE(units.contains("psig") && units.contains("barg") && units.contains("degF") && units.contains("degC"));
}

TEST(Sample, TheSeafrontVesselIsCoatedTwiceAndGetsPoorAllTheSame)
{
    const UnitRecord record = plainSample().record("HW-01");
    const Part* vessel = nullptr;
    for (const Part& part : record.parts) {
        if (part.kind == "suction-accumulator")
            vessel = &part;
    }
    ASSERT_NE(vessel, nullptr);
    const auto bottom = std::ranges::find(vessel->zones, std::string("bottom"), &Zone::kind);
    ASSERT_NE(bottom, vessel->zones.end());
    std::vector<int> found;
    for (const Finding& finding : record.findings) {
        if (finding.zoneId == bottom->id && finding.phase == Phase::asFound && finding.seen())
            found.push_back(numeral(*finding.grade()));
    }
    ASSERT_GE(found.size(), 14U);
    EXPECT_EQ(found.front(), 1);
    EXPECT_EQ(found.back(), 4);
    EXPECT_EQ(
        std::ranges::count_if(record.treatments, [&](const Treatment& work) { return work.zoneId == bottom->id; }), 2);
    std::vector<double> wall;
    for (const Reading& reading : record.readings) {
        if (reading.kind == "wall-thickness")
            wall.push_back(reading.value.si);
    }
    ASSERT_GE(wall.size(), 6U);
    EXPECT_LT(wall.back(), wall.front() - 0.4e-3);
}

TEST(Sample, TheLeakingUnitIsToppedUpAgainAndAgainAndRecoveredBeforeItsRepair)
{
    const UnitRecord record = plainSample().record("CH-01");
    EXPECT_GE(std::ranges::count(record.charges, ChargeDirection::added, &ChargeEntry::direction), 5);
    const auto recovered = std::ranges::find(record.charges, ChargeDirection::recovered, &ChargeEntry::direction);
    ASSERT_NE(recovered, record.charges.end());
    const auto repair = std::ranges::find_if(record.treatments, [&](const Treatment& work) {
        return work.kind == TreatmentKind::repair && work.visitId == recovered->visitId;
    });
    ASSERT_NE(repair, record.treatments.end());
    EXPECT_LT(recovered->enteredAt.utc, repair->enteredAt.utc);
}

TEST(Sample, TheWellKeptUnitStaysYoungerThanItsNeighbours)
{
    const auto meanLast = [](const std::string& tag) {
        const UnitRecord record = plainSample().record(tag);
        double sum = 0;
        int count = 0;
        for (const Finding& finding : record.findings) {
            if (yearOf(finding.on) == 2026 && finding.phase == Phase::asFound && finding.seen()) {
                sum += numeral(*finding.grade());
                ++count;
            }
        }
        return sum / count;
    };
    EXPECT_LT(meanLast("LB-01"), 1.8);
    EXPECT_GT(meanLast("BY-01"), meanLast("LB-01") + 0.4);
}

TEST(Sample, IsTheSameForTheSameSeedAndAnotherForAnother)
{
    SampleOptions options;
    options.units = 3;
    options.years = 3;
    options.photographs = false;
    const Sample first(options);
    const Sample second(options);
    EXPECT_EQ(first.records(), second.records());
    options.seed = 7;
    const Sample third(options);
    EXPECT_NE(first.records(), third.records());
}

TEST(Sample, PhotographsAreThereOpenAndTheSameEachTime)
{
    SampleOptions options;
    options.units = 1;
    options.years = 3;
    const Sample first(options);
    const Sample second(options);
    const UnitRecord record = first.records().front();
    EXPECT_EQ(record, second.records().front()); // SHA-256 of each file included
    EXPECT_TRUE(verify(*first.store).clean());
    ASSERT_GE(record.photos.size(), 6U);
    EXPECT_TRUE(std::ranges::any_of(record.photos, [](const Photo& photo) { return photo.phase == Phase::asLeft; }));
    for (const Photo& photo : record.photos) {
        const QImage image(first.store->photos().path(photo));
        EXPECT_EQ(image.width(), photo.width);
        EXPECT_EQ(image.height(), photo.height);
        EXPECT_EQ(QImage::fromData(first.store->photos().thumbnail(photo.id)).width(), 320);
    }
}

TEST(Sample, ScalesToAHundredUnitsWithTagsOfTheirOwn)
{
    SampleOptions options;
    options.units = 100;
    options.years = 4;
    options.photographs = false;
    const Sample sample(options);
    std::set<std::string> tags;
    for (const Unit& unit : sample.store->sites().units())
        tags.insert(unit.tag);
    EXPECT_EQ(tags.size(), 100U);
    EXPECT_TRUE(verify(*sample.store).clean());
}

TEST(Sample, StopsWhereItIsToldToAndLeavesWholeUnits)
{
    const QTemporaryDir folder;
    const auto store = Store::create(folder.filePath(QStringLiteral("stopped.padside")));
    SampleOptions options;
    options.photographs = false;
    buildSample(*store, shipped(), options, [](double done) { return done < 0.2; });
    EXPECT_EQ(store->sites().units().size(), 3U);
    EXPECT_TRUE(verify(*store).clean());
}
