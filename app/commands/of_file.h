// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "app/answer.h"
#include "app/command_line.h"
#include "core/catalogue/catalogue.h"
#include "core/quantity/plain_english.h"
#include "core/review/unit_review.h"
#include "core/store/store.h"

#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace padside {

/// Our catalogue with the changes kept in this file laid over it. Where the two no longer fit (an update took away what
/// a change was about), ours alone, and `complain` is told why: a record is never locked away by a setting.
[[nodiscard]] Catalogue catalogueFor(Store& store, const std::function<void(const Sentence&)>& complain);

/// The same for a command: the complaint goes to its `err`.
[[nodiscard]] Catalogue catalogueFor(Store& store, const CommandSurroundings& surroundings);

/// What every command that looks at units on a day is asked.
struct AskedOfFile
{
    std::string file;
    std::string unit; ///< empty: all
    std::string on; ///< empty: today
    AnswerForm form = AnswerForm::table;
};

/// Adds FILE, --unit, --on and --as with these forms.
void addAskedOfFile(CLI::App& command, AskedOfFile& asked, const std::vector<AnswerForm>& forms);

/// The units a command is about: the one with this tag, or all that are not retired. A tag that is not there is refused
/// with a sentence that names some that are.
[[nodiscard]] std::vector<Unit> unitsFor(Store& store, const std::string& tag);

/// Reads "--on DATE"; without it, the date of `now`. A bad date throws StoreError (badInput).
[[nodiscard]] Date dayFor(const std::string& text, const Instant& now);

/// The name of a part and zone as people say it: "Suction accumulator, bottom".
[[nodiscard]] std::string placeName(const UnitRecord& record, const Catalogue& catalogue, std::optional<PartId> part,
                                    std::optional<ZoneId> zone);

/// "suction accumulator" and "bottom" apart, for rows; empty where there is none.
[[nodiscard]] std::string partName(const UnitRecord& record, const Catalogue& catalogue, std::optional<PartId> part,
                                   std::optional<ZoneId> zone);
[[nodiscard]] std::string zoneName(const UnitRecord& record, std::optional<ZoneId> zone);

/// Adds --currency NAME, for commands that tell amounts of money.
void addCurrencyOption(CLI::App& command, std::string& currency);

/// Plain English with this currency; one that can't be throws StoreError (badInput).
[[nodiscard]] PlainEnglish englishWith(const std::string& currency);

} // namespace padside
