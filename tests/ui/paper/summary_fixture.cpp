// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/ui/paper/summary_fixture.h"

#include "resources/resources.h"

#include <QPainter>

#include <algorithm>
#include <stdexcept>

namespace padside::test {

namespace {

struct PartZones
{
    const char* part;
    std::vector<std::string> zones;
};

/// 25 zones whose codes differ from each other, so that the builder can tell them apart.
const std::vector<PartZones>& parts()
{
    static const std::vector<PartZones> all{
        {"suction-accumulator", {"crown", "shell", "bottom", "joints", "strap", "jacket-edge"}},
        {"compressor", {"compressor-a", "compressor-b", "compressor-c"}},
        {"fan-motor", {"fan-motor-a", "fan-motor-b", "fan-motor-c", "fan-motor-d"}},
        {"contactor", {"contactor-a", "contactor-b"}},
        {"run-capacitor", {"run-capacitor-a", "run-capacitor-b"}},
        {"base-pan", {"base-pan-a", "base-pan-b", "base-pan-c", "base-pan-d"}},
        {"cabinet", {"cabinet-a", "cabinet-b"}},
        {"disconnect", {"disconnect-a", "disconnect-b"}}};
    return all;
}

void gradeAll(RecordBuilder& unit, const std::vector<std::pair<std::string, int>>& exceptions)
{
    for (const PartZones& part : parts()) {
        for (const std::string& zone : part.zones) {
            const auto found = std::ranges::find(exceptions, zone, &std::pair<std::string, int>::first);
            const int grade = found == exceptions.end() ? 1 : found->second;
            if (grade == 0)
                unit.notSeen(zone, NotSeenReason::covered);
            else
                unit.graded(zone, grade);
        }
    }
}

void addReadings(RecordBuilder& unit, double change)
{
    unit.read("suction-pressure", 468843 + change, QuantityKind::gaugePressure, "psig");
    unit.read("liquid-pressure", 1150000 + change, QuantityKind::gaugePressure, "psig");
    unit.read("suction-line-temperature", 285.4, QuantityKind::temperature, "degC");
    unit.read("liquid-line-temperature", 299.2, QuantityKind::temperature, "degC");
    unit.read("outdoor-air", 298.15, QuantityKind::temperature, "degC");
    unit.read("compressor-current", 7.4, QuantityKind::current, "A");
    unit.read("fan-current", 0.9, QuantityKind::current, "A");
    unit.read("capacitance-compressor", 41.2e-6, QuantityKind::capacitance, "uF");
}

void addPhoto(UnitRecord& record, std::size_t visit, ZoneId zone, Phase phase)
{
    Photo photo;
    photo.id = PhotoId(UuidBytes{static_cast<std::uint8_t>(record.photos.size() + 1)});
    photo.unitId = record.unit.id;
    photo.visitId = record.visits[visit].id;
    photo.on = record.visits[visit].on;
    photo.zoneId = zone;
    photo.phase = phase;
    record.photos.push_back(photo);
}

} // namespace

const Catalogue& shipped()
{
    static const auto catalogue = Catalogue::load(shippedCatalogue());
    if (!catalogue)
        throw std::runtime_error(say(catalogue.error().what));
    return *catalogue;
}

UnitRecord ordinaryRecord()
{
    RecordBuilder unit = aUnit("HB-03");
    unit.installed("2011-06-14");
    for (const PartZones& part : parts())
        unit.withPart(part.part, part.zones, "2011-06-14");
    unit.visit("2025-05-06");
    gradeAll(unit,
             {{"crown", 2}, {"bottom", 3}, {"strap", 2}, {"base-pan-b", 3}, {"contactor-a", 3}, {"cabinet-b", 3}});
    addReadings(unit, 0);
    unit.visit("2025-10-09", VisitReason::fall);
    gradeAll(unit,
             {{"crown", 2},
              {"bottom", 3},
              {"strap", 3},
              {"base-pan-b", 3},
              {"contactor-a", 3},
              {"cabinet-b", 3},
              {"shell", 0}});
    addReadings(unit, 9000);
    unit.visit("2026-05-04");
    gradeAll(unit,
             {{"crown", 3},
              {"bottom", 4},
              {"strap", 3},
              {"base-pan-b", 4},
              {"contactor-a", 3},
              {"cabinet-b", 3},
              {"joints", 0},
              {"fan-motor-a", 2}});
    unit.graded("base-pan-b", 2, Phase::asLeft).noted("Slots raked out, water runs off.");
    addReadings(unit, -21000);
    unit.treated("base-pan-b", TreatmentKind::clean);
    unit.treated("bottom", TreatmentKind::brushAndCoat, "zinc-free primer, two coats");
    unit.treated("fan-motor-a", TreatmentKind::lubricate, "turbine oil");
    UnitRecord record = unit.build();

    record.site.address = "4 Quay Street, Saltmouth";
    record.unit.maker = "Brightwater";
    record.unit.refrigerant = "R-22"; // the readings above are of it
    record.unit.model = "BW-36C";
    record.unit.serial = "11-20457";
    record.unit.place = "north wall, beside the dryer vent";
    Visit& visit = record.visits.back();
    visit.conditions = {291.15, 0.62, Sky::cloudy, Running::cooling};
    visit.note = "Customer reports a rattle on windy nights; two louvre screws were missing and have been put back.";
    record.readings[16].value.typed = "65 psig";
    record.treatments[1].dryBy
        = Instant{visit.on + std::chrono::hours(14) + std::chrono::minutes(30), std::chrono::minutes(120)};
    for (const char* zone : {"crown", "bottom", "strap"})
        addPhoto(record, 1, unit.zone(zone), Phase::asFound);
    for (const char* zone : {"crown", "bottom", "strap", "cabinet-a"})
        addPhoto(record, 2, unit.zone(zone), Phase::asFound);
    addPhoto(record, 2, unit.zone("base-pan-b"), Phase::asFound);
    addPhoto(record, 2, unit.zone("base-pan-b"), Phase::asLeft);
    return record;
}

UnitRecord recordWithChanges(int changes)
{
    RecordBuilder unit = aUnit("BIG-01");
    std::vector<std::string> zones;
    zones.reserve(static_cast<std::size_t>(changes));
    for (int i = 0; i < changes; ++i)
        zones.push_back("zone " + std::to_string(1000 + i));
    unit.withPart("cabinet", zones);
    unit.visit("2025-05-06");
    for (const std::string& zone : zones)
        unit.graded(zone, 2);
    unit.visit("2026-05-04");
    for (const std::string& zone : zones)
        unit.graded(zone, 3);
    return unit.build();
}

SummaryInput summaryOf(UnitRecord record, int flags, int checks)
{
    const VisitId visit = record.visits.back().id;
    const Date on = record.visits.back().on;
    UnitReview review;
    for (int i = 0; i < flags; ++i) {
        Flag flag;
        flag.severity = i == 0 ? Severity::act : (i < 3 ? Severity::plan : Severity::look);
        flag.sentence
            = Sentence{"Suction accumulator, bottom: grade {0} for the first time, one grade worse in {1} months.",
                       {std::int64_t{4}, std::int64_t{7 + i}}};
        flag.clears = Sentence{"a grade of 3 or better after work, seen at a later visit.", {}};
        review.flags.push_back(flag);
    }
    for (int i = 0; i < checks; ++i) {
        Check check;
        check.what = Sentence{"Suction accumulator, bottom: look again, number {0}", {std::int64_t{i}}};
        check.earliest = addMonths(on, 4);
        check.latest = addMonths(on, 6);
        check.conditions = {Condition::dry, Condition::off};
        check.why = Sentence{"It was damp today; what lies under the water was not seen.", {}};
        review.checks.push_back(check);
    }
    const UnitForecast forecast = unitForecast(record, shipped(), OutlookModel(shipped()), on);
    return SummaryInput{std::move(record),
                        review,
                        visit,
                        shipped(),
                        plainEnglish(),
                        drawnPhoto,
                        QStringLiteral("Breakwater Cooling and Heating"),
                        PaperSize::a4,
                        on,
                        forecast};
}

QImage drawnPhoto(PhotoId id)
{
    QImage image(640, 480, QImage::Format_RGB32);
    const int shade = 60 + 12 * id.bytes()[0];
    image.fill(QColor(shade, shade, 120));
    QPainter painter(&image);
    painter.setBrush(QColor(0xa3, 0x59, 0x26));
    painter.drawEllipse(QPointF(320, 240), 40.0 + 10 * id.bytes()[0], 60);
    return image;
}

} // namespace padside::test
