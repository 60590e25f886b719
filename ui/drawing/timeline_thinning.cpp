// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/drawing/timeline_thinning.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numeric>

namespace padside {

namespace {

constexpr double apart = 2; ///< between marks
constexpr double tickWidth = 3;
constexpr double pictureShape = 1.35; ///< width to height

/// The room a mark takes, piece by piece, relative to the x of its date. Pieces that are not there are 0 wide.
struct Pieces
{
    double from = 0; ///< left edge, negative
    double base = 0; ///< numeral or sign
    double left = 0; ///< with the gap before it, as all that follow
    double signs = 0;
    double amount = 0;
    double picture = 0;
};

bool isBare(const TimelineMark& mark)
{
    return mark.subject == TimelineMark::Subject::zone && !mark.found && !mark.notSeen && !mark.left;
}

double signsWidth(const TimelineMark& mark, const TimelineSizes& sizes)
{
    double width = mark.fitted ? sizes.sign() : 0;
    for (const Treatment& treatment : mark.treatments) {
        if (treatment.kind != TreatmentKind::replace || !mark.fitted)
            width += sizes.sign() + 2;
    }
    return width;
}

Pieces piecesOf(const TimelineMark& mark, const TimelineSizes& sizes)
{
    Pieces pieces;
    pieces.from = -sizes.mark / 2;
    pieces.base = sizes.mark;
    const double signs = signsWidth(mark, sizes);
    if (isBare(mark)) {
        pieces.base = signs > 0 ? signs : sizes.mark;
        if (signs > 0)
            pieces.from = -sizes.sign() / 2;
    } else {
        if (mark.left && (mark.found || mark.notSeen))
            pieces.left = sizes.leftMark + 1;
        pieces.signs = signs > 0 ? signs + 2 : 0;
    }
    if (mark.subject == TimelineMark::Subject::charge)
        pieces.amount = sizes.amount + 1;
    if (!mark.pictures.empty())
        pieces.picture = std::round((sizes.lane - 3) * pictureShape) + 2;
    return pieces;
}

/// The rectangles of the pieces that are shown.
void setRects(PlacedMark& placed, const TimelineMark& mark, const Pieces& shown, double middle,
              const TimelineSizes& sizes)
{
    double x = std::round(placed.x + shown.from);
    const auto box = [middle](double left, double width, double height) {
        return QRectF(left, middle - std::round(height / 2), width, height);
    };
    placed.found = placed.left = placed.signs = placed.amount = placed.picture = QRectF();
    const bool bareWithSigns = isBare(mark) && signsWidth(mark, sizes) > 0;
    if (bareWithSigns) {
        placed.signs = box(x, shown.base, sizes.lane - 4);
        placed.area = placed.signs;
    } else {
        const bool leftOnly = mark.left && !mark.found && !mark.notSeen;
        const QRectF base = box(x, sizes.mark, sizes.mark);
        (leftOnly ? placed.left : placed.found) = isBare(mark) ? QRectF() : base;
        placed.area = base;
    }
    x += shown.base;
    const auto add = [&](QRectF& rect, double width, double gap, double height) {
        if (width <= 0)
            return;
        rect = box(x + gap, width - gap, height);
        placed.area = placed.area.united(rect);
        x += width;
    };
    add(placed.left, shown.left, 1, sizes.leftMark);
    add(placed.signs, shown.signs, 2, sizes.lane - 4);
    add(placed.amount, shown.amount, 1, sizes.lane - 2);
    add(placed.picture, shown.picture, 2, sizes.lane - 3);
}

/// The room taken along one lane.
class Room
{
public:
    explicit Room(std::size_t count)
        : m_from(count, 0)
        , m_to(count, 0)
        , m_taken(count, false)
    {
    }

