// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

// The refrigerant account beside the charge fields.

#include "tests/ui/pages/visit/visit_fixture.h"

#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

namespace padside::test {

namespace {

using namespace Qt::Literals::StringLiterals;

class ChargeAccountTest : public VisitPageTest
{
protected:
    [[nodiscard]] QString account() const { return find<QLabel>("chargeLedger")->text(); }
};

TEST_F(ChargeAccountTest, SaysThatNothingIsOnRecordYet)
{
    open();
    start();
    EXPECT_TRUE(account().contains(u"No refrigerant put in or taken out is on record."_s)) << account().toStdString();
}

TEST_F(ChargeAccountTest, CountsWhatIsBeingTypedAsIfItWereEntered)
{
    open();
    start();
    find<QPushButton>("charge-added")->click();
    find<QLineEdit>("chargeMass")->setText(u"300 g"_s);
    EXPECT_TRUE(account().startsWith(u"The account of this unit, with what is typed:"_s));
    EXPECT_TRUE(account().contains(u"In 0.30 kg, recovered 0.00 kg, lost 0.00 kg."_s)) << account().toStdString();
    find<QPushButton>("charge-recovered")->click();
    EXPECT_TRUE(account().contains(u"In 0.00 kg, recovered 0.30 kg, lost 0.00 kg."_s)) << account().toStdString();
    EXPECT_TRUE(record().charges.empty());
}

TEST_F(ChargeAccountTest, WithoutAFactoryChargeSaysSoInsteadOfARate)
{
    open();
    start();
    typeInto("chargeMass", u"300 g"_s);
    ASSERT_EQ(record().charges.size(), 1U);
    EXPECT_TRUE(account().contains(u"factory charge is not written down"_s)) << account().toStdString();
    EXPECT_FALSE(account().contains(u"nan"_s, Qt::CaseInsensitive));
}

TEST_F(ChargeAccountTest, AReasonTheLedgerKnowsIsKeptInItsOwnWord)
{
    open();
    start();
    find<QLineEdit>("chargeBecause")->setText(u"First Charge"_s);
    typeInto("chargeMass", u"3 kg"_s);
    ASSERT_EQ(record().charges.size(), 1U);
    EXPECT_EQ(record().charges.front().because, "first charge");
    find<QLineEdit>("chargeBecause")->setText(u"valve core wept"_s);
    typeInto("chargeMass", u"100 g"_s);
    EXPECT_EQ(record().charges.back().because, "valve core wept");
}

} // namespace

} // namespace padside::test
