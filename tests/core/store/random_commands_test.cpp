// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/store/connection.h"
#include "core/store/record_reader.h"
#include "core/store/site_book.h"
#include "core/store/verify.h"
#include "core/store/visit_book.h"
#include "tests/core/store/store_fixture.h"

#include <algorithm>
#include <iostream>
#include <random>

namespace padside::test {

namespace {

/// Does random things to one unit, some of them not allowed, and keeps beside it what the record should be by now.
class RandomCommandsTest : public StoreTest
{
protected:
    RandomCommandsTest() { writeRecord(*m_store, m_model); }

    [[nodiscard]] std::size_t pick(std::size_t count) { return m_random() % count; }
    [[nodiscard]] bool hasOpenVisit() const { return !m_model.visits.empty() && m_model.visits.back().isOpen(); }

    template <typename AnyEntry> AnyEntry entryAt(const Visit& visit)
    {
        AnyEntry entry;
        entry.id = m_ids.make<decltype(entry.id)>();
        entry.unitId = visit.unitId;
        entry.visitId = visit.id;
        entry.on = visit.on;
        entry.enteredAt = Instant{visit.openedAt.utc + std::chrono::seconds(++m_seconds), {}};
        return entry;
    }

    void openVisit()
    {
        Visit visit;
        visit.id = m_ids.make<VisitId>();
        visit.unitId = m_model.unit.id;
        visit.on = m_day += std::chrono::days(pick(3)); // two visits on one day happen
        visit.openedAt = Instant{visit.on + std::chrono::hours(9) + std::chrono::seconds(++m_seconds), {}};
        if (hasOpenVisit()) {
            (void)refusalOf([&] { m_store->visits().open(visit); });
            return;
        }
        m_store->visits().open(visit);
        m_model.visits.push_back(visit);
    }

    void closeVisit()
    {
        if (m_model.visits.empty())
            return;
        Visit& visit = m_model.visits.back();
        const Instant at{visit.openedAt.utc + std::chrono::hours(1), {}};
        if (!visit.isOpen()) {
            (void)refusalOf([&] { m_store->visits().close(visit.id, at); });
            return;
        }
        m_store->visits().close(visit.id, at);
        visit.closedAt = at;
    }

    void discardVisit()
    {
        if (!hasOpenVisit())
            return;
        const VisitId id = m_model.visits.back().id;
        m_store->visits().discard(id);
        m_model.visits.pop_back();
        std::erase_if(m_model.findings, [id](const Finding& finding) { return finding.visitId == id; });
        std::erase_if(m_model.readings, [id](const Reading& reading) { return reading.visitId == id; });
    }

    void putFinding()
    {
        if (m_model.visits.empty())
            return;
        const Visit& visit
            = m_model.visits[m_model.visits.size() - 1 - pick(std::min<std::size_t>(2, m_model.visits.size()))];
        auto finding = entryAt<Finding>(visit);
        finding.zoneId = m_model.parts[0].zones[pick(3)].id;
        finding.phase = pick(4) == 0 ? Phase::asLeft : Phase::asFound;
        if (pick(5) == 0)
            finding.sight = NotSeenReason::covered;
        else
            finding.sight = static_cast<Grade>(1 + pick(5));
        if (!visit.isOpen()) {
            (void)refusalOf([&] { m_store->visits().put(finding); });
            return;
        }
        m_store->visits().put(finding);
        std::erase_if(m_model.findings, [&finding](const Finding& old) {
            return old.visitId == finding.visitId && old.zoneId == finding.zoneId && old.phase == finding.phase;
        });
        m_model.findings.push_back(finding);
    }

    void putReading()
    {
        if (!hasOpenVisit())
            return;
        auto reading = entryAt<Reading>(m_model.visits.back());
        reading.kind = "suction-pressure";
        reading.value = {static_cast<double>(pick(1'000'000)), QuantityKind::gaugePressure, "Pa", "x"};
        m_store->visits().put(reading);
        m_model.readings.push_back(reading);
    }

    void removeReading()
    {
        if (m_model.readings.empty())
            return;
        const auto place = m_model.readings.begin() + static_cast<std::ptrdiff_t>(pick(m_model.readings.size()));
        if (findVisit(m_model, place->visitId)->isOpen()) {
            m_store->visits().remove(*place);
            m_model.readings.erase(place);
        } else {
            (void)refusalOf([&] { m_store->visits().remove(*place); });
        }
    }

    void correctFinding()
    {
        if (m_model.findings.empty())
            return;
        const Finding wrong = m_model.findings[pick(m_model.findings.size())];
        Finding correcting = wrong;
        correcting.id = m_ids.make<FindingId>();
        correcting.enteredAt.utc += std::chrono::seconds(++m_seconds);
        correcting.sight = static_cast<Grade>(1 + pick(5));
        correcting.correction = Correction<FindingId>{wrong.id, "looked again"};
        const bool corrected = std::ranges::any_of(m_model.findings, [&wrong](const Finding& other) {
            return other.correction && other.correction->of == wrong.id;
        });
        if (corrected || findVisit(m_model, wrong.visitId)->isOpen()) {
            (void)refusalOf([&] { m_store->visits().put(correcting); });
            return;
        }
        m_store->visits().put(correcting);
        m_model.findings.push_back(correcting);
    }

    void step()
    {
        switch (pick(12)) {
        case 0:
            return openVisit();
        case 1:
            return closeVisit();
        case 2:
            return pick(4) == 0 ? discardVisit() : putReading();
        case 3:
            return removeReading();
        case 4:
            return correctFinding();
        case 5:
            return putReading();
        case 6:
            return pick(10) == 0 ? reopen() : putFinding();
        default:
            return putFinding();
        }
    }

    void expectAsInTheModel()
    {
        const auto byEntering = [](auto& entries) {
            std::ranges::sort(entries, {}, [](const auto& e) { return std::tuple(e.on, e.enteredAt.utc, e.id); });
        };
        byEntering(m_model.findings);
        byEntering(m_model.readings);
        const UnitRecord found = m_store->records().unitRecord(m_model.unit.id);
        EXPECT_EQ(found.visits, m_model.visits);
        EXPECT_EQ(found.findings, m_model.findings);
        EXPECT_EQ(found.readings, m_model.readings);
        EXPECT_EQ(m_store->connection().text("PRAGMA integrity_check"), "ok");
        EXPECT_EQ(m_store->connection().number("SELECT count(*) FROM pragma_foreign_key_check"), 0);
        for (const Sentence& complaint : verify(*m_store).complaints)
            ADD_FAILURE() << say(complaint);
    }

    UnitRecord m_model = aUnit("HB-01").withPart("suction-accumulator", {"crown", "shell", "bottom"}).build();
    Date m_day = day("2023-12-30");
    std::mt19937 m_random;
    IdMaker m_ids{[] { return std::int64_t{1'800'000'000'000}; }, 3};
    int m_seconds = 0;
};

} // namespace

TEST_F(RandomCommandsTest, TheRecordIsWhatWasAllowedAndTheFileIsSound)
{
    const unsigned seed = std::random_device{}();
    std::cout << "seed " << seed << '\n';
    m_random.seed(seed);
    m_store->connection().run("PRAGMA synchronous = OFF"); // quick: no power is cut here
    for (int count = 1; count <= 1200; ++count) {
        step();
        if (count % 100 == 0)
            expectAsInTheModel();
        ASSERT_FALSE(HasFailure()) << "after command " << count << " of seed " << seed;
    }
    EXPECT_GT(m_model.findings.size(), 50U);
}

} // namespace padside::test
