// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "app/commands/commands.h"
#include "core/quantity/problem.h"
#include "core/quantity/quantity_kind.h"
#include "core/store/store_error.h"

#include <functional>
#include <nlohmann/json.hpp>
#include <string>
#include <utility>

namespace padside {

/// What a topic of `padside calc` answers; throws StoreError for what can't be read or used.
using CalcAnswer = std::function<nlohmann::ordered_json()>;

/// A topic without options yet; when it is chosen, what `answer` gives is printed as JSON.
CLI::App* addTopic(CLI::App& calc, Command& chosen, const std::string& name, const std::string& about,
                   CalcAnswer answer);

/// What a Result holds, or its problem thrown to the one place where a command's problems are said.
template <typename T> T orThrow(Result<T> result)
{
    if (!result)
        throw StoreError(result.error());
    return *std::move(result);
}

/// The SI value of what was typed behind `option` ("--line 52F"); throws StoreError with a sentence that names the
/// option where the text has no unit, an unknown one, or is no number.
[[nodiscard]] double typedSi(const std::string& option, const std::string& text, QuantityKind kind);

/// A plain number without a unit behind `option`; as typedSi().
[[nodiscard]] double typedNumber(const std::string& option, const std::string& text);

/// °C of a temperature in K, for answers.
[[nodiscard]] double inCelsius(double temperatureK);

/// Each adds the topics of one subject.
void addAirTopics(CLI::App& calc, Command& chosen); ///< air
void addCorrosionTopics(CLI::App& calc, Command& chosen); ///< corrosivity, weather, loss, rust-grade, walls
void addRefrigerantTopics(CLI::App& calc, Command& chosen); ///< saturation, superheat, subcooling, target-superheat
void addOutlookTopics(CLI::App& calc, Command& chosen); ///< belief, rates
void addSeriesTopics(CLI::App& calc, Command& chosen); ///< trend, trips
void addWorthTopics(CLI::App& calc, Command& chosen); ///< annuity

} // namespace padside
