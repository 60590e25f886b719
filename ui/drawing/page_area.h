// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QScrollArea>

namespace padside {

/// Room for a page that fills the window, and scrolls where the window is lower than the least the page can do with at
/// that width. A plain scroll area asks for the height the page would like to have, and so scrolls too early; and
/// without one a page that is too high paints its parts over one another.
class PageArea final : public QScrollArea
{
    Q_OBJECT
public:
    explicit PageArea(QWidget* page, QWidget* parent = nullptr);

    [[nodiscard]] QSize minimumSizeHint() const override;

protected:
    void resizeEvent(QResizeEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void fit();
    [[nodiscard]] int leastHeight(int width) const;
};

} // namespace padside
