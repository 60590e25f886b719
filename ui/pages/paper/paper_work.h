// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "ui/models/long_work.h"
#ifndef Q_MOC_RUN // moc 6.4 stumbles over the concepts below
#include "ui/paper/paper_painter.h"
#include "ui/paper/paper_sheet.h"
#endif

#include <QTimer>

#include <memory>

class QPrinter;
class QPushButton;

namespace padside {

/// Writes a document as PDF, or prints it, beside the window, so that twenty photographs don't keep it from answering.
/// While that takes long enough to be noticed, the button it was begun with cancels it.
class PaperWork : public QObject
{
    Q_OBJECT
public:
    explicit PaperWork(QObject* parent = nullptr);
    ~PaperWork() override;

    /// Each begins, or does nothing while another work goes on. `photos` is called in another thread. The button is
    /// read and set, not owned; it must outlive this.
    void exportTo(const QString& path, const PaperDocument& document, const PhotoSource& photos, QPushButton& button);
    void print(std::unique_ptr<QPrinter> printer, const PaperDocument& document, const PhotoSource& photos,
               QPushButton& button);
    void cancel() { m_work.cancel(); }
    [[nodiscard]] bool isRunning() const { return m_work.isRunning(); }

Q_SIGNALS:
    void written(const QString& path);
    void printed();
    void failed(const padside::Sentence& why);
    void cancelled();

private:
    void begin(LongWork::Work work, QPushButton& button, const QString& cancelText);
    void ended();

    QPushButton* m_button = nullptr;
    QString m_buttonText;
    QString m_cancelText;
    QString m_path; ///< of a PDF; empty while printing
    std::shared_ptr<QPrinter> m_printer;
    QTimer m_noticed;
    LongWork m_work; // last: its end is waited for while the rest is there
};

} // namespace padside
