// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/store/record_reader.h"
#include "core/store/site_book.h"
#include "tests/ui/shell/window_fixture.h"
#include "ui/drawing/theme.h"
#include "ui/models/fleet_reviewer.h"
#include "ui/pages/fleet/fleet_page.h"

#include <QAbstractItemModelTester>
#include <QCheckBox>
#include <QComboBox>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QProgressBar>
#include <QPushButton>
#include <QSignalSpy>
#include <QTableView>
#include <QTest>

namespace padside::test {

using Qt::Literals::StringLiterals::operator""_s;

namespace {

class FleetPageTest : public WindowFixture
{
protected:
    FleetPageTest()
        : m_fleet(*m_book)
        , m_page(*m_book, m_fleet, Theme::light())
    {
        m_page.resize(1280, 760);
        m_page.show();
        m_page.refresh();
        waitForReviews();
    }

    void waitForReviews()
    {
        EXPECT_TRUE(QTest::qWaitFor([this] { return !m_fleet.isRunning(); }, 30'000));
    }

    template <typename Widget> [[nodiscard]] Widget& part(const QString& name = {}) const
    {
        return *m_page.findChild<Widget*>(name);
    }
    [[nodiscard]] QTableView& table() const { return part<QTableView>(u"fleet"_s); }
    [[nodiscard]] QString state() const { return part<QLabel>(u"state"_s).text(); }
    [[nodiscard]] int rows() const { return table().model()->rowCount(); }
    [[nodiscard]] QString shownIn(int row, FleetModel::Column column) const
    {
        return table().model()->index(row, column).data().toString();
    }
    [[nodiscard]] int gradeIn(int row) const
    {
        return table().model()->index(row, FleetModel::grade).data(FleetModel::gradeRole).toInt();
    }

    FleetReviewer m_fleet;
    FleetPage m_page;
    QAbstractItemModelTester m_tester{table().model(), QAbstractItemModelTester::FailureReportingMode::Fatal};
};

} // namespace

TEST_F(FleetPageTest, ShowsEveryUnitThatIsNotRetiredTheGravestFirst)
{
    ASSERT_GT(rows(), 1);
    for (int row = 1; row < rows(); ++row)
        EXPECT_GE(gradeIn(row - 1), gradeIn(row));
    for (int row = 0; row < rows(); ++row) {
        EXPECT_FALSE(shownIn(row, FleetModel::flags).isEmpty()) << "reviewed";
        EXPECT_FALSE(shownIn(row, FleetModel::nextCheck).isEmpty());
    }
    EXPECT_FALSE(part<QProgressBar>().isVisible());
}

TEST_F(FleetPageTest, EnterOpensTheUnit)
{
    QSignalSpy wanted(&m_page, &FleetPage::unitRequested);
    table().setFocus();
    table().setCurrentIndex(table().model()->index(1, FleetModel::site));
    QTest::keyClick(&table(), Qt::Key_Return);
    ASSERT_EQ(wanted.count(), 1);
    const auto unit = wanted.front().front().value<UnitId>();
    EXPECT_EQ(QString::fromStdString(m_store->records().unitRecord(unit).unit.tag), shownIn(1, FleetModel::tag));
}

TEST_F(FleetPageTest, ADoubleClickOpensTheUnit)
{
    const QSignalSpy wanted(&m_page, &FleetPage::unitRequested);
    const QPoint there = table().visualRect(table().model()->index(0, FleetModel::tag)).center();
    QTest::mouseClick(table().viewport(), Qt::LeftButton, {}, there);
    QTest::mouseDClick(table().viewport(), Qt::LeftButton, {}, there);
    EXPECT_EQ(wanted.count(), 1);
}

TEST_F(FleetPageTest, TypingFindsAndEnterGoesToTheTable)
{
    const QString tag = shownIn(rows() - 1, FleetModel::tag);
    auto& search = part<QLineEdit>(u"fleetSearch"_s);
    QTest::keyClicks(&search, tag.toLower());
    ASSERT_EQ(rows(), 1);
    EXPECT_EQ(shownIn(0, FleetModel::tag), tag);
    EXPECT_TRUE(state().contains(u"1 of"_s)) << state().toStdString();
    QTest::keyClick(&search, Qt::Key_Return);
    EXPECT_EQ(table().currentIndex().row(), 0);
}

TEST_F(FleetPageTest, WhereNothingFitsItSaysSoAndAllCanBeShownAgain)
{
    const int all = rows();
    part<QLineEdit>(u"fleetSearch"_s).setText(u"no such unit"_s);
    part<QCheckBox>(u"overdue"_s).setChecked(true);
    EXPECT_FALSE(table().isVisible());
    EXPECT_TRUE(part<QLabel>(u"empty"_s).isVisible());
    EXPECT_TRUE(part<QLabel>(u"empty"_s).text().contains(u"No unit is like that"_s));
    part<QPushButton>(u"showAll"_s).click();
    EXPECT_EQ(rows(), all);
    EXPECT_TRUE(table().isVisible());
    EXPECT_FALSE(part<QPushButton>(u"showAll"_s).isEnabled());
}

TEST_F(FleetPageTest, ChoicesOfferWhatIsThereAndNarrowTheTable)
{
    auto& site = part<QComboBox>(u"site"_s);
    ASSERT_GT(site.count(), 1);
    site.setCurrentIndex(1);
    for (int row = 0; row < rows(); ++row)
        EXPECT_EQ(shownIn(row, FleetModel::site), site.itemText(1));
    part<QPushButton>(u"showAll"_s).click();
    auto& grade = part<QComboBox>(u"grade"_s);
    grade.setCurrentIndex(grade.findData(2));
    for (int row = 0; row < rows(); ++row)
        EXPECT_GE(gradeIn(row), 2);
}

TEST_F(FleetPageTest, ARetiredUnitIsShownOnlyWhenItIsAskedFor)
{
    const int before = rows();
    Unit unit = m_store->records().unitRecord(units().front()).unit;
    unit.retiredOn = m_book->today();
    ASSERT_TRUE(m_book->change(unit.id, [&] { m_store->sites().changeUnit(unit); }));
    EXPECT_EQ(rows(), before - 1);
    part<QCheckBox>(u"retiredToo"_s).setChecked(true);
    EXPECT_EQ(rows(), before);
    EXPECT_TRUE(shownIn(before - 1, FleetModel::place).startsWith(u"retired"_s));
}

TEST_F(FleetPageTest, AltWithAnArrowSortsByTheColumnOneIsIn)
{
    table().setFocus();
    table().setCurrentIndex(table().model()->index(0, FleetModel::tag));
    QTest::keyClick(&table(), Qt::Key_Up, Qt::AltModifier);
    const QHeaderView& header = *table().horizontalHeader();
    EXPECT_EQ(header.sortIndicatorSection(), FleetModel::tag);
    EXPECT_EQ(header.sortIndicatorOrder(), Qt::AscendingOrder);
    for (int row = 1; row < rows(); ++row)
        EXPECT_LT(shownIn(row - 1, FleetModel::tag), shownIn(row, FleetModel::tag));
    QTest::keyClick(&table(), Qt::Key_Down, Qt::AltModifier);
    EXPECT_EQ(header.sortIndicatorOrder(), Qt::DescendingOrder);
}

TEST_F(FleetPageTest, TheChosenUnitStaysChosenWhenTheFileChanges)
{
    table().setCurrentIndex(table().model()->index(1, FleetModel::tag));
    const QString tag = shownIn(1, FleetModel::tag);
    Unit unit = m_store->records().unitRecord(units().front()).unit;
    unit.place = "moved to the south wall";
    ASSERT_TRUE(m_book->change(unit.id, [&] { m_store->sites().changeUnit(unit); }));
    EXPECT_EQ(shownIn(table().currentIndex().row(), FleetModel::tag), tag);
    part<QLineEdit>(u"fleetSearch"_s).setText(u"moved south"_s);
    EXPECT_EQ(rows(), 1);
}

TEST_F(FleetPageTest, ReviewingCanBeStoppedAndItSaysWhatIsMissing)
{
    m_fleet.start();
    EXPECT_TRUE(part<QPushButton>(u"stop"_s).isVisible());
    EXPECT_TRUE(part<QProgressBar>().isVisible());
    part<QPushButton>(u"stop"_s).click();
    EXPECT_FALSE(m_fleet.isRunning());
    EXPECT_FALSE(part<QProgressBar>().isVisible());
    EXPECT_GT(rows(), 0) << "what the file says needs no review";
}

TEST_F(FleetPageTest, EveryControlHasAName)
{
    for (const auto* box : m_page.findChildren<QComboBox*>())
        EXPECT_FALSE(box->accessibleName().isEmpty()) << box->objectName().toStdString();
    for (const auto* box : m_page.findChildren<QCheckBox*>())
        EXPECT_FALSE(box->accessibleName().isEmpty()) << box->objectName().toStdString();
    EXPECT_FALSE(part<QLineEdit>(u"fleetSearch"_s).accessibleName().isEmpty());
    EXPECT_FALSE(part<QProgressBar>().accessibleName().isEmpty());
    EXPECT_FALSE(table().accessibleName().isEmpty());
}

TEST_F(FleetPageTest, AFileWithoutUnitsSaysSo)
{
    const auto store = Store::create(m_folder.filePath(u"empty.padside"_s));
    RecordBook book(*store, m_catalogue, m_ids, m_book->surroundings());
    FleetReviewer fleet(book);
    FleetPage page(book, fleet, Theme::light());
    page.show();
    page.refresh();
    EXPECT_TRUE(QTest::qWaitFor([&] { return !fleet.isRunning(); }, 30'000));
    EXPECT_FALSE(page.findChild<QTableView*>()->isVisible());
    EXPECT_FALSE(page.findChild<QWidget*>(u"field"_s)->isVisible());
    EXPECT_TRUE(page.findChild<QLabel*>(u"empty"_s)->text().contains(u"no units yet"_s));
}

} // namespace padside::test
