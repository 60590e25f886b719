// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/ui/pages/visit/visit_fixture.h"

#include "core/store/record_reader.h"
#include "core/store/site_book.h"
#include "core/store/visit_book.h"
#include "resources/resources.h"
#include "ui/drawing/theme.h"
#include "ui/models/visit_log.h"
#include "ui/pages/visit/zone_list.h"

#include <QApplication>
#include <QFile>
#include <QLabel>
#include <QLineEdit>
#include <QTest>

#include <algorithm>

namespace padside::test {

namespace {

UnitRecord lastYear()
{
    auto record = aUnit("HB-01")
                      .installed("2015-04-11")
                      .withPart("suction-accumulator", {"crown", "shell", "bottom"}, "2015-04-11")
                      .withPart("fan-motor", {"shaft", "leads"}, "2015-04-11")
                      .withPart("run-capacitor", {"case"}, "2015-04-11")
                      .visit("2025-05-06")
                      .graded("crown", 2)
                      .graded("shell", 2)
                      .graded("bottom", 3)
                      .noted("rust under the strap")
                      .notSeen("shaft", NotSeenReason::noAccess)
                      .read("suction-pressure", 480e3, QuantityKind::gaugePressure, "kPag")
                      .build();
    record.readings.front().value.typed = "480";
    return record;
}

void write(Store& store, const UnitRecord& record)
{
    store.sites().addSite(record.site);
    store.sites().addUnit(record.unit);
    for (const Part& part : record.parts)
        store.sites().addPart(part);
    Visit visit = record.visits.front();
    const Instant closedAt = *visit.closedAt;
    visit.closedAt.reset();
    store.visits().open(visit);
    for (const Finding& finding : record.findings)
        store.visits().put(finding);
    for (const Reading& reading : record.readings)
        store.visits().put(reading);
    store.visits().close(visit.id, closedAt);
}

Catalogue shippedData()
{
    const auto texts = shippedCatalogue();
    auto catalogue = Catalogue::load(texts);
    EXPECT_TRUE(catalogue.has_value());
    return *catalogue;
}

} // namespace

Instant springMorning()
{
    return Instant{day("2026-05-04") + std::chrono::hours(7), std::chrono::minutes(120)};
}

VisitPageTest::VisitPageTest()
    : m_path(m_folder.filePath(QStringLiteral("record.padside")))
    , m_catalogue(shippedData())
    , m_ids([] { return std::int64_t{1'777'000'000'000}; }, 7)
    , m_store(Store::create(m_path))
{
    const UnitRecord before = lastYear();
    write(*m_store, before);
    m_unit = before.unit.id;
}

VisitPageTest::~VisitPageTest() = default;

void VisitPageTest::open(const QLocale& locale, UnitSystem units)
{
    m_locale = locale;
    m_units = units;
    m_page.reset();
    m_book = std::make_unique<RecordBook>(
        *m_store, m_catalogue, m_ids,
        RecordBook::Surroundings{springMorning, locale, units, QStringLiteral("A. Tester")});
    m_page = std::make_unique<VisitPage>(*m_book, Theme::light());
    m_page->resize(1280, 800);
    m_page->show();
    m_page->activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(m_page.get()));
}

void VisitPageTest::killAndReopen()
{
    // A copy of what is on disk at this moment is what a killed program leaves behind.
    const QString left = m_folder.filePath(QStringLiteral("left-behind-%1.padside").arg(++m_kills));
    ASSERT_TRUE(QFile::copy(m_path, left));
    if (QFile::exists(m_path + QStringLiteral("-wal"))) {
        ASSERT_TRUE(QFile::copy(m_path + QStringLiteral("-wal"), left + QStringLiteral("-wal")));
    }
    m_page.reset();
    m_book.reset();
    m_store.reset();
    m_path = left;
    m_store = Store::open(m_path);
    open(m_locale, m_units);
    m_visit = startVisit(*m_book, m_unit, VisitReason::fall);
    m_page->showVisit(m_visit);
}

void VisitPageTest::start(VisitReason reason)
{
    m_visit = startVisit(*m_book, m_unit, reason);
    ASSERT_FALSE(m_visit.isNull());
    m_page->showVisit(m_visit);
}

void VisitPageTest::key(Qt::Key key, Qt::KeyboardModifiers modifiers)
{
    QWidget* focus = QApplication::focusWidget();
    ASSERT_NE(focus, nullptr);
    QTest::keyClick(focus, key, modifiers);
}

void VisitPageTest::type(const QString& text)
{
    QWidget* focus = QApplication::focusWidget();
    ASSERT_NE(focus, nullptr);
    QTest::keyClicks(focus, text);
}

void VisitPageTest::typeInto(const char* field, const QString& text)
{
    auto* edit = find<QLineEdit>(field);
    edit->setFocus();
    edit->selectAll();
    QTest::keyClicks(edit, text);
    QTest::keyClick(edit, Qt::Key_Return);
}

void VisitPageTest::goTo(const char* zoneKind)
{
    Q_EMIT find<ZoneList>("zoneList")->zonePicked(zoneId(zoneKind));
    find("zonePanel")->setFocus();
}

QString VisitPageTest::echoOf(const char* field) const
{
    return find<QLineEdit>(field)->accessibleDescription(); // what is written beside it is said to screen readers too
}

QString VisitPageTest::message() const
{
    auto* label = find<QLabel>("visitMessage");
    return label->isVisible() ? label->text() : QString();
}

UnitRecord VisitPageTest::record() const
{
    return m_store->records().unitRecord(m_unit);
}

ZoneId VisitPageTest::zoneId(const char* zoneKind) const
{
    for (const Part& part : record().parts) {
        for (const Zone& zone : part.zones) {
            if (zone.kind == zoneKind && !part.removedOn)
                return zone.id;
        }
    }
    ADD_FAILURE() << "no such zone: " << zoneKind;
    return {};
}

std::optional<Finding> VisitPageTest::finding(const char* zoneKind, Phase phase) const
{
    const ZoneId zone = zoneId(zoneKind);
    for (const Finding& one : standing(record().findings)) {
        if (one.visitId == m_visit && one.zoneId == zone && one.phase == phase)
            return one;
    }
    return std::nullopt;
}

} // namespace padside::test
