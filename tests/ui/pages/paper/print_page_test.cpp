// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/store/photo_files.h"
#include "core/store/site_book.h"
#include "core/store/store.h"
#include "core/store/visit_book.h"
#include "tests/ui/paper/summary_fixture.h"
#include "ui/drawing/theme.h"
#include "ui/models/record_book.h"
#include "ui/pages/paper/page_preview.h"
#include "ui/pages/paper/print_page.h"

#include <QBuffer>
#include <QComboBox>
#include <QFile>
#include <QLabel>
#include <QLineEdit>
#include <QPainter>
#include <QPrinter>
#include <QPushButton>
#include <QSettings>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>

#include <gtest/gtest.h>
#include <semaphore>

namespace padside::test {

namespace {

using Qt::Literals::StringLiterals::operator""_s;

template <typename Entry> void putAll(VisitBook& visits, const std::vector<Entry>& entries, VisitId visit)
{
    for (const Entry& entry : entries) {
        if (entry.visitId == visit)
            visits.put(entry);
    }
}

/// Writes the record into the store, photographs drawn.
void keep(Store& store, UnitRecord& record)
{
    store.sites().addSite(record.site);
    store.sites().addUnit(record.unit);
    for (const Part& part : record.parts)
        store.sites().addPart(part);
    for (Photo& photo : record.photos) {
        QByteArray png;
        QBuffer buffer(&png);
        buffer.open(QIODevice::WriteOnly);
        drawnPhoto(photo.id).save(&buffer, "PNG");
        photo.mediaType = "image/png";
        const auto kept = store.photos().keep(png, photo.mediaType);
        photo.sha256 = kept.sha256;
        photo.bytes = kept.bytes;
        photo.width = 640;
        photo.height = 480;
        photo.originalName = "zone.png";
    }
    for (const Visit& visit : record.visits) {
        Visit open = visit;
        open.closedAt.reset();
        store.visits().open(open);
        putAll(store.visits(), record.findings, visit.id);
        putAll(store.visits(), record.readings, visit.id);
        putAll(store.visits(), record.treatments, visit.id);
        putAll(store.visits(), record.photos, visit.id);
        store.visits().close(visit.id, *visit.closedAt);
    }
}

class PrintPageTest : public ::testing::Test
{
protected:
    PrintPageTest()
        : m_record(ordinaryRecord())
        , m_store(Store::create(m_folder.filePath(u"record.padside"_s)))
        , m_ids([] { return std::int64_t{1'790'000'000'000}; }, 1)
    {
        QSettings().clear();
        for (Reading& reading : m_record.readings) {
            if (reading.value.typed.empty())
                reading.value.typed = showMeasure(reading.value.si, *unitByCode(reading.value.unitCode));
        }
        keep(*m_store, m_record);
        m_book = std::make_unique<RecordBook>(*m_store, shipped(), m_ids,
                                              RecordBook::Surroundings{[] {
                                                                           return Instant{day("2026-05-05"), {}};
                                                                       },
                                                                       QLocale(u"en_US"_s), UnitSystem::usCustomary,
                                                                       u"A. Tester"_s});
        m_page = std::make_unique<PrintPage>(*m_book, Theme::light());
        m_page->resize(900, 700);
        m_page->setFileChooser([this](const QString& suggested) {
            m_suggested = suggested;
            return m_answer;
        });
        m_page->setPrinterChooser([](QPrinter&) { return false; });
        m_page->showVisit(m_record.unit.id, m_record.visits.back().id);
    }

    template <typename Widget> [[nodiscard]] Widget& find(const QString& name) const
    {
        return *m_page->findChild<Widget*>(name);
    }
    [[nodiscard]] const PaperDocument& pages() const { return m_page->findChild<PagePreview*>()->document(); }
    [[nodiscard]] bool shows(const QString& text) const
    {
        for (const PaperPage& page : pages().pages) {
            for (const padside::Run& run : page.runs) {
                const auto* line = std::get_if<TextRun>(&run);
                if (line && line->text.contains(text))
                    return true;
            }
        }
        return false;
    }
    void click(const QString& button) { QTest::mouseClick(&find<QPushButton>(button), Qt::LeftButton); }
    /// Exports, and waits until it is said how that ended.
    void exportNow()
    {
        click(u"exportPdf"_s);
        EXPECT_TRUE(QTest::qWaitFor([this] { return !find<QLabel>(u"said"_s).isHidden(); }));
    }

