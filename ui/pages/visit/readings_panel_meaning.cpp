// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

// What the readings so far mean, said while they are being typed.

#include "core/verdict/suspicion.h"
#include "core/verdict/verdicts.h"
#include "core/verdict/zone_measure.h"
#include "ui/models/record_book.h"
#include "ui/models/visit_words.h"
#include "ui/pages/visit/draft_field.h"
#include "ui/pages/visit/measure_field.h"
#include "ui/pages/visit/readings_panel.h"
#include "ui/pages/visit/suspicion_list.h"
#include "ui/pages/visit/verdict_label.h"

#include <algorithm>

namespace padside {

std::vector<Taken> ReadingsPanel::takenSoFar() const
{
    std::vector<Taken> taken;
    for (const auto& row : m_rows) {
        if (const auto value = row->field->understood())
            taken.push_back({row->kind.code, row->part, value->si, row->zone});
    }
    if (m_phase == Phase::asFound)
        return taken;
    std::vector<Taken> asFound;
    for (const Reading& reading : m_sheet.readings) {
        if (reading.phase == Phase::asFound)
            asFound.push_back({reading.kind, reading.partId, reading.value.si, reading.zoneId});
    }
    return withAirAsFound(std::move(taken), asFound);
}

void ReadingsPanel::showVerdicts(Row& row, const std::vector<Verdict>& verdicts)
{
    row.verdict->show(verdicts);
    row.verdict->setVisible(!verdicts.empty() && !row.field->isHidden());
    const QStringList heard{row.field->echo(), row.verdict->plainText()};
    row.field->edit().setAccessibleDescription(heard.join(u' ').trimmed());
}

std::vector<Verdict> ReadingsPanel::verdictsOnZone(const Row& row) const
{
    const auto value = row.field->understood();
    const auto line = std::ranges::find_if(m_sheet.zones, [&](const ZoneLine& one) { return one.zone.id == row.zone; });
    if (!value || line == m_sheet.zones.end())
        return {};
    const TrendPoint now{static_cast<double>(m_sheet.visit.on.time_since_epoch().count()), value->si};
    const auto measure = zoneMeasure(m_past, m_book.catalogue(), line->part, line->zone, row.kind.code, now);
    return measure ? std::vector{measure->verdict} : std::vector<Verdict>{};
}

void ReadingsPanel::judge()
{
    if (m_filling)
        return;
    const Measured measured(takenSoFar(), m_before, m_sheet.record.unit, m_sheet.record.site.altitudeM,
                            m_sheet.visit.conditions, m_book.catalogue());
    const std::vector<Verdict> verdicts = verdictsOn(measured);
    for (const auto& row : m_rows) {
        if (row->zone) {
            showVerdicts(*row, verdictsOnZone(*row));
            continue;
        }
        std::vector<Verdict> ofRow;
        std::ranges::copy_if(verdicts, std::back_inserter(ofRow), [&](const Verdict& verdict) {
            return verdict.from.back() == row->kind.code && (!verdict.partId || verdict.partId == row->part);
        });
        showVerdicts(*row, ofRow);
    }
    const std::vector<Suspicion> suspicions = suspicionsFrom(verdicts, m_sheet.record.unit);
    m_suspicions->show(suspicions);
    m_pointsToBar->setVisible(!suspicions.empty());
    if (!suspicions.empty()) {
        m_pointsTo->setText(tr("May point to %1.").arg(translated(m_book, suspicions.front().name)));
    }
}

} // namespace padside
