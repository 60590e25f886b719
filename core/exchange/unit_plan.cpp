// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/exchange/unit_plan.h"

#include "core/catalogue/fit_out.h"
#include "core/record/installed_day.h"

#include <algorithm>
#include <cctype>
#include <map>

namespace padside {

namespace {

constexpr std::size_t rowsBetweenTellings = 100;

/// Without blanks at its ends; how people write a name twice must not make two of it.
std::string trimmed(std::string_view text)
{
    constexpr std::string_view blanks = " \t\r\n";
    const auto begin = text.find_first_not_of(blanks);
    if (begin == std::string_view::npos)
        return {};
    return std::string(text.substr(begin, text.find_last_not_of(blanks) - begin + 1));
}

std::string folded(std::string text)
{
    std::ranges::transform(text, text.begin(),
                           [](unsigned char byte) { return static_cast<char>(std::tolower(byte)); });
    return text;
}

bool same(const std::string& one, std::string_view other)
{
    return folded(one) == folded(std::string(other));
}

template <typename Range, typename Say> std::string listed(const Range& range, const Say& saying)
{
    std::string text;
    for (const auto& one : range)
        text += (text.empty() ? "" : ", ") + std::string(saying(one));
    return text;
}

class Planner
{
public:
    Planner(const UnitColumns& columns, const UnitPlanBasis& basis)
        : m_columns(columns)
        , m_basis(basis)
    {
        for (const Site& site : basis.sites)
            m_sites.insert(folded(trimmed(site.name)));
    }

    PlannedUnit planned(const CsvRow& row)
    {
        PlannedUnit plan;
        plan.line = row.line;
        plan.unit.maker = value(row, UnitField::maker);
        plan.unit.model = value(row, UnitField::model);
        plan.unit.serial = value(row, UnitField::serial);
        plan.unit.place = value(row, UnitField::place);
        plan.unit.refrigerant = value(row, UnitField::refrigerant);
        plan.unit.note = value(row, UnitField::note);
        plan.address = value(row, UnitField::address);
        readSite(row, plan);
        readTag(row, plan);
        readKind(row, plan);
        readMetering(row, plan);
        readInstalled(row, plan);
        if (plan.good())
            m_lineOfTag.emplace(plan.unit.tag, row.line);
        return plan;
    }

private:
    [[nodiscard]] std::string value(const CsvRow& row, UnitField field) const
    {
        const auto column = m_columns.find(field);
        if (column == m_columns.end() || column->second >= row.cells.size())
            return {};
        return trimmed(row.cells[column->second]);
    }

    static void complain(PlannedUnit& plan, const char* pattern, std::vector<Argument> more = {})
    {
        std::vector<Argument> arguments{static_cast<std::int64_t>(plan.line)};
        std::ranges::move(more, std::back_inserter(arguments));
        plan.problems.push_back(Sentence{pattern, std::move(arguments)});
    }

    void readSite(const CsvRow& row, PlannedUnit& plan) const
    {
        plan.site = value(row, UnitField::site);
        if (plan.site.empty())
            plan.site = trimmed(m_basis.usualSite);
        if (plan.site.empty())
            complain(plan, PADSIDE_SAY("Row {0}: no site is named."));
        plan.newSite = !plan.site.empty() && !m_sites.contains(folded(plan.site));
    }

    void readTag(const CsvRow& row, PlannedUnit& plan) const
    {
        plan.unit.tag = value(row, UnitField::tag);
        if (plan.unit.tag.empty())
            return complain(plan, PADSIDE_SAY("Row {0}: there is no tag."));
        if (m_basis.tags.contains(plan.unit.tag))
            return complain(plan, PADSIDE_SAY("Row {0}: the tag {1} is taken by a unit in the record."),
                            {plan.unit.tag});
        if (const auto before = m_lineOfTag.find(plan.unit.tag); before != m_lineOfTag.end())
            complain(plan, PADSIDE_SAY("Row {0}: the tag {1} is in row {2} already."),
                     {plan.unit.tag, static_cast<std::int64_t>(before->second)});
    }

    /// What `english` is called in the reader's language.
    [[nodiscard]] std::string readersWord(std::string_view english) const
    {
        const auto word = m_basis.readersWords.find(std::string(english));
        return word == m_basis.readersWords.end() ? std::string(english) : word->second;
    }

