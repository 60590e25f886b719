// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>

#include <string>

namespace padside {

class Catalogue;
class LocalSpeaker;

/// What a person should know of the refrigerant somebody wrote down ("R-410A", "r410a"): its safety class and warming
/// potential, on a line of its own the usual caution where it burns, and that the catalogue does not know it where it
/// does not. Empty where nothing is written.
[[nodiscard]] QString refrigerantWords(const std::string& written, const Catalogue& catalogue,
                                       const LocalSpeaker& speaker);

} // namespace padside
