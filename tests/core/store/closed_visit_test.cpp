// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/store/connection.h"
#include "core/store/cursor.h"
#include "core/store/record_reader.h"
#include "core/store/verify.h"
#include "core/store/visit_book.h"
#include "tests/core/store/full_record.h"
#include "tests/core/store/store_fixture.h"

#include <sqlite3.h>

namespace padside::test {

namespace {

/// A file with one closed visit that has an entry of every kind. The tests try to change it with bare SQL.
class ClosedVisitTest : public StoreTest
{
protected:
    ClosedVisitTest()
        : m_record(fullRecord(*m_store))
    {
        writeRecord(*m_store, m_record);
    }
    ~ClosedVisitTest() override
    {
        EXPECT_EQ(m_store->records().unitRecord(m_record.unit.id).findings, m_record.findings);
        EXPECT_TRUE(verify(*m_store).clean());
    }

    void expectRefused(const std::string& sql, const std::string& part)
    {
        const auto error = refusalOf([&] { m_store->connection().run(sql); });
        EXPECT_EQ(error.problem().kind, ProblemKind::refused) << sql;
        EXPECT_EQ(error.sqliteCode(), SQLITE_CONSTRAINT_TRIGGER) << sql;
        EXPECT_NE(say(error.problem().what).find(part), std::string::npos) << sql << " said " << error.what();
    }

    UnitRecord m_record;
};

class ClosedVisitEntryTest : public ClosedVisitTest, public ::testing::WithParamInterface<const char*>
{
protected:
    /// One row of the table, copied with another key.
    [[nodiscard]] std::string copyWith(const std::string& newId, const std::string& corrects, const std::string& reason,
                                       const std::string& verb = "INSERT")
    {
        const std::string table = GetParam();
        std::string columns;
        std::string values;
        Cursor column(m_store->connection(), m_sql = "SELECT name FROM pragma_table_info('" + table + "')");
        while (column.next()) {
            const std::string name = column.text(0);
            columns += (columns.empty() ? "" : ", ") + name;
            values += values.empty() ? "" : ", ";
            values += name == "id"            ? newId
                : name == "corrects"          ? corrects
                : name == "correction_reason" ? reason
                                              : name;
        }
        return verb + " INTO " + table + " (" + columns + ") SELECT " + values + " FROM " + table
            + " WHERE corrects IS NULL";
    }

