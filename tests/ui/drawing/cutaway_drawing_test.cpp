// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "resources/resources.h"
#include "ui/drawing/cutaway_painter.h"
#include "ui/drawing/theme.h"

#include <QFile>
#include <QImage>
#include <QPainter>
#include <QRegularExpression>
#include <QSvgRenderer>

#include <gtest/gtest.h>
#include <set>

namespace padside {

namespace {

const Catalogue& shipped()
{
    static const Catalogue catalogue = Catalogue::load(shippedCatalogue()).value();
    return catalogue;
}

QString svgOf(const std::string& unitKind)
{
    QFile file(QString::fromStdString(drawingPath(unitKind)));
    EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << unitKind;
    return QString::fromUtf8(file.readAll());
}

std::set<std::string> matches(const QString& text, const char* pattern)
{
    std::set<std::string> found;
    auto all = QRegularExpression(QString::fromUtf8(pattern)).globalMatch(text);
    while (all.hasNext())
        found.insert(all.next().captured(1).toStdString());
    return found;
}

std::set<std::string> codesOf(const UnitKind& kind)
{
    std::set<std::string> codes;
    for (const auto& fitted : kind.parts)
        codes.insert(fitted.position.empty() ? fitted.partKind : fitted.partKind + '.' + fitted.position);
    return codes;
}

/// The same colour, but for what blending may round.
bool alike(const QColor& one, const QColor& other)
{
    return std::abs(one.red() - other.red()) <= 2 && std::abs(one.green() - other.green()) <= 2
        && std::abs(one.blue() - other.blue()) <= 2;
}

QImage paintedWith(const CutawayContent& content, const Theme& theme, QSize size)
{
    QImage image(size, QImage::Format_RGB32);
    image.fill(theme.panel);
    QPainter painter(&image);
    paintCutaway(painter, QRectF(QPointF(), size), content, theme);
    return image;
}

} // namespace

TEST(CutawayDrawing, EveryUnitKindHasOneAndItIsFreeOfErrors)
{
    for (const UnitKind& kind : shipped().unitKinds()) {
        ASSERT_FALSE(drawingPath(kind.code).empty()) << kind.code;
        QSvgRenderer renderer(QString::fromStdString(drawingPath(kind.code)));
        EXPECT_TRUE(renderer.isValid()) << kind.code;
    }
    EXPECT_TRUE(drawingPath("no-such-kind").empty());
}

TEST(CutawayDrawing, EveryPositionHasAPlaceAndEveryPlaceIsAPosition)
{
    for (const UnitKind& kind : shipped().unitKinds()) {
        const QString svg = svgOf(kind.code);
        EXPECT_EQ(matches(svg, R"x(<g id="([^"]+)")x"), codesOf(kind)) << kind.code;
        EXPECT_EQ(matches(svg, R"x(<circle id="([^"]+)\.mark")x"), codesOf(kind)) << kind.code;
    }
}

TEST(CutawayDrawing, EveryPlaceCanTakeTheColourOfAGrade)
{
    for (const UnitKind& kind : shipped().unitKinds())
        EXPECT_EQ(matches(svgOf(kind.code), R"x([" ](?:wash|dye)-([a-z-]+)")x").size(), kind.parts.size()) << kind.code;
}

TEST(CutawayDrawing, HasNoColoursOfItsOwnOutsideItsStyle)
{
    for (const UnitKind& kind : shipped().unitKinds()) {
        QString svg = svgOf(kind.code);
        svg.remove(
            QRegularExpression(QStringLiteral("<style>.*</style>"), QRegularExpression::DotMatchesEverythingOption));
        EXPECT_FALSE(svg.contains(QStringLiteral("fill=\"#"))) << kind.code;
        EXPECT_FALSE(svg.contains(QStringLiteral("stroke=\"#"))) << kind.code;
        EXPECT_FALSE(svg.contains(QStringLiteral("<text"))) << "words could not be translated";
        EXPECT_FALSE(svg.contains(QStringLiteral("transform="))) << "a place's bounds would be wrong";
    }
}

TEST(CutawayDrawing, EveryClassItUsesIsInTheProgramsStyle)
{
    const QString style = QString::fromUtf8(cutawayStyle(Theme::light(), {}));
    for (const UnitKind& kind : shipped().unitKinds()) {
        for (const std::string& names : matches(svgOf(kind.code), R"x(class="([^"]+)")x")) {
            const QString first = QString::fromStdString(names).section(QLatin1Char(' '), 0, 0);
            EXPECT_TRUE(style.contains(QLatin1Char('.') + first + QLatin1Char('{'))) << first.toStdString();
        }
    }
}

TEST(CutawayDrawing, PlacesLieInsideTheDrawing)
{
    for (const UnitKind& kind : shipped().unitKinds()) {
        const CutawayDrawing drawing(kind.code, Theme::light());
        const QRectF whole = QRectF(QPointF(), drawing.size()).adjusted(-9, -9, 9, 9); // with line ends
        for (const auto& fitted : kind.parts) {
            const auto place = drawing.placeOf(fitted.partKind, fitted.position);
            ASSERT_TRUE(place.has_value()) << fitted.partKind;
            EXPECT_TRUE(whole.contains(place->body)) << kind.code << ' ' << fitted.partKind;
            EXPECT_TRUE(place->body.adjusted(-14, -14, 14, 14).contains(place->anchor)) << fitted.partKind;
        }
    }
}

TEST(CutawayDrawing, AKindOfThePersonsOwnHasNoPlaceButANamedPositionFallsBackOnItsKind)
{
    const CutawayDrawing drawing("split-air-conditioner", Theme::light());
    EXPECT_FALSE(drawing.placeOf("sound-blanket", {}).has_value());
    ASSERT_TRUE(drawing.placeOf("run-capacitor", "fan").has_value());
    EXPECT_EQ(drawing.placeOf("run-capacitor", "fan")->code, "run-capacitor");
    EXPECT_GT(CutawayDrawing("a-kind-of-my-own", Theme::light()).size().width(), 0)
        << "falls back on a drawing of ours";
}

TEST(CutawayPainter, APartTakesTheColourOfItsGradeInEveryTheme)
{
    for (const Theme* theme : {&Theme::light(), &Theme::darkTheme(), &Theme::print()}) {
        CutawayContent content{"heat-pump", {}};
        CutawayPart part;
        part.kind = "compressor";
        content.parts.push_back(part);
        const QImage plain = paintedWith(content, *theme, {900, 700});
        content.parts[0].grade = Grade::poor;
        const QImage graded = paintedWith(content, *theme, {900, 700});

        const CutawayDrawing drawing("heat-pump", *theme);
        const CutawayGeometry geometry = layOutCutaway(content, drawing, QRectF(0, 0, 900, 700));
        const QRectF mark = geometry.parts[0].mark;
        EXPECT_TRUE(alike(graded.pixelColor((mark.topLeft() + QPointF(4, 4)).toPoint()), theme->fill(Grade::poor)));
        // On the shell, below the mark and left of the terminal cover.
        const QPoint shell = (geometry.parts[0].body.center() + QPointF(-18, 14)).toPoint();
        EXPECT_TRUE(alike(plain.pixelColor(shell), theme->panel));
        EXPECT_TRUE(alike(graded.pixelColor(shell), mixed(theme->fill(Grade::poor), theme->panel, 0.5)));
    }
}

TEST(CutawayPainter, APartPointedAtIsDrawnAgainInTheAccentColour)
{
    const Theme& theme = Theme::light();
    CutawayContent content{"heat-pump", {}};
    content.parts.emplace_back();
    content.parts[0].kind = "compressor";
    const CutawayDrawing drawing("heat-pump", theme);
    const CutawayGeometry geometry = layOutCutaway(content, drawing, QRectF(0, 0, 900, 700));
    QImage image(900, 700, QImage::Format_RGB32);
    image.fill(theme.panel);
    QPainter painter(&image);
    paintCutawayMarks(painter, CutawayPicture{content, drawing, geometry, theme, std::size_t{0}, true});
    const QPoint shell = (geometry.parts[0].body.center() + QPointF(-18, 14)).toPoint();
    EXPECT_TRUE(alike(image.pixelColor(shell), mixed(theme.accent, theme.panel, 0.22)));
    EXPECT_EQ(image.pixelColor(20, 20), theme.panel) << "nothing else is painted";
}

} // namespace padside
