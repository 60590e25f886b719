// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/record/coded.h"
#include "core/record/entry.h"
#include "core/record/unit.h"
#include "core/record/visit.h"

#include <gtest/gtest.h>
#include <set>
#include <string>

namespace padside {

namespace {

/// Each row is found by value and by code; codes are plain and unique.
template <typename Enum> void expectSoundTable(std::size_t rows)
{
    std::set<std::string_view> codes;
    EXPECT_EQ(codesOf(Enum{}).size(), rows);
    for (const auto& row : codesOf(Enum{})) {
        EXPECT_TRUE(codes.insert(row.code).second) << row.code << " is there twice";
        EXPECT_EQ(codeOf(row.value), row.code);
        EXPECT_EQ(wordOf(row.value), row.word);
        EXPECT_EQ(fromCode<Enum>(row.code), row.value);
        EXPECT_EQ(row.code.find_first_not_of("abcdefghijklmnopqrstuvwxyz0123456789-"), std::string_view::npos)
            << row.code;
        EXPECT_FALSE(row.word.empty());
    }
    EXPECT_FALSE(fromCode<Enum>("no such code"));
    EXPECT_FALSE(fromCode<Enum>(""));
}

} // namespace

TEST(CodedEnums, EveryTableIsComplete)
{
    expectSoundTable<Grade>(5);
    expectSoundTable<NotSeenReason>(7);
    expectSoundTable<Wetness>(3);
    expectSoundTable<Phase>(2);
    expectSoundTable<TreatmentKind>(6);
    expectSoundTable<ChargeDirection>(3);
    expectSoundTable<VisitReason>(3);
    expectSoundTable<Running>(5);
    expectSoundTable<Sky>(6);
    expectSoundTable<Metering>(4);
}

// What a file holds must be readable for decades: a code that changes breaks old files.
TEST(CodedEnums, CodesInFilesDoNotChange)
{
    EXPECT_EQ(codeOf(NotSeenReason::iceOrSnow), "ice-or-snow");
    EXPECT_EQ(codeOf(TreatmentKind::brushAndCoat), "brush-and-coat");
    EXPECT_EQ(codeOf(VisitReason::callOut), "call-out");
    EXPECT_EQ(codeOf(Phase::asLeft), "as-left");
    EXPECT_EQ(codeOf(Metering::fixedOrifice), "fixed-orifice");
}

TEST(Grades, HaveTheNumeralsOneToFive)
{
    for (int value = 1; value <= 5; ++value) {
        ASSERT_TRUE(gradeFromNumeral(value));
        EXPECT_EQ(numeral(*gradeFromNumeral(value)), value);
        EXPECT_EQ(codeOf(*gradeFromNumeral(value)), std::to_string(value));
    }
    for (const int value : {-1, 0, 6, 100})
        EXPECT_FALSE(gradeFromNumeral(value));
    EXPECT_LT(Grade::sound, Grade::spent);
}

} // namespace padside
