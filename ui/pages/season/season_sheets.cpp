// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/pages/season/season_sheets.h"

#include "ui/models/record_book.h"
#include "ui/models/speaker.h"
#include "ui/pages/season/season_words.h"
#include "ui/paper/day_sheet.h"
#include "ui/paper/field_sheet.h"
#include "ui/paper/page_maker.h"

#include <algorithm>

namespace padside {

std::optional<Sheet> daySheet(RecordBook& book, const SiteSeason& site, std::size_t index)
{
    const SeasonTrip& trip = site.trips[index];
    const SeasonWords words(book.catalogue(), book.speaker(), book.surroundings().locale);
    const auto input = std::make_shared<DaySheetInput>(
        DaySheetInput{site.site, trip, {}, book.catalogue(), book.speaker(), words.day(trip.on), book.today()});
    const bool isRead = book.attempt([&] {
        for (const auto& unit : trip.units())
            input->records.push_back(book.record(unit->unit.id));
    });
    if (!isRead)
        return std::nullopt;
    const QString name = QStringLiteral("%1 %2").arg(shown(site.site.name), shown(isoText(trip.on)));
    return Sheet{QCoreApplication::translate("SeasonPage", "Day's sheet"), pdfFileName(name),
                 [input](const QString& contractor, PaperSize size) {
                     return makePages(daySheetContent(*input, contractor), size);
                 }};
}

std::optional<Sheet> fieldSheet(RecordBook& book, const SeasonTrip& trip, UnitId unit)
{
    const auto units = trip.units();
    const auto one = std::ranges::find(units, unit, [](const auto& each) { return each->unit.id; });
    UnitRecord record;
    if (one == units.end() || !book.attempt([&] { record = book.record(unit); }))
        return std::nullopt;
    UnitReview review = book.review(record);
    const QString name = QCoreApplication::translate("SeasonPage", "%1 field sheet").arg(shown(record.unit.tag));
    const auto input = std::make_shared<const FieldSheetInput>(
        FieldSheetInput{std::move(record), std::move(review), reasonOnTrip(trip, **one), book.catalogue(),
                        book.speaker(), book.today()});
    return Sheet{QCoreApplication::translate("SeasonPage", "Field sheet"), pdfFileName(name),
                 [input](const QString& contractor, PaperSize size) {
                     return makePages(fieldSheetContent(*input, contractor), size);
                 }};
}

} // namespace padside