    /// The mark that stands in the way, or none.
    [[nodiscard]] std::optional<std::size_t> inTheWay(std::size_t self, double from, double to) const
    {
        for (std::size_t i = 0; i < m_taken.size(); ++i) {
            if (i != self && m_taken[i] && from < m_to[i] + apart && to + apart > m_from[i])
                return i;
        }
        return std::nullopt;
    }
    void take(std::size_t self, double from, double to)
    {
        m_from[self] = from;
        m_to[self] = to;
        m_taken[self] = true;
    }
    [[nodiscard]] bool has(std::size_t self) const { return m_taken[self]; }
    [[nodiscard]] double from(std::size_t self) const { return m_from[self]; }
    [[nodiscard]] double to(std::size_t self) const { return m_to[self]; }

private:
    std::vector<double> m_from;
    std::vector<double> m_to;
    std::vector<bool> m_taken;
};

std::vector<std::size_t> byNews(const std::vector<int>& news)
{
    std::vector<std::size_t> order(news.size());
    std::iota(order.begin(), order.end(), 0U);
    std::ranges::sort(order, [&news](std::size_t a, std::size_t b) {
        return std::pair(news[a], a) > std::pair(news[b], b); // of equal news the later
    });
    return order;
}

} // namespace

int newsOf(const TimelineLane& lane, std::size_t number)
{
    const TimelineMark& mark = lane.marks[number];
    const TimelineMark* before = number > 0 ? &lane.marks[number - 1] : nullptr;
    constexpr int latest = 200;
    int news = number + 1 == lane.marks.size() ? latest : 0;
    if (mark.subject != TimelineMark::Subject::zone)
        return news + (mark.reason == VisitReason::callOut || mark.openVisit ? 50 : 40);
    if (mark.fitted)
        news += 100;
    const bool changed = mark.found && mark.found != mark.before;
    const bool seenAgain = mark.found && before && before->notSeen;
    if (changed || mark.left || seenAgain)
        news += 40 + 4 * numeral(mark.found.value_or(mark.left.value_or(Grade::sound)));
    else if (mark.notSeen && !(before && before->notSeen))
        news += 30;
    if (!mark.treatments.empty())
        news += 10;
    if (!mark.correction.empty())
        news += 5;
    return news;
}

PlacedMark placedInFull(const TimelineMark& mark, const PlacedMark& placed, double middle, const TimelineSizes& sizes)
{
    PlacedMark full = placed;
    full.detail = PlacedMark::Detail::full;
    Pieces pieces = piecesOf(mark, sizes);
    pieces.picture = 0;
    setRects(full, mark, pieces, middle, sizes);
    return full;
}

void placeMarks(std::vector<PlacedMark>& placed, const TimelineLane& lane, const MarkLane& where, const TimeAxis& axis,
                const TimelineSizes& sizes)
{
    const std::size_t count = lane.marks.size();
    std::vector<PlacedMark> marks(count);
    std::vector<Pieces> wanted(count);
    std::vector<Pieces> shown(count);
    std::vector<int> news(count);
    for (std::size_t i = 0; i < count; ++i) {
        marks[i].place = MarkPlace{where.group, where.lane, i};
        marks[i].x = axis.x(lane.marks[i].on);
        marks[i].detail = PlacedMark::Detail::hidden;
        wanted[i] = piecesOf(lane.marks[i], sizes);
        news[i] = newsOf(lane, i);
    }
    Room room(count);
    const std::vector<std::size_t> order = byNews(news);
    for (const std::size_t i : order) {
        if (where.crowded && news[i] == 0)
            continue;
        const double from = marks[i].x + wanted[i].from;
        const auto other = room.inTheWay(i, from, from + wanted[i].base);
        if (other) {
            marks[*other].standsFor += news[i] > 0 ? 1 : 0;
            continue;
        }
        room.take(i, from, from + wanted[i].base);
        marks[i].detail = PlacedMark::Detail::full;
        shown[i].from = wanted[i].from;
        shown[i].base = wanted[i].base;
    }
    // Numerals stand; what else there is to show goes where there is still room, one kind after the other.
    for (double Pieces::*piece : {&Pieces::left, &Pieces::signs, &Pieces::amount, &Pieces::picture}) {
        for (const std::size_t i : order) {
            const double width = wanted[i].*piece;
            if (width <= 0 || !room.has(i) || room.inTheWay(i, room.from(i), room.to(i) + width))
                continue;
            room.take(i, room.from(i), room.to(i) + width);
            shown[i].*piece = width;
        }
    }
    for (std::size_t i = 0; i < count; ++i) {
        PlacedMark& mark = marks[i];
        if (room.has(i)) {
            setRects(mark, lane.marks[i], shown[i], where.middle, sizes);
        } else if (news[i] == 0 && !room.inTheWay(i, mark.x - tickWidth / 2, mark.x + tickWidth / 2)) {
            room.take(i, mark.x - tickWidth / 2, mark.x + tickWidth / 2);
            mark.detail = PlacedMark::Detail::tick;
            mark.area = QRectF(std::round(mark.x - tickWidth / 2), where.middle - std::round(sizes.mark / 2), tickWidth,
                               sizes.mark);
        }
    }
    placed.insert(placed.end(), marks.begin(), marks.end());
}

} // namespace padside
