// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/quantity/plain_english.h"
#include "tests/ui/drawing/twenty_years.h"
#include "tests/ui/paper/poppler.h"
#include "tests/ui/paper/summary_fixture.h"
#include "ui/paper/owner_history_content.h"

#include <QRegularExpression>
#include <QTemporaryDir>

#include <gtest/gtest.h>

namespace padside::test {

namespace {

using Qt::Literals::StringLiterals::operator""_s;

/// Invented; the part kinds of the records used here.
CostFigures invented()
{
    CostFigures costs;
    costs.interest = 0.05;
    costs.yearsCompared = 10;
    costs.newUnitLifeYears = 15;
    costs.visitsAYear = 2;
    CostsOfKind one;
    one.part = 200;
    one.labour = 300;
    one.treatment = 40;
    for (const PartKind& kind : shipped().partKinds())
        costs.kinds[kind.code] = one;
    return costs;
}

OwnerHistoryInput historyOf(UnitRecord record, const CostFigures& costs, const char* on, PaperSize size = PaperSize::a4)
{
    const OutlookModel model(shipped());
    const Date today = day(on);
    UnitReview reviewed = review(record, shipped(), OutlookModel(shipped()), today);
    UnitForecast forecast = unitForecast(record, shipped(), model, today);
    UnitWorth worth = unitWorth(record, shipped(), costs, model, today);
    return {std::move(record),
            std::move(reviewed),
            std::move(forecast),
            std::move(worth),
            shipped(),
            plainEnglish(),
            u"Breakwater Cooling and Heating"_s,
            size,
            today};
}

class OwnerHistoryPaper : public ::testing::Test
{
protected:
    [[nodiscard]] QString written(const OwnerHistoryInput& input)
    {
        QString path = m_folder.filePath(u"history.pdf"_s);
        EXPECT_TRUE(writePdf(layOwnerHistory(input), drawnPhoto, path));
        return path;
    }
    [[nodiscard]] QString textOf(const OwnerHistoryInput& input)
    {
        return poppler(u"pdftotext"_s, {u"-layout"_s, written(input), u"-"_s}).simplified();
    }

