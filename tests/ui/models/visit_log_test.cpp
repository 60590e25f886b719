// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/store/drafts.h"
#include "core/store/forecast_book.h"
#include "core/store/record_reader.h"
#include "core/store/site_book.h"
#include "core/store/store.h"
#include "core/store/visit_book.h"
#include "tests/support/record_builder.h"
#include "tests/ui/models/open_visit_fixture.h"
#include "ui/models/record_book.h"
#include "ui/models/visit_log.h"

#include <QSignalSpy>
#include <QTemporaryDir>

#include <algorithm>
#include <gtest/gtest.h>

namespace padside::test {

namespace {

class VisitLogTest : public OpenVisitFixture
{
protected:
    [[nodiscard]] UnitRecord record() const { return m_store->records().unitRecord(m_unit); }
    [[nodiscard]] VisitLog::Look look(std::size_t zone = 0) const
    {
        VisitLog::Look look{m_part.zones[zone].id, Phase::asFound, {}};
        for (const Finding& finding : standing(record().findings)) {
            if (finding.zoneId == look.zoneId && finding.phase == look.phase)
                look.standing = finding;
        }
        return look;
    }
};

} // namespace

TEST_F(VisitLogTest, AVisitStartsTodayAndIsResumedWhileItIsOpen)
{
    const auto visit = m_store->visits().visit(m_visit);
    ASSERT_TRUE(visit.has_value());
    EXPECT_EQ(visit->on, day("2026-05-04"));
    EXPECT_EQ(visit->reason, VisitReason::fall);
    EXPECT_EQ(visit->technician, "A. Tester");
    EXPECT_EQ(startVisit(m_book, m_unit, VisitReason::callOut), m_visit);
    ASSERT_TRUE(m_log.close());
    EXPECT_NE(startVisit(m_book, m_unit, VisitReason::callOut), m_visit);
}

TEST_F(VisitLogTest, AVisitOfAnUnknownUnitIsRefusedWithASentence)
{
    const QSignalSpy failed(&m_book, &RecordBook::failed);
    EXPECT_TRUE(startVisit(m_book, UnitId(UuidBytes{9}), VisitReason::spring).isNull());
    ASSERT_EQ(failed.count(), 1);
    EXPECT_FALSE(failed.front().front().toString().isEmpty());
}

TEST_F(VisitLogTest, WetnessBeforeTheGradeIsTakenUpByIt)
{
    ASSERT_TRUE(m_log.setWetness(look(), Wetness::wet));
    EXPECT_EQ(m_log.waitingWetness(look()), Wetness::wet);
    EXPECT_TRUE(record().findings.empty());
    ASSERT_TRUE(m_log.see(look(), Grade::worn));
    ASSERT_EQ(record().findings.size(), 1U);
    EXPECT_EQ(record().findings.front().wetness, Wetness::wet);
    EXPECT_FALSE(m_log.waitingWetness(look()).has_value());
}

TEST_F(VisitLogTest, AGradeGivenAgainKeepsNoteAndWetness)
{
    ASSERT_TRUE(m_log.see(look(), Grade::worn));
    ASSERT_TRUE(m_log.setNote(look(), "squeaks"));
    ASSERT_TRUE(m_log.setWetness(look(), Wetness::damp));
    ASSERT_TRUE(m_log.notSee(look(), NotSeenReason::running));
    ASSERT_TRUE(m_log.see(look(), Grade::poor));
    ASSERT_EQ(record().findings.size(), 1U);
    const Finding finding = record().findings.front();
    EXPECT_EQ(finding.grade(), Grade::poor);
    EXPECT_EQ(finding.note, "squeaks");
    EXPECT_EQ(finding.wetness, Wetness::damp);
}

TEST_F(VisitLogTest, AClosedVisitTakesOnlyCorrectionsWithAReason)
{
    ASSERT_TRUE(m_log.see(look(), Grade::worn));
    ASSERT_TRUE(m_log.close());
    EXPECT_FALSE(m_log.mayWrite());
    QSignalSpy failed(&m_book, &RecordBook::failed);
    EXPECT_FALSE(m_log.see(look(), Grade::spent));
    EXPECT_EQ(failed.count(), 1);
    m_log.correctBecause("mistyped");
    EXPECT_TRUE(m_log.see(look(), Grade::marked));
    EXPECT_FALSE(m_log.see(look(1), Grade::marked)) << "nothing was entered there";
    const UnitRecord now = record();
    ASSERT_EQ(now.findings.size(), 2U);
    const auto valid = standing(now.findings);
    ASSERT_EQ(valid.size(), 1U);
    EXPECT_EQ(valid.front().grade(), Grade::marked);
    EXPECT_EQ(valid.front().correction->reason, "mistyped");
}

TEST_F(VisitLogTest, ClosingKeepsWhatIsForetoldOfEachZone)
{
    ASSERT_TRUE(m_log.see(look(), Grade::poor));
    EXPECT_TRUE(m_store->forecasts().of(m_unit).empty()) << "nothing before it is closed";
    ASSERT_TRUE(m_log.close());
    const auto kept = m_store->forecasts().of(m_unit);
    std::size_t zones = 0;
    for (const Part& part : record().parts)
        zones += part.zones.size();
    ASSERT_EQ(kept.size(), zones);
    const auto graded = std::ranges::find(kept, m_part.zones[0].id, &KeptForecast::zoneId);
    ASSERT_NE(graded, kept.end());
    EXPECT_EQ(graded->grade, Grade::poor);
    EXPECT_EQ(graded->visitId, m_visit);
    EXPECT_EQ(graded->on, day("2026-05-04"));
    EXPECT_GT(graded->chances[3], graded->chances[0]);
    const auto ungraded = std::ranges::find(kept, m_part.zones[1].id, &KeptForecast::zoneId);
    ASSERT_NE(ungraded, kept.end());
    EXPECT_FALSE(ungraded->grade);
}

TEST_F(VisitLogTest, TurningToAnotherVisitEndsCorrecting)
{
    ASSERT_TRUE(m_log.close());
    m_log.correctBecause("mistyped");
    ASSERT_TRUE(m_log.turnTo(startVisit(m_book, m_unit, VisitReason::callOut)));
    EXPECT_TRUE(m_log.correctionReason().empty());
}

TEST_F(VisitLogTest, AReplacementIsWholeOrNotAtAll)
{
    Treatment work;
    work.note = "seized";
    ASSERT_TRUE(m_log.replacePart(m_part, work, "Tidewater Motors", "TM-2"));
    UnitRecord now = record();
    ASSERT_EQ(now.parts.size(), 2U);
    const auto fresh = std::ranges::find_if(now.parts, [](const Part& part) { return !part.removedOn; });
    ASSERT_NE(fresh, now.parts.end());
    EXPECT_EQ(fresh->replaces, m_part.id);
    EXPECT_EQ(fresh->maker, "Tidewater Motors");
    EXPECT_EQ(fresh->zones.size(), 2U);
    EXPECT_NE(fresh->zones.front().id, m_part.zones.front().id);
    EXPECT_FALSE(m_log.replacePart(m_part, work, {}, {})) << "it is gone already";
    now = record();
    EXPECT_EQ(now.parts.size(), 2U);
    EXPECT_EQ(now.treatments.size(), 1U) << "the work of the refused replacement must not stay behind";
}

TEST_F(VisitLogTest, EveryWriteIsToldToTheWindow)
{
    const QSignalSpy changed(&m_book, &RecordBook::unitChanged);
    ASSERT_TRUE(m_log.see(look(), Grade::worn));
    ASSERT_TRUE(m_log.setVisitNote("quiet"));
    ASSERT_TRUE(m_log.setTechnician("B. Second"));
    EXPECT_EQ(changed.count(), 3);
    EXPECT_EQ(m_store->visits().visit(m_visit)->note, "quiet");
    EXPECT_EQ(m_log.visit().technician, "B. Second");
}

} // namespace padside::test
