// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/pages/paper/paper_work.h"

#include "core/store/store_error.h"
#include "ui/paper/visit_summary.h"

#include <QPrinter>
#include <QPushButton>

#include <chrono>

namespace padside {

namespace {

/// A button that changes for the blink of an eye only startles.
constexpr auto noticedAfter = std::chrono::milliseconds(400);

} // namespace

PaperWork::PaperWork(QObject* parent)
    : QObject(parent)
{
    m_noticed.setSingleShot(true);
    m_noticed.setInterval(noticedAfter);
    connect(&m_noticed, &QTimer::timeout, this, [this] { m_button->setText(m_cancelText); });
    connect(&m_work, &LongWork::done, this, [this] {
        const bool wasPrinting = m_printer != nullptr;
        ended();
        if (wasPrinting)
            Q_EMIT printed();
        else
            Q_EMIT written(m_path);
    });
    connect(&m_work, &LongWork::cancelled, this, [this] {
        ended();
        Q_EMIT cancelled();
    });
    connect(&m_work, &LongWork::failed, this, [this](const Sentence& why) {
        ended();
        Q_EMIT failed(why);
    });
}

PaperWork::~PaperWork() = default;

void PaperWork::exportTo(const QString& path, const PaperDocument& document, const PhotoSource& photos,
                         QPushButton& button)
{
    if (isRunning())
        return;
    m_path = path;
    m_printer.reset();
    begin(
        [document, photos, path](const LongWork::Tell& tell) {
            const auto whole = writePdf(document, photos, path, tell);
            if (!whole)
                throw StoreError(whole.error());
            return *whole;
        },
        button, tr("Cancel the e&xport"));
}

void PaperWork::print(std::unique_ptr<QPrinter> printer, const PaperDocument& document, const PhotoSource& photos,
                      QPushButton& button)
{
    if (isRunning())
        return;
    m_printer = std::move(printer);
    begin(
        [document, photos, printer = m_printer](const LongWork::Tell& tell) {
            bool stopped = false;
            const bool whole = printDocument(document, photos, *printer, [&](double share) {
                stopped = !tell(share);
                return !stopped;
            });
            if (stopped) {
                printer->abort();
                return false;
            }
            if (!whole) {
                throw StoreError(
                    Problem{ProblemKind::cannotWrite,
                            {PADSIDE_SAY("Nothing was printed: the printer gave up. Check the printer, or export a PDF "
                                         "instead."),
                             {}}});
            }
            return true;
        },
        button, tr("Cancel p&rinting"));
}

void PaperWork::begin(LongWork::Work work, QPushButton& button, const QString& cancelText)
{
    m_button = &button;
    m_buttonText = button.text();
    m_cancelText = cancelText;
    m_work.start(std::move(work));
    m_noticed.start();
}

void PaperWork::ended()
{
    m_noticed.stop();
    m_button->setText(m_buttonText);
    m_printer.reset();
}

} // namespace padside
