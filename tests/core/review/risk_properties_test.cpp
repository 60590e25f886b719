// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/review/record_at.h"
#include "core/review/unit_review.h"
#include "core/schedule/zone_due.h"
#include "tests/core/review/random_record.h"
#include "tests/support/record_builder.h"
#include "tests/support/small_catalogue.h"

#include <algorithm>
#include <functional>
#include <gtest/gtest.h>

namespace padside {

namespace {

class RiskProperties : public testing::Test
{
protected:
    /// 120 random records or more, each on a random day of its life or after it.
    void forRandomRecords(const std::function<void(const UnitRecord&, Date today)>& look,
                          std::uint32_t count = 120) const
    {
        for (std::uint32_t seed = 1; seed <= count; ++seed) {
            SCOPED_TRACE(seed);
            look(test::randomRecord(seed), test::day("2018-02-28") + std::chrono::days(seed % 121 * 13));
        }
    }

    [[nodiscard]] UnitReview reviewed(const UnitRecord& record, Date today) const
    {
        return review(record, m_catalogue, m_model, today);
    }

    /// The zone's own latest date, whatever checks it shares.
    [[nodiscard]] std::optional<Date> ownDate(const UnitRecord& record, Date today, ZoneId id) const
    {
        const UnitRecord known = recordAt(record, today);
        const auto histories = zoneHistories(known);
        const auto history = std::ranges::find(histories, id, &ZoneHistory::zoneId);
        const auto belief = zoneBelief(known, m_catalogue, m_model, id, today);
        if (history == histories.end() || !belief)
            return std::nullopt;
        const ZoneRisk risk = zoneRisk(*belief, m_catalogue);
        return zoneDue(known, m_catalogue, today, *findPart(known, history->partId), *history, &risk).window.latest;
    }

    Catalogue m_catalogue = test::smallCatalogue();
    OutlookModel m_model{m_catalogue};
};

/// The first day by which a check looks at the zone; empty: none does.
std::optional<Date> lookedAtBy(const UnitReview& review, ZoneId zone)
{
    std::optional<Date> by;
    for (const Check& check : review.checks) {
        if (std::ranges::find(check.zones, zone) != check.zones.end() && (!by || check.latest < *by))
            by = check.latest;
    }
    return by;
}

/// The record with one more attendance, at which the zone was graded, or looked for in vain.
UnitRecord withLook(UnitRecord record, ZoneId zone, Date on, std::variant<Grade, NotSeenReason> sight)
{
    Visit visit;
    visit.id = VisitId(UuidBytes{0xfe});
    visit.unitId = record.unit.id;
    visit.on = on;
    visit.reason = VisitReason::callOut;
    visit.openedAt.utc = on;
    visit.closedAt = visit.openedAt;
    record.visits.push_back(visit);
    Finding finding;
    finding.id = FindingId(UuidBytes{0xfe});
    finding.unitId = record.unit.id;
    finding.visitId = visit.id;
    finding.on = on;
    finding.zoneId = zone;
    finding.sight = sight;
    record.findings.push_back(finding);
    return record;
}

} // namespace

TEST_F(RiskProperties, ACheckNeverFallsAfterTheDateItsToleranceIsSpent)
{
    int bounded = 0;
    forRandomRecords([&](const UnitRecord& record, Date today) {
        const UnitReview review = reviewed(record, today);
        const UnitRecord known = recordAt(record, today);
        for (const ZoneHistory& zone : review.zones) {
            const auto by = lookedAtBy(review, zone.zoneId);
            if (review.checks.empty())
                continue; // retired
            ASSERT_TRUE(by) << "each zone is looked at again";
            const auto belief = zoneBelief(known, m_catalogue, m_model, zone.zoneId, today);
            ASSERT_TRUE(belief);
            const bool beginningKnown = !belief->trail.steps.empty() || belief->trail.fittedOn;
            if (zone.known && zone.known->grade == Grade::spent)
                EXPECT_LE(*by, zone.known->on + std::chrono::days(14));
            else if (*by > today && beginningKnown) {
                ++bounded;
                EXPECT_LE(chanceSpentBy(*belief, *by), riskOf(review.risks, zone.zoneId)->tolerance + 1e-9);
            }
        }
    });
    EXPECT_GT(bounded, 100) << "enough were tried";
}

TEST_F(RiskProperties, ASharedCheckNeverFallsAfterTheDateThatAnyOfItsZonesHasOfItsOwn)
{
    int shared = 0;
    forRandomRecords(
        [&](const UnitRecord& record, Date today) {
            const UnitReview review = reviewed(record, today);
            for (const Check& check : review.checks) {
                if (check.zones.size() < 2)
                    continue;
                ++shared;
                for (const ZoneId zone : check.zones)
                    EXPECT_LE(check.latest, *ownDate(record, today, zone)) << say(check.what);
            }
        },
        600);
    EXPECT_GT(shared, 300) << "enough were shared";
}

TEST_F(RiskProperties, WhenAZoneLeavesASharedCheckTheOthersDateMayMoveLaterButNeverPastTheirOwn)
{
    int later = 0;
    forRandomRecords(
        [&](const UnitRecord& record, Date today) {
            for (const Check& check : reviewed(record, today).checks) {
                if (check.zones.size() < 2)
                    continue;
                // Seen sound today, the first zone has a date of its own.
                const UnitRecord left = withLook(record, check.zones.front(), today, Grade::sound);
                const UnitReview after = reviewed(left, today);
                for (const ZoneId zone : check.zones) {
                    const auto by = lookedAtBy(after, zone);
                    ASSERT_TRUE(by) << "no zone is forgotten";
                    EXPECT_LE(*by, *ownDate(left, today, zone)) << say(check.what);
                    later += zone != check.zones.front() && *by > check.latest ? 1 : 0;
                }
            }
        },
        400);
    EXPECT_GT(later, 10) << "it did move later in some";
}

TEST_F(RiskProperties, ALookInVainNeverMovesAZonesDateLater)
{
    int tried = 0;
    forRandomRecords([&](const UnitRecord& record, Date today) {
        if (std::ranges::none_of(record.visits, [&](const Visit& one) { return !one.isOpen() && one.on <= today; }))
            return; // the first visit of all sets the season by which a zone is first seen
        for (const Part& part : recordAt(record, today).parts) {
            for (const Zone& zone : part.zones) {
                const auto before = ownDate(record, today, zone.id);
                for (const NotSeenReason reason : {NotSeenReason::running, NotSeenReason::covered}) {
                    const auto after = ownDate(withLook(record, zone.id, today, reason), today, zone.id);
                    ASSERT_EQ(after.has_value(), before.has_value());
                    if (before) {
                        ++tried;
                        EXPECT_LE(*after, *before)
                            << isoText(today) << ": " << isoText(*before) << " became " << isoText(*after);
                    }
                }
            }
        }
    });
    EXPECT_GT(tried, 200) << "enough were tried";
}

TEST_F(RiskProperties, EachFlagAboutAChanceSaysOneOverItsTolerance)
{
    int raised = 0;
    forRandomRecords([&](const UnitRecord& record, Date today) {
        const UnitReview review = reviewed(record, today);
        for (const Flag& flag : review.flags) {
            if (flag.rule != "spent-before-next-visit")
                continue;
            ++raised;
            EXPECT_GT(flag.extent.value_or(0), riskOf(review.risks, *flag.zoneId)->tolerance);
        }
    });
    EXPECT_GT(raised, 20) << "enough were raised";
}

} // namespace padside
