// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/support/record_builder.h"
#include "ui/pages/unit/zone_pictures.h"

#include <gtest/gtest.h>

namespace padside::test {

namespace {

void addPhoto(UnitRecord& record, std::size_t visit, ZoneId zone, Phase phase = Phase::asFound)
{
    Photo photo;
    photo.id = PhotoId(UuidBytes{static_cast<std::uint8_t>(record.photos.size() + 1)});
    photo.visitId = record.visits.at(visit).id;
    photo.on = record.visits.at(visit).on;
    photo.zoneId = zone;
    photo.phase = phase;
    record.photos.push_back(photo);
}

} // namespace

TEST(ZonePictures, StandInOrderOfDateWithTheGradeOfTheirPhase)
{
    auto builder = aUnit("HB-01").withPart("suction-accumulator", {"crown", "bottom"});
    builder.visit("2023-04-10").graded("bottom", 4).graded("bottom", 2, Phase::asLeft);
    builder.visit("2024-04-10").notSeen("bottom", NotSeenReason::covered);
    UnitRecord record = builder.build();
    const ZoneId bottom = builder.zone("bottom");
    addPhoto(record, 1, bottom);
    addPhoto(record, 0, bottom, Phase::asLeft);
    addPhoto(record, 0, bottom);
    addPhoto(record, 0, builder.zone("crown"));
    const std::vector zones{bottom};
    const auto pictures = zonePictures(record, zones);
    ASSERT_EQ(pictures.size(), 3U);
    EXPECT_EQ(pictures[0].grade, Grade::poor);
    EXPECT_EQ(pictures[1].grade, Grade::worn);
    EXPECT_EQ(pictures[1].phase, Phase::asLeft);
    EXPECT_FALSE(pictures[0].paired);
    EXPECT_TRUE(pictures[1].paired) << "before and after stand side by side";
    EXPECT_EQ(pictures[2].notSeen, NotSeenReason::covered);
    EXPECT_FALSE(pictures[2].paired);
}

TEST(ZonePictures, GoOnOverAReplacement)
{
    auto builder = aUnit("HB-01").withPart("suction-accumulator", {"bottom"});
    builder.visit("2023-04-10").graded("bottom", 5);
    const ZoneId old = builder.zone("bottom");
    builder.replacedPart("suction-accumulator", "2023-04-10");
    builder.visit("2024-04-10").graded("bottom", 1);
    UnitRecord record = builder.build();
    addPhoto(record, 0, old);
    addPhoto(record, 1, builder.zone("bottom"));
    const std::vector zones{old, builder.zone("bottom")};
    const auto pictures = zonePictures(record, zones);
    ASSERT_EQ(pictures.size(), 2U);
    EXPECT_FALSE(pictures[0].newPart);
    EXPECT_TRUE(pictures[1].newPart);
}

} // namespace padside::test
