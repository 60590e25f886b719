// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/pages/setup/site_air_panel.h"

#include "core/corrosion/air_meaning.h"
#include "core/exchange/text_file.h"
#include "core/exchange/weather_words.h"
#include "core/store/store_error.h"
#include "ui/models/speaker.h"

#include <QFileDialog>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

namespace padside {

using namespace Qt::Literals::StringLiterals;

namespace {

constexpr double usualSuctionLineK = 281.15; // 8 °C, ours: a low side at rest in spring
constexpr std::size_t mostRowsNamed = 3;
constexpr int surfaceWidth = 110;

const MeasuringUnit& temperatureUnit(const InputStyle& style)
{
    return shownUnit(QuantityKind::temperature, style.units);
}

QLabel* wrappedLabel(const QString& name)
{
    auto* label = new QLabel;
    label->setObjectName(name);
    label->setWordWrap(true);
    label->setTextInteractionFlags(Qt::TextSelectableByMouse);
    return label;
}

} // namespace

SiteAirPanel::SiteAirPanel(InputStyle style, const LocalSpeaker& speaker, QWidget* parent)
    : QWidget(parent)
    , m_style(std::move(style))
    , m_speaker(speaker)
    , m_meaning(wrappedLabel(u"site-air-meaning"_s))
    , m_choose(new QPushButton(tr("&Read a weather file…")))
    , m_surface(new QLineEdit)
    , m_weather(wrappedLabel(u"site-weather-said"_s))
{
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(m_meaning);
    column->addWidget(makeWeatherPart());
    column->addWidget(m_weather);
    m_weather->hide();
    connect(m_choose, &QPushButton::clicked, this, &SiteAirPanel::chooseFile);
    connect(m_surface, &QLineEdit::textEdited, this, &SiteAirPanel::showWeather);
    connect(&m_work, &LongWork::failed, this, [this](const Sentence& why) {
        m_choose->setEnabled(true);
        m_file.reset();
        sayBelow({m_speaker.said(why)});
    });
    connect(&m_work, &LongWork::done, this, [this] {
        m_choose->setEnabled(true);
        showWeather();
        if (const auto year = digestWeather(m_file->steps, usualSuctionLineK))
            Q_EMIT meansRead(year->meanTemperatureK, year->meanHumidity);
    });
    showAir({});
}

QWidget* SiteAirPanel::makeWeatherPart()
{
    auto* part = new QWidget;
    auto* line = new QHBoxLayout(part);
    line->setContentsMargins(0, 0, 0, 0);
    m_choose->setObjectName(u"site-weather-file"_s);
    m_choose->setAutoDefault(false); // Enter keeps the site
    m_choose->setToolTip(tr("Hourly weather as EPW, or CSV with columns like time, temperature_C, rh_percent"));
    auto* label = new QLabel(tr("S&uction line at"));
    m_surface->setObjectName(u"site-suction-line"_s);
    m_surface->setAccessibleName(tr("Suction line at"));
    m_surface->setMaximumWidth(surfaceWidth);
    m_surface->setText(shown(showMeasure(usualSuctionLineK, temperatureUnit(m_style), m_style.numbers)));
    label->setBuddy(m_surface);
    line->addWidget(m_choose);
    line->addStretch(1);
    line->addWidget(label);
    line->addWidget(m_surface);
    return part;
}

void SiteAirPanel::showAir(const SiteAir& air)
{
    QStringList lines;
    if (!air.temperatureK || !air.relativeHumidity || !air.sulphurDioxide || !air.chloride) {
        lines << tr(
            "With temperature, humidity, sulphur dioxide and chloride you read here what this air does to metal "
            "(ISO 9223).");
    } else if (const auto corrosivity
               = corrosivityOf({*air.temperatureK, *air.relativeHumidity, *air.sulphurDioxide, *air.chloride})) {
        for (const Sentence& sentence : airMeaning(*corrosivity))
            lines << m_speaker.said(sentence);
    } else {
        lines << m_speaker.said(corrosivity.error().what);
    }
    m_meaning->setText(lines.join(u' '));
}

void SiteAirPanel::chooseFile()
{
    const QString file = QFileDialog::getOpenFileName(this, tr("Choose a weather file"), {},
                                                      tr("Weather (*.epw *.csv);;All files (*)"));
    if (!file.isEmpty())
        read(file);
}

void SiteAirPanel::read(const QString& file)
{
    const auto weather = std::make_shared<WeatherFile>();
    const QString name = QFileInfo(file).fileName();
    const bool started = m_work.start(
        [weather, path = file.toStdString(), plainName = name.toStdString()](const LongWork::Tell& tell) {
            const auto text = readTextFile(path);
            if (!text)
                throw StoreError(text.error());
            auto read = readWeatherFile(*text, plainName);
            if (!read)
                throw StoreError(read.error());
            *weather = *std::move(read);
            return tell(1.0);
        });
    if (!started)
        return;
    m_file = weather;
    m_choose->setEnabled(false);
    sayBelow({tr("Reading %1").arg(name)});
}

void SiteAirPanel::showWeather()
{
    if (!m_file || m_work.isRunning())
        return;
    const auto surface = parseMeasure(m_surface->text().toStdString(), QuantityKind::temperature, m_style.numbers,
                                      &temperatureUnit(m_style));
    if (!surface) {
        sayBelow({m_speaker.said(surface.error().what)});
        return;
    }
    const auto year = digestWeather(m_file->steps, surface->si);
    if (!year) {
        sayBelow({m_speaker.said(year.error().what)});
        return;
    }
    QStringList lines;
    for (const Sentence& sentence : weatherSaid(*year, surface->si))
        lines << m_speaker.said(sentence);
    for (const Sentence& sentence : weatherReservations(*m_file, *year, mostRowsNamed))
        lines << m_speaker.said(sentence);
    sayBelow(lines);
}

void SiteAirPanel::sayBelow(const QStringList& lines)
{
    m_weather->setText(lines.join(u'\n'));
    m_weather->show();
}

} // namespace padside
