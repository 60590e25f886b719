// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/store/own_catalogue.h"
#include "resources/resources.h"
#include "tests/ui/shell/window_fixture.h"
#include "ui/drawing/theme.h"
#include "ui/pages/track/rates_model.h"
#include "ui/pages/track/rates_panel.h"
#include "ui/pages/track/rates_words.h"

#include <QAbstractItemModelTester>
#include <QLabel>
#include <QPushButton>
#include <QSignalSpy>
#include <QTableView>
#include <QTest>

namespace padside::test {

using Qt::Literals::StringLiterals::operator""_s;

namespace {

class RatesPanelTest : public WindowFixture
{
protected:
    RatesPanelTest()
    {
        m_store->ownCatalogue().setChanges({}); // the sample's costs are not what is looked at
        m_panel.resize(1280, 760);
        m_panel.show();
    }

    void learn()
    {
        QSignalSpy learnt(&m_panel, &RatesPanel::learnt);
        button(u"learn"_s).click();
        ASSERT_TRUE(learnt.count() > 0 || learnt.wait(120'000));
    }
    [[nodiscard]] QPushButton& button(const QString& name) const { return *m_panel.findChild<QPushButton*>(name); }
    [[nodiscard]] QAbstractItemModel& table() const { return *m_panel.findChild<QTableView*>(u"rates"_s)->model(); }
    [[nodiscard]] QString state() const { return m_panel.findChild<QLabel*>(u"state"_s)->text(); }
    void choose(int row) { table().setData(table().index(row, RatesModel::kind), Qt::Checked, Qt::CheckStateRole); }
    [[nodiscard]] Catalogue catalogueNow() const
    {
        return Catalogue::load(shippedCatalogue(), m_store->ownCatalogue().changes()).value();
    }

    RatesPanel m_panel{*m_book, Theme::light()};
};

} // namespace

TEST_F(RatesPanelTest, BeginsWithoutAnythingLearned)
{
    EXPECT_EQ(state(), u"Nothing was learned yet: all forecasts rest on our assumptions."_s);
    EXPECT_EQ(table().rowCount(), 0);
    EXPECT_FALSE(m_panel.findChild<QTableView*>(u"rates"_s)->isVisible()) << "headings alone say nothing";
    EXPECT_FALSE(button(u"accept"_s).isEnabled());
    EXPECT_FALSE(button(u"putBack"_s).isEnabled());
}

TEST_F(RatesPanelTest, LearnsWithoutChangingAnything)
{
    learn();
    ASSERT_GT(table().rowCount(), 5);
    EXPECT_EQ(m_store->ownCatalogue().changes(), "") << "nothing changes until the person says so";
    EXPECT_FALSE(button(u"accept"_s).isEnabled()) << "nothing is chosen";
    for (int row = 1; row < table().rowCount(); ++row)
        EXPECT_GE(m_panel.model().lesson(row - 1).dataShare, m_panel.model().lesson(row).dataShare);
    const KindLesson& first = m_panel.model().lesson(0);
    EXPECT_EQ(m_panel.findChild<QLabel*>(u"details"_s)->text(), lessonText(*m_book, first));
    EXPECT_TRUE(lessonText(*m_book, first).contains(QString::number(first.sightings)));
    const QAbstractItemModelTester tester(&table(), QAbstractItemModelTester::FailureReportingMode::Fatal);
}

TEST_F(RatesPanelTest, WhatIsAcceptedIsKeptInTheFileAndOnlyThat)
{
    learn();
    choose(0);
    choose(2);
    const KindLesson first = m_panel.model().lesson(0);
    const KindLesson second = m_panel.model().lesson(1);
    QSignalSpy changed(&m_panel, &RatesPanel::catalogueChanged);
    button(u"accept"_s).click();
    ASSERT_EQ(changed.count(), 1);
    const Catalogue now = catalogueNow();
    const OutlookModel used(now);
    const OutlookModel before(m_catalogue);
    const auto lifeNow = [&](const OutlookModel& model, const KindLesson& lesson) {
        return lifeOfRates(model.ratesOf(lesson.partKind, lesson.soils),
                           zonesOfLife(*now.partKind(lesson.partKind), lesson.soils), model.pace())
            .medianLifeYears;
    };
    EXPECT_NEAR(lifeNow(used, first) / first.learntLife.medianLife, 1, 0.006) << "rounded to three figures";
    EXPECT_EQ(lifeNow(used, second), lifeNow(before, second)) << "was not chosen";
}

TEST_F(RatesPanelTest, OursIsPutBackAndNothingIsLeftOver)
{
    learn();
    button(u"all"_s).click();
    button(u"accept"_s).click();
    ASSERT_NE(m_store->ownCatalogue().changes(), "");

    const Catalogue own = catalogueNow(); // the program makes the window anew with it
    RecordBook book(*m_store, own, m_ids, m_book->surroundings());
    RatesPanel panel(book, Theme::light());
    panel.resize(1280, 760);
    panel.show();
    EXPECT_EQ(panel.findChild<QLabel*>(u"state"_s)->text(), u"These were learned before and are in use."_s);
    panel.findChild<QPushButton*>(u"all"_s)->click();
    EXPECT_FALSE(panel.findChild<QPushButton*>(u"accept"_s)->isEnabled()) << "nothing new was learned";
    panel.findChild<QPushButton*>(u"putBack"_s)->click();
    EXPECT_EQ(m_store->ownCatalogue().changes(), "");
}

TEST_F(RatesPanelTest, LeavesAloneWhatElseThePersonChanged)
{
    const std::string byHand = R"({"part_kinds":{"pad":{"grades":{"3":"leans on the hose"}}}})";
    m_store->ownCatalogue().setChanges(byHand);
    learn();
    button(u"all"_s).click();
    button(u"accept"_s).click();
    EXPECT_EQ(catalogueNow().partKind("pad")->gradeSentences[2], "leans on the hose");
}

TEST_F(RatesPanelTest, CanBeCancelled)
{
    button(u"learn"_s).click();
    button(u"cancelWork"_s).click();
    EXPECT_TRUE(QTest::qWaitFor([this] { return state().startsWith(u"Cancelled"_s); }, 30'000));
    EXPECT_EQ(table().rowCount(), 0);
    EXPECT_TRUE(button(u"learn"_s).isEnabled());
    learn();
    EXPECT_GT(table().rowCount(), 0) << "and begun again";
}

} // namespace padside::test
