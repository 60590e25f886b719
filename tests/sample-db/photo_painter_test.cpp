// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "sample-db/photo_painter.h"

#include <gtest/gtest.h>
#include <vector>

using namespace padside;

namespace {

/// Reddish brown to orange, clearly coloured.
bool isRust(const QColor& colour)
{
    return colour.hsvHue() >= 8 && colour.hsvHue() <= 42 && colour.hsvSaturation() > 105;
}

/// The share of a picture that has the colour of rust.
double rustColoured(const QImage& image)
{
    std::int64_t rusty = 0;
    for (int y = 0; y < image.height(); ++y) {
        for (int x = 0; x < image.width(); ++x) {
            if (isRust(image.pixelColor(x, y)))
                ++rusty;
        }
    }
    return static_cast<double>(rusty) / (static_cast<double>(image.width()) * image.height());
}

PhotoOrder bottomAt(double decay)
{
    PhotoOrder order;
    order.subject = PhotoSubject::vesselBottom;
    order.unitKey = 3;
    order.moment = 17;
    order.weathering.skin = 42;
    order.weathering.decay = decay;
    return order;
}

} // namespace

TEST(PhotoPainter, RustGrowsWithTheGrade)
{
    double before = -1;
    for (const double decay : {1.0, 2.0, 3.0, 4.0, 5.0}) {
        const double share = rustColoured(drawPhoto(bottomAt(decay)));
        EXPECT_GT(share, before) << decay;
        before = share;
    }
    EXPECT_GT(before, 0.12); // spent: more than half of the vessel, which fills a good third of the picture
}

TEST(PhotoPainter, BlotchesGrowWhereTheyWere)
{
    const QImage early = drawPhoto(bottomAt(3.2));
    const QImage late = drawPhoto(bottomAt(3.9));
    std::int64_t rusty = 0;
    std::int64_t stillRusty = 0;
    for (int y = 0; y < early.height(); ++y) {
        for (int x = 0; x < early.width(); ++x) {
            if (!isRust(early.pixelColor(x, y)))
                continue;
            ++rusty;
            stillRusty += isRust(late.pixelColor(x, y)) ? 1 : 0;
        }
    }
    ASSERT_GT(rusty, 1000);
    EXPECT_GT(static_cast<double>(stillRusty) / static_cast<double>(rusty), 0.85);
}

TEST(PhotoPainter, AFreshCoatHidesTheRust)
{
    PhotoOrder coated = bottomAt(3.8);
    coated.weathering.coat = 1;
    EXPECT_LT(rustColoured(drawPhoto(coated)), 0.4 * rustColoured(drawPhoto(bottomAt(3.8))));
}

// The bands of ASTM D610, as the grades use them: at most 0.03 %, 1 %, 10 %, 33 % of the surface (D610-08, table 1).
TEST(PhotoPainter, RustedSharesLieInTheBandsOfTheirGrades)
{
    EXPECT_LE(rustShare(1), 0.0003);
    EXPECT_LE(rustShare(2), 0.01);
    EXPECT_LE(rustShare(3), 0.10);
    EXPECT_GT(rustShare(3), 0.01);
    EXPECT_LE(rustShare(4), 0.33);
    EXPECT_GT(rustShare(4), 0.10);
    EXPECT_GT(rustShare(5), 0.33);
}

TEST(PhotoPainter, TwoHandsDoNotTakeTheSamePictureButOneOrderDoes)
{
    PhotoOrder other = bottomAt(2.5);
    other.moment = 18;
    EXPECT_NE(drawPhoto(bottomAt(2.5)), drawPhoto(other));
    EXPECT_EQ(drawPhoto(bottomAt(2.5)), drawPhoto(bottomAt(2.5)));
}
