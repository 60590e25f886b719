// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/paper/type_setting.h"

#include <QFontMetricsF>
#include <QTextLayout>

#include <algorithm>
#include <cmath>

namespace padside {

namespace {

struct FaceLook
{
    int pixels; ///< tenths of a millimetre; 3.53 to the point
    double leading;
    bool bold;
};

FaceLook look(Face face)
{
    switch (face) {
    case Face::body:
        return {31, 39, false};
    case Face::strong:
        return {31, 39, true};
    case Face::small:
        return {26, 33, false};
    case Face::smallStrong:
        return {26, 33, true};
    case Face::title:
        return {62, 74, true};
    }
    return {};
}

/// The baseline's depth below the top of its line: the type stands in the middle of its leading.
double baseline(Face face)
{
    const QFontMetricsF metrics(paperFont(face));
    return std::round((leading(face) + metrics.capHeight()) / 2);
}

} // namespace

QFont paperFont(Face face)
{
    QFont font;
    font.setFamilies({QStringLiteral("Nimbus Sans"), QStringLiteral("Liberation Sans"), QStringLiteral("DejaVu Sans")});
    font.setPixelSize(look(face).pixels);
    font.setWeight(look(face).bold ? QFont::Bold : QFont::Normal);
    font.setHintingPreference(QFont::PreferNoHinting);
    font.setKerning(true);
    return font;
}

double leading(Face face)
{
    return look(face).leading;
}

double textWidth(const QString& text, Face face)
{
    return QFontMetricsF(paperFont(face)).horizontalAdvance(text);
}

std::vector<QString> brokenLines(const QString& text, Face face, double width)
{
    std::vector<QString> lines;
    for (const QString& paragraph : text.split(QLatin1Char('\n'))) {
        QString unbroken = paragraph; // a percent sign stays on the line of its number
        unbroken.replace(QStringLiteral(" %"), QStringLiteral("\u00a0%"));
        QTextLayout layout(unbroken, paperFont(face));
        QTextOption option;
        option.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
        layout.setTextOption(option);
        layout.beginLayout();
        for (QTextLine line = layout.createLine(); line.isValid(); line = layout.createLine()) {
            line.setLineWidth(width);
            const QString broken = paragraph.mid(line.textStart(), line.textLength()).trimmed();
            if (!broken.isEmpty())
                lines.push_back(broken);
        }
        layout.endLayout();
    }
    return lines;
}

std::vector<Run> setLines(const QString& text, Face face, Ink ink, double width)
{
    std::vector<Run> runs;
    double top = 0;
    for (const QString& line : brokenLines(text, face, width)) {
        runs.push_back(moved(setLeft(line, face, ink), 0, top));
        top += leading(face);
    }
    return runs;
}

TextRun setRight(const QString& text, Face face, Ink ink, double right)
{
    return std::get<TextRun>(moved(setLeft(text, face, ink), right - textWidth(text, face), 0));
}

TextRun setLeft(const QString& text, Face face, Ink ink)
{
    return TextRun{QPointF(0, baseline(face)), text, face, ink, QRectF(0, 0, textWidth(text, face), leading(face))};
}

QString shortened(const QString& text, Face face, double width)
{
    return QFontMetricsF(paperFont(face)).elidedText(text, Qt::ElideRight, width);
}

double bottomOf(const std::vector<Run>& runs)
{
    double bottom = 0;
    for (const Run& run : runs)
        bottom = std::max(bottom, boxOf(run).bottom());
    return bottom;
}

} // namespace padside
