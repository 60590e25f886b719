// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/record/entry.h"

#include <QSizeF>
#include <QString>

#include <functional>
#include <optional>
#include <utility>
#include <variant>
#include <vector>

class QPainter;

namespace padside {

/// A zone's state as a mark: graded, looked for but not seen, or nothing known.
struct NotSeenMark
{
    friend bool operator==(const NotSeenMark&, const NotSeenMark&) = default;
};
struct NoMark
{
    friend bool operator==(const NoMark&, const NoMark&) = default;
};
using Mark = std::variant<NoMark, NotSeenMark, Grade>;

/// What stands in one cell of a table.
struct PaperCell
{
    QString text;
    QString under{}; ///< second-rank text below it
    std::vector<Mark> marks{}; ///< one mark, or then → now; printed in place of the text
    bool strong = false;
    bool small = false; ///< the text in small type
    std::vector<QString> boxes{}; ///< boxes to tick, each with its sign in it; printed in place of the text
    bool toWriteOn = false; ///< a line to write on, in place of the text
};

struct PaperColumn
{
    QString title; ///< may be empty; a table without any title has no head
    double share = 1; ///< of the width that the mark columns leave
    bool marks = false; ///< as wide as "then → now"
    bool oneMark = false; ///< marks, but never more than one: as wide as that and its title
};

/// A list of lines below one heading; one column makes it a plain list.
struct TableBlock
{
    QString heading;
    std::vector<PaperColumn> columns;
    std::vector<std::vector<PaperCell>> rows; ///< each as long as `columns`
    QString closing; ///< one line of second rank below the rows; may be empty
};

/// A label and what stands beside it in the head of the page.
struct Fact
{
    QString label;
    QString text;
};

/// The head of the document.
struct TitleBlock
{
    QString contractor;
    QString kind; ///< what this paper is
    QString title; ///< unit and site
    QString subtitle; ///< nameplate line
    std::vector<Fact> facts;
    QString notice; ///< printed in full ink below the facts; may be empty
};

/// One photograph with its lines of caption.
struct PaperPhoto
{
    PhotoId id;
    QString when; ///< "Last time, 2025-05-06"
    Mark mark;
};

/// The same zone twice: last time and today, or as found and as left. The second may be missing.
struct PhotoPair
{
    QString zone;
    PaperPhoto first;
    std::optional<PaperPhoto> second;
};

struct PhotoBlock
{
    QString heading;
    std::vector<PhotoPair> pairs;
    QString closing;
};

/// One zone through the years.
struct PhotoRow
{
    QString zone;
    std::vector<PaperPhoto> photos; ///< side by side, oldest first
};

struct PhotoRowsBlock
{
    QString heading;
    std::vector<PhotoRow> rows;
};

/// A drawing worked out for a width, in tenths of a millimetre.
struct LaidDrawing
{
    double height = 0;
    std::function<void(QPainter&, const QSizeF&)> paint; ///< may be called often, and in other threads
};

/// A drawing with painting code of its own, in tenths of a millimetre: beside its heading, or below it and as wide as
/// the text.
struct DrawingBlock
{
    QString heading;
    bool wide = false;
    std::function<LaidDrawing(double width)> lay; ///< called once
    QString under{}; ///< text of second rank below it; may be empty
};

/// A part on its way to being spent.
struct ExpectedPart
{
    QString name;
    QString chance; ///< of giving out within a year
    QString dates; ///< the range in words
    std::vector<std::pair<double, double>> chances; ///< years from now and the chance of spent by then, both rising
    std::optional<double> middle; ///< years to a chance of 50 %; empty: beyond what is drawn
};

/// What is expected, in words and as strips along the years that get darker as a part gets likelier to be spent.
struct OutlookBlock
{
    QString heading;
    QString text;
    std::vector<ExpectedPart> parts; ///< may be empty: words alone
    int firstYear = 0; ///< of today
    double yearGone = 0; ///< the share of it that is over
    int years = 10; ///< drawn
};

/// Lines to sign on.
struct SignatureBlock
{
    std::vector<QString> lines;
};

using PaperBlock
    = std::variant<TitleBlock, TableBlock, PhotoBlock, PhotoRowsBlock, DrawingBlock, OutlookBlock, SignatureBlock>;

/// A whole document before it is set: blocks in order.
struct PaperContent
{
    QString documentTitle; ///< for the file's metadata
    QString runningHead; ///< top of every page but the first
    QString footer; ///< bottom left of every page
    std::vector<PaperBlock> blocks;
};

} // namespace padside