    std::string m_sql;
};

} // namespace

TEST_P(ClosedVisitEntryTest, AnEntryIsNotChanged)
{
    expectRefused(std::string("UPDATE ") + GetParam() + " SET entered_at = '2030-01-01T00:00:00+00:00'", "closed");
}

TEST_P(ClosedVisitEntryTest, AnEntryIsNotRemoved)
{
    expectRefused(std::string("DELETE FROM ") + GetParam(), "closed");
}

TEST_P(ClosedVisitEntryTest, AnEntryIsNotAddedWithoutACorrection)
{
    expectRefused(copyWith("randomblob(16)", "NULL", "NULL"), "closed");
}

TEST_P(ClosedVisitEntryTest, AnEntryIsNotReplacedUnderItsOwnKey)
{
    expectRefused(copyWith("id", "NULL", "NULL", "INSERT OR REPLACE"), "closed");
}

TEST_P(ClosedVisitEntryTest, AnEntryIsNotReplacedByACorrectionOfItself)
{
    expectRefused(copyWith("id", "id", "'because'", "INSERT OR REPLACE"), "closed");
}

TEST_P(ClosedVisitEntryTest, ACorrectionMustPointAtAnEntryOfThatVisit)
{
    expectRefused(copyWith("randomblob(16)", "randomblob(16)", "'because'"), "same visit");
}

TEST_P(ClosedVisitEntryTest, ACorrectionNeedsAReason)
{
    const auto error = refusalOf([&] { m_store->connection().run(copyWith("randomblob(16)", "id", "'  '")); });
    EXPECT_EQ(error.sqliteCode() & 0xff, SQLITE_CONSTRAINT);
    EXPECT_NE(std::string(error.what()).find("reason"), std::string::npos) << error.what();
}

TEST_P(ClosedVisitEntryTest, AnEntryIsNotMovedAwayToAnOpenVisit)
{
    expectRefused(std::string("UPDATE ") + GetParam()
                      + " SET visit_id = (SELECT id FROM visit WHERE closed_at IS NULL), visited_on = '2024-10-01'",
                  "closed");
}

INSTANTIATE_TEST_SUITE_P(EachKind, ClosedVisitEntryTest,
                         ::testing::Values("finding", "reading", "treatment", "photo", "charge_entry"),
                         [](const auto& each) { return std::string(each.param); });

TEST_F(ClosedVisitTest, IsNotReopened)
{
    expectRefused("UPDATE visit SET closed_at = NULL, seal = NULL WHERE closed_at IS NOT NULL", "closed");
}

TEST_F(ClosedVisitTest, IsNotChanged)
{
    expectRefused("UPDATE visit SET note = 'x' WHERE closed_at IS NOT NULL", "closed");
    Visit visit = m_record.visits[0];
    visit.technician = "somebody else";
    EXPECT_EQ(refusalOf([&] { m_store->visits().change(visit); }).problem().kind, ProblemKind::refused);
}

TEST_F(ClosedVisitTest, IsNotClosedTwice)
{
    EXPECT_EQ(
        refusalOf([&] { m_store->visits().close(m_record.visits[0].id, *m_record.visits[0].closedAt); }).problem().kind,
        ProblemKind::refused);
}

TEST_F(ClosedVisitTest, IsNotRemoved)
{
    expectRefused("DELETE FROM visit WHERE closed_at IS NOT NULL", "closed");
    expectRefused(
        "INSERT OR REPLACE INTO visit SELECT unit_id, visited_on, id, reason, technician, NULL, NULL, sky, running, "
        "'other', opened_at, NULL, NULL FROM visit WHERE closed_at IS NOT NULL",
        "closed");
    EXPECT_EQ(refusalOf([&] { m_store->visits().discard(m_record.visits[0].id); }).problem().kind,
              ProblemKind::refused);
}

TEST_F(ClosedVisitTest, IsNotInsertedClosed)
{
    expectRefused(
        "INSERT INTO visit SELECT unit_id, visited_on, randomblob(16), reason, technician, NULL, NULL, sky, running, "
        "note, opened_at, closed_at, seal FROM visit WHERE closed_at IS NOT NULL",
        "begins open");
}

TEST_F(ClosedVisitTest, FollowUpsPromisedThereAreSettledAtAnOpenVisitOnly)
{
    FollowUp followUp = m_record.followUps[0];
    followUp.settledAt = m_record.visits[1].id;
    followUp.settledNote = "dry and sound";
    m_store->visits().put(followUp);
    EXPECT_EQ(m_store->records().unitRecord(m_record.unit.id).followUps[0], followUp);

    FollowUp reworded = followUp;
    reworded.why = "something else";
    EXPECT_EQ(refusalOf([&] { m_store->visits().put(reworded); }).problem().kind, ProblemKind::refused);
    FollowUp atClosed = followUp;
    atClosed.settledAt = m_record.visits[0].id;
    EXPECT_EQ(refusalOf([&] { m_store->visits().put(atClosed); }).problem().kind, ProblemKind::refused);
    EXPECT_EQ(refusalOf([&] { m_store->visits().remove(followUp); }).problem().kind, ProblemKind::refused);

    m_store->visits().close(m_record.visits[1].id, m_record.visits[1].openedAt);
    FollowUp unsettled = followUp;
    unsettled.settledAt.reset();
    EXPECT_EQ(refusalOf([&] { m_store->visits().put(unsettled); }).problem().kind, ProblemKind::refused);
    EXPECT_EQ(m_store->records().unitRecord(m_record.unit.id).followUps[0], followUp);
}

} // namespace padside::test
