// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/review/fleet_review.h"
#include "core/review/unit_review.h"
#include "core/review/visit_changes.h"
#include "tests/core/review/random_record.h"
#include "tests/support/record_builder.h"
#include "tests/support/small_catalogue.h"

#include <algorithm>
#include <functional>
#include <gtest/gtest.h>
#include <set>

namespace padside {

namespace {

/// Reviews 120 random records, each on a random day of its life and after it.
void forRandomReviews(const std::function<void(const UnitRecord&, const UnitReview&)>& look)
{
    const Catalogue catalogue = test::smallCatalogue();
    const OutlookModel model(catalogue);
    for (std::uint32_t seed = 1; seed <= 120; ++seed) {
        SCOPED_TRACE(seed);
        const UnitRecord record = test::randomRecord(seed);
        look(record, review(record, catalogue, model, test::day("2018-02-28") + std::chrono::days(seed * 13)));
    }
}

std::set<FindingId> standingIdsUpTo(const UnitRecord& record, Date today)
{
    std::set<FindingId> ids;
    for (const Finding& finding : standing(record.findings)) {
        if (finding.on <= today)
            ids.insert(finding.id);
    }
    return ids;
}

bool saysNoPlace(const Sentence& sentence)
{
    const std::string said = say(sentence);
    return !said.empty() && said.find('{') == std::string::npos;
}

} // namespace

TEST(ReviewProperties, EachFlagRestsOnStandingFindingsThatWereKnownByThen)
{
    int flags = 0;
    forRandomReviews([&](const UnitRecord& record, const UnitReview& today) {
        const auto known = standingIdsUpTo(record, today.today);
        for (const Flag& flag : today.flags) {
            ++flags;
            EXPECT_TRUE(saysNoPlace(flag.sentence)) << say(flag.sentence);
            EXPECT_TRUE(saysNoPlace(flag.clears)) << say(flag.clears);
            EXPECT_TRUE(std::ranges::all_of(flag.evidence, [&](FindingId id) { return known.contains(id); }))
                << flag.rule;
            // What was never seen is judged by its age alone.
            const bool neverLookedAt = flag.rule == "not-seen-too-long"
                || ((flag.rule == "spent-before-next-visit" || flag.rule == "order-spare-now") && !flag.grade);
            EXPECT_TRUE(!flag.evidence.empty() || neverLookedAt) << flag.rule;
        }
    });
    EXPECT_GT(flags, 400) << "the records are too tame";
}

TEST(ReviewProperties, FlagsComeMostSevereFirst)
{
    forRandomReviews([](const UnitRecord&, const UnitReview& today) {
        EXPECT_TRUE(std::ranges::is_sorted(today.flags, std::greater{}, &Flag::severity));
    });
}

TEST(ReviewProperties, EachCheckHasAWindowAndSaysWhyAndTheyComeByLatestDate)
{
    forRandomReviews([](const UnitRecord&, const UnitReview& today) {
        for (const Check& check : today.checks) {
            EXPECT_LE(check.earliest, check.latest) << say(check.what);
            EXPECT_TRUE(saysNoPlace(check.what)) << say(check.what);
            EXPECT_TRUE(saysNoPlace(check.why)) << say(check.why);
        }
        EXPECT_TRUE(std::ranges::is_sorted(today.checks, {}, &Check::latest));
    });
}

TEST(ReviewProperties, AZoneSeenAndNotLookedForInVainSinceIsDueWithinTwelveMonths)
{
    forRandomReviews([](const UnitRecord&, const UnitReview& today) {
        for (const ZoneHistory& zone : today.zones) {
            if (!zone.known || zone.notSeenSince)
                continue;
            const Date bound = addMonths(zone.known->on, 12);
            EXPECT_TRUE(std::ranges::any_of(today.checks, [&](const Check& check) { return check.latest <= bound; }));
        }
    });
}

TEST(ReviewProperties, TheSameRecordGivesTheSameReviewInAnyOrderOfItsEntries)
{
    const Catalogue catalogue = test::smallCatalogue();
    const OutlookModel model(catalogue);
    forRandomReviews([&](const UnitRecord& record, const UnitReview& today) {
        EXPECT_EQ(review(record, catalogue, model, today.today), today);
        EXPECT_EQ(review(test::shuffled(record, 5), catalogue, model, today.today), today);
    });
}

TEST(ReviewProperties, TripsServeEachCheckOnceWithinItsWindowOrToday)
{
    forRandomReviews([](const UnitRecord& record, const UnitReview& today) {
        std::size_t served = 0;
        for (const SiteTrip& trip : siteTrips(record.site, std::span(&today, 1), today.today)) {
            EXPECT_GE(trip.on, today.today);
            ASSERT_LT(trip.forcedBy, trip.checks.size());
            for (const Check& check : trip.checks) {
                EXPECT_LE(std::max(check.earliest, today.today), trip.on);
                EXPECT_GE(std::max(check.latest, today.today), trip.on);
                EXPECT_LE(std::max(trip.checks[trip.forcedBy].latest, today.today),
                          std::max(check.latest, today.today));
            }
            served += trip.checks.size();
        }
        EXPECT_EQ(served, today.checks.size());
    });
}

TEST(ReviewProperties, AVisitsChangesTellOfEachZoneOnceAndNotOfTheFuture)
{
    const Catalogue catalogue = test::smallCatalogue();
    const OutlookModel model(catalogue);
    forRandomReviews([&](const UnitRecord& record, const UnitReview&) {
        for (const Visit& visit : record.visits) {
            const VisitChanges changes = visitChanges(record, catalogue, visit.id);
            std::set<ZoneId> told;
            for (const ZoneChange& change : changes.zones) {
                EXPECT_TRUE(told.insert(change.zoneId).second);
                EXPECT_TRUE(saysNoPlace(change.sentence)) << say(change.sentence);
                EXPECT_TRUE(!change.before || change.before->on <= visit.on);
            }
            for (const ZoneId zone : changes.notLookedAt)
                EXPECT_TRUE(told.insert(zone).second);
        }
    });
}

} // namespace padside
