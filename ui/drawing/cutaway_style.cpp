// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/drawing/cutaway_style.h"

#include "ui/drawing/theme.h"

#include <array>

namespace padside {

namespace {

/// A line: how much of the ink, how wide in units of the drawing.
struct Stroke
{
    const char* name;
    double ink;
    double width;
};

constexpr std::array strokes{
    Stroke{"edge", 0.9, 1.5},      Stroke{"line", 0.8, 0.8},      Stroke{"fine", 0.42, 0.6},
    Stroke{"faint", 0.2, 0.6},     Stroke{"guard", 0.62, 0.8},    Stroke{"wire", 0.7, 1.1},
    Stroke{"slot", 0.6, 2.2},      Stroke{"band", 0.6, 2.4},      Stroke{"hose-rings", 0.5, 0.8},
    Stroke{"wide-edge", 0.9, 8.4}, Stroke{"wide", 0.14, 6.2},     Stroke{"tube-edge", 0.9, 6.8},
    Stroke{"tube", 0.14, 4.7},     Stroke{"thin-edge", 0.9, 4.8}, Stroke{"thin", 0.14, 2.9},
    Stroke{"belt-edge", 0.9, 8.4}, Stroke{"belt", 0.3, 6},        Stroke{"hose-edge", 0.9, 9},
    Stroke{"hose", 0, 6.8},
};

/// A surface: how much ink is in its colour, and its outline; width 0 has none.
struct Surface
{
    const char* name;
    double fill;
    double ink;
    double width;
};

constexpr std::array surfaces{
    Surface{"sheet", 0, 0.9, 1.4},   Surface{"metal", 0, 0.9, 1.15},        Surface{"board", 0.16, 0.9, 1},
    Surface{"coil", 0.04, 0.7, 0.9}, Surface{"slab", 0.07, 0.85, 1.2},      Surface{"leaf", 0.04, 0.6, 1.1},
    Surface{"screw", 0.3, 0.8, 0.6}, Surface{"inside-box", 0.13, 0.6, 0.8}, Surface{"inside", 0.09, 0, 0},
    Surface{"floor", 0.05, 0, 0},    Surface{"masonry", 0.08, 0, 0},        Surface{"throat", 0.16, 0, 0},
    Surface{"hole", 0.55, 0, 0},     Surface{"rubber", 0.7, 0, 0},
};

constexpr double tintShare = 0.5; ///< of the ramp's colour on a surface; the mark beside it has all of it

QByteArray number(double value)
{
    return QByteArray::number(value, 'g', 4);
}

class StyleSheet
{
public:
    explicit StyleSheet(const Theme& theme)
        : m_theme(theme)
    {
    }

    [[nodiscard]] QByteArray mix(double ink) const { return mixed(m_theme.ink, m_theme.panel, ink).name().toLatin1(); }

    void rule(const QByteArray& name, const QByteArray& declarations)
    {
        m_text += '.' + name + '{' + declarations + "}\n";
    }

    void stroke(const QByteArray& name, const QByteArray& colour, double width, const QByteArray& more = {})
    {
        rule(name, "fill:none;stroke:" + colour + ";stroke-width:" + number(width) + more);
    }

    void basics()
    {
        for (const Stroke& one : strokes)
            stroke(one.name, mix(one.ink), one.width);
        for (const Surface& one : surfaces)
            rule(one.name,
                 "fill:" + mix(one.fill)
                     + (one.width > 0 ? ";stroke:" + mix(one.ink) + ";stroke-width:" + number(one.width)
                                      : QByteArray(";stroke:none")));
        stroke("foam-edge", mix(0.9), 17, ";stroke-linecap:butt");
        stroke("foam", mix(0.12), 14.6, ";stroke-linecap:butt");
        stroke("measure", mix(0.62), 0.9, ";stroke-dasharray:4 3");
        const QColor light = mixed(Qt::white, m_theme.panel, m_theme.kind == ThemeKind::dark ? 0.28 : 0.9);
        stroke("gleam", light.name().toLatin1(), 1.6);
        const QColor shade = m_theme.kind == ThemeKind::dark ? mixed(Qt::black, m_theme.panel, 0.35)
                                                             : mixed(m_theme.ink, m_theme.panel, 0.12);
        rule("shade", "fill:" + shade.name().toLatin1() + ";stroke:none");
        rule("anchor", "fill:none;stroke:none");
    }

    void tint(const std::string& place, const QColor& colour)
    {
        const QByteArray code = QByteArray::fromStdString(place);
        rule("wash-" + code, "fill:" + colour.name().toLatin1());
        rule("dye-" + code, "stroke:" + colour.name().toLatin1());
    }

    [[nodiscard]] QByteArray text() const { return m_text; }

private:
    const Theme& m_theme;
    QByteArray m_text;
};

} // namespace

QByteArray cutawayStyle(const Theme& theme, const CutawayTints& tints)
{
    StyleSheet sheet(theme);
    sheet.basics();
    for (const auto& [place, grade] : tints)
        sheet.tint(place, mixed(theme.fill(grade), theme.panel, tintShare));
    return sheet.text();
}

QByteArray cutawayLitStyle(const Theme& theme)
{
    Theme lit = theme;
    lit.ink = theme.accent;
    lit.panel = mixed(theme.accent, theme.panel, 0.22);
    StyleSheet sheet(lit);
    sheet.basics();
    sheet.rule("behind", "fill:none"); // a lit part is painted over the others: it must not hide what stands on it
    return sheet.text();
}

QByteArray withStyle(const QByteArray& svg, const QByteArray& style)
{
    const QByteArray opening("<style>");
    const qsizetype from = svg.indexOf(opening);
    const qsizetype to = svg.indexOf("</style>", from);
    Q_ASSERT(from >= 0 && to >= 0); // our own drawings have one
    return svg.left(from + opening.size()) + style + svg.mid(to);
}

} // namespace padside
