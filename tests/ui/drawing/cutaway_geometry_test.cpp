// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "resources/resources.h"
#include "ui/drawing/cutaway_geometry.h"
#include "ui/drawing/theme.h"

#include <gtest/gtest.h>
#include <random>
#include <set>

namespace padside {

namespace {

/// Every position of a unit kind fitted; some grades not up to date, whose marks are wider.
CutawayContent fullyFitted(const UnitKind& kind)
{
    CutawayContent content{kind.code, {}};
    for (const auto& fitted : kind.parts) {
        CutawayPart part;
        part.kind = fitted.partKind;
        part.position = fitted.position;
        part.grade = Grade::worn;
        part.notSeen = content.parts.size() % 3 == 0;
        content.parts.push_back(part);
    }
    return content;
}

std::vector<UnitKind> shippedKinds()
{
    return Catalogue::load(shippedCatalogue()).value().unitKinds();
}

class EverySize : public testing::TestWithParam<QSizeF>
{
};

} // namespace

TEST_P(EverySize, MarksOfAFullyFittedUnitDoNotTouchAndStayInside)
{
    for (const UnitKind& kind : shippedKinds()) {
        const CutawayContent content = fullyFitted(kind);
        const CutawayDrawing drawing(kind.code, Theme::light());
        const QRectF area(QPointF(10, 20), GetParam());
        const CutawayGeometry geometry = layOutCutaway(content, drawing, area);
        ASSERT_EQ(geometry.parts.size(), content.parts.size());
        for (std::size_t i = 0; i < geometry.parts.size(); ++i) {
            EXPECT_TRUE(area.contains(geometry.parts[i].mark)) << content.parts[i].kind;
            EXPECT_GE(geometry.parts[i].mark.height(), 15) << "the numeral must be readable";
            for (std::size_t j = i + 1; j < geometry.parts.size(); ++j)
                EXPECT_FALSE(geometry.parts[i].mark.adjusted(-1, -1, 1, 1).intersects(geometry.parts[j].mark))
                    << content.parts[i].kind << " and " << content.parts[j].kind;
        }
    }
}

TEST_P(EverySize, AMarkAwayFromItsPartHasALeaderThatEndsOnIt)
{
    for (const UnitKind& kind : shippedKinds()) {
        const CutawayDrawing drawing(kind.code, Theme::light());
        const CutawayGeometry geometry = layOutCutaway(fullyFitted(kind), drawing, QRectF(QPointF(), GetParam()));
        for (const PlacedPart& one : geometry.parts) {
            EXPECT_EQ(one.leader.has_value(), !one.mark.intersects(one.body));
            const QPointF end = one.leader ? one.leader->p2() : one.body.center();
            EXPECT_TRUE(one.body.adjusted(-0.1, -0.1, 0.1, 0.1).contains(end));
        }
    }
}

TEST_P(EverySize, ArrowKeysReachEveryPartFromEveryOther)
{
    for (const UnitKind& kind : shippedKinds()) {
        const CutawayDrawing drawing(kind.code, Theme::light());
        const CutawayGeometry geometry = layOutCutaway(fullyFitted(kind), drawing, QRectF(QPointF(), GetParam()));
        std::set<std::size_t> reached{*firstPart(geometry)};
        std::vector<std::size_t> todo{*firstPart(geometry)};
        while (!todo.empty()) {
            const std::size_t from = todo.back();
            todo.pop_back();
            for (const Direction way : {Direction::left, Direction::right, Direction::up, Direction::down}) {
                const auto next = partBeside(geometry, from, way);
                if (next && reached.insert(*next).second)
                    todo.push_back(*next);
            }
        }
        EXPECT_EQ(reached.size(), geometry.parts.size()) << kind.code;
    }
}

INSTANTIATE_TEST_SUITE_P(Sizes, EverySize,
                         testing::Values(QSizeF(420, 300), QSizeF(420, 600), QSizeF(560, 400), QSizeF(900, 700),
                                         QSizeF(1600, 1000), QSizeF(2400, 1700)));

TEST(PlaceMarks, KeepsAnAnchorThatIsFreeAndMovesTheMarkOfTheLargerPart)
{
    const std::vector<MarkWish> wishes{{QRectF(0, 0, 80, 80), {50, 50}, {20, 16}},
                                       {QRectF(44, 44, 10, 10), {50, 50}, {20, 16}}};
    const auto marks = placeMarks(wishes, QRectF(0, 0, 200, 200), 2);
    EXPECT_EQ(marks[1].center(), QPointF(50, 50));
    EXPECT_FALSE(marks[0].intersects(marks[1]));
    EXPECT_LT(QLineF(marks[0].center(), {50, 50}).length(), 40) << "no further than it must";
}

TEST(PlaceMarks, NeverLetsMarksTouchWhereThereIsRoom)
{
    std::mt19937 random(20260504); // fixed: the same heap of marks each time
    std::uniform_real_distribution<double> across(20, 380);
    for (int round = 0; round < 50; ++round) {
        std::vector<MarkWish> wishes;
        for (int i = 0; i < 30; ++i) {
            const QPointF anchor(across(random), across(random) * 0.3);
            wishes.push_back({QRectF(anchor - QPointF(8, 8), QSizeF(16, 16)), anchor, {18, 16}});
        }
        const auto marks = placeMarks(wishes, QRectF(0, 0, 400, 300), 2);
        for (std::size_t i = 0; i < marks.size(); ++i) {
            for (std::size_t j = i + 1; j < marks.size(); ++j)
                ASSERT_FALSE(marks[i].intersects(marks[j])) << "round " << round;
        }
    }
}

TEST(CutawayGeometry, PartsTheDrawingDoesNotKnowStandInARowBeneath)
{
    UnitKind kind = shippedKinds().front();
    kind.parts.push_back({"sound-blanket", {}});
    kind.parts.push_back({"hail-guard", {}});
    const CutawayDrawing drawing(kind.code, Theme::light());
    const QRectF area(0, 0, 500, 400);
    const CutawayGeometry geometry = layOutCutaway(fullyFitted(kind), drawing, area);
    const PlacedPart& blanket = geometry.parts[geometry.parts.size() - 2];
    const PlacedPart& guard = geometry.parts.back();
    EXPECT_FALSE(blanket.place.has_value());
    EXPECT_GE(blanket.mark.top(), geometry.drawing.bottom() - 1);
    EXPECT_TRUE(area.contains(guard.mark));
    EXPECT_FALSE(blanket.mark.intersects(guard.mark));
}

TEST(CutawayGeometry, TwoPartsInOneDrawnPlaceBothHaveTheirMark)
{
    UnitKind kind = shippedKinds().front();
    for (auto& fitted : kind.parts) {
        if (fitted.partKind == "run-capacitor")
            fitted.position = "fan";
    }
    kind.parts.push_back({"run-capacitor", "compressor"});
    const CutawayDrawing drawing(kind.code, Theme::light());
    const CutawayGeometry geometry = layOutCutaway(fullyFitted(kind), drawing, QRectF(0, 0, 500, 400));
    for (std::size_t i = 0; i + 1 < geometry.parts.size(); ++i)
        EXPECT_FALSE(geometry.parts[i].mark.intersects(geometry.parts.back().mark));
}

TEST(CutawayGeometry, TheSmallestPartUnderThePointerIsMeantAndAMarkGoesBeforeAll)
{
    const CutawayDrawing drawing("heat-pump", Theme::light());
    CutawayContent content{"heat-pump", {}};
    for (const char* kind : {"compressor", "crankcase-heater"}) {
        content.parts.emplace_back();
        content.parts.back().kind = kind;
    }
    const CutawayGeometry geometry = layOutCutaway(content, drawing, QRectF(0, 0, 900, 700));
    EXPECT_EQ(geometry.partAt(geometry.parts[1].body.center()), 1U) << "the heater lies on the compressor";
    EXPECT_EQ(geometry.partAt(geometry.parts[0].mark.center()), 0U);
    EXPECT_FALSE(geometry.partAt({5, 5}).has_value());
}

TEST(CutawayGeometry, AnEmptyUnitHasNoFirstPart)
{
    const CutawayDrawing drawing("heat-pump", Theme::light());
    EXPECT_FALSE(firstPart(layOutCutaway({"heat-pump", {}}, drawing, QRectF(0, 0, 500, 400))).has_value());
}

} // namespace padside
