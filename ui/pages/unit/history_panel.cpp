// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/pages/unit/history_panel.h"

#include "ui/drawing/theme.h"
#include "ui/drawing/timeline_legend.h"
#include "ui/drawing/timeline_outlook.h"
#include "ui/drawing/timeline_view.h"
#include "ui/models/photo_loader.h"
#include "ui/models/record_book.h"
#include "ui/models/speaker.h"
#include "ui/pages/unit/photo_years.h"
#include "ui/pages/unit/raised_flags.h"
#include "ui/pages/unit/zone_pictures.h"

#include <QEvent>
#include <QLabel>
#include <QListView>
#include <QPushButton>
#include <QTimer>
#include <QVBoxLayout>

#include <algorithm>
#include <utility>

using namespace Qt::Literals::StringLiterals;

namespace padside {

namespace {

constexpr int smallPicture = 64; ///< on the timeline

/// The lane a zone belongs to, with the names for it.
struct LaneOfZone
{
    const TimelineGroup* group = nullptr;
    const TimelineLane* lane = nullptr;
};

LaneOfZone laneWith(const Timeline& timeline, ZoneId zone)
{
    for (const TimelineGroup& group : timeline.groups) {
        for (const TimelineLane& lane : group.lanes) {
            if (std::ranges::find(lane.zones, zone) != lane.zones.end())
                return LaneOfZone{&group, &lane};
        }
    }
    return {};
}

} // namespace

HistoryPanel::HistoryPanel(RecordBook& book, const Theme& theme, QWidget* parent)
    : QWidget(parent)
    , m_book(book)
    , m_loader(new PhotoLoader(book, this))
    , m_timeline(new TimelineView(book.speaker(), theme))
    , m_legend(new TimelineLegend(book.speaker(), theme))
    , m_sentence(new QLabel)
    , m_print(new QPushButton(tr("&Print timeline")))
    , m_owner(new QPushButton(tr("Owne&r's history")))
    , m_photos(new PhotoYears(book, *m_loader, theme))
{
    makeWidgets();
    m_timeline->setRaisedSource(
        [this](const TimelineMark& mark) { return m_raised ? m_raised->of(mark) : std::vector<Sentence>{}; });
    m_timeline->setPictures([this](const PhotoId& photo) { return m_loader->picture(photo, smallPicture); });
    connect(m_loader, &PhotoLoader::loaded, m_timeline, &TimelineView::picturesChanged);
    connect(m_timeline, &TimelineView::visitActivated, this, &HistoryPanel::visitRequested);
    connect(m_timeline, &TimelineView::sentenceChanged, this, [this](const QString& sentence) {
        m_sentence->setText(sentence);
        m_sentence->setToolTip(sentence); // for what is longer than the lines here
    });
    connect(m_timeline, &TimelineView::zoneChosen, this, [this](const ZoneId& zone) {
        m_closed = false;
        showPictures(zone);
        m_photos->list()->setFocus();
    });
    connect(m_photos, &PhotoYears::closeRequested, this, [this] {
        m_closed = true;
        hidePictures();
        m_timeline->setFocus();
    });
    connect(m_print, &QPushButton::clicked, this, &HistoryPanel::printRequested);
    connect(m_owner, &QPushButton::clicked, this, &HistoryPanel::ownerHistoryRequested);
}

HistoryPanel::~HistoryPanel() = default;

void HistoryPanel::makeWidgets()
{
    m_timeline->setObjectName(u"timeline"_s);
    m_print->setObjectName(u"printTimeline"_s);
    m_print->setAccessibleDescription(tr("The timeline on paper, to be printed or exported as PDF"));
    m_owner->setObjectName(u"ownerHistory"_s);
    m_owner->setAccessibleDescription(tr("What the owner should know of this unit, to be printed or exported as PDF"));
    m_sentence->setObjectName(u"markSentence"_s);
    m_sentence->setTextFormat(Qt::PlainText);
    m_sentence->setWordWrap(true);
    m_sentence->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    m_sentence->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
    fitSentence();
    auto* line = new QHBoxLayout;
    line->setSpacing(12);
    line->addWidget(m_sentence, 1);
    line->addWidget(m_print);
    line->addWidget(m_owner);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(4);
    column->addWidget(m_timeline, 1);
    column->addLayout(line);
    column->addWidget(m_photos);
    column->addWidget(m_legend);
    m_photos->hide();
}

void HistoryPanel::fitSentence()
{
    m_sentence->setFixedHeight(2 * m_sentence->fontMetrics().lineSpacing() + 2); // so that nothing jumps
}

/// Where both have no room, the legend gives way: each mark says what it is when it is pointed at or walked to.
void HistoryPanel::fitLegend()
{
    constexpr int leastLines = 13; // of letters the timeline needs to show a few lanes; ours
    const int left = height() - m_sentence->height() - m_legend->heightForWidth(width());
    m_legend->setVisible(m_photos->isHidden() && left >= leastLines * m_sentence->fontMetrics().lineSpacing());
}

void HistoryPanel::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    fitLegend();
}

