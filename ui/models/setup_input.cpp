// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/models/setup_input.h"

#include "core/record/installed_day.h"
#include "ui/models/record_book.h"
#include "ui/models/speaker.h"

#include <charconv>

namespace padside {

namespace {

constexpr double lowestSiteM = -430; // the shore of the Dead Sea
constexpr double highestSiteM = 5500; // above the highest towns
constexpr double coldestMeanK = 233.15;
constexpr double hottestMeanK = 313.15;
constexpr int weeksInAYear = 53; // ISO 8601

/// Lengths are usually shown in millimetres or inches: not how high a town lies.
const MeasuringUnit& altitudeUnit(const InputStyle& style)
{
    return *unitByCode(style.units.system == UnitSystem::metric ? "m" : "ft");
}

/// Reads one form and gathers what is wrong.
class SiteChecker
{
public:
    SiteChecker(const SiteInput& input, const Site& before, const InputStyle& style)
        : m_input(input)
        , m_shown(inputOf(before, style))
        , m_style(style)
        , m_checked{before, {}}
    {
    }

    CheckedSite check()
    {
        Site& site = m_checked.site;
        text(SiteField::name, site.name);
        text(SiteField::address, site.address);
        text(SiteField::contact, site.contact);
        text(SiteField::access, site.access);
        text(SiteField::note, site.note);
        if (site.name.empty())
            complain(SiteField::name, {PADSIDE_SAY("A site needs a name."), {}});
        altitude();
        air();
        weeks(SiteField::springFirst, SiteField::springLast, site.spring);
        weeks(SiteField::fallFirst, SiteField::fallLast, site.fall);
        return std::move(m_checked);
    }

private:
    void complain(SiteField field, Sentence why) { m_checked.problems.emplace(field, std::move(why)); }

    /// What was typed; nothing where the field was left alone.
    [[nodiscard]] std::optional<std::string> typed(SiteField field) const
    {
        const auto found = m_input.find(field);
        if (found == m_input.end())
            return std::nullopt;
        const QString now = found->second.trimmed();
        const auto before = m_shown.find(field);
        if (before != m_shown.end() && before->second == now)
            return std::nullopt;
        return now.toStdString();
    }

    void text(SiteField field, std::string& value) const
    {
        if (const auto now = typed(field))
            value = *now;
    }

    std::optional<double> measured(SiteField field, const std::string& now, const MeasuringUnit& unit, double low,
                                   double high)
    {
        const Result<Measure> value = parseMeasure(now, unit.kind, m_style.numbers, &unit);
        if (!value) {
            complain(field, value.error().what);
            return std::nullopt;
        }
        if (value->si < low || value->si > high) {
            complain(field,
                     {PADSIDE_SAY("This must lie between {0} and {1}."),
                      {showMeasure(low, unit, m_style.numbers), showMeasure(high, unit, m_style.numbers)}});
            return std::nullopt;
        }
        return value->si;
    }

    void altitude()
    {
        const auto now = typed(SiteField::altitude);
        if (!now)
            return;
        if (now->empty())
            m_checked.site.altitudeM = 0;
        else if (const auto value
                 = measured(SiteField::altitude, *now, altitudeUnit(m_style), lowestSiteM, highestSiteM))
            m_checked.site.altitudeM = *value;
    }

    void air()
    {
        SiteAir& air = m_checked.site.air;
        if (const auto now = typed(SiteField::temperature))
            air.temperatureK = now->empty()
                ? std::nullopt
                : measured(SiteField::temperature, *now, shownUnit(QuantityKind::temperature, m_style.units),
                           coldestMeanK, hottestMeanK);
        if (const auto now = typed(SiteField::humidity))
            air.relativeHumidity = now->empty()
                ? std::nullopt
                : measured(SiteField::humidity, *now, shownUnit(QuantityKind::ratio, m_style.units), 0, 1);
        deposition(SiteField::sulphurDioxide, air.sulphurDioxide);
        deposition(SiteField::chloride, air.chloride);
    }

    void deposition(SiteField field, std::optional<double>& value)
    {
        const auto now = typed(field);
        if (!now)
            return;
        value.reset();
        if (now->empty())
            return;
        const Result<double> number = parseNumber(*now, m_style.numbers);
        if (!number)
            complain(field, number.error().what);
        else if (*number < 0)
            complain(field, {PADSIDE_SAY("This can't be less than nothing."), {}});
        else
            value = *number;
    }

    void week(SiteField field, int& value)
    {
        const auto now = typed(field);
        if (!now)
            return;
        int number = 0;
        const auto read = std::from_chars(now->data(), now->data() + now->size(), number);
        const bool whole = read.ec == std::errc() && read.ptr == now->data() + now->size();
        if (now->empty())
            complain(
                field,
                {PADSIDE_SAY("A week is missing: write a number from 1 to 53, as calendars number them (ISO 8601)."),
                 {}});
        else if (!whole || number < 1 || number > weeksInAYear)
            complain(
                field,
                {PADSIDE_SAY("“{0}” is no week: write a number from 1 to 53, as calendars number them (ISO 8601)."),
                 {*now}});
        else
            value = number;
    }

