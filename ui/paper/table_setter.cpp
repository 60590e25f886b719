// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/paper/table_setter.h"

#include "ui/paper/type_setting.h"

#include <QCoreApplication>

#include <algorithm>
#include <numeric>

namespace padside {

namespace {

constexpr double columnGap = 34;
constexpr double arrowWidth = 44;
constexpr double marksWidth = 2 * markWidth + arrowWidth;
constexpr double rowPadding = 3; ///< above and below the hairline between rows
constexpr double ruleToText = 10;
constexpr double titlesToRow = 4;
constexpr double boxHeight = 56; ///< room for a pencil in a gloved hand
constexpr double widestBox = 90;
constexpr double boxGap = 8;

struct ColumnPlace
{
    double left = 0;
    double width = 0;
};

double widthOfMarks(const PaperColumn& column)
{
    return column.oneMark ? std::max(markWidth, textWidth(column.title, Face::small) + 1) : marksWidth;
}

std::vector<ColumnPlace> placeColumns(const TableBlock& table, double left, double right)
{
    double shares = 0;
    double room = right - left - columnGap * (static_cast<double>(table.columns.size()) - 1);
    for (const PaperColumn& column : table.columns) {
        if (column.marks)
            room -= widthOfMarks(column);
        else
            shares += column.share;
    }
    std::vector<ColumnPlace> places;
    for (const PaperColumn& column : table.columns) {
        const double width = column.marks ? widthOfMarks(column) : room * column.share / shares;
        places.push_back({left, width});
        left += width + columnGap;
    }
    return places;
}

std::vector<Run> setMarks(const std::vector<Mark>& marks, double width)
{
    std::vector<Run> runs;
    const double top = (leading(Face::body) - markHeight) / 2;
    // A single mark stands where "now" stands.
    double left = marks.size() == 1 ? width - markWidth : 0;
    for (std::size_t i = 0; i < marks.size(); ++i) {
        if (i > 0) {
            runs.emplace_back(ArrowRun{QRectF(left, top, arrowWidth, markHeight)});
            left += arrowWidth;
        }
        runs.emplace_back(MarkRun{QRectF(left, top, markWidth, markHeight), marks[i]});
        left += markWidth;
    }
    return runs;
}

/// Boxes side by side, as wide as the column lets them be.
std::vector<Run> setBoxes(const std::vector<QString>& signs, double width)
{
    std::vector<Run> runs;
    const auto count = static_cast<double>(signs.size());
    const double each = std::min(widestBox, (width - boxGap * (count - 1)) / count);
    double left = 0;
    for (const QString& sign : signs) {
        runs.emplace_back(BoxRun{QRectF(left, 0, each, boxHeight), sign});
        left += each + boxGap;
    }
    return runs;
}

std::vector<Run> setCell(const PaperCell& cell, double width)
{
    if (!cell.marks.empty())
        return setMarks(cell.marks, width);
    if (!cell.boxes.empty())
        return setBoxes(cell.boxes, width);
    if (cell.toWriteOn)
        return {RuleRun{QLineF(0, boxHeight, width, boxHeight), Ink::soft}};
    const Face face
        = cell.small ? (cell.strong ? Face::smallStrong : Face::small) : (cell.strong ? Face::strong : Face::body);
    std::vector<Run> runs = setLines(cell.text, face, Ink::full, width);
    append(runs, setLines(cell.under, Face::small, Ink::soft, width), 0, bottomOf(runs));
    return runs;
}

std::vector<Run> setRow(const std::vector<PaperCell>& row, const std::vector<ColumnPlace>& places)
{
    std::vector<Run> runs;
    for (std::size_t i = 0; i < row.size() && i < places.size(); ++i)
        append(runs, setCell(row[i], places[i].width), places[i].left, 0);
    return runs;
}

std::vector<Run> setTitles(const TableBlock& table, const std::vector<ColumnPlace>& places)
{
    std::vector<Run> runs;
    if (table.rows.empty()) // nothing for them to stand above
        return runs;
    for (std::size_t i = 0; i < places.size(); ++i)
        append(runs, setLines(table.columns[i].title, Face::small, Ink::soft, places[i].width), places[i].left, 0);
    return runs;
}

/// Rule, heading and column titles; `below` becomes where the first row goes.
std::vector<Run> setHead(const TableBlock& table, const std::vector<ColumnPlace>& places, double width, bool continued,
                         double& below)
{
    std::vector<Run> runs{RuleRun{QLineF(0, 0, width, 0), Ink::soft}};
    std::vector<Run> heading = setLines(table.heading, Face::strong, Ink::full, headingColumn - columnGap);
    if (continued) {
        const QString words = QCoreApplication::translate("Paper", "continued");
        append(heading, setLines(words, Face::small, Ink::soft, headingColumn - columnGap), 0, bottomOf(heading));
    }
    append(runs, heading, 0, ruleToText);
    const std::vector<Run> titles = setTitles(table, places);
    append(runs, titles, 0, ruleToText);
    below = ruleToText + (titles.empty() ? 0 : bottomOf(titles) + titlesToRow);
    return runs;
}

SetItem itemOf(std::vector<Run> runs)
{
    SetItem item;
    item.flow.height = bottomOf(runs);
    item.runs = std::move(runs);
    return item;
}

} // namespace

void append(std::vector<Run>& into, const std::vector<Run>& runs, double dx, double dy)
{
    for (const Run& run : runs)
        into.push_back(moved(run, dx, dy));
}

std::vector<SetItem> cutToHeight(SetItem item, double limit)
{
    std::vector<SetItem> pieces;
    while (item.flow.height > limit) {
        double cut = 0;
        for (const Run& candidate : item.runs) {
            const double y = boxOf(candidate).bottom();
            const bool cutsNothing = std::ranges::none_of(item.runs, [y](const Run& run) {
                return boxOf(run).top() < y - 0.01 && boxOf(run).bottom() > y + 0.01;
            });
            if (y <= limit && cutsNothing)
                cut = std::max(cut, y);
        }
        if (cut <= 0)
            break;
        SetItem upper{{}, item.flow};
        std::vector<Run> lower;
        for (const Run& run : item.runs) {
            if (boxOf(run).bottom() <= cut + 0.01)
                upper.runs.push_back(run);
            else
                lower.push_back(moved(run, 0, -cut));
        }
        upper.flow.height = cut;
        pieces.push_back(std::move(upper));
        item.flow.height -= cut;
        item.flow.spaceBefore = 0;
        item.runs = std::move(lower);
    }
    pieces.push_back(std::move(item));
    return pieces;
}

void setTable(const TableBlock& table, double width, double pageHeight, SetBlocks& into)
{
    const std::vector<ColumnPlace> places = placeColumns(table, headingColumn, width);
    double below = 0;
    const std::size_t head = into.heads.size();
    SetItem repeated = itemOf(setHead(table, places, width, true, below));
    repeated.flow.height = std::max(repeated.flow.height, below);

    std::vector<SetItem> rows;
    for (const std::vector<PaperCell>& row : table.rows)
        rows.push_back(itemOf(setRow(row, places)));
    if (!table.closing.isEmpty()) {
        std::vector<Run> closing;
        append(closing, setLines(table.closing, Face::small, Ink::soft, width - headingColumn), headingColumn, 3);
        rows.push_back(itemOf(std::move(closing)));
    }
    if (rows.empty())
        return;

    std::vector<Run> first = setHead(table, places, width, false, below);
    append(first, rows.front().runs, 0, below);
    rows.front() = itemOf(std::move(first));
    rows.front().flow.spaceBefore = spaceBeforeBlock;
    const std::size_t firstItem = into.items.size();
    for (std::size_t i = 0; i < rows.size(); ++i) {
        if (i > 0) {
            std::vector<Run> ruled{RuleRun{QLineF(headingColumn, 0, width, 0), Ink::line}};
            append(ruled, rows[i].runs, 0, rowPadding);
            rows[i] = itemOf(std::move(ruled));
            rows[i].flow.spaceBefore = rowPadding;
        }
        for (SetItem& piece : cutToHeight(std::move(rows[i]), pageHeight / 2)) {
            if (into.items.size() > firstItem)
                piece.flow.head = head;
            into.items.push_back(std::move(piece));
        }
    }
    // The last row of a table does not go to the next page alone.
    if (into.items.size() - firstItem >= 2)
        into.items[into.items.size() - 2].flow.keepWithNext = true;
    into.heads.push_back(std::move(repeated));
}

} // namespace padside