    QTemporaryDir m_folder;
    UnitRecord m_record;
    std::unique_ptr<Store> m_store;
    IdMaker m_ids;
    std::unique_ptr<RecordBook> m_book;
    std::unique_ptr<PrintPage> m_page;
    QString m_suggested;
    QString m_answer;
};

} // namespace

TEST_F(PrintPageTest, TheVisitIsShownInThePersonsUnits)
{
    EXPECT_TRUE(shows(u"HB-03, Quay House"_s));
    EXPECT_TRUE(shows(u"psig"_s));
    EXPECT_EQ(pages().size, PaperSize::letter); // usual where the locale is
}

TEST_F(PrintPageTest, AnotherPaperSizeIsLaidAtOnceAndRemembered)
{
    auto& size = find<QComboBox>(u"paperSize"_s);
    size.setFocus();
    QTest::keyClick(&size, Qt::Key_Up);
    EXPECT_EQ(pages().size, PaperSize::a4);
    const PrintPage again(*m_book, Theme::light());
    EXPECT_EQ(again.findChild<QComboBox*>(u"paperSize"_s)->currentData().toString(), u"a4"_s);
}

TEST_F(PrintPageTest, TheContractorsNameGoesToTheHeadOfThePage)
{
    auto& name = find<QLineEdit>(u"contractor"_s);
    QTest::keyClicks(&name, u"Breakwater Cooling"_s);
    QTest::keyClick(&name, Qt::Key_Return);
    EXPECT_TRUE(shows(u"Breakwater Cooling"_s));
}

TEST_F(PrintPageTest, ExportWritesTheFileAndSaysWhere)
{
    m_answer = m_folder.filePath(u"out.pdf"_s);
    exportNow();
    EXPECT_TRUE(m_suggested.endsWith(u"/HB-03 2026-05-04 visit summary.pdf")) << m_suggested.toStdString();
    EXPECT_TRUE(find<QLabel>(u"said"_s).text().contains(m_answer));
    QFile file(m_answer);
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    EXPECT_TRUE(file.readAll().startsWith("%PDF-"));
}

TEST_F(PrintPageTest, AnExportCalledOffWritesNothingAndSaysNothing)
{
    const QStringList before = QDir(m_folder.path()).entryList();
    click(u"exportPdf"_s);
    EXPECT_EQ(QDir(m_folder.path()).entryList(), before);
    EXPECT_TRUE(find<QLabel>(u"said"_s).text().isEmpty());
}

TEST_F(PrintPageTest, AnExportCanBeCancelledAndLeavesNothingBehind)
{
    std::binary_semaphore goOn(0);
    Sheet sheet;
    sheet.fileName = u"slow.pdf"_s;
    sheet.lay = [&goOn](const QString&, PaperSize size) {
        PaperDocument document;
        document.size = size;
        document.pages.resize(2);
        const auto slow = [&goOn](QPainter& painter) {
            if (painter.device()->devType() != QInternal::Pixmap)
                goOn.acquire();
        };
        document.pages[0].runs.emplace_back(DrawingRun{QRectF(0, 0, 10, 10), slow});
        return document;
    };
    m_page->showSheet(sheet, u"Back"_s);
    m_answer = m_folder.filePath(u"slow.pdf"_s);
    auto& button = find<QPushButton>(u"exportPdf"_s);
    const QString usual = button.text();
    button.click();
    EXPECT_TRUE(QTest::qWaitFor([&] { return button.text() != usual; })) << "the button offers to cancel";
    button.click();
    goOn.release();
    EXPECT_TRUE(QTest::qWaitFor([this] { return !find<QLabel>(u"said"_s).isHidden(); }));
    EXPECT_EQ(find<QLabel>(u"said"_s).text(), u"Cancelled; nothing was written or printed.");
    EXPECT_EQ(button.text(), usual);
    EXPECT_FALSE(QFile::exists(m_answer));
}

TEST_F(PrintPageTest, AMissingFolderIsSaidInOneSentence)
{
    m_answer = m_folder.filePath(u"nowhere/out.pdf"_s);
    exportNow();
    EXPECT_TRUE(find<QLabel>(u"said"_s).text().startsWith(u"The PDF was not written: there is no folder "));
    EXPECT_FALSE(find<QLabel>(u"said"_s).isHidden());
}

TEST_F(PrintPageTest, PrintingGoesThroughTheSamePages)
{
    const QString path = m_folder.filePath(u"printed.pdf"_s);
    m_page->setPrinterChooser([&path](QPrinter& printer) {
        printer.setOutputFormat(QPrinter::PdfFormat);
        printer.setOutputFileName(path);
        return true;
    });
    click(u"print"_s);
    EXPECT_TRUE(QTest::qWaitFor([this] { return !find<QLabel>(u"said"_s).isHidden(); }));
    EXPECT_TRUE(find<QLabel>(u"said"_s).text().contains(u"Sent to the printer"));
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    EXPECT_TRUE(file.readAll().startsWith("%PDF-"));
}

TEST_F(PrintPageTest, BackLeavesThePage)
{
    const QSignalSpy left(m_page.get(), &PrintPage::left);
    click(u"backToUnit"_s);
    EXPECT_EQ(left.count(), 1);
}

TEST_F(PrintPageTest, AVisitThatIsNotThereShowsNothingAndOffersNothing)
{
    m_page->showVisit(m_record.unit.id, VisitId(UuidBytes{9}));
    EXPECT_TRUE(pages().pages.empty());
    EXPECT_FALSE(find<QPushButton>(u"exportPdf"_s).isEnabled());
    EXPECT_FALSE(find<QPushButton>(u"print"_s).isEnabled());
}

TEST_F(PrintPageTest, ThePreviewPaintsGradesInTheirColours)
{
    const QImage picture = m_page->grab().toImage();
    const QRgb poor = Theme::print().fill(Grade::poor).rgb();
    int found = 0;
    for (int y = 0; y < picture.height(); ++y) {
        for (int x = 0; x < picture.width(); ++x)
            found += picture.pixel(x, y) == poor ? 1 : 0;
    }
    EXPECT_GT(found, 50);
}

} // namespace padside::test
