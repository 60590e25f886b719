// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/pages/track/track_panel.h"

#include "core/store/store.h"
#include "core/track/track_words.h"
#include "ui/drawing/reliability_plot_view.h"
#include "ui/drawing/spread_columns.h"
#include "ui/models/record_book.h"
#include "ui/models/speaker.h"
#include "ui/models/track_work.h"
#include "ui/models/work_line.h"
#include "ui/pages/track/horizon_model.h"

#include <QComboBox>
#include <QLabel>
#include <QListWidget>
#include <QSignalBlocker>
#include <QTableView>

#include <utility>

namespace padside {

using namespace Qt::Literals::StringLiterals;

namespace {

constexpr int unitRole = Qt::UserRole;

} // namespace

TrackPanel::TrackPanel(RecordBook& book, const Theme& theme, QWidget* parent)
    : QWidget(parent)
    , m_book(book)
    , m_theme(theme)
    , m_horizons(new HorizonModel(book.speaker(), this))
    , m_work(new WorkLine)
    , m_verdict(new QLabel)
    , m_beside(new QLabel)
    , m_reasons(new QLabel)
    , m_since(new QLabel)
    , m_evidence(new QWidget)
    , m_setRow(new QWidget)
    , m_set(new QComboBox)
    , m_table(new QTableView)
    , m_columns(new SpreadColumns(*m_table))
    , m_ranges(new QLabel)
    , m_horizon(new QComboBox)
    , m_plot(new ReliabilityPlotView(theme))
    , m_plotHint(new QLabel)
    , m_misses(new QListWidget)
    , m_noMisses(new QLabel)
{
    makeLayout();
    connectParts();
}

void TrackPanel::connectParts()
{
    connect(&m_book, &RecordBook::unitChanged, this, &TrackPanel::noteChange);
    connect(&m_book, &RecordBook::sitesChanged, this, &TrackPanel::noteChange);
    connect(m_set, &QComboBox::currentIndexChanged, this, &TrackPanel::showSet);
    connect(m_horizon, &QComboBox::currentIndexChanged, this, &TrackPanel::showPlot);
    connect(m_misses, &QListWidget::itemActivated, this, [this](const QListWidgetItem* item) {
        const auto unit = parseUuid(item->data(unitRole).toString().toStdString());
        if (unit)
            Q_EMIT unitRequested(UnitId(*unit));
    });
    connect(&m_work->work(), &LongWork::done, this, [this] {
        take(**std::exchange(m_found, nullptr));
        if (m_isStale)
            start();
    });
    connect(&m_work->work(), &LongWork::failed, this,
            [this](const Sentence& why) { m_verdict->setText(m_book.speaker().said(why)); });
    connect(&m_work->work(), &LongWork::cancelled, this, [this] {
        m_isStale = true; // worked out when the page is shown the next time
        if (!m_summary)
            m_verdict->setText(tr("Cancelled: nothing was worked out. It begins again when you come back here."));
    });
}

void TrackPanel::noteChange()
{
    m_isStale = true;
    if (isVisible())
        start();
}

void TrackPanel::showEvent(QShowEvent* event)
{
    QWidget::showEvent(event);
    refresh();
}

void TrackPanel::refresh()
{
    if (isVisible() && (m_isStale || m_asOf != m_book.today()))
        start();
}

void TrackPanel::start()
{
    const auto found = std::make_shared<std::optional<TrackSummary>>();
    const LookBack file{m_book.store().path(), m_book.catalogue(), m_book.today()};
    const bool started
        = m_work->start(tr("Holding old forecasts against what was found"), [found, file](const LongWork::Tell& tell) {
              *found = gatherTrack(file, tell);
              return found->has_value();
          });
    if (!started)
        return; // what changed meanwhile is looked at when this work is over
    m_found = found;
    m_isStale = false;
    m_asOf = file.today;
    if (!m_summary)
        m_verdict->setText(tr("Old forecasts are being held against what was found …"));
}

void TrackPanel::take(const TrackSummary& summary)
{
    const bool isFirst = m_summary == nullptr;
    m_summary = std::make_shared<const TrackSummary>(summary);
    sayVerdict();
    offerSets();
    if (isFirst && summary.verdict.horizon)
        m_horizon->setCurrentIndex(static_cast<int>(*summary.verdict.horizon));
    showSet();
    m_evidence->setVisible(summary.all.forecasts > 0);
    Q_EMIT workedOut();
}

void TrackPanel::offerSets()
{
    const bool isApart = m_summary->learning.has_value();
    m_setRow->setVisible(isApart);
    if (isApart == (m_set->count() > 0))
        return; // what the person chose stays
    const QSignalBlocker quiet(m_set);
    m_set->clear();
    if (!isApart)
        return;
    for (const auto& set : codesOf(ForecastSet{}))
        m_set->addItem(shown(m_book.speaker().translate(std::string(set.word))), static_cast<int>(set.value));
    const ForecastSet first = isJudged(m_summary->verdict.kind) ? m_summary->judged() : ForecastSet::all;
    m_set->setCurrentIndex(m_set->findData(static_cast<int>(first)));
}

const TrackFigures& TrackPanel::figures() const
{
    const QVariant chosen = m_set->currentData();
    return m_summary->of(chosen.isValid() ? static_cast<ForecastSet>(chosen.toInt()) : ForecastSet::all);
}

void TrackPanel::showSet()
{
    if (!m_summary)
        return;
    m_horizons->setHorizons(figures().horizons);
    m_columns->fit();
    sayRanges();
    listMisses();
    showPlot();
}

QString TrackPanel::number(double value, int decimals) const
{
    return shown(m_book.speaker().number(value, decimals));
}

/// What came is written as what was said beside it.
QString TrackPanel::percent(double share) const
{
    return m_book.speaker().shownChance(share);
}

void TrackPanel::sayVerdict()
{
    m_verdict->setText(m_book.speaker().said(m_summary->verdict.sentence));
    for (const auto& [label, sentences] :
         {std::pair(m_beside, &m_summary->beside), std::pair(m_reasons, &m_summary->verdict.reasons)}) {
        QStringList said;
        for (const Sentence& sentence : *sentences)
            said << m_book.speaker().said(sentence);
        label->setText(said.join(u' '));
        label->setVisible(!said.isEmpty());
    }
    if (m_summary->all.keptSince) {
        m_since->setText(
            tr("Forecasts are kept since %1, each time a visit is closed: %2 by now. They stay as they were said; none "
               "was made up afterwards for an older visit. One counts once its day is past and a later visit has "
               "settled it.")
                .arg(m_book.speaker().shownDate(*m_summary->all.keptSince),
                     number(static_cast<double>(m_summary->all.forecasts))));
    } else {
        m_since->setText(tr(
            "When a visit is closed, Padside keeps what it foretells of each zone: the chance that it is spent within "
            "half a year, one, two and five years. The visits after that tell whether it was right; half a year "
            "after the first closing there is something to see here. Nothing is made up for visits closed before: "
            "forecasts that know what came are worth nothing."));
    }
}

void TrackPanel::sayRanges()
{
    const RangeCoverage& range = figures().range;
    const auto count = [this](std::size_t value) { return number(static_cast<double>(value)); };
    QStringList said;
    if (range.settled() > 0) {
        said << tr("Ranges of dates whose late end is past: %1 of %2 held the day (%3; 80 % is right), %4 were spent "
                   "before, %5 were not spent yet; %6 can't be settled, because an end lies between two visits or the "
                   "zone was renewed in time.")
                    .arg(count(range.inside), count(range.settled()),
                         percent(static_cast<double>(range.inside) / static_cast<double>(range.settled())),
                         count(range.before), count(range.after), count(range.untold));
    } else {
        said << tr("No range of dates is over yet: the late end of each is still to come.");
    }
    const std::array<QString, 3> names{tr("by the early end of the range"), tr("by its middle"), tr("by its late end")};
    QStringList ends;
    for (std::size_t end = 0; end < names.size(); ++end) {
        const auto& [chance, scores] = figures().ends[end];
        if (scores.settled > 0) {
            ends << tr("%1 %2 of %3 (%4; %5 is right)")
                        .arg(names[end], count(scores.spent), count(scores.settled), percent(scores.base),
                             percent(chance));
        }
    }
    if (!ends.isEmpty())
        said << tr("Found spent %1.").arg(ends.join(u"; "_s));
    m_ranges->setText(said.join(u' '));
}

void TrackPanel::showPlot()
{
    if (!m_summary)
        return;
    const auto horizon = static_cast<std::size_t>(std::max(0, m_horizon->currentIndex()));
    ReliabilityPlot plot;
    plot.saidName = tr("was said");
    plot.cameName = tr("was found spent");
    plot.moreCame = tr("more than was said");
    plot.lessCame = tr("less than was said");
    plot.shown = [this](double share) { return percent(share); };
    QStringList lines;
    for (const ReliabilityLine& line : figures().horizons[horizon].reliability) {
        if (line.count == 0)
            continue;
        plot.points.push_back(
            {line.meanForecast, line.observed, line.within.low, line.within.high, static_cast<int>(line.count)});
        lines << tr("said %1, found spent %2 (%3 to %4) of %5")
                     .arg(percent(line.meanForecast), percent(line.observed), percent(line.within.low),
                          percent(line.within.high), number(static_cast<double>(line.count)));
    }
    m_plotHint->setText(lines.isEmpty()
                            ? tr("None of these forecasts has been settled yet.")
                            : tr("A dot for each tenth of the chances, with the number of forecasts; the bars are two "
                                 "standard errors. On the dashed line as many were spent as was said."));
    m_plot->setToolTip(lines.join(u'\n'));
    m_plot->setAccessibleDescription(lines.isEmpty() ? m_plotHint->text() : lines.join(u"; "_s));
    m_plot->setPlot(std::move(plot));
}

void TrackPanel::listMisses()
{
    m_misses->clear();
    for (const Miss& miss : figures().misses) {
        auto* item = new QListWidgetItem(shown(miss.tag) + u" · "_s + m_book.speaker().said(miss.sentence), m_misses);
        item->setData(unitRole, QString::fromStdString(miss.unitId.text()));
    }
    m_misses->setVisible(m_misses->count() > 0);
    m_noMisses->setVisible(m_misses->count() == 0);
    if (m_misses->count() > 0)
        m_misses->setCurrentRow(0);
}

} // namespace padside