    void weeks(SiteField first, SiteField last, SeasonWeeks& season)
    {
        week(first, season.first);
        week(last, season.last);
        if (!m_checked.problems.contains(first) && !m_checked.problems.contains(last) && season.last < season.first)
            complain(last,
                     {PADSIDE_SAY("The last week comes before the first, week {0}."),
                      {static_cast<std::int64_t>(season.first)}});
    }

    const SiteInput& m_input;
    SiteInput m_shown;
    const InputStyle& m_style;
    CheckedSite m_checked;
};

std::string valueIn(const UnitInput& input, UnitField field, const std::string& before)
{
    const auto found = input.find(field);
    return found == input.end() ? before : found->second.trimmed().toStdString();
}

} // namespace

InputStyle inputStyleOf(const RecordBook& book)
{
    return {book.numberStyle(), book.surroundings().units};
}

SiteInput inputOf(const Site& site, const InputStyle& style)
{
    const auto measure = [&](const std::optional<double>& si, const MeasuringUnit& unit) {
        return si ? shown(showMeasure(*si, unit, style.numbers)) : QString();
    };
    const auto number = [&](const std::optional<double>& value) {
        return value ? shown(showNumber(*value, 1, style.numbers)) : QString();
    };
    const std::optional<double> altitude = site.altitudeM == 0 ? std::nullopt : std::optional(site.altitudeM);
    return {{SiteField::name, shown(site.name)},
            {SiteField::address, shown(site.address)},
            {SiteField::contact, shown(site.contact)},
            {SiteField::access, shown(site.access)},
            {SiteField::altitude, measure(altitude, altitudeUnit(style))},
            {SiteField::temperature, measure(site.air.temperatureK, shownUnit(QuantityKind::temperature, style.units))},
            {SiteField::humidity, measure(site.air.relativeHumidity, shownUnit(QuantityKind::ratio, style.units))},
            {SiteField::sulphurDioxide, number(site.air.sulphurDioxide)},
            {SiteField::chloride, number(site.air.chloride)},
            {SiteField::springFirst, QString::number(site.spring.first)},
            {SiteField::springLast, QString::number(site.spring.last)},
            {SiteField::fallFirst, QString::number(site.fall.first)},
            {SiteField::fallLast, QString::number(site.fall.last)},
            {SiteField::note, shown(site.note)}};
}

CheckedSite checkedSite(const SiteInput& input, const Site& before, const InputStyle& style)
{
    return SiteChecker(input, before, style).check();
}

UnitInput inputOf(const Unit& unit)
{
    return {{UnitField::tag, shown(unit.tag)},
            {UnitField::kind, shown(unit.kind)},
            {UnitField::maker, shown(unit.maker)},
            {UnitField::model, shown(unit.model)},
            {UnitField::serial, shown(unit.serial)},
            {UnitField::place, shown(unit.place)},
            {UnitField::refrigerant, shown(unit.refrigerant)},
            {UnitField::metering, shown(codeOf(unit.metering))},
            {UnitField::installed, unit.installedOn ? shown(isoText(*unit.installedOn)) : QString()},
            {UnitField::note, shown(unit.note)}};
}

CheckedUnit checkedUnit(const UnitInput& input, const Unit& before, const std::set<std::string>& taken, Date today)
{
    CheckedUnit checked{before, {}};
    Unit& unit = checked.unit;
    unit.tag = valueIn(input, UnitField::tag, before.tag);
    unit.kind = valueIn(input, UnitField::kind, before.kind);
    unit.maker = valueIn(input, UnitField::maker, before.maker);
    unit.model = valueIn(input, UnitField::model, before.model);
    unit.serial = valueIn(input, UnitField::serial, before.serial);
    unit.place = valueIn(input, UnitField::place, before.place);
    unit.refrigerant = valueIn(input, UnitField::refrigerant, before.refrigerant);
    unit.note = valueIn(input, UnitField::note, before.note);
    unit.metering = fromCode<Metering>(valueIn(input, UnitField::metering, std::string(codeOf(before.metering))))
                        .value_or(before.metering);
    if (unit.tag.empty())
        checked.problems.emplace(UnitField::tag,
                                 Sentence{PADSIDE_SAY("A unit needs a tag: what you call it, like RT-1."), {}});
    else if (taken.contains(unit.tag))
        checked.problems.emplace(
            UnitField::tag,
            Sentence{PADSIDE_SAY("The tag {0} is taken by another unit: choose another one."), {unit.tag}});
    if (unit.kind.empty())
        checked.problems.emplace(UnitField::kind, Sentence{PADSIDE_SAY("Choose what kind of unit it is."), {}});
    const std::string installed
        = valueIn(input, UnitField::installed, before.installedOn ? isoText(*before.installedOn) : std::string());
    if (installed.empty()) {
        unit.installedOn.reset();
    } else if (const Result<Date> day = readInstalledDay(installed, today)) {
        unit.installedOn = *day;
    } else {
        checked.problems.emplace(UnitField::installed, day.error().what);
    }
    return checked;
}

} // namespace padside
