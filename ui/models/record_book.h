// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/catalogue/catalogue.h"
#include "core/quantity/measure.h"
#include "core/quantity/unit_choice.h"
#include "core/record/unit_record.h"
#include "core/review/kept_forecasts.h"
#include "core/review/known_unit.h"
#include "core/review/unit_forecast.h"
#include "core/review/unit_review.h"

#include <QLocale>
#include <QObject>

#include <functional>
#include <memory>
#include <vector>

namespace padside {

class Store;
class LocalSpeaker;

/// The open store as the window sees it: records and reviews, the one place where a user action meets a StoreError, and
/// the news of what changed. It owns nothing: store and catalogue outlive it.
class RecordBook : public QObject
{
    Q_OBJECT
public:
    /// What depends on the person and the moment; passed in so that tests can fix it.
    struct Surroundings
    {
        std::function<Instant()> now;
        QLocale locale;
        UnitChoice units;
        QString technician;
        QString currency = {}; ///< as the person writes it; empty: money is shown as plain numbers
    };

    RecordBook(Store& store, const Catalogue& catalogue, IdMaker& ids, Surroundings surroundings,
               QObject* parent = nullptr);
    ~RecordBook() override;

    [[nodiscard]] Store& store() const { return m_store; }
    [[nodiscard]] const Catalogue& catalogue() const { return m_catalogue; }
    [[nodiscard]] IdMaker& ids() const { return m_ids; }
    [[nodiscard]] const Surroundings& surroundings() const { return m_surroundings; }
    [[nodiscard]] const LocalSpeaker&
    speaker() const; ///< says core's sentences in the person's language, units and number style
    [[nodiscard]] NumberStyle numberStyle() const;
    [[nodiscard]] Instant now() const { return m_surroundings.now(); }
    [[nodiscard]] Date today() const;

    /// Carries out one user action on the store; a StoreError becomes failed(sentence) and false. The only catch in the
    /// window.
    bool attempt(const std::function<void()>& action);

    /// The same, and unitChanged(unit) if it went well.
    bool change(UnitId unit, const std::function<void()>& action);

    /// What beliefs and outlooks rest on; made when first asked for, then the same one. It may be taken along into
    /// another thread.
    [[nodiscard]] std::shared_ptr<const OutlookModel> outlookModel() const;

    [[nodiscard]] UnitRecord record(UnitId unit) const; ///< throws StoreError
    /// The unit as it is known today: review and forecast are drawn from it, so who shows both works it out once.
    [[nodiscard]] KnownUnit known(const UnitRecord& record) const;
    [[nodiscard]] UnitReview review(const UnitRecord& record) const;
    [[nodiscard]] UnitForecast forecast(const UnitRecord& record) const;
    /// What is to be kept when this visit is closed; throws StoreError.
    [[nodiscard]] std::vector<KeptForecast> forecastsAtClosing(const Visit& visit) const;

Q_SIGNALS:
    void unitChanged(const padside::UnitId& unit);
    void sitesChanged();
    void failed(const QString& sentence);

private:
    Store& m_store;
    const Catalogue& m_catalogue;
    IdMaker& m_ids;
    Surroundings m_surroundings;
    std::unique_ptr<LocalSpeaker> m_speaker;
    mutable std::shared_ptr<const OutlookModel> m_outlook; ///< made when first asked for
};

} // namespace padside
