// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/quantity/sentence.h"
#include "ui/drawing/timeline_geometry.h"

#include <QCoreApplication>
#include <QString>

#include <span>

namespace padside {

/// The words of a timeline, in the person's language and units: names of lanes, a sentence for each mark, a summary.
class TimelineWords
{
    Q_DECLARE_TR_FUNCTIONS(padside::TimelineWords)
public:
    explicit TimelineWords(const Speaker& speaker);

    [[nodiscard]] QString partName(const TimelineGroup& group) const;
    [[nodiscard]] QString zoneName(const TimelineLane& lane) const;
    [[nodiscard]] QString todayName() const;
    /// What a mark says and why: "2025-05-06 spring: Suction accumulator, bottom: 3 marked, was 2 worn on 2024-10-02,
    /// wet. “bottom was wet” Flag: …". `raised` are the flags its visit raised about it, the gravest first; that one is
    /// said, the others are counted. The name of a lane or part has a sentence too.
    [[nodiscard]] QString sentence(const Timeline& timeline, const MarkPlace& place,
                                   std::span<const Sentence> raised = {}) const;
    /// Added to the sentence of a mark that stands for others nearby.
    [[nodiscard]] QString more(int marks) const;
    /// What the picture shows, for those who can't see it.
    [[nodiscard]] QString summary(const Timeline& timeline) const;
    /// The refrigerant of a charge mark, short: "+0.45 kg".
    [[nodiscard]] QString chargeText(const ChargeEntry& charge) const;
    [[nodiscard]] QString chargesText(const TimelineMark& mark) const; ///< all of a visit

    [[nodiscard]] QString word(std::string_view english) const; ///< one of core's words, translated

private:
    [[nodiscard]] QString what(const TimelineMark& mark) const;
    [[nodiscard]] QString outlookSentence(const Timeline& timeline, const MarkPlace& place) const;
    [[nodiscard]] QString nameSentence(const Timeline& timeline, const MarkPlace& place) const;
    [[nodiscard]] QString wasBefore(const TimelineMark& mark) const;
    [[nodiscard]] QString treatmentText(const Treatment& treatment) const;
    [[nodiscard]] QString whatOfZone(const TimelineMark& mark) const;
    [[nodiscard]] QString whatOfVisit(const TimelineMark& mark) const;
    [[nodiscard]] QString whatOfCharge(const TimelineMark& mark) const;
    [[nodiscard]] QString gradeText(Grade grade) const;

    const Speaker& m_speaker;
};

} // namespace padside
