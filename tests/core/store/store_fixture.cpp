// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/core/store/store_fixture.h"

#include "core/store/judgement_book.h"
#include "core/store/record_reader.h"
#include "core/store/site_book.h"
#include "core/store/transaction.h"
#include "core/store/visit_book.h"

#include <algorithm>

using namespace Qt::Literals::StringLiterals;

namespace padside::test {

namespace {

template <typename AnyEntry>
void putAll(Store& store, const std::vector<AnyEntry>& entries, VisitId visit, bool corrections)
{
    for (const AnyEntry& entry : entries) {
        if (entry.visitId == visit && entry.correction.has_value() == corrections)
            store.visits().put(entry);
    }
}

void putAllOf(Store& store, const UnitRecord& record, VisitId visit, bool corrections)
{
    putAll(store, record.findings, visit, corrections);
    putAll(store, record.readings, visit, corrections);
    putAll(store, record.treatments, visit, corrections);
    putAll(store, record.photos, visit, corrections);
    putAll(store, record.charges, visit, corrections);
}

} // namespace

StoreTest::StoreTest()
    : m_path(m_folder.filePath(u"record.padside"_s))
    , m_store(Store::create(m_path))
{
}

void StoreTest::reopen()
{
    m_store.reset();
    m_store = Store::open(m_path);
}

void writeRecord(Store& store, const UnitRecord& record)
{
    Transaction transaction(store);
    const auto sites = store.sites().sites();
    if (std::ranges::find(sites, record.site.id, &Site::id) == sites.end())
        store.sites().addSite(record.site);
    store.sites().addUnit(record.unit);
    for (const Part& part : record.parts)
        store.sites().addPart(part);
    for (const Visit& visit : record.visits) {
        Visit opened = visit;
        opened.closedAt.reset();
        store.visits().open(opened);
        putAllOf(store, record, visit.id, false);
        for (const FollowUp& followUp : record.followUps) {
            if (followUp.madeAt == visit.id)
                store.visits().put(followUp);
        }
        if (visit.closedAt)
            store.visits().close(visit.id, *visit.closedAt);
        putAllOf(store, record, visit.id, true);
    }
    for (const Acknowledgement& acknowledgement : record.acknowledgements)
        store.judgements().acknowledge(acknowledgement);
    for (const UnitAssumption& assumption : record.assumptions)
        store.judgements().assume(record.unit.id, assumption);
    transaction.commit();
}

StoreError refusalOf(const std::function<void()>& action)
{
    try {
        action();
    } catch (const StoreError& error) {
        const std::string said = say(error.problem().what);
        EXPECT_GT(said.size(), 20U) << "not a sentence: " << said;
        EXPECT_EQ(said.back(), '.') << said;
        EXPECT_EQ(said.find('{'), std::string::npos) << "an empty place in: " << said;
        return error;
    }
    ADD_FAILURE() << "was not refused";
    return StoreError(Problem{});
}

} // namespace padside::test
