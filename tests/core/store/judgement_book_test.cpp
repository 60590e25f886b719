// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/store/judgement_book.h"
#include "core/store/record_reader.h"
#include "core/store/site_book.h"
#include "tests/core/store/store_fixture.h"

namespace padside::test {

namespace {

class JudgementBookTest : public StoreTest
{
protected:
    JudgementBookTest() { writeRecord(*m_store, m_record); }

    [[nodiscard]] UnitRecord read() { return m_store->records().unitRecord(m_record.unit.id); }
    [[nodiscard]] Acknowledgement aWord() const
    {
        Acknowledgement word;
        word.id = AcknowledgementId(UuidBytes{1});
        word.unitId = m_record.unit.id;
        word.rule = "worse-by-a-grade";
        word.partId = m_record.parts[0].id;
        word.zoneId = m_record.parts[0].zones[0].id;
        word.severity = Severity::plan;
        word.reason = "a new one is ordered";
        word.at = Instant{day("2024-03-01"), std::chrono::minutes(60)};
        return word;
    }

    UnitRecord m_record = aUnit("HB-01").withPart("contactor", {"points"}).build();
};

} // namespace

TEST_F(JudgementBookTest, AnAcknowledgementComesBackWithTheRecordAndStaysWhenTakenBack)
{
    Acknowledgement word = aWord();
    m_store->judgements().acknowledge(word);
    EXPECT_EQ(read().acknowledgements, std::vector{word});
    word.takenBackAt = Instant{day("2024-03-02"), std::chrono::minutes(60)};
    m_store->judgements().takeBack(word.id, *word.takenBackAt);
    EXPECT_EQ(read().acknowledgements, std::vector{word});
    const auto error = refusalOf([&] { m_store->judgements().takeBack(word.id, *word.takenBackAt); });
    EXPECT_EQ(error.problem().kind, ProblemKind::refused);
}

TEST_F(JudgementBookTest, AnAcknowledgementWithoutAReasonIsRefused)
{
    Acknowledgement word = aWord();
    word.reason = "  ";
    (void)refusalOf([&] { m_store->judgements().acknowledge(word); });
    EXPECT_TRUE(read().acknowledgements.empty());
}

TEST_F(JudgementBookTest, AFigureAssumedIsReplacedByTheNextAndCanBeForgotten)
{
    const UnitId unit = m_record.unit.id;
    m_store->judgements().assume(unit, {"price-new", 8000});
    m_store->judgements().assume(unit, {"hours", 900});
    m_store->judgements().assume(unit, {"price-new", 7500.25});
    EXPECT_EQ(read().assumptions, (std::vector<UnitAssumption>{{"hours", 900}, {"price-new", 7500.25}}));
    m_store->judgements().forgetAssumption(unit, "hours");
    EXPECT_EQ(read().assumptions, (std::vector<UnitAssumption>{{"price-new", 7500.25}}));
}

TEST_F(JudgementBookTest, AUnitAddedByMistakeGoesWithWhatWasSaidAboutIt)
{
    m_store->judgements().acknowledge(aWord());
    m_store->judgements().assume(m_record.unit.id, {"price-new", 8000});
    m_store->sites().removeUnit(m_record.unit.id);
    EXPECT_FALSE(m_store->sites().unitByTag("HB-01"));
}

} // namespace padside::test
