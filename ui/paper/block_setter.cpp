// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/paper/block_setter.h"

#include "ui/paper/outlook_setter.h"
#include "ui/paper/table_setter.h"
#include "ui/paper/type_setting.h"

#include <algorithm>
#include <array>
#include <limits>

namespace padside {

namespace {

constexpr double pairGap = 44;
constexpr double photoGap = 14;
constexpr double photoShape = 0.75; ///< height to width
constexpr double signingRoom = 110;
constexpr double captionGap = 6;
constexpr std::size_t photosInLine = 4; ///< of the rows through the years
constexpr std::size_t photosInHalf = photosInLine / 2;

SetItem itemOf(std::vector<Run> runs, double spaceBefore, bool keepWithNext = false)
{
    const double height = bottomOf(runs);
    return SetItem{std::move(runs), FlowItem{height, spaceBefore, keepWithNext, std::nullopt}};
}

struct BlockSetter
{
    double width;
    double pageHeight;
    SetBlocks& into;

    void operator()(const TableBlock& table) const { setTable(table, width, pageHeight, into); }

    void operator()(const TitleBlock& title) const
    {
        std::vector<Run> top;
        const TextRun kind = setRight(title.kind, Face::body, Ink::soft, width);
        append(top, setLines(title.contractor, Face::strong, Ink::full, kind.at.x() - pairGap), 0, 0);
        top.emplace_back(kind);
        const double ruleAt = bottomOf(top) + 10;
        top.emplace_back(RuleRun{QLineF(0, ruleAt, width, ruleAt), Ink::full});
        append(top, setLines(title.title, Face::title, Ink::full, width), 0, ruleAt + 34);
        append(top, setLines(title.subtitle, Face::body, Ink::soft, width), 0, bottomOf(top) + 2);
        into.items.push_back(itemOf(std::move(top), 0, true));
        setFacts(title.facts, title.notice.isEmpty());
        if (!title.notice.isEmpty())
            into.items.push_back(itemOf(setLines(title.notice, Face::strong, Ink::full, width), 20));
    }

    /// Four facts to a line, label above text.
    void setFacts(const std::vector<Fact>& facts, bool last) const
    {
        constexpr std::size_t perLine = 4;
        const double room = (width - (perLine - 1) * pairGap) / perLine;
        for (std::size_t first = 0; first < facts.size(); first += perLine) {
            std::vector<Run> line;
            for (std::size_t i = first; i < std::min(first + perLine, facts.size()); ++i) {
                const double left = static_cast<double>(i - first) * (room + pairGap);
                append(line, setLines(facts[i].label, Face::small, Ink::soft, room), left, 0);
                append(line, setLines(facts[i].text, Face::body, Ink::full, room), left, leading(Face::small));
            }
            const bool isLast = first + perLine >= facts.size();
            for (SetItem& piece :
                 cutToHeight(itemOf(std::move(line), first == 0 ? 28 : 14, !isLast || !last), pageHeight / 2))
                into.items.push_back(std::move(piece));
        }
    }

    void operator()(const PhotoBlock& photos) const
    {
        if (photos.pairs.empty() && photos.closing.isEmpty())
            return;
        std::vector<Run> head{RuleRun{QLineF(0, 0, width, 0), Ink::soft}};
        append(head, setLines(photos.heading, Face::strong, Ink::full, width), 0, 10);
        if (!photos.closing.isEmpty())
            head.emplace_back(moved(setRight(photos.closing, Face::small, Ink::soft, width), 0, 13));
        into.items.push_back(itemOf(std::move(head), spaceBeforeBlock, !photos.pairs.empty()));
        for (std::size_t first = 0; first < photos.pairs.size(); first += 2) {
            std::vector<Run> line = setPair(photos.pairs[first]);
            if (first + 1 < photos.pairs.size())
                append(line, setPair(photos.pairs[first + 1]), pairWidth() + pairGap, 0);
            into.items.push_back(itemOf(std::move(line), first == 0 ? 8 : 24));
        }
    }

    [[nodiscard]] double pairWidth() const { return (width - pairGap) / 2; }

    [[nodiscard]] std::vector<Run> setPair(const PhotoPair& pair) const
    {
        const double photoWidth = (pairWidth() - photoGap) / 2;
        std::vector<Run> runs = setLines(pair.zone, Face::smallStrong, Ink::full, pairWidth());
        const double top = bottomOf(runs) + captionGap;
        append(runs, setPhoto(pair.first, photoWidth), 0, top);
        if (pair.second)
            append(runs, setPhoto(*pair.second, photoWidth), photoWidth + photoGap, top);
        return runs;
    }

