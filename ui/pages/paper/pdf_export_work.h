// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "ui/models/long_work.h"
#include "ui/paper/paper_painter.h"

#include <QObject>
#include <QTimer>

class QPushButton;

namespace padside {

/// Writes a document as PDF beside the window, so that twenty photographs don't keep it from answering. While that
/// takes long enough to be noticed, the page's export button cancels it.
class PdfExportWork : public QObject
{
    Q_OBJECT
public:
    /// The button is read and set, not owned; it must outlive this.
    explicit PdfExportWork(QPushButton& button, QObject* parent = nullptr);

    /// Begins, or does nothing while another export goes on. `photos` is called in another thread.
    void start(const PaperDocument& document, const PhotoSource& photos, const QString& path);
    void cancel() { m_work.cancel(); }
    [[nodiscard]] bool isRunning() const { return m_work.isRunning(); }

Q_SIGNALS:
    void written(const QString& path);
    void failed(const padside::Sentence& why);
    void cancelled();

private:
    void ended();

    QPushButton& m_button;
    QString m_buttonText;
    QString m_path;
    QTimer m_noticed;
    LongWork m_work; // last: its end is waited for while the rest is there
};

} // namespace padside
