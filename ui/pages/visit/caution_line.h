// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QAbstractButton>

namespace padside {

struct Theme;

/// The cautions that belong to the part at hand: one quiet line, and all of it when pressed.
class CautionLine : public QAbstractButton
{
    Q_OBJECT
public:
    explicit CautionLine(const Theme& theme, QWidget* parent = nullptr);

    void showCautions(const QString& text);

    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    void fit();
    [[nodiscard]] int lineHeight() const;

    const Theme& m_theme;
};

} // namespace padside
