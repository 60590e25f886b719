// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/paper/paper_sheet.h"

namespace padside {

namespace {

constexpr double sideMargin = 160;
constexpr double topMargin = 150;
constexpr double bottomMargin = 150;

struct Box
{
    QRectF operator()(const RuleRun& run) const { return QRectF(run.line.p1(), run.line.p2()).normalized(); }
    template <typename AnyRun> QRectF operator()(const AnyRun& run) const { return run.box; }
};

struct Move
{
    QPointF by;
    void operator()(TextRun& run) const
    {
        run.at += by;
        run.box.translate(by);
    }
    void operator()(RuleRun& run) const { run.line.translate(by); }
    template <typename AnyRun> void operator()(AnyRun& run) const { run.box.translate(by); }
};

} // namespace

QSizeF sheetSize(PaperSize size)
{
    switch (size) {
    case PaperSize::a4:
        return {2100, 2970};
    case PaperSize::letter:
        return {2159, 2794};
    }
    return {};
}

QSizeF sheetSize(const PaperDocument& document)
{
    const QSizeF upright = sheetSize(document.size);
    return document.landscape ? upright.transposed() : upright;
}

QRectF textArea(PaperSize size)
{
    return QRectF(QPointF(0, 0), sheetSize(size)).adjusted(sideMargin, topMargin, -sideMargin, -bottomMargin);
}

QRectF boxOf(const Run& run)
{
    return std::visit(Box{}, run);
}

Run moved(Run run, double dx, double dy)
{
    std::visit(Move{QPointF(dx, dy)}, run);
    return run;
}

} // namespace padside
