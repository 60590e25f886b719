// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/record/unit_record.h"

#include <QByteArray>
#include <QString>

#include <optional>
#include <variant>
#include <vector>

namespace padside {

class Store;

/// A row of the record before and after; empty: it is not there.
template <typename Row> struct RowChange
{
    std::optional<Row> before;
    std::optional<Row> after;
};

/// A photograph's row with its thumbnail. Its file stays in the photo folder whatever happens to the row.
struct KeptPhoto
{
    Photo photo;
    QByteArray thumbnail;
};

/// A part whose place a new one took.
struct PartReplacement
{
    PartId old;
    Date on{};
    std::string because;
    Part fresh;
};

/// Unfinished input that an entry took up, or that waits for one.
struct DraftChange
{
    QString key;
    std::optional<QString> before;
    std::optional<QString> after;
};

using VisitChange = std::variant<RowChange<Finding>, RowChange<Reading>, RowChange<Treatment>, RowChange<ChargeEntry>,
                                 RowChange<FollowUp>, RowChange<KeptPhoto>, RowChange<PartReplacement>,
                                 RowChange<Visit>, DraftChange>;

/// What one act of a person changes in an open visit, in the order it is written. Plain data: it can be carried out,
/// turned round and carried out again.
using VisitEdit = std::vector<VisitChange>;

/// The edit that takes `edit` back.
[[nodiscard]] VisitEdit reversed(const VisitEdit& edit);

/// Whether nothing is different afterwards.
[[nodiscard]] bool changesNothing(const VisitEdit& edit);

/// Writes an edit, all or nothing. Throws StoreError.
void carryOut(Store& store, const VisitEdit& edit);

} // namespace padside
