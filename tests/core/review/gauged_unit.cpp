// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/core/review/gauged_unit.h"

#include "core/quantity/measure.h"

namespace padside::test {

namespace {

constexpr double millimetre = 1e-3;

RecordBuilder accumulator()
{
    RecordBuilder builder = aUnit("HB-01");
    builder.withPart("suction-accumulator", {"crown", "bottom"}, "2014-05-01");
    return builder;
}

UnitRecord measuredYearly(RecordBuilder builder, const std::string& readingKind, const std::vector<double>& values,
                          QuantityKind quantity, const std::string& unit, int grade)
{
    int year = 2024 - static_cast<int>(values.size());
    for (const double value : values) {
        builder.visit(std::to_string(year++) + "-10-10", VisitReason::fall).graded("bottom", grade);
        builder.read(readingKind, value, quantity, unit);
    }
    UnitRecord record = builder.build();
    for (Reading& reading : record.readings) {
        reading.partId = record.parts.front().id;
        reading.zoneId = record.parts.front().zones[1].id;
    }
    record.unit.nameplate.push_back({"minimum-wall", *parseMeasure("2.2 mm", QuantityKind::length)});
    return record;
}

std::vector<double> inMetres(std::vector<double> millimetres)
{
    for (double& value : millimetres)
        value *= millimetre;
    return millimetres;
}

} // namespace

UnitRecord measuredUnit(const std::string& readingKind, const std::vector<double>& values, QuantityKind quantity,
                        const std::string& unit, int grade)
{
    return measuredYearly(accumulator(), readingKind, values, quantity, unit, grade);
}

UnitRecord gaugedUnit(const std::vector<double>& millimetres, int grade)
{
    return measuredUnit("wall-thickness", inMetres(millimetres), QuantityKind::length, "mm", grade);
}

UnitRecord gaugedUnitWithCapacitor(const std::vector<double>& millimetres)
{
    RecordBuilder builder = accumulator();
    builder.withPart("run-capacitor", {"case"}, "2014-05-01", "fan");
    builder.visit("2023-10-09").graded("case", 4);
    return measuredYearly(std::move(builder), "wall-thickness", inMetres(millimetres), QuantityKind::length, "mm", 2);
}

} // namespace padside::test
