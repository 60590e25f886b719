// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/pages/visit/outlook_change_words.h"

#include "ui/models/record_book.h"
#include "ui/models/speaker.h"
#include "ui/models/visit_words.h"

#include <QCoreApplication>

namespace padside {

using namespace Qt::Literals::StringLiterals;

namespace {

constexpr std::size_t mostTold = 8; ///< the greatest come first

struct OutlookText
{
    Q_DECLARE_TR_FUNCTIONS(padside::OutlookChanges)
};

QString rangeOf(const LocalSpeaker& speaker, const SpentDates& dates)
{
    if (!dates.early)
        return OutlookText::tr("far ahead");
    if (!dates.late)
        return OutlookText::tr("from %1 on").arg(speaker.shownDate(*dates.early));
    if (dates.early == dates.late)
        return OutlookText::tr("by %1").arg(speaker.shownDate(*dates.late));
    return OutlookText::tr("%1 to %2", "first and last day")
        .arg(speaker.shownDate(*dates.early), speaker.shownDate(*dates.late));
}

} // namespace

QString outlookChangesSaid(const RecordBook& book, const UnitRecord& record, const std::vector<OutlookChange>& changes)
{
    const LocalSpeaker& speaker = book.speaker();
    QString text;
    std::size_t told = 0;
    for (const OutlookChange& change : changes) {
        if (told++ == mostTold)
            break;
        const QString chance = OutlookText::tr("Spent within a year: %1 → %2", "chance before, chance now")
                                   .arg(speaker.shownChance(change.before), speaker.shownChance(change.now));
        const QString before = rangeOf(speaker, change.datesBefore);
        const QString now = rangeOf(speaker, change.datesNow);
        const QString dates = before == now
            ? OutlookText::tr("Range of dates: %1, as before").arg(now)
            : OutlookText::tr("Range of dates: %1; it was %2", "now, before").arg(now, before);
        text += u"<p><b>%1</b><br>%2<br>%3<br>%4</p>"_s.arg(placeTitle(book, record, change.zoneId).toHtmlEscaped(),
                                                            chance.toHtmlEscaped(), dates.toHtmlEscaped(),
                                                            speaker.said(change.because).toHtmlEscaped());
    }
    if (changes.size() > mostTold)
        text += u"<p>%1</p>"_s.arg(OutlookText::tr("Lesser changes: %1.").arg(changes.size() - mostTold));
    return text;
}

} // namespace padside
