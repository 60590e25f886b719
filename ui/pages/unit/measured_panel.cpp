// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/pages/unit/measured_panel.h"

#include "core/quantity/date.h"
#include "ui/drawing/measure_chart_view.h"
#include "ui/models/record_book.h"
#include "ui/models/speaker.h"
#include "ui/models/verdict_words.h"
#include "ui/models/visit_words.h"

#include <QLabel>
#include <QScrollBar>
#include <QVBoxLayout>

#include <utility>

namespace padside {

using namespace Qt::Literals::StringLiterals;

namespace {

constexpr double ninetyFive = 1.96; // standard errors of a range of 95 %

/// Where the wall may go: the controlling rate, give or take what two readings can't tell.
std::optional<MeasureFan> fanOf(const WallOutlook& wall)
{
    const auto& rate
        = wall.shortTerm && wall.shortTerm->mPerYear > wall.longTerm->mPerYear ? wall.shortTerm : wall.longTerm;
    if (!rate)
        return std::nullopt;
    const double error = ninetyFive * rate->errorMPerYear;
    return MeasureFan{-rate->mPerYear / daysInAYear, -(rate->mPerYear + error) / daysInAYear,
                      -std::max(0.0, rate->mPerYear - error) / daysInAYear};
}

/// Where the rusted share may go: Theil-Sen where there are points enough, with its limits.
std::optional<MeasureFan> fanOf(const SeriesSummary& summary)
{
    if (!summary.trend)
        return std::nullopt;
    return MeasureFan{summary.trend->slope, summary.trend->low95, summary.trend->high95};
}

/// "0.11 mm a year, give or take 0.05" of a wall; empty without two readings.
Sentence rateSentence(const WallOutlook& wall)
{
    const auto amount = [](double metres) { return Amount{metres, QuantityKind::length}; };
    if (!wall.longTerm)
        return {};
    if (!wall.shortTerm)
        return {PADSIDE_SAY("Rate of loss {0} a year, ± {1} (95 %)."),
                {amount(wall.longTerm->mPerYear), amount(ninetyFive * wall.longTerm->errorMPerYear)}};
    return {PADSIDE_SAY("Rate of loss: over all years {0} a year ± {1}, lately {2} a year ± {3} (95 %)."),
            {amount(wall.longTerm->mPerYear), amount(ninetyFive * wall.longTerm->errorMPerYear),
             amount(wall.shortTerm->mPerYear), amount(ninetyFive * wall.shortTerm->errorMPerYear)}};
}

QLabel* wrapped(const QString& text)
{
    auto* label = new QLabel(text);
    label->setWordWrap(true);
    return label;
}

} // namespace

MeasuredPanel::MeasuredPanel(const RecordBook& book, const Theme& theme, QWidget* parent)
    : QScrollArea(parent)
    , m_book(book)
    , m_theme(theme)
{
    setObjectName(u"measured"_s);
    setAccessibleName(tr("Walls and rust"));
    setFrameShape(QFrame::NoFrame);
    setWidgetResizable(true);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
}

QWidget* MeasuredPanel::entryOf(const UnitRecord& record, const ZoneMeasure& measure)
{
    const ReadingKind* kind = m_book.catalogue().readingKind(measure.readingKind);
    const MeasuringUnit& unit
        = unitFor(kind->quantity, m_book.surroundings().units, kind->metricUnit, kind->customaryUnit);
    MeasureChart chart;
    chart.points = measure.points;
    chart.unit = toSi(1, unit) - toSi(0, unit);
    chart.shown = [&unit, style = m_book.numberStyle()](double si) {
        return QString::fromStdString(showMeasure(si, unit, style));
    };
    if (measure.wallAsked) {
        chart.limit = measure.wallAsked->metres;
        chart.limitName
            = tr("%1 %2").arg(chart.shown(measure.wallAsked->metres), m_book.speaker().said(measure.wallAsked->from));
    } else if (const ReadingLimit* far = m_book.catalogue().readingLimit("rust-share-far")) {
        chart.limit = far->si;
        chart.limitName = tr("%1: measure the wall, too").arg(chart.shown(far->si));
    }
    chart.fan = measure.wall ? fanOf(*measure.wall) : fanOf(measure.summary);

    auto* entry = new QWidget;
    auto* column = new QVBoxLayout(entry);
    column->setContentsMargins(0, 0, 8, 12);
    column->setSpacing(4);
    const QString title = tr("%1: %2").arg(placeTitle(m_book, record, measure.zoneId), translated(m_book, kind->name));
    auto* heading = wrapped(title);
    QFont bold = heading->font();
    bold.setBold(true);
    heading->setFont(bold);
    column->addWidget(heading);
    const QString meaning = verdictText(m_book, measure.verdict);
    column->addWidget(wrapped(meaning));
    if (measure.wall) {
        const Sentence rate = rateSentence(*measure.wall);
        if (!rate.pattern.empty())
            column->addWidget(wrapped(m_book.speaker().said(rate)));
    }
    if (measure.summary.whyNoTrend && !measure.wall)
        column->addWidget(wrapped(m_book.speaker().said(*measure.summary.whyNoTrend)));
    auto* view = new MeasureChartView(std::move(chart), m_theme);
    view->setAccessibleName(tr("Chart of %1. %2").arg(title, meaning));
    column->addWidget(view);
    return entry;
}

void MeasuredPanel::setSnapshot(UnitSnapshotPtr snapshot)
{
    m_toShow = std::move(snapshot);
    if (isVisible())
        fill();
}

void MeasuredPanel::showEvent(QShowEvent* event)
{
    QScrollArea::showEvent(event);
    if (m_toShow)
        fill();
}

void MeasuredPanel::fill()
{
    const UnitSnapshotPtr shownNow = std::exchange(m_toShow, nullptr);
    const UnitRecord& record = shownNow->record;
    const int at = verticalScrollBar()->value();
    auto* holder = new QWidget;
    auto* column = new QVBoxLayout(holder);
    column->setContentsMargins(4, 8, 4, 4);
    const auto measures = zoneMeasures(record, m_book.catalogue());
    for (const ZoneMeasure& measure : measures)
        column->addWidget(entryOf(record, measure));
    if (measures.empty()) {
        column->addWidget(wrapped(tr("No wall was gauged and no rusted share noted yet. At a visit, both are asked for "
                                     "beside the readings, zone by zone.")));
    }
    column->addStretch();
    setWidget(holder); // the one before goes with it
    verticalScrollBar()->setValue(at);
}

} // namespace padside
