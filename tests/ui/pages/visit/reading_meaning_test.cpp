// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/ui/pages/visit/visit_fixture.h"

#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QTest>

namespace padside::test {

using namespace Qt::Literals::StringLiterals;

/// What readings mean, on the visit page (R-410A in the fixture).
class ReadingMeaning : public VisitPageTest
{
protected:
    [[nodiscard]] QString meaningOf(const char* reading) const
    {
        const auto* label = m_page->findChild<QLabel*>(u"verdict-"_s + QString::fromUtf8(reading));
        return label && !label->isHidden() ? label->accessibleName() : QString();
    }

    /// Types without leaving the field.
    void typing(const char* reading, const QString& text) const
    {
        auto* field = m_page->findChild<QLineEdit*>(u"reading-"_s + QString::fromUtf8(reading));
        ASSERT_NE(field, nullptr);
        field->setFocus();
        QTest::keyClicks(field, text);
    }
};

TEST_F(ReadingMeaning, IsSaidWhileTheReadingIsBeingTyped)
{
    open();
    start();
    typeInto("reading-suction-pressure", u"118 psig"_s);
    EXPECT_EQ(meaningOf("suction-line-temperature"), QString());
    typing("suction-line-temperature", u"12"_s);
    EXPECT_TRUE(meaningOf("suction-line-temperature").contains(u"Superheat"_s))
        << meaningOf("suction-line-temperature").toStdString();
}

TEST_F(ReadingMeaning, QuestionsWhatCanHardlyBeAndEntersItAllTheSame)
{
    open();
    start();
    typeInto("reading-return-dry-bulb", u"21 C"_s);
    typeInto("reading-return-wet-bulb", u"24 C"_s);
    EXPECT_TRUE(meaningOf("return-wet-bulb").startsWith(u"Look again."_s))
        << meaningOf("return-wet-bulb").toStdString();
    const UnitRecord now = record();
    EXPECT_TRUE(std::ranges::any_of(now.readings, [](const Reading& one) { return one.kind == "return-wet-bulb"; }))
        << "questioned, not refused";
}

TEST_F(ReadingMeaning, GoesWithTheReading)
{
    open();
    start();
    typeInto("reading-return-dry-bulb", u"21 C"_s);
    typeInto("reading-return-wet-bulb", u"24 C"_s);
    auto* field = find<QLineEdit>("reading-return-wet-bulb");
    field->setFocus();
    field->selectAll();
    QTest::keyClick(field, Qt::Key_Delete);
    EXPECT_EQ(meaningOf("return-wet-bulb"), QString());
}

TEST_F(ReadingMeaning, IsHeardWithTheField)
{
    open();
    start();
    typeInto("reading-return-dry-bulb", u"21 C"_s);
    typing("return-wet-bulb", u"24 C"_s);
    const auto* field = find<QLineEdit>("reading-return-wet-bulb");
    EXPECT_TRUE(field->accessibleDescription().contains(u"never above the air"_s))
        << field->accessibleDescription().toStdString();
}

TEST_F(ReadingMeaning, SeveralReadingsPointToACauseAndSayWhy)
{
    open();
    start();
    typeInto("reading-outdoor-dry-bulb", u"32 C"_s);
    typeInto("reading-return-dry-bulb", u"24 C"_s);
    typeInto("reading-suction-pressure", u"78 psig"_s); // boils near -7 °C
    typeInto("reading-liquid-pressure", u"290 psig"_s); // condenses near 34 °C
    const auto* list = find<QLabel>("suspicions");
    EXPECT_TRUE(find<QLabel>("pointsTo")->isVisibleTo(m_page.get()));
    EXPECT_TRUE(list->text().contains(u"For it:"_s)) << list->text().toStdString();
    EXPECT_TRUE(list->text().contains(u"What would decide:"_s));
    QTest::mouseClick(find<QPushButton>("whySuspicion"), Qt::LeftButton);
}

TEST_F(ReadingMeaning, ARustedShareIsAskedOfTheZoneAtHandAndGraded)
{
    open();
    start();
    goTo("bottom");
    QLineEdit* share = nullptr;
    for (auto* field : m_page->findChildren<QLineEdit*>(u"reading-rust-share"_s)) {
        if (field->isVisibleTo(m_page.get())) {
            EXPECT_EQ(share, nullptr) << "only of the zone at hand";
            share = field;
        }
    }
    ASSERT_NE(share, nullptr);
    share->setFocus();
    QTest::keyClicks(share, u"0.7"_s);
    QTest::keyClick(share, Qt::Key_Return);
    const UnitRecord now = record();
    const auto entered = std::ranges::find(now.readings, "rust-share", &Reading::kind);
    ASSERT_NE(entered, now.readings.end());
    EXPECT_EQ(entered->zoneId, zoneId("bottom"));
    EXPECT_DOUBLE_EQ(entered->value.si, 0.007);
    bool graded = false;
    for (const auto* label : m_page->findChildren<QLabel*>(u"verdict-rust-share"_s))
        graded = graded || label->accessibleName().contains(u"grade 6 by ASTM D610"_s);
    EXPECT_TRUE(graded) << "ASTM D610: more than 0.3 up to 1 % is grade 6";
}

} // namespace padside::test
