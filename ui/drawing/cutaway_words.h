// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/catalogue/catalogue.h"
#include "core/record/unit_record.h"
#include "core/trend/zone_history.h"

#include <QCoreApplication>
#include <QString>

namespace padside {

/// The sentences of the cutaway, in the person's language.
class CutawayWords
{
    Q_DECLARE_TR_FUNCTIONS(padside::CutawayWords)
public:
    /// All three outlive it.
    CutawayWords(const UnitRecord& record, const Catalogue& catalogue, const Speaker& speaker);

    [[nodiscard]] QString partName(const Part& part) const; ///< "Run capacitor, fan"
    [[nodiscard]] QString zoneName(const Part& part, ZoneId zone) const; ///< "Suction accumulator, bottom"

    /// "Suction accumulator, bottom: 4 poor on 2026-10-12, worse by one since spring 2026."
    [[nodiscard]] QString lastFound(const Part& part, const ZoneHistory& history) const;
    [[nodiscard]] QString nothingRecorded(const Part& part) const;

    /// "Suction accumulator: 4 poor today (bottom); 2 of 6 zones looked at."
    [[nodiscard]] QString foundAtVisit(const Part& part, const Finding& worst, std::size_t looked) const;
    [[nodiscard]] QString notLookedAtYet(const Part& part) const;

private:
    [[nodiscard]] QString word(std::string_view english) const;
    [[nodiscard]] QString gradeText(Grade grade) const;
    [[nodiscard]] QString day(Date date) const;
    [[nodiscard]] QString since(Date date) const;

    const UnitRecord& m_record;
    const Catalogue& m_catalogue;
    const Speaker& m_speaker;
};

/// Fitted parts on a day, in the catalogue's order of part kinds (unknown kinds last).
[[nodiscard]] std::vector<const Part*> fittedParts(const UnitRecord& record, const Catalogue& catalogue, Date on);

} // namespace padside
