// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/support/made_up_weather.h"
#include "tests/ui/pages/setup/setup_fixture.h"
#include "ui/pages/setup/site_air_panel.h"
#include "ui/pages/setup/site_dialog.h"

#include <QFile>
#include <QLabel>
#include <QLineEdit>
#include <QTest>

#include <gmock/gmock.h>

namespace padside::test {

using Qt::Literals::StringLiterals::operator""_s;
using ::testing::HasSubstr;

class SiteAirTest : public SetupFixture
{
protected:
    void SetUp() override { show(std::make_unique<SiteDialog>(*m_book, *m_log, m_site)); }

    [[nodiscard]] std::string said(const QString& label) const { return find<QLabel>(label)->text().toStdString(); }
    [[nodiscard]] std::string meaning() const { return said(u"site-air-meaning"_s); }

    void typeAir(const QString& temperature, const QString& chloride) const
    {
        type(u"site-temperature"_s, temperature);
        type(u"site-humidity"_s, u"75"_s);
        type(u"site-sulphur"_s, u"10"_s);
        type(u"site-chloride"_s, chloride);
    }

    /// Reads a file of this text and waits until it is done.
    void readWeather(const std::string& text) const
    {
        const QString path = m_folder.filePath(u"weather.epw"_s);
        QFile file(path);
        ASSERT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(QByteArray::fromStdString(text));
        file.close();
        m_dialog->findChild<SiteAirPanel*>()->read(path);
        const auto* button = find<QWidget>(u"site-weather-file"_s);
        ASSERT_TRUE(QTest::qWaitFor([button] { return button->isEnabled(); }, 20'000));
    }
};

// Values: tests/reference/corrosivity.csv.
TEST_F(SiteAirTest, SaysAtOnceWhatTheAirMeansForMetal)
{
    EXPECT_THAT(meaning(), HasSubstr("ISO 9223"));
    typeAir(u"10"_s, u"5"_s);
    EXPECT_THAT(meaning(), HasSubstr("steel C3, zinc C3, copper C3, aluminium C2"));
    EXPECT_THAT(meaning(), HasSubstr("31 µm"));
    EXPECT_THAT(meaning(), HasSubstr("within the range"));
    typeAir(u"35"_s, u"900"_s);
    EXPECT_THAT(meaning(), HasSubstr("Extrapolated"));
    EXPECT_THAT(meaning(), HasSubstr("temperature, chloride"));
    type(u"site-chloride"_s, u"much"_s);
    EXPECT_THAT(meaning(), HasSubstr("With temperature, humidity"));
}

TEST_F(SiteAirTest, AWeatherFileFillsInTheMeansAndSaysHowOftenALineSweats)
{
    readWeather(madeUpEpw(8760) + "2025,1,1,1,0,?9,warm,9,50\n");
    EXPECT_THAT(typed(u"site-temperature"_s).toStdString(), HasSubstr("°C"));
    EXPECT_FALSE(typed(u"site-humidity"_s).isEmpty());
    const std::string weather = said(u"site-weather-said"_s);
    EXPECT_THAT(weather, HasSubstr("Wet hours in a year"));
    EXPECT_THAT(weather, HasSubstr("suction line at 8.0 °C"));
    EXPECT_THAT(weather, HasSubstr("Rows skipped: 1"));
    EXPECT_THAT(weather, HasSubstr("line 8769: “warm”"));

    auto* line = find<QLineEdit>(u"site-suction-line"_s);
    line->clear();
    QTest::keyClicks(line, u"15"_s);
    EXPECT_THAT(said(u"site-weather-said"_s), HasSubstr("suction line at 15.0 °C"));
    line->clear();
    QTest::keyClicks(line, u"cold"_s);
    EXPECT_THAT(said(u"site-weather-said"_s), HasSubstr("“cold” is not a number"));

    m_dialog->accept();
    EXPECT_NEAR(sites().front().air.temperatureK.value_or(0), 273.15 + 12, 0.3);
    EXPECT_NEAR(sites().front().air.relativeHumidity.value_or(0), 0.72, 0.02);
}

TEST_F(SiteAirTest, AFileThatIsNoWeatherChangesNothingAndSaysWhy)
{
    typeAir(u"10"_s, u"5"_s);
    readWeather("nothing\nof use\n");
    EXPECT_EQ(typed(u"site-temperature"_s), u"10"_s);
    EXPECT_THAT(said(u"site-weather-said"_s), HasSubstr("weather.epw has no column of temperatures"));
    m_dialog->findChild<SiteAirPanel*>()->read(u"/nowhere/x.epw"_s);
    ASSERT_TRUE(QTest::qWaitFor([this] { return find<QWidget>(u"site-weather-file"_s)->isEnabled(); }, 20'000));
    EXPECT_THAT(said(u"site-weather-said"_s), HasSubstr("There is no file"));
}

} // namespace padside::test
