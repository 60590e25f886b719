// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/ui/pages/unit/unit_page_fixture.h"
#include "ui/pages/unit/ledger_panel.h"

#include <QLabel>
#include <QTreeWidget>

namespace padside::test {

namespace {

using namespace Qt::Literals::StringLiterals;
using enum ChargeDirection;

class LedgerPanelTest : public UnitPageTest
{
protected:
    LedgerPanelTest()
        : m_panel(*m_book)
    {
    }
    void show(const RecordBuilder& unit) { m_panel.setSnapshot(*snapshotOf(unit.build(), m_catalogue)); }
    [[nodiscard]] QTreeWidget& days() const { return *m_panel.findChild<QTreeWidget*>(u"ledgerDays"_s); }
    [[nodiscard]] QString says() const { return m_panel.findChild<QLabel*>(u"ledgerSays"_s)->text(); }

    LedgerPanel m_panel;
};

TEST_F(LedgerPanelTest, ListsTheDaysNewestFirstWithInRecoveredAndLostApart)
{
    show(worseningUnit()
             .factoryCharge(3)
             .visit("2024-01-10")
             .charged(added, 0.3, "leak", "cylinder 9")
             .visit("2025-01-10")
             .charged(recovered, 2, "repair", "R 3")
             .charged(lost, 0.1)
             .charged(added, 3, "repair", "cylinder 9"));
    ASSERT_EQ(days().topLevelItemCount(), 2);
    const QTreeWidgetItem& newest = *days().topLevelItem(0);
    EXPECT_TRUE(newest.text(1).startsWith(u"3.00 kg"_s)) << newest.text(1).toStdString();
    EXPECT_TRUE(newest.text(2).startsWith(u"2.00 kg"_s));
    EXPECT_TRUE(newest.text(3).startsWith(u"0.10 kg"_s));
    EXPECT_TRUE(newest.text(4).startsWith(u"1.00 kg"_s)); // beyond what was recovered
    EXPECT_TRUE(days().topLevelItem(1)->text(7).contains(u"cylinder 9, leak"_s));
    EXPECT_TRUE(says().contains(u"advisory"_s)) << says().toStdString();
    EXPECT_TRUE(says().contains(u"40 CFR 82.152"_s));
}

TEST_F(LedgerPanelTest, WithoutEntriesSaysSoAndShowsNoTable)
{
    show(worseningUnit().factoryCharge(3));
    EXPECT_TRUE(days().isHidden());
    EXPECT_EQ(says(), u"No refrigerant put in or taken out is on record."_s);
}

} // namespace

} // namespace padside::test
