// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/pages/paper/print_page.h"

#include "core/store/photo_files.h"
#include "core/store/store.h"
#include "ui/models/record_book.h"
#include "ui/models/speaker.h"
#include "ui/models/worth_figures.h"
#include "ui/pages/paper/page_preview.h"
#include "ui/pages/paper/paper_choice.h"
#include "ui/pages/paper/paper_work.h"
#include "ui/paper/history_paper.h"
#include "ui/paper/owner_history.h"
#include "ui/paper/visit_summary.h"

#include <QComboBox>
#include <QDir>
#include <QFileDialog>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPrintDialog>
#include <QPrinter>
#include <QPushButton>
#include <QSettings>
#include <QVBoxLayout>

#include <map>

namespace padside {

namespace {

const QString contractorKey = QStringLiteral("paper/contractor");

} // namespace

PrintPage::PrintPage(RecordBook& book, const Theme& theme, QWidget* parent)
    : QWidget(parent)
    , m_book(book)
    , m_bar(new QWidget)
    , m_back(new QPushButton(tr("&Back to the unit")))
    , m_export(new QPushButton(tr("Export as &PDF…")))
    , m_print(new QPushButton(tr("P&rint…")))
    , m_size(new QComboBox)
    , m_contractorLabel(new QLabel(tr("&Contractor")))
    , m_contractor(new QLineEdit)
    , m_said(new QLabel)
    , m_preview(new PagePreview(theme))
    , m_work(new PaperWork(this))
{
    m_chooseFile = [this](const QString& suggested) {
        return QFileDialog::getSaveFileName(this, tr("Export as PDF"), suggested, tr("PDF files (*.pdf)"));
    };
    m_choosePrinter = [this](QPrinter& printer) { return QPrintDialog(&printer, this).exec() == QDialog::Accepted; };
    makeBar();
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(0);
    layout->addWidget(m_bar);
    layout->addWidget(m_said);
    layout->addWidget(m_preview, 1);

    connect(m_back, &QPushButton::clicked, this, &PrintPage::left);
    connect(m_export, &QPushButton::clicked, this, &PrintPage::exportPdf);
    connect(m_print, &QPushButton::clicked, this, &PrintPage::print);
    connect(m_work, &PaperWork::written, this, [this](const QString& path) {
        keepExportFolder(path);
        sayDone(tr("Exported to %1").arg(QDir::toNativeSeparators(path)));
    });
    connect(m_work, &PaperWork::failed, this, [this](const Sentence& why) { sayProblem(m_book.speaker().said(why)); });
    connect(m_work, &PaperWork::printed, this, [this] { sayDone(tr("Sent to the printer.")); });
    connect(m_work, &PaperWork::cancelled, this, [this] { sayDone(tr("Cancelled; nothing was written or printed.")); });
    connect(m_size, &QComboBox::activated, this, [this] {
        keepPaperSize(*m_size);
        layPages();
    });
    connect(m_contractor, &QLineEdit::editingFinished, this, [this] {
        QSettings().setValue(contractorKey, m_contractor->text().trimmed());
        layPages();
    });
}

void PrintPage::makeBar()
{
    m_back->setObjectName(QStringLiteral("backToUnit"));
    m_export->setObjectName(QStringLiteral("exportPdf"));
    m_print->setObjectName(QStringLiteral("print"));
    m_size->setObjectName(QStringLiteral("paperSize"));
    m_contractor->setObjectName(QStringLiteral("contractor"));
    m_said->setObjectName(QStringLiteral("said"));
    m_preview->setObjectName(QStringLiteral("pages"));

    m_size->addItem(tr("A4"), QStringLiteral("a4"));
    m_size->addItem(tr("Letter"), QStringLiteral("letter"));
    showPaperSize(*m_size, m_book.surroundings().locale);
    m_contractor->setText(QSettings().value(contractorKey).toString());
    m_contractor->setAccessibleName(tr("Contractor"));
    m_size->setAccessibleName(tr("Paper size"));
    m_contractor->setPlaceholderText(tr("Name at the head of the page"));
    m_contractor->setMaximumWidth(320);
    m_said->setWordWrap(true);
    m_said->setMargin(8);
    m_said->setTextInteractionFlags(Qt::TextSelectableByMouse);
    m_said->hide();

    auto* sizeLabel = new QLabel(tr("Pa&per"));
    sizeLabel->setBuddy(m_size);
    m_contractorLabel->setBuddy(m_contractor);
    auto* layout = new QHBoxLayout(m_bar);
    layout->addWidget(m_back);
    layout->addStretch(1);
    layout->addWidget(m_contractorLabel);
    layout->addWidget(m_contractor, 2);
    layout->addWidget(sizeLabel);
    layout->addWidget(m_size);
    layout->addWidget(m_print);
    layout->addWidget(m_export);
    m_export->setDefault(true);
}

void PrintPage::showVisit(UnitId unit, VisitId visit)
{
    UnitRecord record;
    const bool isRead = m_book.attempt([&] { record = m_book.record(unit); }) && findVisit(record, visit);
    m_visit = isRead ? visit : VisitId();
    show(isRead ? std::optional(sheetOf(std::move(record), visit)) : std::nullopt, tr("&Back to the unit"));
}

void PrintPage::showHistory(UnitId unit)
{
    UnitRecord record;
    const bool isRead = m_book.attempt([&] { record = m_book.record(unit); });
    m_visit = {};
    show(isRead ? std::optional(historyOf(std::move(record))) : std::nullopt, tr("&Back to the unit"));
}

void PrintPage::showOwnerHistory(UnitId unit)
{
    std::optional<Sheet> sheet;
    m_book.attempt([&] { sheet = ownerHistoryOf(m_book.record(unit)); });
    m_visit = {};
    show(std::move(sheet), tr("&Back to the unit"));
}

void PrintPage::showSheet(Sheet sheet, const QString& back)
{
    m_visit = {};
    show(std::move(sheet), back);
}

void PrintPage::show(std::optional<Sheet> sheet, const QString& back)
{
    m_said->hide();
    m_sheet = std::move(sheet);
    const bool named = !m_sheet || m_sheet->named;
    m_contractorLabel->setVisible(named);
    m_contractor->setVisible(named);
    m_back->setText(back);
    m_export->setEnabled(m_sheet.has_value());
    m_print->setEnabled(m_sheet.has_value());
    layPages();
}

/// Called in other threads too: of its own, without the store.
PhotoSource PrintPage::photosOf(const UnitRecord& record) const
{
    std::map<PhotoId, QString> paths;
    for (const Photo& photo : record.photos)
        paths.emplace(photo.id, m_book.store().photos().path(photo));
    return [paths = std::move(paths)](PhotoId id) {
        const auto path = paths.find(id);
        return path == paths.end() ? QImage() : readPhotoForPaper(path->second);
    };
}

Sheet PrintPage::sheetOf(UnitRecord read, VisitId visit) const
{
    const auto record = std::make_shared<const UnitRecord>(std::move(read));
    Sheet sheet;
    sheet.title = tr("Visit summary");
    sheet.fileName = suggestedFileName(*record, visit);
    sheet.photos = photosOf(*record);
    sheet.lay = [this, record, visit, outlook = m_book.outlookModel(), photos = sheet.photos](const QString& contractor,
                                                                                              PaperSize size) {
        // As of the visit's own day: a summary printed again later says the same.
        const Date on = findVisit(*record, visit)->on;
        const Catalogue& catalogue = m_book.catalogue();
        const KnownUnit known = knownUnit(*record, catalogue, *outlook, on);
        return layVisitSummary(SummaryInput{*record, review(known, catalogue), visit, catalogue, m_book.speaker(),
                                            photos, contractor, size, m_book.today(), unitForecast(known, catalogue)});
    };
    return sheet;
}

Sheet PrintPage::historyOf(UnitRecord read) const
{
    const auto record = std::make_shared<const UnitRecord>(std::move(read));
    Sheet sheet;
    sheet.title = tr("Timeline");
    sheet.fileName = historyFileName(*record);
    sheet.named = false;
    sheet.lay = [this, record](const QString&, PaperSize size) {
        return layHistory(
            HistoryInput{*record, m_book.catalogue(), m_book.speaker(), size, m_book.today(), m_book.outlookModel()});
    };
    return sheet;
}

Sheet PrintPage::ownerHistoryOf(UnitRecord record) const
{
    const Date today = m_book.today();
    const KnownUnit known = m_book.known(record);
    const UnitReview reviewed = review(known, m_book.catalogue());
    const UnitForecast forecast = unitForecast(known, m_book.catalogue());
    const UnitWorth worth = unitWorth(known, m_book.catalogue(), costsIn(m_book.store()), *m_book.outlookModel());
    Sheet sheet;
    sheet.title = tr("Owner's history");
    sheet.fileName = ownerHistoryFileName(record);
    sheet.photos = photosOf(record);
    sheet.lay = [this, record = std::move(record), reviewed, forecast, worth, today,
                 outlook = m_book.outlookModel()](const QString& contractor, PaperSize size) {
        return layOwnerHistory({record, reviewed, forecast, worth, m_book.catalogue(), m_book.speaker(), contractor,
                                size, today, outlook});
    };
    return sheet;
}

PaperSize PrintPage::chosenSize() const
{
    return paperSize(*m_size);
}

PaperDocument PrintPage::document() const
{
    return m_sheet->lay(m_contractor->text().trimmed(), chosenSize());
}

void PrintPage::layPages()
{
    if (m_sheet)
        m_preview->setDocument(document(), m_sheet->photos);
    else
        m_preview->setDocument({}, {});
}

void PrintPage::exportPdf()
{
    if (m_work->isRunning()) {
        m_work->cancel();
        return;
    }
    if (!m_sheet)
        return;
    const QString chosen = m_chooseFile(QDir(exportFolder()).filePath(m_sheet->fileName));
    if (chosen.isEmpty())
        return;
    m_said->hide();
    m_work->exportTo(chosen, document(), m_sheet->photos, *m_export);
}

void PrintPage::print()
{
    if (m_work->isRunning()) {
        m_work->cancel();
        return;
    }
    if (!m_sheet)
        return;
    const PaperDocument pages = document();
    auto printer = std::make_unique<QPrinter>(QPrinter::HighResolution);
    printer->setPageSize(QPageSize(pages.size == PaperSize::a4 ? QPageSize::A4 : QPageSize::Letter));
    printer->setPageOrientation(pages.landscape ? QPageLayout::Landscape : QPageLayout::Portrait);
    printer->setDocName(m_sheet->fileName);
    if (!m_choosePrinter(*printer))
        return;
    m_said->hide();
    m_work->print(std::move(printer), pages, m_sheet->photos, *m_print);
}

void PrintPage::sayDone(const QString& sentence)
{
    m_said->setForegroundRole(QPalette::PlaceholderText); // second-rank text in every theme
    QFont font = m_said->font();
    font.setBold(false);
    m_said->setFont(font);
    m_said->setText(sentence);
    m_said->show();
}

void PrintPage::sayProblem(const QString& sentence)
{
    m_said->setForegroundRole(QPalette::WindowText);
    QFont font = m_said->font();
    font.setBold(true);
    m_said->setFont(font);
    m_said->setText(sentence);
    m_said->show();
}

} // namespace padside
