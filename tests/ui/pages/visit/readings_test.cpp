// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/store/drafts.h"
#include "tests/ui/pages/visit/visit_fixture.h"

#include <QLineEdit>
#include <QPushButton>
#include <QTest>

namespace padside::test {

namespace {

const Reading* todays(const UnitRecord& record, VisitId visit, const std::string& kind)
{
    const auto found = std::ranges::find_if(
        record.readings, [&](const Reading& one) { return one.visitId == visit && one.kind == kind; });
    return found == record.readings.end() ? nullptr : &*found;
}

} // namespace

TEST_F(VisitPageTest, AReadingIsKeptWithTheUnitAsTyped)
{
    open();
    start();
    typeInto("reading-suction-pressure", QStringLiteral("68 psig"));
    const UnitRecord now = record();
    const Reading* reading = todays(now, m_visit, "suction-pressure");
    ASSERT_NE(reading, nullptr);
    EXPECT_EQ(reading->value.typed, "68 psig");
    EXPECT_EQ(reading->value.unitCode, "psig");
    // NIST SP 811, table B.8: 1 psi = 6.894 757 kPa.
    EXPECT_NEAR(reading->value.si, 68 * 6894.757, 0.1);
    EXPECT_EQ(echoOf("reading-suction-pressure"), QStringLiteral("= 469 kPa"));
}

TEST_F(VisitPageTest, ABareNumberIsReadInTheUnitShown)
{
    open(QLocale(QLocale::English, QLocale::UnitedStates), UnitSystem::usCustomary);
    start();
    EXPECT_EQ(find<QLineEdit>("reading-suction-pressure")->placeholderText(), QStringLiteral("psig"));
    typeInto("reading-suction-pressure", QStringLiteral("68"));
    const UnitRecord now = record();
    ASSERT_NE(todays(now, m_visit, "suction-pressure"), nullptr);
    EXPECT_EQ(todays(now, m_visit, "suction-pressure")->value.unitCode, "psig");
}

TEST_F(VisitPageTest, ABareNumberKeepsItsUnitWhenThePersonChoosesAnother)
{
    open(QLocale(QLocale::English, QLocale::UnitedStates), UnitSystem::usCustomary);
    start();
    typeInto("reading-suction-pressure", QStringLiteral("68"));
    open(QLocale(QLocale::English, QLocale::UnitedStates), UnitSystem::metric);
    start();
    EXPECT_EQ(find<QLineEdit>("reading-suction-pressure")->text(), QStringLiteral("68 psig"));
    EXPECT_EQ(echoOf("reading-suction-pressure"), QStringLiteral("= 469 kPa")) << "NIST SP 811: 1 psi = 6.894 757 kPa";
    EXPECT_EQ(todays(record(), m_visit, "suction-pressure")->value.unitCode, "psig");
}

class TypedAbroad : public VisitPageTest, public ::testing::WithParamInterface<const char*>
{
};

TEST_P(TypedAbroad, OnePointTwoFiveZeroNeverBecomesAThousand)
{
    open(QLocale(QString::fromUtf8(GetParam())));
    start();
    typeInto("reading-suction-pressure", QStringLiteral("1.250"));
    EXPECT_EQ(todays(record(), m_visit, "suction-pressure"), nullptr) << "nothing may be entered";
    EXPECT_EQ(find<QLineEdit>("reading-suction-pressure")->text(), QStringLiteral("1.250")) << "the text stays";
    const QString said = echoOf("reading-suction-pressure");
    EXPECT_TRUE(said.contains(QStringLiteral("1250")) && said.contains(QStringLiteral("1,250"))) << said.toStdString();

    typeInto("reading-suction-pressure", QStringLiteral("1,250"));
    const UnitRecord now = record();
    const Reading* reading = todays(now, m_visit, "suction-pressure");
    ASSERT_NE(reading, nullptr);
    EXPECT_NEAR(reading->value.si, 1250, 1e-9) << "1,25 kPa";
    typeInto("reading-suction-pressure", QStringLiteral("480,5"));
    EXPECT_NEAR(todays(record(), m_visit, "suction-pressure")->value.si, 480.5e3, 1e-6);
    EXPECT_EQ(record().readings.size(), 2U) << "last year's and one of today";
}

INSTANTIATE_TEST_SUITE_P(GermanAndFrench, TypedAbroad, ::testing::Values("de_DE", "fr_FR"));

TEST_F(VisitPageTest, ABadEntryKeepsItsTextAcrossAStart)
{
    open();
    start();
    typeInto("reading-suction-pressure", QStringLiteral("sixty"));
    EXPECT_FALSE(echoOf("reading-suction-pressure").isEmpty());
    killAndReopen();
    EXPECT_EQ(find<QLineEdit>("reading-suction-pressure")->text(), QStringLiteral("sixty"));
    EXPECT_EQ(todays(record(), m_visit, "suction-pressure"), nullptr);
}

TEST_F(VisitPageTest, TextIsKeptWhileItIsBeingTyped)
{
    open();
    start();
    find<QLineEdit>("reading-line-voltage")->setFocus();
    type(QStringLiteral("23"));
    killAndReopen();
    EXPECT_EQ(find<QLineEdit>("reading-line-voltage")->text(), QStringLiteral("23"));
}

TEST_F(VisitPageTest, AnUnusualValueIsQuestionedNotRefused)
{
    open();
    start();
    typeInto("reading-line-voltage", QStringLiteral("2300"));
    EXPECT_NE(todays(record(), m_visit, "line-voltage"), nullptr);
    EXPECT_TRUE(echoOf("reading-line-voltage").contains(QStringLiteral("Is that right?")));
}

TEST_F(VisitPageTest, AnEmptiedReadingIsTakenBack)
{
    open();
    start();
    typeInto("reading-line-voltage", QStringLiteral("231"));
    ASSERT_NE(todays(record(), m_visit, "line-voltage"), nullptr);
    auto* edit = find<QLineEdit>("reading-line-voltage");
    edit->setFocus();
    edit->selectAll();
    QTest::keyClick(edit, Qt::Key_Delete);
    QTest::keyClick(edit, Qt::Key_Return);
    EXPECT_EQ(todays(record(), m_visit, "line-voltage"), nullptr);
}

TEST_F(VisitPageTest, ReadingsOfTheOtherSeasonAreFoundBySearching)
{
    open();
    start(VisitReason::fall);
    auto* field = find<QLineEdit>("reading-liquid-pressure");
    EXPECT_FALSE(field->isVisible());
    find<QLineEdit>("readingSearch")->setText(QStringLiteral("liquid"));
    EXPECT_TRUE(field->isVisible());
    EXPECT_FALSE(find<QLineEdit>("reading-line-voltage")->isVisible());
}

TEST_F(VisitPageTest, RefrigerantIsEnteredWithItsMassAsTyped)
{
    open();
    start();
    find<QPushButton>("charge-recovered")->click();
    find<QLineEdit>("chargeCylinder")->setText(QStringLiteral("C-7"));
    typeInto("chargeMass", QStringLiteral("8 oz"));
    ASSERT_EQ(record().charges.size(), 1U);
    const ChargeEntry charge = record().charges.front();
    EXPECT_EQ(charge.direction, ChargeDirection::recovered);
    // NIST SP 811, table B.8: 1 oz (avoirdupois) = 28.349 52 g.
    EXPECT_NEAR(charge.mass.si, 8 * 0.02834952, 1e-7);
    EXPECT_EQ(charge.mass.typed, "8 oz");
    EXPECT_EQ(charge.refrigerant, "R-410A");
    EXPECT_EQ(charge.cylinder, "C-7");
    typeInto("chargeMass", QStringLiteral("some"));
    EXPECT_EQ(record().charges.size(), 1U);
    EXPECT_FALSE(echoOf("chargeMass").isEmpty());
    EXPECT_EQ(find<QLineEdit>("chargeMass")->text(), QStringLiteral("some"));
}

} // namespace padside::test
