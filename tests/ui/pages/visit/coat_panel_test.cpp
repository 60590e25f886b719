// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

// May it be coated now: the check beside "brush and coat".

#include "tests/ui/pages/visit/visit_fixture.h"

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

namespace padside::test {

namespace {

using namespace Qt::Literals::StringLiterals;

class CoatPanelTest : public VisitPageTest
{
protected:
    /// At the accumulator's bottom, found poor and dry, with brush and coat chosen.
    void chooseCoating()
    {
        open();
        start();
        goTo("bottom");
        key(Qt::Key_4);
        key(Qt::Key_D);
        find<QPushButton>("work-brush-and-coat")->click();
    }
    void write(const char* field, const QString& text) const { find<QLineEdit>(field)->setText(text); }
    void writeDay(const QString& surface, const QString& air, const QString& humidity) const
    {
        write("coatSurface", surface);
        write("coatAir", air);
        write("coatHumidity", humidity);
    }
    [[nodiscard]] QString verdict() const { return find<QLabel>("coatVerdict")->text(); }
};

TEST_F(CoatPanelTest, SaysWhatIsMissingAndIsOnlyThereForCoating)
{
    chooseCoating();
    EXPECT_FALSE(find("coatPanel")->isHidden());
    EXPECT_TRUE(verdict().startsWith(u"May it be coated now?"_s)) << verdict().toStdString();
    EXPECT_FALSE(find<QPushButton>("coatTake")->isEnabled());
    find<QPushButton>("work-clean")->click();
    EXPECT_TRUE(find("coatPanel")->isHidden());
}

TEST_F(CoatPanelTest, ItsFieldsBeginWhereThoseAroundItDo)
{
    chooseCoating();
    m_page->resize(1280, 800);
    m_page->show();
    const auto leftOf = [this](const char* name) { return find(name)->mapTo(m_page.get(), QPoint()).x(); };
    EXPECT_EQ(leftOf("coatKind"), leftOf("workNote"));
    EXPECT_EQ(leftOf("coatSurface"), leftOf("workNote"));
}

TEST_F(CoatPanelTest, JudgesWhileTyping)
{
    chooseCoating();
    // Published: 16 °C, 71 %, steel at 13 °C is not painted (coating-inspection guide to ISO 8502-4).
    writeDay(u"13"_s, u"16"_s, u"71"_s);
    EXPECT_TRUE(verdict().startsWith(u"Not to be coated now:"_s)) << verdict().toStdString();
    EXPECT_TRUE(verdict().contains(u"ISO 8502-4"_s));
    write("coatSurface", u"16"_s);
    EXPECT_TRUE(verdict().startsWith(u"It may be coated now, on these terms:"_s)) << verdict().toStdString();
    EXPECT_TRUE(verdict().contains(u"not known"_s)); // when the unit runs again
    find<QComboBox>("coatRuns")->setCurrentIndex(1); // off until put on again
    EXPECT_TRUE(verdict().startsWith(u"It may be coated now."_s)) << verdict().toStdString();
}

TEST_F(CoatPanelTest, KnowsThatTheZoneWasWet)
{
    chooseCoating();
    find("zonePanel")->setFocus();
    key(Qt::Key_W);
    writeDay(u"20"_s, u"20"_s, u"50"_s);
    EXPECT_TRUE(verdict().contains(u"It was found wet"_s)) << verdict().toStdString();
}

TEST_F(CoatPanelTest, TakesAirAndHumidityFromTheVisit)
{
    open();
    start();
    typeInto("airTemperature", u"18"_s);
    typeInto("humidity", u"60"_s);
    goTo("bottom");
    EXPECT_EQ(find<QLineEdit>("coatAir")->text(), u"18.0 °C"_s);
    EXPECT_EQ(find<QLineEdit>("coatHumidity")->text(), u"60.0 %"_s);
}

TEST_F(CoatPanelTest, AKindOfCoatingBringsItsDryingTime)
{
    chooseCoating();
    auto* kind = find<QComboBox>("coatKind");
    kind->setCurrentIndex(kind->findText(u"epoxy, two-part"_s));
    Q_EMIT kind->activated(kind->currentIndex());
    EXPECT_EQ(find<QLineEdit>("workProduct")->text(), u"epoxy, two-part"_s);
    EXPECT_EQ(find<QLineEdit>("coatDryTime")->text(), u"12.0 h"_s);
    write("workProduct", u"Zinc-rich primer"_s); // typed instead of picked
    EXPECT_EQ(kind->currentText(), u"zinc-rich primer"_s);
    EXPECT_EQ(find<QLineEdit>("coatDryTime")->text(), u"2.0 h"_s);
}

TEST_F(CoatPanelTest, KeepsOffUntilItIsDryAndKeepsTheDaysConditionsWithTheWork)
{
    chooseCoating();
    write("workProduct", u"my own primer"_s);
    writeDay(u"10"_s, u"12"_s, u"50"_s);
    write("coatDryTime", u"4"_s); // at 20 °C: 8 h at 10 °C
    find<QPushButton>("coatTake")->click();
    find<QPushButton>("enterWork")->click();
    ASSERT_EQ(record().treatments.size(), 1U);
    const Treatment work = record().treatments.front();
    EXPECT_EQ(work.product, "my own primer");
    ASSERT_TRUE(work.dryBy.has_value());
    EXPECT_EQ(instantText(*work.dryBy), "2026-05-04T17:00:00+02:00");
    EXPECT_TRUE(work.note.starts_with("Air 12.0 °C, 50.0 %; surface 10.0 °C, ")) << work.note;
    EXPECT_TRUE(find<QLineEdit>("coatSurface")->text().isEmpty());
}

TEST_F(CoatPanelTest, HoursTypedAfterwardsHold)
{
    chooseCoating();
    writeDay(u"20"_s, u"20"_s, u"50"_s);
    write("coatDryTime", u"4"_s);
    find<QPushButton>("coatTake")->click();
    find<QLineEdit>("workDryIn")->setFocus();
    type(u"6"_s);
    find<QPushButton>("enterWork")->click();
    EXPECT_EQ(instantText(*record().treatments.front().dryBy), "2026-05-04T15:00:00+02:00");
}

TEST_F(CoatPanelTest, WithRunHoursSaysWhetherItIsDryInTime)
{
    chooseCoating();
    writeDay(u"20"_s, u"20"_s, u"50"_s);
    write("coatDryTime", u"4"_s); // dry at 13:00
    find<QComboBox>("coatRuns")->setCurrentIndex(2);
    write("coatHours", u"12:00-20:00"_s);
    EXPECT_TRUE(verdict().contains(u"still be wet when the unit runs (usually 12:00 to 20:00)"_s));
    write("coatHours", u"14-20"_s);
    EXPECT_TRUE(verdict().startsWith(u"It may be coated now."_s)) << verdict().toStdString();
    write("coatHours", u"noon"_s);
    EXPECT_TRUE(verdict().contains(u"Write the hours the unit runs like 22:00-6:00"_s));
}

TEST_F(CoatPanelTest, SaysWhatCannotBe)
{
    chooseCoating();
    writeDay(u"20"_s, u"20"_s, u"0"_s);
    EXPECT_FALSE(verdict().isEmpty());
    EXPECT_FALSE(verdict().contains(u"nan"_s, Qt::CaseInsensitive));
    EXPECT_FALSE(find<QPushButton>("coatTake")->isEnabled());
    writeDay(u"900"_s, u"20"_s, u"50"_s);
    EXPECT_TRUE(verdict().contains(u"Look at the value and its unit"_s)) << verdict().toStdString();
}

TEST_F(CoatPanelTest, OffersToLookTheCoatingOverLater)
{
    chooseCoating();
    find<QPushButton>("coatLookOver")->click();
    EXPECT_EQ(find<QLineEdit>("followUpWhy")->text(), u"look over the coating"_s);
    EXPECT_TRUE(record().followUps.empty()); // nothing is promised yet
    key(Qt::Key_Return);
    ASSERT_EQ(record().followUps.size(), 1U);
    EXPECT_EQ(record().followUps.front().why, "look over the coating");
}

} // namespace

} // namespace padside::test