    [[nodiscard]] static std::vector<Run> setPhoto(const PaperPhoto& photo, double photoWidth)
    {
        const double height = photoWidth * photoShape;
        std::vector<Run> runs{PhotoRun{QRectF(0, 0, photoWidth, height), photo.id}};
        const bool marked = !std::holds_alternative<NoMark>(photo.mark);
        const double below = height + captionGap;
        if (marked)
            runs.emplace_back(MarkRun{QRectF(0, below, markWidth * 0.85, markHeight * 0.85), photo.mark});
        const double left = marked ? markWidth * 0.85 + 12 : 0;
        append(runs, setLines(photo.when, Face::small, Ink::soft, photoWidth - left), left, below);
        return runs;
    }

    /// Four photographs to a line, so that the years can be compared at a glance.
    void operator()(const PhotoRowsBlock& photos) const
    {
        if (photos.rows.empty())
            return;
        std::vector<Run> head{RuleRun{QLineF(0, 0, width, 0), Ink::soft}};
        append(head, setLines(photos.heading, Face::strong, Ink::full, width), 0, 10);
        into.items.push_back(itemOf(std::move(head), spaceBeforeBlock, true));
        bool first = true;
        for (const std::vector<const PhotoRow*>& line : inLines(photos.rows)) {
            std::vector<Run> runs;
            double left = 0;
            for (const PhotoRow* row : line) {
                append(runs, setPhotoRow(*row, line.size() == 1 ? width : (width - photoGap) / 2), left, 0);
                left += static_cast<double>(photosInHalf) * (rowPhotoWidth() + photoGap);
            }
            into.items.push_back(itemOf(std::move(runs), first ? 8 : 24));
            first = false;
        }
    }

    /// Rows one below the other, but two of few photographs side by side.
    [[nodiscard]] static std::vector<std::vector<const PhotoRow*>> inLines(const std::vector<PhotoRow>& rows)
    {
        std::vector<std::vector<const PhotoRow*>> lines;
        constexpr auto none = std::numeric_limits<std::size_t>::max();
        std::size_t halfFull = none;
        for (const PhotoRow& row : rows) {
            const bool isShort = row.photos.size() <= photosInHalf;
            if (isShort && halfFull != none) {
                lines[halfFull].push_back(&row);
                halfFull = none;
                continue;
            }
            lines.push_back({&row});
            if (isShort)
                halfFull = lines.size() - 1;
        }
        return lines;
    }

    [[nodiscard]] double rowPhotoWidth() const
    {
        return (width - (photosInLine - 1) * photoGap) / static_cast<double>(photosInLine);
    }

    [[nodiscard]] std::vector<Run> setPhotoRow(const PhotoRow& row, double room) const
    {
        std::vector<Run> runs = setLines(row.zone, Face::smallStrong, Ink::full, room);
        const double top = bottomOf(runs) + captionGap;
        for (std::size_t i = 0; i < std::min(photosInLine, row.photos.size()); ++i)
            append(runs, setPhoto(row.photos[i], rowPhotoWidth()),
                   static_cast<double>(i) * (rowPhotoWidth() + photoGap), top);
        return runs;
    }

    void operator()(const DrawingBlock& drawing) const
    {
        std::vector<Run> runs{RuleRun{QLineF(0, 0, width, 0), Ink::soft}};
        append(runs, setLines(drawing.heading, Face::strong, Ink::full, drawing.wide ? width : headingColumn - pairGap),
               0, 10);
        const double left = drawing.wide ? 0 : headingColumn;
        const double top = drawing.wide ? bottomOf(runs) + captionGap : 12;
        LaidDrawing laid = drawing.lay(width - left);
        const QSizeF size(width - left, laid.height);
        runs.emplace_back(
            DrawingRun{QRectF(QPointF(left, top), size),
                       [paint = std::move(laid.paint), size](QPainter& painter) { paint(painter, size); }});
        append(runs, setLines(drawing.under, Face::small, Ink::soft, size.width()), left,
               top + size.height() + captionGap);
        into.items.push_back(itemOf(std::move(runs), spaceBeforeBlock));
    }

    void operator()(const OutlookBlock& outlook) const
    {
        for (SetItem& item : setOutlook(outlook, width))
            into.items.push_back(std::move(item));
    }

    void operator()(const SignatureBlock& signatures) const
    {
        const auto count = static_cast<double>(std::max<std::size_t>(1, signatures.lines.size()));
        const double room = (width - (count - 1) * pairGap) / count;
        std::vector<Run> runs;
        double left = 0;
        for (const QString& line : signatures.lines) {
            runs.emplace_back(RuleRun{QLineF(left, signingRoom, left + room, signingRoom), Ink::full});
            append(runs, setLines(line, Face::small, Ink::soft, room), left, signingRoom + captionGap);
            left += room + pairGap;
        }
        if (!into.items.empty())
            into.items.back().flow.keepWithNext = true; // a signature does not stand alone on a page
        into.items.push_back(itemOf(std::move(runs), 0));
    }
};

} // namespace

SetBlocks setBlocks(const std::vector<PaperBlock>& blocks, double width, double pageHeight)
{
    SetBlocks set;
    for (const PaperBlock& block : blocks)
        std::visit(BlockSetter{width, pageHeight, set}, block);
    return set;
}

} // namespace padside
