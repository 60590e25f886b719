// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QRectF>
#include <QString>
#include <QWidget>

#include <vector>

class QPainter;

namespace padside {

struct Theme;

/// One amount to be compared with others by its length and its numeral.
struct WorthBar
{
    QString label;
    double value = 0; ///< 0 or more
    QString shown; ///< the numeral
};

/// The height that so many bars take up in the painter's font.
[[nodiscard]] double worthBarsHeight(std::size_t bars, double textHeight);

/// Plain bars one below the other, each with its label above it and its numeral at its end; the smallest filled with
/// the accent, the others paler. The same on screen and paper.
void paintWorthBars(QPainter& painter, const QRectF& area, const std::vector<WorthBar>& bars, const Theme& theme);

/// The bars as a widget; its accessible name says what they show.
class WorthBarsView : public QWidget
{
    Q_OBJECT
public:
    explicit WorthBarsView(const Theme& theme, QWidget* parent = nullptr);

    void setBars(std::vector<WorthBar> bars);

    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    const Theme& m_theme;
    std::vector<WorthBar> m_bars;
};

} // namespace padside
