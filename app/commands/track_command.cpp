// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "app/answer.h"
#include "app/commands/commands.h"
#include "app/commands/of_file.h"
#include "core/store/forecast_book.h"
#include "core/store/record_reader.h"
#include "core/store/site_book.h"
#include "core/track/track_record.h"
#include "core/track/track_words.h"

#include <CLI/CLI.hpp>
#include <memory>

namespace padside {

namespace {

using TrackRow = nlohmann::ordered_json;

const std::vector<std::string> trackKeys{"of",          "forecasts", "verdict",       "horizon_months", "from",
                                         "to",          "settled",   "zones",         "spent",          "expected",
                                         "waiting",     "untold",    "mean_forecast", "observed",       "low",
                                         "high",        "brier",     "brier_of_base", "brier_skill",    "log_score",
                                         "log_of_base", "log_skill", "base_rate",     "standard_error", "deviation",
                                         "unit",        "said_on",   "chance",        "told_on",        "says"};

TrackRow numberOrNull(const std::optional<double>& number)
{
    return number ? TrackRow(*number) : TrackRow(nullptr);
}

TrackRow emptyRow(const std::string& of, ForecastSet forecasts)
{
    TrackRow row;
    for (const std::string& key : trackKeys)
        row[key] = nullptr;
    row["of"] = of;
    row["forecasts"] = codeOf(forecasts);
    row["says"] = "";
    return row;
}

void putScores(TrackRow& row, const Scores& scores)
{
    row["settled"] = scores.settled;
    row["zones"] = scores.zones;
    row["waiting"] = scores.waiting;
    row["untold"] = scores.untold;
    if (scores.settled == 0)
        return;
    row["spent"] = scores.spent;
    row["expected"] = scores.expected;
    row["brier"] = scores.brier;
    row["brier_of_base"] = scores.baseBrier;
    row["brier_skill"] = numberOrNull(scores.brierSkill);
    row["log_score"] = scores.logScore;
    row["log_of_base"] = scores.baseLog;
    row["log_skill"] = numberOrNull(scores.logSkill);
    row["base_rate"] = scores.base;
    row["standard_error"] = scores.standardError;
    row["deviation"] = numberOrNull(scores.deviation);
}

TrackRow verdictRow(const TrackVerdict& verdict, ForecastSet forecasts, const TrackFigures& track)
{
    TrackRow row = emptyRow("verdict", forecasts);
    row["verdict"] = codeOf(verdict.kind);
    if (verdict.horizon)
        row["horizon_months"] = horizonMonths[*verdict.horizon];
    if (track.keptSince)
        row["said_on"] = isoText(*track.keptSince);
    row["says"] = say(verdict.sentence);
    return row;
}

void addVerdicts(const TrackSummary& track, std::vector<TrackRow>& rows)
{
    TrackRow& row = rows.emplace_back(verdictRow(track.verdict, track.judged(), track.of(track.judged())));
    std::string says = row["says"];
    for (const auto* more : {&track.beside, &track.verdict.reasons}) {
        for (const Sentence& sentence : *more)
            says += ' ' + say(sentence);
    }
    row["says"] = says;
    if (track.learning)
        rows.push_back(verdictRow(track.learning->verdictBefore, ForecastSet::before, track.learning->before));
}

void addHorizons(const TrackFigures& track, ForecastSet forecasts, std::vector<TrackRow>& rows)
{
    for (std::size_t horizon = 0; horizon < horizonCount; ++horizon) {
        TrackRow row = emptyRow("horizon", forecasts);
        row["horizon_months"] = horizonMonths[horizon];
        putScores(row, track.horizons[horizon]);
        row["says"] = "within " + horizonWord(horizon).english;
        rows.push_back(std::move(row));
    }
}

void addTenths(const TrackFigures& track, ForecastSet forecasts, std::vector<TrackRow>& rows)
{
    for (std::size_t horizon = 0; horizon < horizonCount; ++horizon) {
        const auto& lines = track.horizons[horizon].reliability;
        for (std::size_t tenth = 0; tenth < lines.size(); ++tenth) {
            const ReliabilityLine& line = lines[tenth];
            if (line.count == 0)
                continue;
            TrackRow row = emptyRow("tenth", forecasts);
            row["horizon_months"] = horizonMonths[horizon];
            row["from"] = static_cast<double>(tenth) / 10;
            row["to"] = static_cast<double>(tenth + 1) / 10;
            row["settled"] = line.count;
            row["spent"] = line.spent;
            row["expected"] = line.meanForecast * static_cast<double>(line.count);
            row["mean_forecast"] = line.meanForecast;
            row["observed"] = line.observed;
            row["low"] = line.within.low;
            row["high"] = line.within.high;
            row["says"] = say({"said {0}, came {1} ({2} to {3})",
                               {Chance{line.meanForecast}, Chance{line.observed}, Chance{line.within.low},
                                Chance{line.within.high}}});
            rows.push_back(std::move(row));
        }
    }
}

void addRanges(const TrackFigures& track, ForecastSet forecasts, std::vector<TrackRow>& rows)
{
    for (const RangeEnd& end : track.ends) {
        TrackRow row = emptyRow("range-end", forecasts);
        row["chance"] = end.chance;
        putScores(row, end.scores);
        row["says"] = say({"spent by the day said with a chance of {0}", {Chance{end.chance}}});
        rows.push_back(std::move(row));
    }
    TrackRow row = emptyRow("range", forecasts);
    row["settled"] = track.range.settled();
    row["spent"] = track.range.inside;
    row["expected"] = 0.8 * static_cast<double>(track.range.settled());
    row["waiting"] = track.range.waiting;
    row["untold"] = track.range.untold;
    row["says"] = std::to_string(track.range.inside) + " spent within the range of 10 to 90 %, "
        + std::to_string(track.range.before) + " before it, " + std::to_string(track.range.after) + " not yet after it";
    rows.push_back(std::move(row));
}

void addMisses(const TrackFigures& track, ForecastSet forecasts, std::vector<TrackRow>& rows)
{
    for (const Miss& miss : track.misses) {
        TrackRow row = emptyRow("miss", forecasts);
        row["horizon_months"] = horizonMonths[miss.horizon];
        row["unit"] = miss.tag;
        row["said_on"] = isoText(miss.on);
        row["chance"] = miss.chance;
        row["told_on"] = isoText(miss.toldOn);
        row["observed"] = miss.spent ? 1 : 0;
        row["says"] = miss.tag + ": " + say(miss.sentence);
        rows.push_back(std::move(row));
    }
}

/// Those there is something to tell of.
std::vector<ForecastSet> setsOf(const TrackSummary& track)
{
    if (track.all.forecasts == 0)
        return {};
    if (!track.learning)
        return {ForecastSet::all};
    return {ForecastSet::all, ForecastSet::inUse, ForecastSet::before};
}

/// Figures as a table shows them.
void addShownFigures(TrackRow& row)
{
    const auto show = [&row](const char* key, int decimals) {
        const TrackRow& cell = row.at(key);
        row[std::string("shown_") + key] = cell.is_number() ? showNumber(cell.get<double>(), decimals) : std::string();
    };
    show("expected", 1);
    show("brier", 4);
    show("brier_of_base", 4);
}

int printTrack(const AskedOfFile& words, const CommandSurroundings& surroundings)
{
    const auto store = Store::open(QString::fromStdString(words.file), Store::Access::readOnly);
    const Catalogue catalogue = catalogueFor(*store, surroundings);
    const Date day = dayFor(words.on, surroundings.now());
    // Retired units too, unlike other commands: what was said of them was said.
    const std::vector<Unit> units = words.unit.empty() ? store->sites().units() : unitsFor(*store, words.unit);
    TrackRecord record;
    for (const Unit& unit : units)
        record.add(store->records().unitRecord(unit.id), store->forecasts().of(unit.id), catalogue, day);
    const TrackSummary track = record.summary(TrackLimits::of(catalogue));

    Answer answer{{{"of", "OF"},
                   {"forecasts", "FORECASTS"},
                   {"horizon_months", "MONTHS"},
                   {"settled", "SETTLED"},
                   {"spent", "SPENT"},
                   {"shown_expected", "EXPECTED"},
                   {"shown_brier", "BRIER"},
                   {"shown_brier_of_base", "OF SHARE"},
                   {"says", "WHAT IT SAYS"}},
                  trackKeys,
                  {},
                  ""};
    addVerdicts(track, answer.rows);
    for (const ForecastSet set : setsOf(track)) {
        const TrackFigures& figures = track.of(set);
        addHorizons(figures, set, answer.rows);
        addTenths(figures, set, answer.rows);
        addRanges(figures, set, answer.rows);
        addMisses(figures, set, answer.rows);
    }
    if (words.form == AnswerForm::table) {
        for (TrackRow& row : answer.rows)
            addShownFigures(row);
    }
    write(answer, words.form, surroundings.out);
    return exitDone;
}

} // namespace

void addTrackCommand(CLI::App& app, Command& chosen)
{
    const auto words = std::make_shared<AskedOfFile>();
    CLI::App* command = app.add_subcommand(
        "track", "Whether old forecasts were right: those kept at each closing against what later visits found");
    addAskedOfFile(*command, *words, {AnswerForm::table, AnswerForm::json, AnswerForm::csv});
    command->callback([words, &chosen] {
        chosen = [words](const CommandSurroundings& surroundings) { return printTrack(*words, surroundings); };
    });
}

} // namespace padside
