// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/sample-db/sample_fixture.h"

#include "core/store/record_reader.h"
#include "core/store/site_book.h"
#include "resources/resources.h"

namespace padside::test {

const Catalogue& shipped()
{
    static const Catalogue catalogue = Catalogue::load(shippedCatalogue()).value();
    return catalogue;
}

Sample::Sample(const SampleOptions& options)
    : store(Store::create(folder.filePath(QStringLiteral("sample.padside"))))
{
    buildSample(*store, shipped(), options, {});
}

std::vector<UnitRecord> Sample::records() const
{
    std::vector<UnitRecord> records;
    for (const Unit& unit : store->sites().units())
        records.push_back(store->records().unitRecord(unit.id));
    return records;
}

UnitRecord Sample::record(const std::string& tag) const
{
    return store->records().unitRecord(store->sites().unitByTag(tag).value().id);
}

const Sample& plainSample()
{
    static const Sample sample([] {
        SampleOptions options;
        options.photographs = false;
        return options;
    }());
    return sample;
}

} // namespace padside::test
