// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/quantity/date.h"
#include "core/record/coded.h"
#include "core/record/id.h"

#include <optional>
#include <string>

namespace padside {

enum class VisitReason { spring, fall, callOut };

[[nodiscard]] constexpr auto codesOf(VisitReason)
{
    return std::array{Coded<VisitReason>{VisitReason::spring, "spring", "spring"},
                      Coded<VisitReason>{VisitReason::fall, "fall", "fall"},
                      Coded<VisitReason>{VisitReason::callOut, "call-out", "call-out"}};
}

enum class Running { unknown, off, cooling, heating, defrosting };

[[nodiscard]] constexpr auto codesOf(Running)
{
    return std::array{Coded<Running>{Running::unknown, "unknown", "not noted"},
                      Coded<Running>{Running::off, "off", "off"},
                      Coded<Running>{Running::cooling, "cooling", "running, cooling"},
                      Coded<Running>{Running::heating, "heating", "running, heating"},
                      Coded<Running>{Running::defrosting, "defrosting", "running, defrosting"}};
}

enum class Sky { unknown, clear, cloudy, fog, rain, snow };

[[nodiscard]] constexpr auto codesOf(Sky)
{
    return std::array{Coded<Sky>{Sky::unknown, "unknown", "not noted"},
                      Coded<Sky>{Sky::clear, "clear", "clear"},
                      Coded<Sky>{Sky::cloudy, "cloudy", "cloudy"},
                      Coded<Sky>{Sky::fog, "fog", "fog"},
                      Coded<Sky>{Sky::rain, "rain", "rain"},
                      Coded<Sky>{Sky::snow, "snow", "snow"}};
}

/// The day's circumstances.
struct Conditions
{
    std::optional<double> airTemperatureK;
    std::optional<double> relativeHumidity; ///< 0..1
    Sky sky = Sky::unknown;
    Running running = Running::unknown;

    friend bool operator==(const Conditions&, const Conditions&) = default;
};

/// One attendance at one unit. Open until it is closed; then it does not change.
struct Visit
{
    VisitId id;
    UnitId unitId;
    Date on{};
    VisitReason reason = VisitReason::spring;
    std::string technician;
    Conditions conditions;
    std::string note;
    Instant openedAt;
    std::optional<Instant> closedAt;

    [[nodiscard]] bool isOpen() const { return !closedAt; }

    friend bool operator==(const Visit&, const Visit&) = default;
};

} // namespace padside
