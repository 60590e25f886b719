// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QWidget>

class QLabel;

namespace padside {

struct Theme;

/// One line at the foot of the window that says what went wrong until it is dismissed; it never blocks the work.
class MessageLine : public QWidget
{
    Q_OBJECT
public:
    explicit MessageLine(const Theme& theme, QWidget* parent = nullptr);

    void say(const QString& sentence);
    [[nodiscard]] QString text() const;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    const Theme& m_theme;
    QLabel* m_text;
};

} // namespace padside
