// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/ui/models/open_visit_fixture.h"

#include "core/store/site_book.h"
#include "tests/support/record_builder.h"

namespace padside::test {

namespace {

Instant noonOfTheVisit()
{
    return Instant{day("2026-05-04") + std::chrono::hours(10), std::chrono::minutes(120)};
}

} // namespace

OpenVisitFixture::OpenVisitFixture()
    : m_store(Store::create(m_folder.filePath(QStringLiteral("a.padside"))))
    , m_ids([] { return std::int64_t{1'777'000'000'000}; }, 3)
    , m_book(*m_store, m_catalogue, m_ids,
             RecordBook::Surroundings{noonOfTheVisit, QLocale::c(), UnitSystem::metric, QStringLiteral("A. Tester")})
    , m_log(m_book)
{
    const UnitRecord record = aUnit("HB-01").withPart("fan-motor", {"shaft", "leads"}).build();
    m_store->sites().addSite(record.site);
    m_store->sites().addUnit(record.unit);
    m_store->sites().addPart(record.parts.front());
    m_unit = record.unit.id;
    m_part = record.parts.front();
    m_visit = startVisit(m_book, m_unit, VisitReason::fall);
    EXPECT_TRUE(m_log.turnTo(m_visit));
}

} // namespace padside::test
