// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/store/own_catalogue.h"
#include "tests/ui/pages/unit/unit_page_fixture.h"
#include "ui/drawing/theme.h"
#include "ui/drawing/worth_bars.h"
#include "ui/pages/unit/part_costs_dialog.h"
#include "ui/pages/unit/worth_panel.h"

#include <QCoreApplication>
#include <QImage>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPainter>
#include <QPushButton>
#include <QTest>
#include <QTreeWidget>

namespace padside::test {

namespace {

using namespace Qt::Literals::StringLiterals;

const std::string vesselCosts
    = R"({"costs":{"suction-accumulator":{"part":240,"labour":560,"treatment":48},"fan-blade":{"part":70,"labour":60}}})";

class WorthPanelTest : public UnitPageTest
{
protected:
    WorthPanelTest()
        : m_panel(*m_book, m_steps, Theme::light())
    {
    }

    void showUnit()
    {
        const UnitRecord record = worseningUnit().build();
        write(record);
        m_unit = record.unit.id;
        m_panel.resize(1200, 700);
        m_panel.setSnapshot(snapshotOf(m_book->record(m_unit), m_catalogue));
        m_panel.show();
    }

    void give(const std::string& patch) { m_store->ownCatalogue().setChanges(patch); }
    [[nodiscard]] QTreeWidget& parts() const { return *m_panel.findChild<QTreeWidget*>(u"worthParts"_s); }
    [[nodiscard]] QString text(const char* name) const
    {
        return m_panel.findChild<QLabel*>(QString::fromUtf8(name))->text();
    }
    [[nodiscard]] QLineEdit& field(const char* name) const
    {
        return *m_panel.findChild<QLineEdit*>(QString::fromUtf8(name));
    }
    void type(const char* name, const QString& what) const
    {
        field(name).setFocus();
        field(name).selectAll();
        QTest::keyClicks(&field(name), what);
        QTest::keyClick(&field(name), Qt::Key_Return);
    }
    [[nodiscard]] QString choices(int part) const
    {
        QStringList lines;
        const QTreeWidgetItem& item = *parts().topLevelItem(part);
        for (int row = 0; row < item.childCount(); ++row)
            lines << item.child(row)->text(0) + u" "_s + item.child(row)->text(2);
        return lines.join(u'\n');
    }

