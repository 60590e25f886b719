// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/drawing/theme.h"

#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>

namespace padside {

namespace {

/// Relative luminance of an sRGB colour, WCAG 2.1 (W3C, "relative luminance").
double luminance(const QColor& colour)
{
    const auto linear = [](double channel) {
        return channel <= 0.04045 ? channel / 12.92 : std::pow((channel + 0.055) / 1.055, 2.4);
    };
    return 0.2126 * linear(colour.redF()) + 0.7152 * linear(colour.greenF()) + 0.0722 * linear(colour.blueF());
}

/// Contrast ratio, WCAG 2.1 (W3C, "contrast ratio").
double contrast(const QColor& one, const QColor& other)
{
    const double a = luminance(one);
    const double b = luminance(other);
    return (std::max(a, b) + 0.05) / (std::min(a, b) + 0.05);
}

/// CIE 1976 lightness L* of a relative luminance (CIE 15, equation with the cube root; all our colours lie above its
/// linear foot).
double lightness(const QColor& colour)
{
    return 116 * std::cbrt(luminance(colour)) - 16;
}

class EveryTheme : public testing::TestWithParam<const Theme*>
{
};

} // namespace

TEST(Theme, BlackOnWhiteHasTheContrastThatWcagStates)
{
    EXPECT_NEAR(contrast(Qt::black, Qt::white), 21.0, 1e-6); // WCAG 2.1: "ratios can range from 1 to 21"
    EXPECT_NEAR(lightness(Qt::white), 100.0, 1e-4); // CIE 15: L* of the white point
}

TEST_P(EveryTheme, TheRampGetsDarkerFromGradeToGradeSoThatItHoldsInGrey)
{
    for (std::size_t i = 1; i < GetParam()->gradeFill.size(); ++i)
        EXPECT_LT(lightness(GetParam()->gradeFill[i]), lightness(GetParam()->gradeFill[i - 1]) - 8)
            << "grade " << i + 1;
}

TEST_P(EveryTheme, NumeralsAndTextCanBeRead)
{
    const Theme& theme = *GetParam();
    for (const auto& row : codesOf(Grade{}))
        EXPECT_GE(contrast(theme.fill(row.value), theme.numeralInk(row.value)), 4.5)
            << row.word; // WCAG 2.1, 1.4.3 (AA)
    for (const QColor& ground : {theme.ground, theme.panel}) {
        EXPECT_GE(contrast(theme.ink, ground), 7.0); // WCAG 2.1, 1.4.6 (AAA)
        EXPECT_GE(contrast(theme.softInk, ground), 4.5);
        EXPECT_GE(contrast(theme.accent, ground), 3.0); // WCAG 2.1, 1.4.11: parts of controls
    }
    EXPECT_GE(contrast(theme.accent, theme.accentInk), 4.5);
}

TEST_P(EveryTheme, TextOnWhatIsChosenOrPointedAtCanBeRead)
{
    const Theme& theme = *GetParam();
    for (const double share : {0.07, 0.16, 0.18}) // pointed at, chosen, selected: see the delegates
        EXPECT_GE(contrast(theme.ink, mixed(theme.accent, theme.panel, share)), 4.5) << share;
    for (const Grade grade : {Grade::marked, Grade::poor}) // the messages at the foot of a page
        EXPECT_GE(contrast(theme.ink, mixed(theme.fill(grade), theme.ground, 0.3)), 4.5);
}

TEST_P(EveryTheme, AllColoursAreOpaqueBecausePaperCannotBlend)
{
    const Theme& theme = *GetParam();
    for (const QColor& colour :
         {theme.ground, theme.panel, theme.ink, theme.softInk, theme.line, theme.accent, theme.accentInk, theme.hatch})
        EXPECT_EQ(colour.alpha(), 255);
    EXPECT_EQ(mixed(theme.ink, theme.panel, 0.4).alpha(), 255);
}

INSTANTIATE_TEST_SUITE_P(Themes, EveryTheme,
                         testing::Values(&Theme::light(), &Theme::darkTheme(), &Theme::sunlight(), &Theme::print()),
                         [](const auto& theme) { return std::string(codeOf(theme.param->kind)); });

TEST(Sunlight, EverythingReadHasTheEnhancedContrastOfWcag)
{
    const Theme& theme = Theme::sunlight();
    for (const auto& row : codesOf(Grade{}))
        EXPECT_GE(contrast(theme.fill(row.value), theme.numeralInk(row.value)), 7.0)
            << row.word; // WCAG 2.1, 1.4.6 (AAA)
    for (const QColor& ground : {theme.ground, theme.panel}) {
        EXPECT_GE(contrast(theme.ink, ground), 7.0);
        EXPECT_GE(contrast(theme.softInk, ground), 7.0);
        EXPECT_GE(contrast(theme.accent, ground), 7.0);
        EXPECT_GE(contrast(theme.hatch, ground), 7.0);
        EXPECT_GE(contrast(theme.line, ground), 4.5) << "lines are drawn strongly";
    }
    EXPECT_GE(contrast(theme.accent, theme.accentInk), 7.0);
    for (const double share : {0.07, 0.16, 0.18})
        EXPECT_GE(contrast(theme.ink, mixed(theme.accent, theme.panel, share)), 7.0) << share;
    for (const Grade grade : {Grade::marked, Grade::poor})
        EXPECT_GE(contrast(theme.ink, mixed(theme.fill(grade), theme.ground, 0.3)), 7.0);
}

TEST(Sunlight, TheRampHasWiderStepsThanTheUsualOne)
{
    const auto& strong = Theme::sunlight().gradeFill;
    const auto& usual = Theme::light().gradeFill;
    EXPECT_GT(lightness(strong.front()) - lightness(strong.back()),
              lightness(usual.front()) - lightness(usual.back()) + 15);
    for (std::size_t i = 1; i < strong.size(); ++i)
        EXPECT_GT(lightness(strong[i - 1]) - lightness(strong[i]), 12) << "grade " << i + 1;
}

TEST(Theme, EachKindIsFoundByItsName)
{
    for (const auto& row : codesOf(ThemeKind{}))
        EXPECT_EQ(Theme::of(row.value).kind, row.value) << row.code;
}

TEST(Theme, MixingTakesTheShareOfTheFront)
{
    EXPECT_EQ(mixed(Qt::white, Qt::black, 1.0), QColor(Qt::white).toRgb());
    EXPECT_NEAR(mixed(Qt::white, Qt::black, 0.25).redF(), 0.25, 0.01);
}

} // namespace padside
