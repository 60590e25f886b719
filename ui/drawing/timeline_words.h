// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/quantity/sentence.h"
#include "ui/drawing/timeline_geometry.h"

#include <QCoreApplication>
#include <QString>

namespace padside {

/// The words of a timeline, in the person's language and units: names of lanes, a sentence for each mark, a summary.
class TimelineWords
{
    Q_DECLARE_TR_FUNCTIONS(padside::TimelineWords)
public:
    explicit TimelineWords(const Speaker& speaker);

    [[nodiscard]] QString partName(const TimelineGroup& group) const;
    [[nodiscard]] QString zoneName(const TimelineLane& lane) const;
    /// "2025-05-06 spring: Suction accumulator, bottom: 3 marked, wet. “bottom was wet”"
    [[nodiscard]] QString sentence(const Timeline& timeline, const MarkPlace& place) const;
    /// What the picture shows, for those who can't see it.
    [[nodiscard]] QString summary(const Timeline& timeline) const;
    /// The refrigerant of a charge mark, short: "+0.45 kg".
    [[nodiscard]] QString chargeText(const ChargeEntry& charge) const;

    [[nodiscard]] QString word(std::string_view english) const; ///< one of core's words, translated

private:
    [[nodiscard]] QString what(const TimelineMark& mark) const;
    [[nodiscard]] QString whatOfZone(const TimelineMark& mark) const;
    [[nodiscard]] QString whatOfVisit(const TimelineMark& mark) const;
    [[nodiscard]] QString whatOfCharge(const TimelineMark& mark) const;
    [[nodiscard]] QString gradeText(Grade grade) const;

    const Speaker& m_speaker;
};

} // namespace padside
