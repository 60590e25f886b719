// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "app/answer.h"
#include "app/commands/commands.h"
#include "app/commands/of_file.h"
#include "core/ledger/cylinder_ledger.h"
#include "core/ledger/unit_ledger.h"
#include "core/store/record_reader.h"
#include "core/store/site_book.h"

#include <CLI/CLI.hpp>
#include <memory>

namespace padside {

namespace {

using Row = nlohmann::ordered_json;

template <typename Value> Row figureOrNull(const std::optional<Value>& value)
{
    return value ? Row(*value) : Row(nullptr);
}

std::string joined(const std::vector<Sentence>& sentences)
{
    std::string text;
    for (const Sentence& sentence : sentences)
        text += (text.empty() ? "" : " ") + say(sentence);
    return text;
}

Row rowOf(const UnitLedger& ledger, const UnitRecord& record)
{
    const LedgerDay* last = ledger.lastTopUp();
    return {{"of", "unit"},
            {"name", record.unit.tag},
            {"site", record.site.name},
            {"refrigerant", record.unit.refrigerant},
            {"in_kg", ledger.addedKg},
            {"recovered_kg", ledger.recoveredKg},
            {"lost_kg", ledger.lostKg},
            {"net_kg", ledger.netKg()},
            {"full_charge_kg", figureOrNull(ledger.fullChargeKg)},
            {"last_top_up", last != nullptr ? Row(isoText(last->on)) : Row(nullptr)},
            {"leak_rate_annualizing", last != nullptr ? figureOrNull(last->annualized) : Row(nullptr)},
            {"leak_rate_rolling", last != nullptr ? figureOrNull(last->rolling) : Row(nullptr)},
            {"leak_rate_rolling_today", figureOrNull(ledger.rollingToday)},
            {"limit", ledger.limit ? Row(ledger.limit->rate) : Row(nullptr)},
            {"limit_force", ledger.limit ? Row(std::string(codeOf(ledger.limit->force))) : Row(nullptr)},
            {"limit_source", ledger.limit ? Row(ledger.limit->source) : Row(nullptr)},
            {"over_limit", ledger.isOverLimit()},
            {"says", joined(ledgerSentences(ledger))}};
}

Row rowOf(const CylinderLine& line)
{
    return {{"of", "cylinder"},
            {"name", line.cylinder.empty() ? "(not noted)" : line.cylinder},
            {"refrigerant", line.refrigerant},
            {"out_of_cylinder_kg", line.outKg},
            {"into_cylinder_kg", line.intoKg},
            {"units", line.units},
            {"first", isoText(line.first)},
            {"last", isoText(line.last)},
            {"says", say(cylinderSentence(line))}};
}

/// Figures to two decimals, for the table only.
void addShown(Row& row)
{
    const auto shown = [&row](const char* key) {
        const auto cell = row.find(key);
        return cell != row.end() && cell->is_number() ? plainEnglish().number(cell->get<double>(), 2) : std::string();
    };
    const bool unit = row.at("of") == "unit";
    row["shown_in"] = shown(unit ? "in_kg" : "out_of_cylinder_kg");
    row["shown_recovered"] = shown(unit ? "recovered_kg" : "into_cylinder_kg");
    row["shown_lost"] = shown("lost_kg");
}

int printLedger(const AskedOfFile& words, const CommandSurroundings& surroundings)
{
    const auto store = Store::open(QString::fromStdString(words.file), Store::Access::readOnly);
    const Catalogue catalogue = catalogueFor(*store, surroundings);
    const Date day = dayFor(words.on, surroundings.now());
    Answer answer{{{"of", "OF"},
                   {"name", "NAME"},
                   {"refrigerant", "REFRIGERANT"},
                   {"shown_in", "IN UNITS, KG"},
                   {"shown_recovered", "RECOVERED"},
                   {"shown_lost", "LOST"},
                   {"says", "WHAT IT SAYS"}},
                  {"of",
                   "name",
                   "site",
                   "refrigerant",
                   "in_kg",
                   "recovered_kg",
                   "lost_kg",
                   "net_kg",
                   "full_charge_kg",
                   "last_top_up",
                   "leak_rate_annualizing",
                   "leak_rate_rolling",
                   "leak_rate_rolling_today",
                   "limit",
                   "limit_force",
                   "limit_source",
                   "over_limit",
                   "out_of_cylinder_kg",
                   "into_cylinder_kg",
                   "units",
                   "first",
                   "last",
                   "says"},
                  {},
                  "No refrigerant was put in or taken out up to " + isoText(day) + "."};
    // Retired units too, unlike other commands: what was recovered from them is still in a cylinder.
    const std::vector<Unit> units = words.unit.empty() ? store->sites().units() : unitsFor(*store, words.unit);
    CylinderLedger cylinders;
    for (const Unit& unit : units) {
        const UnitRecord record = store->records().unitRecord(unit.id);
        const UnitLedger ledger = unitLedger(record, catalogue, day);
        if (!ledger.days.empty() || !words.unit.empty())
            answer.rows.push_back(rowOf(ledger, record));
        cylinders.take(record, day);
    }
    for (const CylinderLine& line : cylinders.lines())
        answer.rows.push_back(rowOf(line));
    if (words.form == AnswerForm::table) {
        for (Row& row : answer.rows)
            addShown(row);
    }
    write(answer, words.form, surroundings.out);
    return exitDone;
}

} // namespace

void addLedgerCommand(CLI::App& app, Command& chosen)
{
    const auto words = std::make_shared<AskedOfFile>();
    CLI::App* command
        = app.add_subcommand("ledger", "Refrigerant by unit and by cylinder: in, recovered, lost, leak rates, limits");
    addAskedOfFile(*command, *words, {AnswerForm::table, AnswerForm::json, AnswerForm::csv});
    command->callback([words, &chosen] {
        chosen = [words](const CommandSurroundings& surroundings) { return printLedger(*words, surroundings); };
    });
}

} // namespace padside
