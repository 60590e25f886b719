// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/support/record_builder.h"
#include "tests/support/small_catalogue.h"
#include "ui/drawing/timeline_words.h"

#include <gtest/gtest.h>

namespace padside {

using test::aUnit;
using test::day;
using test::smallCatalogue;

namespace {

Timeline wordedTimeline()
{
    auto builder = aUnit("HB-01").withPart("suction-accumulator", {"crown", "bottom"});
    builder.visit("2025-05-06").graded("bottom", 3).wet(Wetness::wet).noted("bottom was wet");
    builder.notSeen("crown", NotSeenReason::covered);
    builder.visit("2025-10-07", VisitReason::fall).graded("bottom", 4).corrected(3, "shadow, not rust");
    builder.treated("bottom", TreatmentKind::brushAndCoat, "zinc primer").graded("bottom", 2, Phase::asLeft);
    return timelineOf(builder.build(), smallCatalogue(), day("2025-12-31"));
}

QString sentenceOf(std::size_t lane, std::size_t mark)
{
    return TimelineWords(plainEnglish()).sentence(wordedTimeline(), MarkPlace{1, lane, mark});
}

} // namespace

TEST(TimelineWords, AMarkIsOneSentenceWithItsNote)
{
    EXPECT_EQ(sentenceOf(1, 0),
              QStringLiteral("2025-05-06 spring: Suction accumulator, bottom: 3 marked, wet. “bottom was wet”"));
}

TEST(TimelineWords, NotSeenSaysWhy)
{
    EXPECT_EQ(
        sentenceOf(0, 0),
        QStringLiteral("2025-05-06 spring: Suction accumulator, crown: not seen (covered by a panel or jacket)."));
}

TEST(TimelineWords, WorkAndCorrectionAreTold)
{
    EXPECT_EQ(sentenceOf(1, 1),
              QStringLiteral("2025-10-07 fall: Suction accumulator, bottom: 3 marked, as on 2025-05-06, brush and coat "
                             "with zinc primer, left as "
                             "2 worn. Corrected: shadow, not rust"));
}

TEST(TimelineWords, TheSummaryTellsThePictureToThoseWhoCannotSeeIt)
{
    const QString summary = TimelineWords(plainEnglish()).summary(wordedTimeline());
    EXPECT_TRUE(summary.contains(QStringLiteral("2025-05-06"))) << summary.toStdString();
    EXPECT_TRUE(summary.contains(QStringLiteral("2 worn: 1"))) << summary.toStdString();
}

TEST(TimelineWords, ARefrigerantEntryShowsItsSign)
{
    ChargeEntry charge;
    charge.mass = Measure{0.45, QuantityKind::mass, "kg", "0.45 kg"};
    const TimelineWords words(plainEnglish());
    EXPECT_TRUE(words.chargeText(charge).startsWith(u'+'));
    charge.direction = ChargeDirection::recovered;
    EXPECT_FALSE(words.chargeText(charge).startsWith(u'+'));
}

TEST(TimelineWords, AZonesNameSaysSinceWhenItHasItsGrade)
{
    auto builder = aUnit("HB-01").withPart("suction-accumulator", {"bottom"});
    builder.visit("2023-05-06").graded("bottom", 2);
    builder.visit("2024-05-06").graded("bottom", 3);
    builder.visit("2025-05-06").graded("bottom", 3);
    const Timeline timeline = timelineOf(builder.build(), smallCatalogue(), day("2025-12-31"));
    EXPECT_EQ(TimelineWords(plainEnglish()).sentence(timeline, MarkPlace{1, 0, laneName}),
              QStringLiteral("Suction accumulator, bottom: now 3 marked, since 2024-05-06. Enter shows its photographs "
                             "through the years."));
}

TEST(TimelineWords, AReplacementAndADryByTimeSayWhyAndUntilWhen)
{
    auto builder = aUnit("HB-01").withPart("suction-accumulator", {"bottom"});
    builder.visit("2024-05-06").graded("bottom", 4).treated("bottom", TreatmentKind::brushAndCoat, "zinc primer");
    builder.replacedPart("suction-accumulator", "2025-05-06");
    builder.visit("2025-05-06");
    UnitRecord record = builder.build();
    record.treatments[0].dryBy = Instant{day("2024-05-06") + std::chrono::hours(14), std::chrono::minutes(120)};
    record.parts[0].removedBecause = "pinhole at the bottom";
    const Timeline timeline = timelineOf(record, smallCatalogue(), day("2025-12-31"));
    const auto said = [&](std::size_t mark) {
        return TimelineWords(plainEnglish()).sentence(timeline, MarkPlace{1, 0, mark});
    };
    EXPECT_TRUE(said(0).contains(QStringLiteral("brush and coat with zinc primer, dry by 2024-05-06 16:00")))
        << said(0).toStdString();
    EXPECT_TRUE(said(1).contains(QStringLiteral("new part fitted because of: pinhole at the bottom")))
        << said(1).toStdString();
}

} // namespace padside
