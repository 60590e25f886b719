// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "ui/models/long_work.h"

#include <QWidget>

class QLabel;
class QProgressBar;

namespace padside {

/// The line shown while long work goes on, at the foot of the window or on the page whose work it is: what it is, how
/// far it is, and Cancel. Hidden while there is none; one at a time.
class WorkLine : public QWidget
{
    Q_OBJECT
public:
    explicit WorkLine(QWidget* parent = nullptr);

    /// Starts work and shows the line until it ends. False, and nothing happens, while another is going on.
    bool start(const QString& name, LongWork::Work work);

    [[nodiscard]] const QString& name() const { return m_name; } ///< of the work begun last
    /// The work itself, for its end; the line is hidden by then.
    [[nodiscard]] const LongWork& work() const { return *m_work; }

private:
    LongWork* m_work;
    QString m_name;
    QLabel* m_said;
    QProgressBar* m_progress;
};

} // namespace padside
