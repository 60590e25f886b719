// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "ui/paper/paper_block.h"

#include <QLineF>
#include <QRectF>
#include <QSizeF>
#include <QString>

#include <functional>
#include <variant>
#include <vector>

class QPainter;

namespace padside {

enum class PaperSize { a4, letter };

/// Everything on paper is laid out in tenths of a millimetre, whatever it is painted on: sizes of type are whole pixels
/// of this resolution, so that the painter may scale them once.
constexpr double unitsPerInch = 254;

/// Width and height of the sheet in tenths of a millimetre (ISO 216 A4; ANSI/ASME Y14.1 size A, 8.5 x 11 in).
[[nodiscard]] QSizeF sheetSize(PaperSize size);

/// Where the text stands on the sheet, without running head and footer.
[[nodiscard]] QRectF textArea(PaperSize size);

enum class Face { body, strong, small, smallStrong, title };
enum class Ink { full, soft, line };

/// One line of text, already broken; `at` is the left end of its baseline.
struct TextRun
{
    QPointF at;
    QString text;
    Face face = Face::body;
    Ink ink = Ink::full;
    QRectF box; ///< what the line takes up
};

struct MarkRun
{
    QRectF box;
    Mark mark;
};

/// "then → now": a short arrow in soft ink.
struct ArrowRun
{
    QRectF box;
};

struct RuleRun
{
    QLineF line;
    Ink ink = Ink::line;
};

struct PhotoRun
{
    QRectF box;
    PhotoId id;
};

/// A drawing with painting code of its own. It is painted with its origin at the box' upper left corner.
struct DrawingRun
{
    QRectF box;
    std::function<void(QPainter&)> paint;
};

/// A box to tick by hand, with a faint sign that says what for.
struct BoxRun
{
    QRectF box;
    QString sign;
};

using Run = std::variant<TextRun, MarkRun, ArrowRun, RuleRun, PhotoRun, DrawingRun, BoxRun>;

/// One page, ready to be painted: runs in sheet coordinates.
struct PaperPage
{
    std::vector<Run> runs;
};

/// A document set on pages of one size.
struct PaperDocument
{
    QString title;
    PaperSize size = PaperSize::a4;
    std::vector<PaperPage> pages;
    bool landscape = false;
};

/// Width and height of the document's sheets as they lie.
[[nodiscard]] QSizeF sheetSize(const PaperDocument& document);

/// The box a run takes up.
[[nodiscard]] QRectF boxOf(const Run& run);

/// The run moved by (dx, dy).
[[nodiscard]] Run moved(Run run, double dx, double dy);

} // namespace padside
