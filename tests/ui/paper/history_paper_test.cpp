// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/catalogue/catalogue.h"
#include "tests/ui/drawing/twenty_years.h"
#include "tests/ui/paper/poppler.h"
#include "tests/ui/paper/summary_fixture.h"
#include "ui/paper/history_paper.h"

#include <QRegularExpression>
#include <QTemporaryDir>

#include <gtest/gtest.h>

namespace padside::test {

namespace {

using Qt::Literals::StringLiterals::operator""_s;

class HistoryPaper : public ::testing::Test
{
protected:
    [[nodiscard]] QString written(const UnitRecord& record, PaperSize size = PaperSize::a4, Date on = day("2026-05-05"))
    {
        QString path = m_folder.filePath(u"history.pdf"_s);
        const PaperDocument document = layHistory(HistoryInput{record, shipped(), plainEnglish(), size, on});
        EXPECT_TRUE(writePdf(document, {}, path));
        return path;
    }

    QTemporaryDir m_folder;
};

} // namespace

TEST_F(HistoryPaper, TitleNamesYearsGradesAndLegendAreTextInTheFile)
{
    const QString text = poppler(u"pdftotext"_s, {written(ordinaryRecord()), u"-"_s}).simplified();
    for (const QString& expected : {u"HB-03, Quay House: history"_s, u"Fan motor"_s, u"accumulator"_s, u"bottom"_s,
                                    u"2025"_s, u"2026"_s, u"sound"_s, u"spent"_s, u"not seen, and since then"_s,
                                    u"Whole unit"_s, u"As of 2026-05-05"_s, u"Page 1 of "_s})
        EXPECT_TRUE(text.contains(expected)) << expected.toStdString() << "\n" << text.toStdString();
}

TEST_F(HistoryPaper, PagesLieOnTheirSideInBothSizes)
{
    const UnitRecord record = ordinaryRecord();
    const QString a4 = poppler(u"pdfinfo"_s, {written(record)});
    EXPECT_TRUE(a4.contains(QRegularExpression(u"Page size: +84[12](\\.\\d+)? x 59[45]"_s))) << a4.toStdString();
    EXPECT_TRUE(a4.contains(u"HB-03, history "));
    const QString letter = poppler(u"pdfinfo"_s, {written(record, PaperSize::letter)});
    EXPECT_TRUE(letter.contains(QRegularExpression(u"Page size: +792 x 612"_s))) << letter.toStdString();
}

TEST_F(HistoryPaper, ALongHistoryGoesOverPagesEachWithVisitsTitleAndNumber)
{
    const QString path = written(twentyYears(), PaperSize::a4, day("2024-12-31"));
    const QString info = poppler(u"pdfinfo"_s, {path});
    ASSERT_TRUE(info.contains(QRegularExpression(u"Pages: +2"_s))) << info.toStdString();
    QStringList positions;
    for (int page = 1; page <= 2; ++page) {
        const QString number = QString::number(page);
        const QString text = poppler(u"pdftotext"_s, {u"-f"_s, number, u"-l"_s, number, path, u"-"_s}).simplified();
        EXPECT_TRUE(text.contains(u"TY-01, Quay House: history"_s));
        EXPECT_TRUE(text.contains(u"visits"_s));
        EXPECT_TRUE(text.contains(u"2005"_s));
        EXPECT_TRUE(text.contains(u"Page %1 of 2"_s.arg(number)));
        for (const QRegularExpressionMatch& match : QRegularExpression(u"accumulator, (\\d+)"_s).globalMatch(text))
            positions << match.captured(1);
    }
    EXPECT_EQ(positions.size(), 20) << "every part once: " << positions.join(u' ').toStdString();
    EXPECT_EQ(QSet<QString>(positions.begin(), positions.end()).size(), 20);
}

TEST_F(HistoryPaper, ItIsDrawnInLinesNotInDots)
{
    const QString images = poppler(u"pdfimages"_s, {u"-list"_s, written(ordinaryRecord())});
    EXPECT_EQ(images.count(u" image "_s), 0) << images.toStdString();
    const QStringList fonts = poppler(u"pdffonts"_s, {written(ordinaryRecord())}).split(u'\n', Qt::SkipEmptyParts);
    ASSERT_GE(fonts.size(), 3);
    for (const QString& line : fonts.mid(2))
        EXPECT_TRUE(line.contains(QRegularExpression(u" yes (yes|no) +yes "_s))) << line.toStdString();
}

TEST_F(HistoryPaper, DrawingsStayOnTheSheetAndDoNotOverlap)
{
    for (const PaperSize size : {PaperSize::a4, PaperSize::letter}) {
        const UnitRecord record = twentyYears();
        const PaperDocument document
            = layHistory(HistoryInput{record, shipped(), plainEnglish(), size, day("2024-12-31")});
        const QRectF sheet(QPointF(0, 0), sheetSize(document));
        EXPECT_GT(sheet.width(), sheet.height());
        for (const PaperPage& page : document.pages) {
            for (std::size_t i = 0; i < page.runs.size(); ++i) {
                EXPECT_TRUE(sheet.contains(boxOf(page.runs[i])));
                for (std::size_t j = i + 1; j < page.runs.size(); ++j)
                    EXPECT_FALSE(boxOf(page.runs[i]).intersects(boxOf(page.runs[j]))) << i << ", " << j;
            }
        }
    }
}

TEST_F(HistoryPaper, TheFilesNameHoldsNoForbiddenSigns)
{
    UnitRecord record = ordinaryRecord();
    record.unit.tag = "HB/03:*";
    EXPECT_EQ(historyFileName(record), u"HB03 history.pdf"_s);
}

} // namespace padside::test