    [[nodiscard]] bool called(const std::string& text, std::string_view english) const
    {
        return same(text, english) || same(text, readersWord(english));
    }

    void readKind(const CsvRow& row, PlannedUnit& plan) const
    {
        const std::string text = value(row, UnitField::kind);
        const auto& kinds = m_basis.catalogue.unitKinds();
        const auto kind = std::ranges::find_if(kinds, [&](const UnitKind& one) {
            return same(text, one.code) || called(text, one.name)
                || std::ranges::any_of(one.alsoCalled, [&](const std::string& other) { return same(text, other); });
        });
        if (kind != kinds.end()) {
            plan.unit.kind = kind->code;
            return;
        }
        const std::string known = listed(kinds, [this](const UnitKind& one) { return readersWord(one.name); });
        if (text.empty())
            complain(plan, PADSIDE_SAY("Row {0}: there is no kind. Known are: {1}."), {known});
        else
            complain(plan, PADSIDE_SAY("Row {0}: the kind “{1}” is not known. Known are: {2}."), {text, known});
    }

    void readMetering(const CsvRow& row, PlannedUnit& plan) const
    {
        const std::string text = value(row, UnitField::metering);
        if (text.empty())
            return;
        const auto codes = codesOf(Metering{});
        const auto known = std::ranges::find_if(
            codes, [&](const auto& one) { return same(text, one.code) || called(text, one.word); });
        if (known != codes.end())
            plan.unit.metering = known->value;
        else
            complain(plan, PADSIDE_SAY("Row {0}: the metering “{1}” is not known. Known are: {2}."),
                     {text, listed(codes, [this](const auto& one) { return readersWord(one.word); })});
    }

    void readInstalled(const CsvRow& row, PlannedUnit& plan) const
    {
        const std::string text = value(row, UnitField::installed);
        if (text.empty())
            return;
        if (const Result<Date> day = readInstalledDay(text, m_basis.today))
            plan.unit.installedOn = *day;
        else
            complain(plan,
                     PADSIDE_SAY("Row {0}, installed: “{1}” can't be the day. Write it like 2008-06-14, 2008-06 "
                                 "or 2008, from 1900 to today."),
                     {text});
    }

    const UnitColumns& m_columns;
    const UnitPlanBasis& m_basis;
    std::set<std::string> m_sites;
    std::map<std::string, std::size_t> m_lineOfTag;
};

} // namespace

std::size_t UnitPlan::goodCount() const
{
    return static_cast<std::size_t>(std::ranges::count_if(rows, &PlannedUnit::good));
}

UnitPlan planUnits(const CsvSalvage& list, const UnitColumns& columns, const UnitPlanBasis& basis,
                   const std::function<bool(double)>& tell)
{
    UnitPlan plan;
    Planner planner(columns, basis);
    const std::vector<CsvRow>& rows = list.table.rows;
    for (std::size_t i = 0; i < rows.size(); ++i) {
        if (i % rowsBetweenTellings == 0 && !tell(static_cast<double>(i) / static_cast<double>(rows.size())))
            break;
        plan.rows.push_back(planner.planned(rows[i]));
    }
    for (const CsvFault& fault : list.faults) {
        PlannedUnit bad;
        bad.line = fault.line;
        bad.problems.push_back(fault.what);
        plan.rows.push_back(std::move(bad));
    }
    std::ranges::stable_sort(plan.rows, {}, &PlannedUnit::line);
    return plan;
}

NewRecords newRecords(const UnitPlan& plan, const UnitPlanBasis& basis, IdMaker& ids)
{
    NewRecords made;
    std::map<std::string, SiteId> sites;
    for (const Site& site : basis.sites)
        sites.emplace(folded(trimmed(site.name)), site.id);
    for (const PlannedUnit& row : plan.rows) {
        if (!row.good())
            continue;
        auto site = sites.find(folded(row.site));
        if (site == sites.end()) {
            Site fresh;
            fresh.id = ids.make<SiteId>();
            fresh.name = row.site;
            fresh.address = row.address;
            site = sites.emplace(folded(row.site), fresh.id).first;
            made.sites.push_back(std::move(fresh));
        }
        FittedUnit fitted{row.unit, {}};
        fitted.unit.id = ids.make<UnitId>();
        fitted.unit.siteId = site->second;
        fitted.parts = partsFor(fitted.unit, basis.catalogue, ids);
        made.units.push_back(std::move(fitted));
    }
    return made;
}

} // namespace padside
