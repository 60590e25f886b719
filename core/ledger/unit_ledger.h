// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/catalogue/catalogue.h"
#include "core/ledger/leak_rate.h"
#include "core/quantity/sentence.h"
#include "core/record/unit_record.h"

#include <optional>
#include <string>
#include <vector>

namespace padside {

/// All that was put into and taken out of one unit on one day.
struct LedgerDay
{
    Date on{};
    double addedKg = 0;
    double recoveredKg = 0;
    double lostKg = 0;
    double topUpKg = 0; ///< of what was added: that which made up for a leak
    bool firstCharge = false; ///< the unit was filled for the first time
    std::optional<int> daysSinceAdded; ///< since the addition before, or since a known day on which it was full
    std::optional<double> annualized; ///< share of the full charge a year; only where topUpKg and the charge are known
    std::optional<double> rolling; ///< the same by the rolling average
    std::vector<std::string> cylinders; ///< each once, in reading order
    std::vector<std::string> reasons; ///< each once, in reading order
    std::vector<ChargeId> entries; ///< in the order of their keys

    friend bool operator==(const LedgerDay&, const LedgerDay&) = default;
};

/// The refrigerant account of one unit up to a day.
struct UnitLedger
{
    UnitId unitId;
    Date today{};
    std::string refrigerant; ///< of the nameplate
    std::optional<double> fullChargeKg; ///< the nameplate's factory charge; empty: not known
    double addedKg = 0;
    double recoveredKg = 0;
    double lostKg = 0;
    double beyondFullKg = 0; ///< in less out less lost since the unit was first filled, or since the record began
    std::vector<LedgerDay> days; ///< oldest first; visits of one day are merged
    std::optional<double> rollingToday; ///< rolling average over the 365 days up to today
    std::optional<LeakLimit> limit; ///< that of comfort cooling for its charge; empty: charge not known, or no limit
    std::string otherRefrigerant; ///< put in though the nameplate says another; empty: none
    std::optional<Date> otherRefrigerantOn;

    [[nodiscard]] double netKg() const { return addedKg - recoveredKg - lostKg; }
    [[nodiscard]] const LedgerDay* lastTopUp() const; ///< the last day that made up for a leak, or nullptr
    /// Whether the last top-up came to more than the limit by either method.
    [[nodiscard]] bool isOverLimit() const;
};

/// The account of one unit from its standing charge entries up to and including `today`. A pure function; the order of
/// entries doesn't matter, not even to the last bit. Masses that are not 0 or above are left out (the store refuses
/// them).
///
/// What made up for a leak (topUpKg), as counted by both methods of 40 CFR 82.152: what was added, less what had been
/// recovered on the same day or within the time of the assumption "charge-put-back-days" before and was not put back
/// yet; the first addition after a recovery uses it up. Recovered refrigerant is therefore never a leak, and neither
/// is putting it back; a charge lost through a leak and replaced is. A first charge is no leak either: one entered
/// with that reason, or one on or before the day the unit was installed. Days are counted from the last addition of
/// any sort, before the first one from the installed day (units come filled), else they are not known.
[[nodiscard]] UnitLedger unitLedger(const UnitRecord& record, const Catalogue& catalogue, Date today);

/// What the account says, one sentence each: balance against the nameplate, leak rates, limit, a refrigerant that does
/// not belong in it. Never empty.
[[nodiscard]] std::vector<Sentence> ledgerSentences(const UnitLedger& ledger);

/// The single sentences, where a place shows them apart. rateSentence is empty as long as nothing made up for a leak
/// or the full charge is not known; limitSentence is empty without a limit.
[[nodiscard]] Sentence balanceSentence(const UnitLedger& ledger);
[[nodiscard]] std::optional<Sentence> rateSentence(const UnitLedger& ledger);
[[nodiscard]] std::optional<Sentence> limitSentence(const UnitLedger& ledger);

/// What the rule asks for; empty unless a regulatory limit was exceeded at the last top-up.
[[nodiscard]] std::optional<Sentence> dutySentence(const UnitLedger& ledger);

/// How the ledger tells a leak from a charge put back, for the reader of a rate.
[[nodiscard]] Sentence leakReckoning();

} // namespace padside
