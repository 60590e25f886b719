// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/store/own_catalogue.h"
#include "core/store/site_book.h"
#include "core/store/store.h"
#include "core/worth/carry_on.h"
#include "tests/support/record_builder.h"
#include "tests/support/small_catalogue.h"
#include "ui/models/money_words.h"
#include "ui/models/record_book.h"
#include "ui/models/speaker.h"
#include "ui/models/worth_figures.h"
#include "ui/models/worth_log.h"
#include "ui/models/written_number.h"

#include <QSignalSpy>
#include <QTemporaryDir>
#include <QUndoStack>

#include <gtest/gtest.h>
#include <tuple>

namespace padside::test {

using namespace Qt::Literals::StringLiterals;

class WorthLogTest : public ::testing::Test
{
protected:
    WorthLogTest()
        : m_catalogue(smallCatalogue())
        , m_store(Store::create(m_folder.filePath(u"a.padside"_s)))
        , m_ids([] { return std::int64_t{1'777'000'000'000}; }, 3)
        , m_book(*m_store, m_catalogue, m_ids,
                 RecordBook::Surroundings{[] {
                                              return Instant{day("2026-05-04"), {}};
                                          },
                                          QLocale(QLocale::English, QLocale::UnitedStates),
                                          UnitSystem::metric,
                                          {}})
        , m_log(m_book, m_stack)
        , m_record(aUnit("HB-01").withPart("run-capacitor", {"case"}).build())
    {
        std::ignore
            = m_store->sites().addAll({m_record.site}, {{m_record.unit, m_record.parts}}, [](double) { return true; });
    }

    [[nodiscard]] std::string patch() const { return m_store->ownCatalogue().changes(); }

    QTemporaryDir m_folder;
    Catalogue m_catalogue;
    std::unique_ptr<Store> m_store;
    IdMaker m_ids;
    RecordBook m_book;
    QUndoStack m_stack;
    WorthLog m_log;
    UnitRecord m_record;
};

const std::vector<std::string> capacitorPart{"costs", "run-capacitor", "part"};

TEST_F(WorthLogTest, ACostIsKeptInTheFileAndCanBeTakenBack)
{
    QSignalSpy changed(&m_log, &WorthLog::costsChanged);
    EXPECT_FALSE(m_log.setFigures({{capacitorPart, 24.5}}));
    EXPECT_EQ(costsIn(*m_store).of("run-capacitor").part, 24.5);
    EXPECT_EQ(m_stack.count(), 1);
    m_stack.undo();
    EXPECT_EQ(patch(), "");
    m_stack.redo();
    EXPECT_EQ(costsIn(*m_store).of("run-capacitor").part, 24.5);
    EXPECT_FALSE(m_log.setFigures({{capacitorPart, std::nullopt}}));
    EXPECT_EQ(patch(), "");
    EXPECT_EQ(changed.count(), 4);
}

TEST_F(WorthLogTest, WhatCanNotBeIsSaidByItsNameAndChangesNothing)
{
    const auto refusal = m_log.setFigures({{{"costs", "run-capacitor", "labour"}, 60}, {capacitorPart, -5}});
    ASSERT_TRUE(refusal);
    EXPECT_EQ(refusal->figure, 1U);
    EXPECT_TRUE(refusal->why.startsWith(u"Cost of a new one: "_s)) << refusal->why.toStdString();
    EXPECT_EQ(patch(), "");
    EXPECT_EQ(m_stack.count(), 0);
    EXPECT_TRUE(m_log.setFigures({{{"money", "years_compared"}, 90}}));
}

TEST_F(WorthLogTest, TheSameFigureAgainIsNoStep)
{
    EXPECT_FALSE(m_log.setFigures({{{"money", "interest_percent"}, 5}})); // as ours
    EXPECT_FALSE(m_log.setFigures({{capacitorPart, 24}}));
    EXPECT_FALSE(m_log.setFigures({{capacitorPart, 24}}));
    EXPECT_EQ(m_stack.count(), 1);
}

TEST_F(WorthLogTest, OwnChangesOfOtherThingsStayAsTheyAre)
{
    m_store->ownCatalogue().setChanges(R"({"part_kinds":{"pad":{"name":"Slab"}}})");
    EXPECT_FALSE(m_log.setFigures({{capacitorPart, 24}}));
    EXPECT_NE(patch().find("Slab"), std::string::npos);
    m_stack.undo();
    EXPECT_EQ(patch(), R"({"part_kinds":{"pad":{"name":"Slab"}}})");
}

TEST_F(WorthLogTest, AnAssumptionOfAUnitIsKeptAndCanBeTakenBack)
{
    QSignalSpy assumed(&m_log, &WorthLog::unitAssumed);
    EXPECT_EQ(m_log.assume(m_record.unit.id, "price-new", 5200), QString());
    EXPECT_EQ(m_log.assume(m_record.unit.id, "price-new", 5400), QString());
    ASSERT_EQ(m_book.record(m_record.unit.id).assumptions.size(), 1U);
    EXPECT_EQ(m_book.record(m_record.unit.id).assumptions.front().value, 5400);
    m_stack.undo();
    EXPECT_EQ(m_book.record(m_record.unit.id).assumptions.front().value, 5200);
    m_stack.undo();
    EXPECT_TRUE(m_book.record(m_record.unit.id).assumptions.empty());
    EXPECT_EQ(assumed.count(), 4);
    EXPECT_FALSE(m_log.assume(m_record.unit.id, "seer-new", 0).isEmpty());
    EXPECT_EQ(m_stack.count(), 2);
}

TEST_F(WorthLogTest, MoneyIsAPlainNumberUntilThePersonNamesTheirCurrency)
{
    EXPECT_EQ(shownMoney(m_book, 1240.4), u"1,240"_s);
    RecordBook::Surroundings named = m_book.surroundings();
    named.currency = u"€"_s;
    const RecordBook book(*m_store, m_catalogue, m_ids, named);
    EXPECT_EQ(shownMoney(book, 1240.4), u"€1,240"_s);
    EXPECT_EQ(shownMoney(book, 0.21), u"€0.21"_s);
    EXPECT_EQ(book.speaker().said(turningSentence({"price of a new unit", TurningPoint::Measure::money, 6500, 3400})),
              u"price of a new unit: €3,400 instead of €6,500"_s);
}

TEST_F(WorthLogTest, FiguresAreWrittenAsTheyWouldBeTyped)
{
    EXPECT_EQ(writtenNumber(m_book, 0.215), u"0.215"_s);
    EXPECT_EQ(writtenNumber(m_book, 1240), u"1240"_s);
    EXPECT_EQ(writtenNumber(m_book, 0.07 * 100), u"7"_s);
}

} // namespace padside::test
