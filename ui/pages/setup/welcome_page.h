// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QWidget>

class QPushButton;
class QVBoxLayout;

namespace padside {

/// What a person sees in a file without units: three ways to begin.
class WelcomePage : public QWidget
{
    Q_OBJECT
public:
    explicit WelcomePage(QWidget* parent = nullptr);

Q_SIGNALS:
    void addRequested();
    void sampleRequested();
    void openFileRequested();

private:
    QPushButton* addChoice(QVBoxLayout& column, const QString& what, const QString& says);
};

} // namespace padside
