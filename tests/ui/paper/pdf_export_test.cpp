// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/ui/paper/poppler.h"
#include "tests/ui/paper/summary_fixture.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QRegularExpression>
#include <QTemporaryDir>

#include <csignal>
#include <gtest/gtest.h>
#include <sys/resource.h>
#include <sys/stat.h>

namespace padside::test {

namespace {

using Qt::Literals::StringLiterals::operator""_s;

/// While it lives no file can grow beyond `bytes`: a disk that fills up in the middle of writing.
class FileSizeLimit
{
public:
    explicit FileSizeLimit(rlim_t bytes)
        : m_oldHandler(std::signal(SIGXFSZ, SIG_IGN))
    {
        getrlimit(RLIMIT_FSIZE, &m_old);
        const rlimit limited{bytes, m_old.rlim_max};
        setrlimit(RLIMIT_FSIZE, &limited);
    }
    ~FileSizeLimit()
    {
        setrlimit(RLIMIT_FSIZE, &m_old);
        std::signal(SIGXFSZ, m_oldHandler);
    }
    FileSizeLimit(const FileSizeLimit&) = delete;
    FileSizeLimit& operator=(const FileSizeLimit&) = delete;

private:
    rlimit m_old{};
    void (*m_oldHandler)(int);
};

class PdfExport : public ::testing::Test
{
protected:
    [[nodiscard]] QString path(const QString& name = u"summary.pdf"_s) const { return m_folder.filePath(name); }
    [[nodiscard]] QStringList files() const { return QDir(m_folder.path()).entryList(QDir::Files | QDir::Hidden); }

