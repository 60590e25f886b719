// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QWidget>

class QPushButton;
class QVBoxLayout;

namespace padside {

/// What a person sees in a file without units: four ways to begin.
class WelcomePage : public QWidget
{
    Q_OBJECT
public:
    /// Where nothing may be written to the file, only the ways to another one are open.
    explicit WelcomePage(bool mayWrite, QWidget* parent = nullptr);

Q_SIGNALS:
    void addRequested();
    void listRequested();
    void sampleRequested();
    void openFileRequested();

private:
    QPushButton* addChoice(QVBoxLayout& column, const QString& name, const QString& what, const QString& says);
};

} // namespace padside
