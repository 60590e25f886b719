// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/catalogue/catalogue.h"
#include "core/record/unit_record.h"
#include "ui/paper/paper_block.h"

namespace padside {

class Speaker;

/// Names of parts, zones and days as they stand on paper.
class PartWords
{
public:
    /// All three outlive it.
    PartWords(const UnitRecord& record, const Catalogue& catalogue, const Speaker& speaker)
        : m_record(record)
        , m_catalogue(catalogue)
        , m_speaker(speaker)
    {
    }

    /// "Run capacitor" or "Run capacitor (fan)".
    [[nodiscard]] QString part(PartId id) const;
    /// "Suction accumulator, bottom".
    [[nodiscard]] QString zone(ZoneId id) const;
    /// What the grade means for this zone; empty if the catalogue does not say.
    [[nodiscard]] QString gradeSentence(ZoneId id, Grade grade) const;
    [[nodiscard]] QString day(Date date) const;
    /// "16:30", with the day if it is another than `sameDay`.
    [[nodiscard]] QString timeOn(const Instant& instant, Date sameDay) const;
    [[nodiscard]] QString word(std::string_view english) const;
    [[nodiscard]] QString said(const Sentence& sentence) const;
    [[nodiscard]] QString amount(double si, QuantityKind kind) const;

private:
    const UnitRecord& m_record;
    const Catalogue& m_catalogue;
    const Speaker& m_speaker;
};

/// With a capital first letter.
[[nodiscard]] QString capitalised(QString text);

[[nodiscard]] QString fromCore(std::string_view text);

} // namespace padside
