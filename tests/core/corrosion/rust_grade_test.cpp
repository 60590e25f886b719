// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/corrosion/rust_grade.h"
#include "tests/support/reference_table.h"

#include <cmath>
#include <gtest/gtest.h>
#include <limits>

namespace padside::test {

// Source: tests/reference/README.md, rust_grades.csv.
TEST(RustGrade, BothComeFromTheAreaNeverFromEachOther)
{
    const ReferenceTable table("rust_grades.csv");
    ASSERT_EQ(table.rows(), 47U);
    for (std::size_t row = 0; row < table.rows(); ++row) {
        const RustGrades grades = rustGradesOf(table.number(row, "percent")).value();
        if (!table.text(row, "d610").empty()) {
            EXPECT_EQ(grades.d610, static_cast<int>(table.number(row, "d610"))) << row;
        }
        if (!table.text(row, "ri").empty()) {
            EXPECT_EQ(grades.ri, static_cast<int>(table.number(row, "ri"))) << row;
        }
    }
}

TEST(RustGrade, MoreRustIsNeverABetterGrade)
{
    RustGrades last = rustGradesOf(0).value();
    for (double percent = 1e-3; percent <= 100; percent *= 1.01) {
        const RustGrades grades = rustGradesOf(percent).value();
        EXPECT_GE(grades.ri, last.ri);
        EXPECT_LE(grades.d610, last.d610);
        last = grades;
    }
}

TEST(RustGrade, WhatIsNoShareIsRefused)
{
    for (const double percent :
         {-0.001, 100.001, std::numeric_limits<double>::quiet_NaN(), std::numeric_limits<double>::infinity()})
        EXPECT_FALSE(rustGradesOf(percent)) << percent;
}

} // namespace padside::test
