// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/quantity/problem.h"

#include <nlohmann/json.hpp>
#include <span>
#include <string>

namespace padside {

/// Our catalogue texts laid over one another in order, by JSON merge patch (RFC 7396). A text that is not JSON, is not
/// an object, names one field twice, or is nested too deep is a Problem that says which text it is.
[[nodiscard]] Result<nlohmann::ordered_json> shippedCatalogueText(std::span<const std::string> shipped);

/// The person's own changes laid over them, by the same rules. An empty `ownChanges` changes nothing.
[[nodiscard]] Result<nlohmann::ordered_json> withOwnChanges(nlohmann::ordered_json ours, const std::string& ownChanges);

/// Both, for who needs only the result.
[[nodiscard]] Result<nlohmann::ordered_json> mergedCatalogueText(std::span<const std::string> shipped,
                                                                 const std::string& ownChanges);

} // namespace padside
