// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/pages/paper/history_page.h"

#include "ui/drawing/theme.h"
#include "ui/models/record_book.h"
#include "ui/models/speaker.h"
#include "ui/pages/paper/page_preview.h"
#include "ui/pages/paper/paper_choice.h"
#include "ui/pages/paper/pdf_export_work.h"
#include "ui/paper/history_paper.h"
#include "ui/paper/visit_summary.h"

#include <QComboBox>
#include <QDir>
#include <QFileDialog>
#include <QHBoxLayout>
#include <QLabel>
#include <QPrintDialog>
#include <QPrinter>
#include <QPushButton>
#include <QVBoxLayout>

namespace padside {

HistoryPage::HistoryPage(RecordBook& book, const Theme& theme, QWidget* parent)
    : QWidget(parent)
    , m_book(book)
    , m_bar(new QWidget)
    , m_back(new QPushButton(tr("&Back to the unit")))
    , m_export(new QPushButton(tr("Export as &PDF…")))
    , m_print(new QPushButton(tr("P&rint…")))
    , m_size(new QComboBox)
    , m_said(new QLabel)
    , m_preview(new PagePreview(theme))
    , m_work(new PdfExportWork(*m_export, this))
{
    m_chooseFile = [this](const QString& suggested) {
        return QFileDialog::getSaveFileName(this, tr("Export the timeline"), suggested, tr("PDF files (*.pdf)"));
    };
    m_choosePrinter = [this](QPrinter& printer) { return QPrintDialog(&printer, this).exec() == QDialog::Accepted; };
    makeBar();
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(0);
    layout->addWidget(m_bar);
    layout->addWidget(m_said);
    layout->addWidget(m_preview, 1);
    connect(m_back, &QPushButton::clicked, this, &HistoryPage::left);
    connect(m_export, &QPushButton::clicked, this, &HistoryPage::exportPdf);
    connect(m_print, &QPushButton::clicked, this, &HistoryPage::print);
    connect(m_work, &PdfExportWork::written, this, [this](const QString& path) {
        keepExportFolder(path);
        say(tr("Exported to %1").arg(QDir::toNativeSeparators(path)), false);
    });
    connect(m_work, &PdfExportWork::failed, this,
            [this](const Sentence& why) { say(m_book.speaker().said(why), true); });
    connect(m_work, &PdfExportWork::cancelled, this,
            [this] { say(tr("Export cancelled; nothing was written."), false); });
    connect(m_size, &QComboBox::activated, this, [this] {
        keepPaperSize(*m_size);
        layPages();
    });
}

void HistoryPage::makeBar()
{
    m_back->setObjectName(QStringLiteral("backToUnit"));
    m_export->setObjectName(QStringLiteral("exportPdf"));
    m_print->setObjectName(QStringLiteral("print"));
    m_size->setObjectName(QStringLiteral("paperSize"));
    m_said->setObjectName(QStringLiteral("said"));
    m_preview->setObjectName(QStringLiteral("pages"));
    m_size->addItem(tr("A4"), QStringLiteral("a4"));
    m_size->addItem(tr("Letter"), QStringLiteral("letter"));
    m_said->setWordWrap(true);
    m_said->setMargin(8);
    m_said->setTextInteractionFlags(Qt::TextSelectableByMouse);
    m_said->hide();
    auto* sizeLabel = new QLabel(tr("Pa&per"));
    sizeLabel->setBuddy(m_size);
    auto* layout = new QHBoxLayout(m_bar);
    layout->addWidget(m_back);
    layout->addStretch(1);
    layout->addWidget(sizeLabel);
    layout->addWidget(m_size);
    layout->addWidget(m_print);
    layout->addWidget(m_export);
    m_export->setDefault(true);
}

void HistoryPage::showUnit(UnitId unit)
{
    m_said->hide();
    showPaperSize(*m_size, m_book.surroundings().locale);
    m_record.reset();
    m_book.attempt([&] { m_record = m_book.record(unit); });
    m_export->setEnabled(m_record.has_value());
    m_print->setEnabled(m_record.has_value());
    layPages();
}

PaperDocument HistoryPage::document() const
{
    return layHistory(
        HistoryInput{*m_record, m_book.catalogue(), m_book.speaker(), paperSize(*m_size), m_book.today()});
}

void HistoryPage::layPages()
{
    m_preview->setDocument(m_record ? document() : PaperDocument{}, {});
}

void HistoryPage::exportPdf()
{
    if (m_work->isRunning()) {
        m_work->cancel();
        return;
    }
    const QString chosen = m_chooseFile(QDir(exportFolder()).filePath(historyFileName(*m_record)));
    if (chosen.isEmpty())
        return;
    m_said->hide();
    m_work->start(document(), {}, chosen);
}

void HistoryPage::print()
{
    const PaperDocument pages = document();
    QPrinter printer(QPrinter::HighResolution);
    printer.setPageSize(QPageSize(pages.size == PaperSize::a4 ? QPageSize::A4 : QPageSize::Letter));
    printer.setPageOrientation(QPageLayout::Landscape);
    printer.setDocName(historyFileName(*m_record));
    if (!m_choosePrinter(printer))
        return;
    if (printDocument(pages, {}, printer))
        say(tr("Sent to the printer."), false);
    else
        say(tr("The timeline was not printed: the printer gave up. Check the printer, or export a PDF instead."), true);
}

void HistoryPage::say(const QString& sentence, bool problem)
{
    m_said->setForegroundRole(problem ? QPalette::WindowText : QPalette::PlaceholderText); // in every theme
    QFont font = m_said->font();
    font.setBold(problem);
    m_said->setFont(font);
    m_said->setText(sentence);
    m_said->show();
}

} // namespace padside
