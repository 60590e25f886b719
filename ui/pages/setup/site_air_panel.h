// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/exchange/weather_file.h"
#include "core/record/site.h"
#include "ui/models/long_work.h"
#include "ui/models/setup_input.h"

#include <QWidget>

#include <memory>

class QLabel;
class QLineEdit;
class QPushButton;

namespace padside {

class LocalSpeaker;

/// What the air of a site means for metal, said as it is typed, and a way to take its means from a weather file.
class SiteAirPanel final : public QWidget
{
    Q_OBJECT
public:
    SiteAirPanel(InputStyle style, const LocalSpeaker& speaker, QWidget* parent = nullptr);

    /// Says what this air means; what is needed, where a value is missing.
    void showAir(const SiteAir& air);

    /// Reads a weather file beside the window; what it comes to, or why it can't be used, is said below.
    void read(const QString& file);

Q_SIGNALS:
    /// Means of a weather file that was read.
    void meansRead(double temperatureK, double relativeHumidity);

private:
    [[nodiscard]] QWidget* makeWeatherPart();
    void chooseFile();
    void showWeather();
    void sayBelow(const QStringList& lines);

    const InputStyle m_style;
    const LocalSpeaker& m_speaker;
    QLabel* m_meaning;
    QPushButton* m_choose;
    QLineEdit* m_surface;
    QLabel* m_weather;
    std::shared_ptr<WeatherFile> m_file; ///< the last one read
    LongWork m_work;
};

} // namespace padside
