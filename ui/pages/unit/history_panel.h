// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/record/unit_record.h"
#include "ui/pages/unit/unit_snapshot.h"

#include <QWidget>

class QLabel;
class QPushButton;

namespace padside {

struct Theme;
class PhotoLoader;
class PhotoYears;
class RaisedFlags;
class RecordBook;
class TimelineLegend;
class TimelineView;

/// A unit's history: the timeline, a line that says what is pointed at, and the photographs of the zone that was
/// chosen.
class HistoryPanel : public QWidget
{
    Q_OBJECT
public:
    HistoryPanel(RecordBook& book, const Theme& theme, QWidget* parent = nullptr);
    ~HistoryPanel() override;

    void setSnapshot(const UnitSnapshotPtr& snapshot);
    /// Begins anew, for another unit: all years, nothing chosen.
    void showAll();
    /// A zone was chosen elsewhere on the page: goes to its latest mark and shows its photographs, unless the person
    /// closed them.
    void selectZone(ZoneId zone);

Q_SIGNALS:
    void visitRequested(padside::VisitId visit);
    void printRequested();
    void ownerHistoryRequested();

protected:
    void changeEvent(QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void showEvent(QShowEvent* event) override;

private:
    void makeWidgets();
    void fitSentence();
    void fitLegend();
    void takeOutlookSoon();
    void takeOutlook();
    void showPictures(ZoneId zone);
    void hidePictures();

    RecordBook& m_book;
    UnitSnapshotPtr m_snapshot;
    std::unique_ptr<RaisedFlags> m_raised;
    PhotoLoader* m_loader;
    TimelineView* m_timeline;
    TimelineLegend* m_legend;
    QLabel* m_sentence;
    QPushButton* m_print;
    QPushButton* m_owner;
    PhotoYears* m_photos;
    std::optional<ZoneId> m_zone; ///< whose photographs are shown
    bool m_closed = false; ///< the person closed the photographs
    bool m_outlookDue = false; ///< what may come is not on the timeline yet
};

} // namespace padside
