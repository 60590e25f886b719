// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/ui/paper/summary_fixture.h"
#include "ui/paper/page_maker.h"
#include "ui/paper/type_setting.h"

#include <QFontInfo>

#include <gtest/gtest.h>

namespace padside::test {

namespace {

using Qt::Literals::StringLiterals::operator""_s;

/// The English of the catalogue as long as German words can be, with an emoji and a word that fits no line.
class LongWindedSpeaker final : public Speaker
{
public:
    [[nodiscard]] std::string translate(const std::string& english) const override
    {
        return english + " Wärmepumpenaußengerätebodenwannenablaufheizungsüberwachung 🔧 " + std::string(150, 'w');
    }
    [[nodiscard]] std::string number(double value, int decimals) const override
    {
        return plainEnglish().number(value, decimals);
    }
    [[nodiscard]] std::string amount(const Amount& amount) const override { return plainEnglish().amount(amount); }
    [[nodiscard]] std::string money(const Money& money) const override { return plainEnglish().money(money); }
    [[nodiscard]] std::string date(Date date) const override { return plainEnglish().date(date); }
};

QString textOf(const PaperDocument& document)
{
    QString text;
    for (const PaperPage& page : document.pages) {
        for (const Run& run : page.runs) {
            if (const auto* line = std::get_if<TextRun>(&run))
                text += line->text + u'\n';
        }
    }
    return text;
}

/// Nothing leaves the sheet's margins at the sides, and no two runs cover each other.
void expectCleanPages(const PaperDocument& document)
{
    const QRectF area = textArea(document.size);
    for (std::size_t number = 0; number < document.pages.size(); ++number) {
        const std::vector<Run>& runs = document.pages[number].runs;
        for (std::size_t i = 0; i < runs.size(); ++i) {
            const QRectF box = boxOf(runs[i]);
            ASSERT_GE(box.left(), area.left() - 0.5) << "page " << number + 1;
            ASSERT_LE(box.right(), area.right() + 0.5) << "page " << number + 1;
            ASSERT_LE(box.bottom(), sheetSize(document.size).height()) << "page " << number + 1;
            for (std::size_t j = i + 1; j < runs.size(); ++j) {
                const QRectF shared
                    = box.adjusted(0.5, 0.5, -0.5, -0.5) & boxOf(runs[j]).adjusted(0.5, 0.5, -0.5, -0.5);
                ASSERT_TRUE(shared.isEmpty()) << "page " << number + 1 << ", runs " << i << " and " << j;
            }
        }
    }
}

} // namespace

TEST(PageMaker, ThereIsAFontToSetTypeIn)
{
    EXPECT_FALSE(QFontInfo(paperFont(Face::body)).family().isEmpty());
    EXPECT_GT(textWidth(u"mmm"_s, Face::body), textWidth(u"iii"_s, Face::body)); // not one box for every letter
}

TEST(PageMaker, AnOrdinaryVisitTakesTwoPagesOnEitherPaper)
{
    for (const PaperSize size : {PaperSize::a4, PaperSize::letter}) {
        const PaperDocument document = makePages(visitSummaryContent(summaryOf(ordinaryRecord(), 4, 5)), size);
        EXPECT_LE(document.pages.size(), 2U);
        expectCleanPages(document);
    }
}

TEST(PageMaker, PagesAreNumberedOfTheirTotal)
{
    const QString text = textOf(makePages(visitSummaryContent(summaryOf(ordinaryRecord(), 4, 5)), PaperSize::a4));
    EXPECT_TRUE(text.contains(u"Page 1 of 2\n"));
    EXPECT_TRUE(text.contains(u"Page 2 of 2\n"));
}

TEST(PageMaker, SixtyChangesFlowOnWithTheHeadRepeatedAndNoneLost)
{
    const PaperDocument document = makePages(visitSummaryContent(summaryOf(recordWithChanges(60))), PaperSize::letter);
    EXPECT_GE(document.pages.size(), 3U);
    expectCleanPages(document);
    const QString text = textOf(document);
    for (int i = 0; i < 60; ++i)
        EXPECT_EQ(text.count(u"zone %1\n"_s.arg(1000 + i)), 1) << i;
    EXPECT_EQ(text.count(u"continued\n"_s), 2);
}

TEST(PageMaker, LongWordsAreBrokenAndStayOnTheSheet)
{
    const LongWindedSpeaker longWinded;
    const SummaryInput plain = summaryOf(ordinaryRecord(), 5, 8);
    const SummaryInput input{plain.record, plain.review,     plain.visit, plain.catalogue, longWinded,
                             plain.photos, plain.contractor, plain.size,  plain.printedOn, plain.forecast};
    for (const PaperSize size : {PaperSize::a4, PaperSize::letter})
        expectCleanPages(makePages(visitSummaryContent(input), size));
}

TEST(PageMaker, ANoteLongerThanAPageIsCutBetweenItsLines)
{
    UnitRecord record = ordinaryRecord();
    std::string note;
    for (int i = 0; i < 1500; ++i)
        note += "w" + std::to_string(i) + " ";
    record.visits.back().note = note;
    const PaperDocument document = makePages(visitSummaryContent(summaryOf(std::move(record))), PaperSize::a4);
    expectCleanPages(document);
    const QString text = textOf(document).replace(u'\n', u' ');
    for (int i = 0; i < 1500; ++i)
        ASSERT_TRUE(text.contains(u"w%1 "_s.arg(i))) << i;
}

TEST(PageMaker, NothingToSayStillMakesOnePage)
{
    const PaperDocument document = makePages(PaperContent{}, PaperSize::a4);
    ASSERT_EQ(document.pages.size(), 1U);
    EXPECT_TRUE(textOf(document).contains(u"Page 1 of 1"));
}

TEST(PageMaker, ATableWithoutRowsSaysItsClosingSentenceUnderNoTitles)
{
    TableBlock table;
    table.heading = u"Refrigerant"_s;
    table.columns = {{u"Mass"_s, 1, false}};
    table.closing = u"Nothing was moved."_s;
    PaperContent content;
    content.blocks.emplace_back(table);
    const QString text = textOf(makePages(content, PaperSize::a4));
    EXPECT_TRUE(text.contains(u"Refrigerant\n"_s));
    EXPECT_TRUE(text.contains(u"Nothing was moved.\n"_s));
    EXPECT_FALSE(text.contains(u"Mass\n"_s));
}

TEST(PageMaker, SignaturesDoNotStandAloneOnAPage)
{
    // Whatever the length, the page with the signatures holds something above them.
    for (int changes = 0; changes < 45; ++changes) {
        const PaperDocument document
            = makePages(visitSummaryContent(summaryOf(recordWithChanges(changes))), PaperSize::a4);
        bool before = false;
        for (const padside::Run& run : document.pages.back().runs) {
            const auto* line = std::get_if<TextRun>(&run);
            if (line && line->text == u"Customer")
                break;
            before = before || (line && line->text == u"Cautions");
        }
        EXPECT_TRUE(before) << changes;
    }
}

} // namespace padside::test
