// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/ui/pages/unit/unit_page_fixture.h"

#include "core/review/unit_review.h"
#include "core/store/site_book.h"
#include "core/store/visit_book.h"
#include "tests/support/small_catalogue.h"
#include "ui/drawing/theme.h"

namespace padside::test {

RecordBuilder worseningUnit()
{
    auto builder = aUnit("HB-01");
    builder.installed("2011-06-14")
        .withPart("suction-accumulator", {"crown", "shell", "bottom"})
        .withPart("fan-blade", {"root"});
    builder.visit("2024-04-10").graded("bottom", 2).graded("crown", 1).graded("root", 1);
    builder.visit("2024-10-10", VisitReason::fall).graded("bottom", 3).noted("rust under the strap").graded("crown", 2);
    builder.visit("2025-05-06").graded("bottom", 4).wet(Wetness::wet).noted("bottom was wet");
    builder.notSeen("crown", NotSeenReason::covered).graded("root", 1);
    return builder;
}

Date today()
{
    return day("2025-06-01");
}

UnitSnapshotPtr snapshotOf(const UnitRecord& record, const Catalogue& catalogue)
{
    KnownUnit known = knownUnit(record, catalogue, OutlookModel(catalogue), today());
    UnitReview reviewed = review(known, catalogue);
    return std::make_shared<const UnitSnapshot>(UnitSnapshot{record, std::move(reviewed), {}, std::move(known)});
}

LocalSpeaker englishSpeaker()
{
    return {QLocale(QLocale::English, QLocale::UnitedStates), UnitSystem::metric};
}

UnitPageTest::UnitPageTest()
    : m_catalogue(smallCatalogue())
    , m_ids([] { return std::int64_t{1'800'000'000'000}; }, 2)
    , m_store(Store::create(m_folder.filePath(QStringLiteral("records.padside"))))
{
    RecordBook::Surroundings surroundings;
    surroundings.now = [] { return Instant{today() + std::chrono::hours(10), std::chrono::minutes(0)}; };
    surroundings.locale = QLocale(QLocale::English, QLocale::UnitedStates);
    surroundings.currency = QStringLiteral("$");
    m_book = std::make_unique<RecordBook>(*m_store, m_catalogue, m_ids, surroundings);
    m_page = std::make_unique<UnitPage>(*m_book, m_undo, Theme::light());
    m_page->resize(1280, 800);
}

UnitPageTest::~UnitPageTest() = default;

void UnitPageTest::write(const UnitRecord& record)
{
    m_store->sites().addSite(record.site);
    m_store->sites().addUnit(record.unit);
    for (const Part& part : record.parts)
        m_store->sites().addPart(part);
    for (Visit visit : record.visits) {
        const auto closedAt = visit.closedAt;
        visit.closedAt.reset();
        m_store->visits().open(visit);
        for (const Finding& finding : record.findings) {
            if (finding.visitId == visit.id)
                m_store->visits().put(finding);
        }
        for (const Photo& photo : record.photos) {
            if (photo.visitId == visit.id)
                m_store->visits().put(photo);
        }
        if (closedAt)
            m_store->visits().close(visit.id, *closedAt);
    }
}

void UnitPageTest::show(UnitId unit)
{
    m_page->showUnit(unit);
    m_page->show();
    m_page->activateWindow();
}

bool UnitPageTest::findSpentElsewhere(const UnitRecord& record, ZoneId zone)
{
    Finding finding = record.findings.front();
    finding.id = m_ids.make<FindingId>();
    finding.visitId = record.visits.back().id;
    finding.on = record.visits.back().on;
    finding.zoneId = zone;
    finding.sight = Grade::spent;
    return m_book->change(record.unit.id, [&] { m_store->visits().put(finding); });
}

} // namespace padside::test