    QUndoStack m_steps;
    WorthPanel m_panel;
    UnitId m_unit;
};

TEST_F(WorthPanelTest, WithoutCostsItRanksPartsAndChoicesAndNamesWhatIsNeeded)
{
    showUnit();
    ASSERT_EQ(parts().topLevelItemCount(), 2);
    EXPECT_EQ(parts().topLevelItem(0)->text(0), u"Suction accumulator"_s);
    EXPECT_TRUE(choices(0).contains(u"treat it now: brush and coat not known"_s)) << choices(0).toStdString();
    EXPECT_TRUE(text("worthAbout").contains(u"Needed: "_s)) << text("worthAbout").toStdString();
    EXPECT_EQ(text("worthAnswer"), u"Carry on or replace: not reckoned yet."_s);
    EXPECT_TRUE(text("worthMissing").contains(u"Price of a new unit, fitted"_s)) << text("worthMissing").toStdString();
    EXPECT_TRUE(m_panel.findChild<WorthBarsView*>(u"worthBars"_s)->isHidden());
}

TEST_F(WorthPanelTest, WithCostsEveryChoiceHasItsCostAndReason)
{
    give(vesselCosts);
    showUnit();
    const QTreeWidgetItem& vessel = *parts().topLevelItem(0);
    ASSERT_GE(vessel.childCount(), 3);
    for (int row = 0; row < vessel.childCount(); ++row) {
        EXPECT_TRUE(vessel.child(row)->text(2).startsWith(u'$')) << vessel.child(row)->text(2).toStdString();
        EXPECT_FALSE(vessel.child(row)->text(4).isEmpty());
    }
}

TEST_F(WorthPanelTest, APriceTypedInPlaceIsReckonedWithAtOnceAndCanBeUndone)
{
    give(vesselCosts);
    showUnit();
    type("worth-price-new", u"5200"_s);
    EXPECT_TRUE(text("worthAnswer").contains(u" a year"_s)) << text("worthAnswer").toStdString();
    EXPECT_FALSE(text("worthTurning").isEmpty());
    const QString read = m_panel.findChild<WorthBarsView*>(u"worthBars"_s)->accessibleName();
    EXPECT_TRUE(read.contains(u"Carry on, a year: $"_s)) << read.toStdString();
    EXPECT_EQ(field("worth-price-new").text(), u"5200"_s);
    m_steps.undo();
    EXPECT_EQ(text("worthAnswer"), u"Carry on or replace: not reckoned yet."_s);
    EXPECT_EQ(field("worth-price-new").text(), QString());
}

TEST_F(WorthPanelTest, UndoInAFieldIsTheFieldsOnlyWhileSomethingIsTypedThere)
{
    showUnit();
    QLineEdit& price = field("worth-price-new");
    const auto takesUndo = [&price] {
        QKeyEvent undo(QEvent::ShortcutOverride, Qt::Key_Z, Qt::ControlModifier);
        undo.ignore();
        QCoreApplication::sendEvent(&price, &undo);
        return undo.isAccepted();
    };
    EXPECT_FALSE(takesUndo()) << "the page's step is taken back";
    QTest::keyClicks(&price, u"52"_s);
    EXPECT_TRUE(takesUndo());
}

TEST_F(WorthPanelTest, AGeneralFigureShowsOursUntilItIsChanged)
{
    give(vesselCosts);
    showUnit();
    EXPECT_EQ(field("worth-interest_percent").placeholderText(), u"5, ours"_s);
    type("worth-price-new", u"5200"_s);
    const QString before = text("worthAnswer");
    type("worth-interest_percent", u"12"_s);
    EXPECT_NE(text("worthAnswer"), before);
    type("worth-interest_percent", u"120"_s);
    EXPECT_EQ(field("worth-interest_percent").text(), u"120"_s) << "what was typed stays, with what is wrong with it";
    EXPECT_EQ(m_steps.count(), 2);
}

TEST_F(WorthPanelTest, TheCostsOfAPartAreAskedForInAFormOfTheirOwn)
{
    showUnit();
    m_panel.findChild<QPushButton*>(u"partCosts"_s)->click();
    auto* dialog = m_panel.findChild<PartCostsDialog*>();
    ASSERT_NE(dialog, nullptr);
    dialog->findChild<QLineEdit*>(u"cost-part"_s)->setText(u"240"_s);
    dialog->findChild<QLineEdit*>(u"cost-labour"_s)->setText(u"minus"_s);
    dialog->accept();
    EXPECT_TRUE(dialog->isVisible()) << "a cost that can't be read keeps the form open";
    EXPECT_EQ(m_steps.count(), 0);
    dialog->findChild<QLineEdit*>(u"cost-labour"_s)->setText(u"560"_s);
    dialog->accept();
    EXPECT_EQ(m_steps.count(), 1) << "all of the form is one step";
    EXPECT_TRUE(choices(0).contains(u'$')) << choices(0).toStdString();
    m_steps.undo();
    EXPECT_FALSE(choices(0).contains(u'$'));
}

TEST_F(WorthPanelTest, TheSmallerCostHasTheShorterBar)
{
    QImage image(400, 120, QImage::Format_RGB32);
    image.fill(Theme::light().panel);
    QPainter painter(&image);
    paintWorthBars(painter, QRectF(0, 0, 400, 120), {{u"a"_s, 100, u"100"_s}, {u"b"_s, 300, u"300"_s}}, Theme::light());
    painter.end();
    const auto widest = [&](const QColor& colour) {
        int most = 0;
        for (int y = 0; y < image.height(); ++y) {
            int count = 0;
            for (int x = 0; x < image.width(); ++x)
                count += image.pixel(x, y) == colour.rgb() ? 1 : 0;
            most = std::max(most, count);
        }
        return most;
    };
    const int small = widest(Theme::light().accent);
    const int large = widest(mixed(Theme::light().softInk, Theme::light().panel, 0.45));
    EXPECT_GT(small, 50);
    EXPECT_NEAR(large, 3 * small, 4);
}

TEST_F(WorthPanelTest, AReasonThatWouldBeCutToAWordStandsBelowTheTableOnly)
{
    give(vesselCosts);
    showUnit();
    const int reason = parts().columnCount() - 1;
    m_panel.resize(1800, 700);
    QCoreApplication::processEvents();
    EXPECT_FALSE(parts().isColumnHidden(reason));
    m_panel.resize(900, 700);
    QCoreApplication::processEvents();
    EXPECT_TRUE(parts().isColumnHidden(reason));
    const QTreeWidgetItem& choice = *parts().topLevelItem(0)->child(0);
    parts().setCurrentItem(parts().topLevelItem(0)->child(0));
    EXPECT_TRUE(text("worthAbout").contains(choice.text(reason))) << text("worthAbout").toStdString();
    m_panel.resize(1800, 700);
    QCoreApplication::processEvents();
    EXPECT_FALSE(parts().isColumnHidden(reason)) << "it comes back where there is room";
}

} // namespace

} // namespace padside::test
