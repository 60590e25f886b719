// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/models/record_book.h"

#include "core/store/record_reader.h"
#include "core/store/store.h"
#include "ui/models/speaker.h"

#include <utility>

namespace padside {

RecordBook::RecordBook(Store& store, const Catalogue& catalogue, IdMaker& ids, Surroundings surroundings,
                       QObject* parent)
    : QObject(parent)
    , m_store(store)
    , m_catalogue(catalogue)
    , m_ids(ids)
    , m_surroundings(std::move(surroundings))
    , m_speaker(std::make_unique<LocalSpeaker>(m_surroundings.locale, m_surroundings.units, m_surroundings.currency))
{
}

RecordBook::~RecordBook() = default;

const LocalSpeaker& RecordBook::speaker() const
{
    return *m_speaker;
}

NumberStyle RecordBook::numberStyle() const
{
    return numberStyleOf(m_surroundings.locale);
}

Date RecordBook::today() const
{
    return localDate(now());
}

bool RecordBook::attempt(const std::function<void()>& action)
{
    try {
        action();
        return true;
    } catch (const StoreError& error) {
        Q_EMIT failed(m_speaker->said(error.problem().what));
        return false;
    }
}

bool RecordBook::change(UnitId unit, const std::function<void()>& action)
{
    if (!attempt(action))
        return false;
    Q_EMIT unitChanged(unit);
    return true;
}

UnitRecord RecordBook::record(UnitId unit) const
{
    return m_store.records().unitRecord(unit);
}

std::shared_ptr<const OutlookModel> RecordBook::outlookModel() const
{
    if (!m_outlook)
        m_outlook = std::make_shared<const OutlookModel>(m_catalogue);
    return m_outlook;
}

KnownUnit RecordBook::known(const UnitRecord& record) const
{
    return knownUnit(record, m_catalogue, *outlookModel(), today());
}

UnitForecast RecordBook::forecast(const UnitRecord& record) const
{
    return unitForecast(record, m_catalogue, *outlookModel(), today());
}

std::vector<KeptForecast> RecordBook::forecastsAtClosing(const Visit& visit) const
{
    return keptForecasts(record(visit.unitId), m_catalogue, *outlookModel(), visit.id);
}

UnitReview RecordBook::review(const UnitRecord& record) const
{
    return padside::review(record, m_catalogue, *outlookModel(), today());
}

} // namespace padside
