// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/pages/paper/pdf_export_work.h"

#include "core/store/store_error.h"
#include "ui/paper/visit_summary.h"

#include <QPushButton>

#include <chrono>

namespace padside {

namespace {

/// A button that changes for the blink of an eye only startles.
constexpr auto noticedAfter = std::chrono::milliseconds(400);

} // namespace

PdfExportWork::PdfExportWork(QPushButton& button, QObject* parent)
    : QObject(parent)
    , m_button(button)
{
    m_noticed.setSingleShot(true);
    m_noticed.setInterval(noticedAfter);
    connect(&m_noticed, &QTimer::timeout, this, [this] { m_button.setText(tr("Cancel the e&xport")); });
    connect(&m_work, &LongWork::done, this, [this] {
        ended();
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

void PdfExportWork::start(const PaperDocument& document, const PhotoSource& photos, const QString& path)
{
    const bool begun = m_work.start([document, photos, path](const LongWork::Tell& tell) {
        const auto whole = writePdf(document, photos, path, tell);
        if (!whole)
            throw StoreError(whole.error());
        return *whole;
    });
    if (!begun)
        return;
    m_path = path;
    m_buttonText = m_button.text();
    m_noticed.start();
}

void PdfExportWork::ended()
{
    m_noticed.stop();
    m_button.setText(m_buttonText);
}

} // namespace padside
