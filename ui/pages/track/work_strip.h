// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "ui/models/long_work.h"

#include <QWidget>

class QLabel;
class QProgressBar;
class QPushButton;

namespace padside {

/// A line of a page for its own long work: what is going on, how far it is, and Cancel. Hidden while there is none.
class WorkStrip : public QWidget
{
    Q_OBJECT
public:
    explicit WorkStrip(const QString& name, QWidget* parent = nullptr);

    [[nodiscard]] LongWork& work() const { return *m_work; }
    bool start(LongWork::Work work);

private:
    LongWork* m_work;
    QProgressBar* m_progress;
};

} // namespace padside
