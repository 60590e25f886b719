// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/ui/shell/window_fixture.h"

#include "core/store/record_reader.h"
#include "resources/resources.h"
#include "sample-db/sample.h"

namespace padside::test {

namespace {

Instant tenInTheMorning()
{
    return Instant{*parseDate("2026-11-25") + std::chrono::hours(9), std::chrono::minutes(60)};
}

} // namespace

WindowFixture::WindowFixture()
    : m_catalogue(Catalogue::load(shippedCatalogue()).value())
    , m_store(Store::create(m_folder.filePath(QStringLiteral("small.padside"))))
    , m_ids([] { return std::int64_t{1'795'600'000'000}; }, 7)
{
    SampleOptions options;
    options.units = unitCount;
    options.years = 2;
    options.photographs = false;
    buildSample(*m_store, m_catalogue, options, [](double) { return true; });
    m_book = std::make_unique<RecordBook>(
        *m_store, m_catalogue, m_ids,
        RecordBook::Surroundings{&tenInTheMorning, QLocale::c(), UnitSystem::metric, QStringLiteral("A. Tester")});
}

std::vector<UnitId> WindowFixture::units() const
{
    std::vector<UnitId> ids;
    for (const UnitLine& line : m_store->records().unitLines())
        ids.push_back(line.unitId);
    return ids;
}

} // namespace padside::test