void HistoryPanel::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::StyleChange) { // letters have another size now
        fitSentence();
        fitLegend();
    }
}

void HistoryPanel::setSnapshot(const UnitSnapshotPtr& snapshot)
{
    m_snapshot = snapshot;
    m_raised = std::make_unique<RaisedFlags>(m_snapshot->record, m_book.catalogue(), m_book.outlookModel());
    m_loader->setPhotos(m_snapshot->record.photos);
    const Date today = m_snapshot->review.today;
    const Timeline timeline = timelineOf(m_snapshot->record, m_book.catalogue(), today);
    m_timeline->setTimeline(timeline);
    m_legend->setTimeline(timeline);
    if (m_zone)
        showPictures(*m_zone);
    m_outlookDue = true;
    takeOutlookSoon();
}

/// Worked out in a turn of its own, so that the window answers between; and only where it is looked at.
void HistoryPanel::takeOutlookSoon()
{
    if (m_outlookDue && isVisible())
        QTimer::singleShot(0, this, &HistoryPanel::takeOutlook);
}

void HistoryPanel::takeOutlook()
{
    if (!std::exchange(m_outlookDue, false))
        return;
    const Date today = m_snapshot->review.today;
    Timeline timeline = m_timeline->timeline();
    addOutlook(timeline, m_snapshot->forecast, zoneCourses(m_snapshot->known, yearsAhead(timeline.first, today)));
    m_legend->setTimeline(timeline);
    fitLegend(); // it has more to say now
    m_timeline->setTimeline(std::move(timeline));
}

void HistoryPanel::showEvent(QShowEvent* event)
{
    QWidget::showEvent(event);
    takeOutlookSoon();
}

void HistoryPanel::showAll()
{
    m_timeline->showAll();
    hidePictures();
}

void HistoryPanel::selectZone(ZoneId zone)
{
    m_timeline->selectZone(zone);
    // Without photographs their room is better left to the timeline; asked for by name, the strip says that there are
    // none.
    const bool any = std::ranges::any_of(m_snapshot->record.photos, [this, zone](const Photo& photo) {
        const TimelineLane* lane = laneWith(m_timeline->timeline(), zone).lane;
        return lane && photo.zoneId && std::ranges::find(lane->zones, *photo.zoneId) != lane->zones.end();
    });
    if (!m_closed && any)
        showPictures(zone);
    else
        hidePictures();
}

void HistoryPanel::showPictures(ZoneId zone)
{
    const LaneOfZone found = laneWith(m_timeline->timeline(), zone);
    if (!found.lane) {
        hidePictures();
        return;
    }
    m_zone = zone;
    const TimelineWords words(m_book.speaker());
    m_photos->showPictures(tr("%1, %2", "part, zone").arg(words.partName(*found.group), words.zoneName(*found.lane)),
                           zonePictures(m_snapshot->record, found.lane->zones));
    m_photos->show();
    m_legend->hide(); // the photographs need its room
}

void HistoryPanel::hidePictures()
{
    m_zone.reset();
    m_photos->hide();
    fitLegend();
}

} // namespace padside
