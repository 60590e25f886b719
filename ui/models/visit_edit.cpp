// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/models/visit_edit.h"

#include "core/store/drafts.h"
#include "core/store/photo_files.h"
#include "core/store/site_book.h"
#include "core/store/store.h"
#include "core/store/transaction.h"
#include "core/store/visit_book.h"

#include <algorithm>

namespace padside {

namespace {

template <typename Entry> void write(Store& store, const RowChange<Entry>& change)
{
    if (change.after)
        store.visits().put(*change.after);
    else if (change.before)
        store.visits().remove(*change.before);
}

void write(Store& store, const RowChange<KeptPhoto>& change)
{
    if (!change.after) {
        store.visits().remove(change.before->photo);
        return;
    }
    store.visits().put(change.after->photo);
    if (!change.after->thumbnail.isEmpty())
        store.photos().setThumbnail(change.after->photo.id, change.after->thumbnail);
}

void write(Store& store, const RowChange<PartReplacement>& change)
{
    if (change.after)
        store.sites().replacePart(change.after->old, change.after->on, change.after->because, change.after->fresh);
    else
        store.sites().undoReplacement(change.before->fresh);
}

void write(Store& store, const RowChange<Visit>& change)
{
    store.visits().change(*change.after);
}

void write(Store& store, const DraftChange& change)
{
    if (change.after)
        store.drafts().setText(change.key, *change.after);
    else
        store.drafts().remove(change.key);
}

template <typename Row> bool isSame(const RowChange<Row>& change)
{
    return change.before == change.after;
}
template <typename Entry>
requires requires(Entry entry)
{
    entry.enteredAt;
}
bool isSame(const RowChange<Entry>& change)
{
    if (!change.before || !change.after)
        return !change.before && !change.after;
    Entry before = *change.before;
    before.enteredAt = change.after->enteredAt; // entering the same again is no change
    return before == *change.after;
}
bool isSame(const RowChange<KeptPhoto>&)
{
    return false;
}
bool isSame(const RowChange<PartReplacement>&)
{
    return false;
}
bool isSame(const DraftChange& change)
{
    return change.before == change.after;
}

} // namespace

VisitEdit reversed(const VisitEdit& edit)
{
    VisitEdit back(edit.rbegin(), edit.rend());
    for (VisitChange& change : back)
        std::visit([](auto& one) { std::swap(one.before, one.after); }, change);
    return back;
}

bool changesNothing(const VisitEdit& edit)
{
    return std::ranges::all_of(edit, [](const VisitChange& change) {
        return std::visit([](const auto& one) { return isSame(one); }, change);
    });
}

void carryOut(Store& store, const VisitEdit& edit)
{
    Transaction together(store);
    for (const VisitChange& change : edit)
        std::visit([&](const auto& one) { write(store, one); }, change);
    together.commit();
}

} // namespace padside
