// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "ui/models/long_work.h"

#include <QWidget>

class QLabel;
class QProgressBar;

namespace padside {

/// The line at the foot of the window while long work goes on: what it is, how far it is, and Cancel. One at a time.
class WorkLine : public QWidget
{
    Q_OBJECT
public:
    explicit WorkLine(QWidget* parent = nullptr);

    /// Starts work and shows the line until it ends; refuses (and says so) while another is going on.
    void start(const QString& name, LongWork::Work work);

Q_SIGNALS:
    void done(const QString& name);
    void cancelled(const QString& name);
    void failed(const padside::Sentence& why);
    void refused(const QString& running); ///< the work that is still going on

private:
    LongWork* m_work;
    QString m_running;
    QLabel* m_name;
    QProgressBar* m_progress;
};

} // namespace padside
