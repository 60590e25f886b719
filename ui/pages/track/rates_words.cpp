// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/pages/track/rates_words.h"

#include "ui/models/record_book.h"
#include "ui/models/speaker.h"

#include <QCoreApplication>

namespace padside {

namespace {

/// The texts of this file.
struct RatesWords
{
    Q_DECLARE_TR_FUNCTIONS(RatesWords)
};

constexpr double yearsWithoutDecimal = 99.95; ///< lives are kept with three figures
constexpr double hardlyLonger = 1.05;
constexpr double hardlyShorter = 0.95;

QString comparison(const KindLesson& lesson)
{
    const double factor = lesson.learntLife.medianLife / lesson.prior.medianLife;
    if (factor > hardlyLonger)
        return RatesWords::tr("They last longer here than we assumed.");
    if (factor < hardlyShorter)
        return RatesWords::tr("They are spent sooner here than we assumed.");
    return RatesWords::tr("They last about as long here as we assumed.");
}

} // namespace

QString lessonName(const RecordBook& book, const KindLesson& lesson)
{
    const PartKind* kind = book.catalogue().partKind(lesson.partKind);
    const QString name = kind != nullptr ? shown(book.speaker().translate(kind->name)) : shown(lesson.partKind);
    return lesson.soils ? RatesWords::tr("%1 (dirt)").arg(name) : name;
}

QString yearsText(const RecordBook& book, double years)
{
    return shown(book.speaker().number(years, years < yearsWithoutDecimal ? 1 : 0));
}

QString gradeYearsText(const RecordBook& book, const LifeInYears& life)
{
    QStringList years;
    for (const double grade : life.inGrade)
        years << yearsText(book, grade);
    return years.join(QStringLiteral(" · "));
}

QString shareText(const RecordBook& book, double share)
{
    return RatesWords::tr("%1 %").arg(shown(book.speaker().number(share * 100, 0)));
}

QString lessonText(const RecordBook& book, const KindLesson& lesson)
{
    QStringList said;
    const QString name = lessonName(book, lesson);
    if (lesson.learntOn) {
        said << RatesWords::tr("%1: forecasts use %2 years, learned on %3; ours are %4 years.")
                    .arg(name, yearsText(book, lesson.inUse.medianLife), book.speaker().shownDate(*lesson.learntOn),
                         yearsText(book, lesson.prior.medianLife));
    } else {
        said << RatesWords::tr("%1: forecasts use our %2 years from sound to spent (the middle one of many).")
                    .arg(name, yearsText(book, lesson.inUse.medianLife));
    }
    if (lesson.failure)
        said << book.speaker().said(*lesson.failure);
    if (!lesson.learnt)
        return said.join(u' ');
    said << RatesWords::tr("Your records, %1 zones with %2 grades seen, say %3 years, give or take: %4 to %5.")
                .arg(lesson.zonesUsed)
                .arg(lesson.sightings)
                .arg(yearsText(book, lesson.learntLife.medianLife), yearsText(book, lesson.lowLife),
                     yearsText(book, lesson.highLife));
    said << comparison(lesson);
    said << RatesWords::tr("%1 of what is known of it comes from your records, the rest is our assumption.")
                .arg(shareText(book, lesson.dataShare));
    if (lesson.zonesMet > lesson.zonesUsed)
        said << RatesWords::tr("Of %1 zones, some were left out evenly to save time.").arg(lesson.zonesMet);
    return said.join(u' ');
}

} // namespace padside