    QTemporaryDir m_folder;
};

} // namespace

TEST_F(PdfExport, TheTextsAreFoundInTheFile)
{
    ASSERT_TRUE(exportVisitSummary(summaryOf(ordinaryRecord(), 4, 5), path()));
    const QString text = poppler(u"pdftotext"_s, {u"-layout"_s, path(), u"-"_s});
    for (const QString& expected :
         {u"HB-03, Quay House"_s, u"Breakwater Cooling and Heating"_s, u"What changed"_s,
          u"Suction accumulator, bottom"_s, u"Worse since 2025-10-09"_s, u"Not seen: covered by a panel or jacket"_s,
          u"448 kPa (typed: 65 psig)"_s, u"Keep off and dry until 16:30."_s, u"As found, 2026-05-04"_s,
          u"2026-09-04 to 2026-11-04"_s, u"licensed technician"_s, u"Customer"_s, u"Page 1 of 2"_s, u"Page 2 of 2"_s})
        EXPECT_TRUE(text.contains(expected)) << expected.toStdString();
}

TEST_F(PdfExport, TheFileKnowsItsTitleMakerAndPaper)
{
    SummaryInput input = summaryOf(ordinaryRecord(), 4, 5);
    ASSERT_TRUE(exportVisitSummary(input, path()));
    const QString a4 = poppler(u"pdfinfo"_s, {path()});
    EXPECT_TRUE(a4.contains(u"HB-03, visit summary, 2026-05-04"));
    EXPECT_TRUE(a4.contains(QRegularExpression(u"Creator: +Padside"_s)));
    EXPECT_TRUE(a4.contains(QRegularExpression(u"Pages: +2"_s)));
    EXPECT_TRUE(a4.contains(QRegularExpression(u"Page size: +59[45](\\.\\d+)? x 84[12]"_s))) << a4.toStdString();
    input.size = PaperSize::letter;
    ASSERT_TRUE(exportVisitSummary(input, path()));
    EXPECT_TRUE(poppler(u"pdfinfo"_s, {path()}).contains(QRegularExpression(u"Page size: +612 x 792"_s)));
}

TEST_F(PdfExport, AllFontsAreInsideTheFile)
{
    ASSERT_TRUE(exportVisitSummary(summaryOf(ordinaryRecord(), 4, 5), path()));
    const QStringList lines = poppler(u"pdffonts"_s, {path()}).split(u'\n', Qt::SkipEmptyParts);
    ASSERT_GE(lines.size(), 4); // two lines of head, two weights
    for (const QString& line : lines.mid(2))
        EXPECT_TRUE(line.contains(QRegularExpression(u" yes (yes|no) +yes "_s))) << line.toStdString();
}

TEST_F(PdfExport, PhotographsAreInsideTheFile)
{
    ASSERT_TRUE(exportVisitSummary(summaryOf(ordinaryRecord()), path()));
    const QString images = poppler(u"pdfimages"_s, {u"-list"_s, path()});
    EXPECT_EQ(images.count(u" image "_s), 8);
    EXPECT_EQ(images.count(u" smask "_s), 0); // nothing translucent
}

TEST_F(PdfExport, APhotographThatCannotBeReadIsSaidInItsFrame)
{
    SummaryInput input = summaryOf(ordinaryRecord());
    input.photos = [](PhotoId) { return QImage(); };
    ASSERT_TRUE(exportVisitSummary(input, path()));
    EXPECT_TRUE(poppler(u"pdftotext"_s, {path(), u"-"_s}).simplified().contains(u"The picture can't be read."));
}

TEST_F(PdfExport, AMissingFolderIsNamedAndNothingIsLeft)
{
    const auto written = exportVisitSummary(summaryOf(ordinaryRecord()), path(u"nowhere/summary.pdf"_s));
    ASSERT_FALSE(written);
    EXPECT_EQ(written.error().kind, ProblemKind::cannotWrite);
    EXPECT_EQ(say(written.error().what),
              "The PDF was not written: there is no folder " + path(u"nowhere"_s).toStdString()
                  + ". Choose a folder that exists.");
    EXPECT_TRUE(files().isEmpty());
    EXPECT_FALSE(QDir(path(u"nowhere"_s)).exists());
}

TEST_F(PdfExport, AFolderInPlaceOfAFileIsRefused)
{
    const auto written = exportVisitSummary(summaryOf(ordinaryRecord()), path(u""_s));
    ASSERT_FALSE(written);
    EXPECT_NE(say(written.error().what).find("is a folder"), std::string::npos);
}

TEST_F(PdfExport, ADiskThatFillsUpLeavesTheOldFileAsItWasAndNothingElse)
{
    const SummaryInput input = summaryOf(ordinaryRecord());
    QFile old(path());
    ASSERT_TRUE(old.open(QIODevice::WriteOnly));
    old.write("old");
    old.close();
    const FileSizeLimit full(20'000);
    const auto written = exportVisitSummary(input, path());
    ASSERT_FALSE(written);
    EXPECT_EQ(written.error().kind, ProblemKind::cannotWrite);
    EXPECT_NE(say(written.error().what).find("Nothing was left behind"), std::string::npos);
    EXPECT_EQ(files(), QStringList{u"summary.pdf"_s});
    ASSERT_TRUE(old.open(QIODevice::ReadOnly));
    EXPECT_EQ(old.readAll(), QByteArray("old"));
}

TEST_F(PdfExport, ADeviceIsNotReplacedByTheFile)
{
    ASSERT_EQ(mkfifo(path().toLocal8Bit().constData(), 0600), 0);
    const auto written = exportVisitSummary(summaryOf(ordinaryRecord()), path());
    ASSERT_FALSE(written);
    EXPECT_NE(say(written.error().what).find("not a file"), std::string::npos);
    EXPECT_FALSE(QFileInfo(path()).isFile());
}

TEST_F(PdfExport, AnOldFileIsReplacedWhole)
{
    QFile old(path());
    ASSERT_TRUE(old.open(QIODevice::WriteOnly));
    old.write("old");
    old.close();
    ASSERT_TRUE(exportVisitSummary(summaryOf(ordinaryRecord()), path()));
    EXPECT_EQ(files(), QStringList{u"summary.pdf"_s}); // no temporary file stays
    ASSERT_TRUE(old.open(QIODevice::ReadOnly));
    EXPECT_TRUE(old.read(8).startsWith("%PDF-"));
}

TEST_F(PdfExport, TheSuggestedNameHoldsTagDateAndNoForbiddenSign)
{
    UnitRecord record = ordinaryRecord();
    EXPECT_EQ(suggestedFileName(record, record.visits.back().id), u"HB-03 2026-05-04 visit summary.pdf"_s);
    record.unit.tag = "roof/east: 2";
    EXPECT_EQ(suggestedFileName(record, record.visits.back().id), u"roofeast 2 2026-05-04 visit summary.pdf"_s);
}

} // namespace padside::test