    QTemporaryDir m_folder;
};

} // namespace

TEST_F(OwnerHistoryPaper, SaysWhatTheUnitIsWhatComesNextAndWhatWasDone)
{
    const QString text = textOf(historyOf(ordinaryRecord(), {}, "2026-05-05"));
    for (const QString& expected :
         {u"Owner's history"_s, u"HB-03, Quay House"_s, u"Breakwater Cooling and Heating"_s, u"The unit, opened"_s,
          u"What comes next"_s, u"Spent within a year"_s, u"Through the years"_s, u"Year by year"_s, u"2026"_s,
          u"Cautions"_s, u"Suction accumulator, bottom"_s, u"As of 2026-05-05"_s, u"Page 1 of "_s})
        EXPECT_TRUE(text.contains(expected)) << expected.toStdString() << "\n" << text.toStdString();
}

TEST_F(OwnerHistoryPaper, WithoutCostsItNamesWhatIsNeededInsteadOfAnAnswer)
{
    CostFigures none = invented();
    none.kinds.clear();
    const QString text = textOf(historyOf(ordinaryRecord(), none, "2026-05-05"));
    EXPECT_TRUE(text.contains(u"Not reckoned: costs are not given. Needed: Price of a new unit, fitted"_s))
        << text.toStdString();
    EXPECT_FALSE(text.contains(u"Replace, a year"_s));
}

TEST_F(OwnerHistoryPaper, WithCostsItSaysCarryOnOrReplaceAndWhatWouldTurnIt)
{
    UnitRecord record = ordinaryRecord();
    record.assumptions = {{"price-new", 5200}};
    const OwnerHistoryInput input = historyOf(record, invented(), "2026-05-05");
    ASSERT_TRUE(input.worth.answer.has_value());
    const QString text = textOf(input);
    EXPECT_TRUE(text.contains(QString::fromStdString(say(input.worth.answer->said)).left(30))) << text.toStdString();
    EXPECT_TRUE(text.contains(u"Replace, a year"_s));
    EXPECT_TRUE(text.contains(u"would turn"_s));
}

TEST_F(OwnerHistoryPaper, WhatWasSpentIsAddedUpYearByYear)
{
    UnitRecord record = ordinaryRecord();
    ASSERT_GE(record.treatments.size(), 2U);
    record.treatments[0].cost = 85.0;
    record.treatments[1].cost = 40.0;
    const OwnerHistoryInput input = historyOf(record, {}, "2026-05-05");
    const PaperContent content = ownerHistoryContent(input);
    const TableBlock* years = blockCalled<TableBlock>(content, u"Year by year"_s);
    ASSERT_NE(years, nullptr);
    EXPECT_EQ(years->rows.back().back().text, u"125"_s);
    EXPECT_TRUE(years->closing.contains(u"125"_s)) << years->closing.toStdString();
}

TEST_F(OwnerHistoryPaper, AmountsHaveTheReadersCurrencyWhereItIsKnown)
{
    UnitRecord record = ordinaryRecord();
    record.assumptions = {{"price-new", 5200}};
    record.treatments[0].cost = 85.0;
    const OwnerHistoryInput plain = historyOf(record, invented(), "2026-05-05");
    const PlainEnglish euros("EUR");
    const OwnerHistoryInput input{plain.record, plain.review,     plain.forecast, plain.worth, plain.catalogue,
                                  euros,        plain.contractor, plain.size,     plain.today};
    const QString text = textOf(input);
    EXPECT_TRUE(text.contains(u"Paid for work in all: EUR 85"_s)) << text.toStdString();
    EXPECT_TRUE(text.contains(u"price of a new unit: EUR "_s)) << text.toStdString();
    EXPECT_TRUE(text.contains(u"about EUR "_s)) << text.toStdString();
    EXPECT_FALSE(textOf(plain).contains(u"EUR"_s));
}

TEST_F(OwnerHistoryPaper, APhotographOfEachYearStandsBesideTheOthersOldestFirst)
{
    const PaperContent content = ownerHistoryContent(historyOf(ordinaryRecord(), {}, "2026-05-05"));
    const auto* photos = blockCalled<PhotoRowsBlock>(content, u"The places likeliest to be spent, through the years"_s);
    ASSERT_NE(photos, nullptr);
    ASSERT_FALSE(photos->rows.empty());
    for (const PhotoRow& row : photos->rows) {
        EXPECT_LE(row.photos.size(), 4U);
        EXPECT_TRUE(std::ranges::is_sorted(row.photos, {}, &PaperPhoto::when)) << row.zone.toStdString();
    }
}

TEST_F(OwnerHistoryPaper, WhatIsEnteredLaterIsLeftOut)
{
    const PaperContent content = ownerHistoryContent(historyOf(ordinaryRecord(), {}, "2025-12-31"));
    const TableBlock* years = blockCalled<TableBlock>(content, u"Year by year"_s);
    ASSERT_NE(years, nullptr);
    EXPECT_EQ(years->rows.back().front().text, u"2025"_s);
}

TEST_F(OwnerHistoryPaper, TwentyYearsFitBothPapersWithEveryYear)
{
    for (const PaperSize size : {PaperSize::a4, PaperSize::letter}) {
        const QString path = written(historyOf(twentyYears(), invented(), "2024-12-31", size));
        const QString text = poppler(u"pdftotext"_s, {u"-layout"_s, path, u"-"_s});
        for (int year = 2005; year <= 2024; ++year)
            EXPECT_TRUE(text.contains(QRegularExpression(u"(^|\\s)%1\\s"_s.arg(year)))) << year;
        const auto pages = QRegularExpression(u"Pages: +(\\d+)"_s).match(poppler(u"pdfinfo"_s, {path})).captured(1);
        EXPECT_LE(pages.toInt(), 8);
        EXPECT_GE(pages.toInt(), 3);
    }
}

TEST_F(OwnerHistoryPaper, NothingReachesBeyondTheSheet)
{
    for (const PaperSize size : {PaperSize::a4, PaperSize::letter}) {
        const PaperDocument document = layOwnerHistory(historyOf(twentyYears(), invented(), "2024-12-31", size));
        const QRectF sheet(QPointF(0, 0), sheetSize(document));
        for (const PaperPage& page : document.pages) {
            for (const padside::Run& run : page.runs)
                EXPECT_TRUE(sheet.contains(boxOf(run)) || boxOf(run).height() == 0) << boxOf(run).bottom();
        }
    }
}

TEST_F(OwnerHistoryPaper, AUnitWithoutVisitsHasOneToo)
{
    UnitRecord record = ordinaryRecord();
    record.visits.clear();
    const QString text = textOf(historyOf(std::move(record), {}, "2026-05-05"));
    EXPECT_TRUE(text.contains(u"none yet"_s)) << text.toStdString();
    EXPECT_FALSE(text.contains(u"Year by year"_s));
}

} // namespace padside::test
