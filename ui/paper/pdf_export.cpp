// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/paper/page_maker.h"
#include "ui/paper/sheet.h"
#include "ui/paper/visit_summary.h"
#include "ui/paper/visit_summary_content.h"

#include <QBuffer>
#include <QDir>
#include <QFileInfo>
#include <QImageReader>
#include <QPageLayout>
#include <QPainter>
#include <QPdfWriter>
#include <QSaveFile>

namespace padside {

namespace {

constexpr int pdfDotsPerInch = 1200;
constexpr QSize largestPhoto(1600, 1600);

tl::unexpected<Problem> cannotWrite(const char* pattern, const QString& path, const QString& reason = {})
{
    return problem(ProblemKind::cannotWrite, pattern, {path.toStdString(), reason.toStdString()});
}

Result<void> writeWhole(const QByteArray& bytes, const QString& path)
{
    const QString shown = QDir::toNativeSeparators(path);
    const QFileInfo target(path);
    const QFileInfo folder(target.absolutePath());
    if (!folder.isDir()) {
        return cannotWrite(PADSIDE_SAY("The PDF was not written: there is no folder {0}. Choose a folder that exists."),
                           QDir::toNativeSeparators(target.absolutePath()));
    }
    if (target.isDir())
        return cannotWrite(PADSIDE_SAY("The PDF was not written: {0} is a folder. Choose a file name inside it."),
                           shown);
    if (target.exists() && !target.isFile()) // a device or pipe would be replaced by the file
        return cannotWrite(PADSIDE_SAY("The PDF was not written: {0} is a device, not a file. Choose another name."),
                           shown);
    QSaveFile file(path);
    if (!file.open(QIODevice::WriteOnly)) {
        return cannotWrite(PADSIDE_SAY("The PDF was not written: {0} can't be opened for writing ({1}). Choose another "
                                       "folder, or ask for the right to write there."),
                           shown, file.errorString());
    }
    if (file.write(bytes) != bytes.size() || !file.commit()) {
        return cannotWrite(
            PADSIDE_SAY("The PDF was not written to {0} ({1}). Nothing was left behind; free some space or "
                        "choose another place, and export again."),
            shown, file.errorString());
    }
    return {};
}

} // namespace

PaperDocument layVisitSummary(const SummaryInput& input)
{
    return makePages(visitSummaryContent(input), input.size);
}

bool printDocument(const PaperDocument& document, const PhotoSource& photos, QPagedPaintDevice& device,
                   const PaintedShare& tell)
{
    const auto size = document.size == PaperSize::a4 ? QPageSize::A4 : QPageSize::Letter;
    const auto lies = document.landscape ? QPageLayout::Landscape : QPageLayout::Portrait;
    QPageLayout layout(QPageSize(size), lies, QMarginsF());
    layout.setMode(QPageLayout::FullPageMode);
    device.setPageLayout(layout);
    QPainter painter;
    if (!painter.begin(&device))
        return false;
    for (std::size_t i = 0; i < document.pages.size(); ++i) {
        if (i > 0 && !device.newPage())
            return false;
        painter.save();
        painter.scale(device.logicalDpiX() / unitsPerInch, device.logicalDpiY() / unitsPerInch);
        paintPage(painter, document.pages[i], photos);
        painter.restore();
        if (tell && !tell(static_cast<double>(i + 1) / static_cast<double>(document.pages.size())))
            return false;
    }
    return painter.end();
}

Result<bool> writePdf(const PaperDocument& document, const PhotoSource& photos, const QString& path,
                      const PaintedShare& tell)
{
    bool stopped = false;
    const auto tellAndNote = [&](double share) {
        stopped = tell && !tell(share);
        return !stopped;
    };
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    {
        QPdfWriter writer(&buffer);
        writer.setPdfVersion(QPagedPaintDevice::PdfVersion_A1b); // made for keeping: fonts inside, colours defined
        writer.setResolution(pdfDotsPerInch);
        writer.setTitle(document.title);
        writer.setCreator(QStringLiteral("Padside"));
        const bool painted = printDocument(document, photos, writer, tellAndNote);
        if (stopped)
            return false;
        if (!painted)
            return cannotWrite(
                PADSIDE_SAY("The PDF was not written: its pages can't be painted. Nothing was left at {0}."),
                QDir::toNativeSeparators(path));
    }
    return writeWhole(bytes, path).map([] { return true; });
}

Result<bool> exportVisitSummary(const SummaryInput& input, const QString& path)
{
    return writePdf(layVisitSummary(input), input.photos, path);
}

QString suggestedFileName(const UnitRecord& record, VisitId visitId)
{
    const Visit* visit = findVisit(record, visitId);
    const QString on = visit ? fromCore(isoText(visit->on)) : QString();
    return pdfFileName(SummaryText::tr("%1 %2 visit summary").arg(fromCore(record.unit.tag), on));
}

QString pdfFileName(QString name)
{
    for (const QChar sign : QStringLiteral("/\\:*?\"<>|"))
        name.remove(sign);
    return name.simplified() + QStringLiteral(".pdf");
}

QImage readPhotoForPaper(const QString& path)
{
    QImageReader reader(path);
    reader.setAutoTransform(true);
    if (const QSize size = reader.size(); size.width() > largestPhoto.width() || size.height() > largestPhoto.height())
        reader.setScaledSize(size.scaled(largestPhoto, Qt::KeepAspectRatio));
    return reader.read();
}

} // namespace padside
