// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/store/site_book.h"
#include "core/store/store.h"
#include "core/store/visit_book.h"
#include "tests/ui/paper/summary_fixture.h"
#include "ui/drawing/theme.h"
#include "ui/models/record_book.h"
#include "ui/pages/paper/page_preview.h"
#include "ui/pages/paper/print_page.h"

#include <QComboBox>
#include <QFile>
#include <QLabel>
#include <QPrinter>
#include <QPushButton>
#include <QSettings>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>

#include <gtest/gtest.h>

namespace padside::test {

namespace {

using Qt::Literals::StringLiterals::operator""_s;

class PrintHistoryTest : public ::testing::Test
{
protected:
    PrintHistoryTest()
        : m_store(Store::create(m_folder.filePath(u"record.padside"_s)))
        , m_ids([] { return std::int64_t{1'790'000'000'000}; }, 1)
    {
        QSettings().clear();
        auto builder = aUnit("HB-01").withPart("suction-accumulator", {"bottom"});
        builder.visit("2025-04-10").graded("bottom", 3);
        const UnitRecord record = builder.build();
        m_store->sites().addSite(record.site);
        m_store->sites().addUnit(record.unit);
        m_store->sites().addPart(record.parts[0]);
        Visit visit = record.visits[0];
        visit.closedAt.reset();
        m_store->visits().open(visit);
        m_store->visits().put(record.findings[0]);
        RecordBook::Surroundings surroundings;
        surroundings.now = [] { return Instant{day("2026-05-05"), {}}; };
        surroundings.locale = QLocale(u"de_DE"_s);
        m_book = std::make_unique<RecordBook>(*m_store, shipped(), m_ids, surroundings);
        m_page = std::make_unique<PrintPage>(*m_book, Theme::light());
        m_page->resize(900, 700);
        m_page->setFileChooser([this](const QString& suggested) {
            m_suggested = suggested;
            return m_answer;
        });
        m_page->showHistory(record.unit.id);
    }

    template <typename Widget> [[nodiscard]] Widget& find(const QString& name) const
    {
        return *m_page->findChild<Widget*>(name);
    }
    void click(const QString& button) { QTest::mouseClick(&find<QPushButton>(button), Qt::LeftButton); }
    /// Exports, and waits until it is said how that ended.
    void exportNow()
    {
        click(u"exportPdf"_s);
        EXPECT_TRUE(QTest::qWaitFor([this] { return !find<QLabel>(u"said"_s).isHidden(); }));
    }
    [[nodiscard]] static bool isPdf(const QString& path)
    {
        QFile file(path);
        return file.open(QIODevice::ReadOnly) && file.readAll().startsWith("%PDF-");
    }

    QTemporaryDir m_folder;
    std::unique_ptr<Store> m_store;
    IdMaker m_ids;
    std::unique_ptr<RecordBook> m_book;
    std::unique_ptr<PrintPage> m_page;
    QString m_suggested;
    QString m_answer;
};

} // namespace

TEST_F(PrintHistoryTest, ThePagesAreShownAsTheyWillBePrinted)
{
    const PaperDocument& pages = m_page->findChild<PagePreview*>()->document();
    EXPECT_TRUE(pages.landscape);
    EXPECT_EQ(pages.size, PaperSize::a4);
    ASSERT_EQ(pages.pages.size(), 1U);
    const QImage seen = m_page->findChild<PagePreview*>()->grab().toImage();
    int rust = 0;
    for (int y = 0; y < seen.height(); ++y) {
        for (int x = 0; x < seen.width(); ++x)
            rust += seen.pixelColor(x, y) == Theme::print().fill(Grade::marked) ? 1 : 0;
    }
    EXPECT_GT(rust, 50) << "the grade that was found";
}

TEST_F(PrintHistoryTest, ExportWritesTheFileAndSaysWhere)
{
    m_answer = m_folder.filePath(u"out.pdf"_s);
    exportNow();
    EXPECT_TRUE(m_suggested.endsWith(u"/HB-01 history.pdf")) << m_suggested.toStdString();
    EXPECT_TRUE(isPdf(m_answer));
    EXPECT_TRUE(find<QLabel>(u"said"_s).text().contains(m_answer));
}

TEST_F(PrintHistoryTest, AMissingFolderIsSaidInOneSentence)
{
    m_answer = m_folder.filePath(u"nowhere/out.pdf"_s);
    exportNow();
    EXPECT_TRUE(find<QLabel>(u"said"_s).text().startsWith(u"The PDF was not written: there is no folder "));
}

TEST_F(PrintHistoryTest, LetterIsLaidAtOnce)
{
    auto& size = find<QComboBox>(u"paperSize"_s);
    size.setFocus();
    QTest::keyClick(&size, Qt::Key_Down);
    EXPECT_EQ(m_page->findChild<PagePreview*>()->document().size, PaperSize::letter);
}

TEST_F(PrintHistoryTest, PrintingGoesThroughTheSamePages)
{
    const QString path = m_folder.filePath(u"printed.pdf"_s);
    m_page->setPrinterChooser([&path](QPrinter& printer) {
        printer.setOutputFormat(QPrinter::PdfFormat);
        printer.setOutputFileName(path);
        return true;
    });
    click(u"print"_s);
    EXPECT_TRUE(QTest::qWaitFor([this] { return !find<QLabel>(u"said"_s).isHidden(); }));
    EXPECT_TRUE(isPdf(path));
}

TEST_F(PrintHistoryTest, BackLeavesThePageAndAUnitThatIsNotThereShowsNothing)
{
    QSignalSpy left(m_page.get(), &PrintPage::left);
    click(u"backToUnit"_s);
    EXPECT_EQ(left.count(), 1);
    QSignalSpy failed(m_book.get(), &RecordBook::failed);
    m_page->showHistory(UnitId(UuidBytes{9}));
    EXPECT_EQ(failed.count(), 1);
    EXPECT_FALSE(find<QPushButton>(u"exportPdf"_s).isEnabled());
}

} // namespace padside::test
