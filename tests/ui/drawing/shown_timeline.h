// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "tests/support/record_builder.h"
#include "tests/support/small_catalogue.h"
#include "ui/drawing/theme.h"
#include "ui/drawing/timeline_view.h"

#include <QSignalSpy>
#include <QTest>

namespace padside::test {

/// A view of a part with two zones and one with a single zone, three springs, that takes keys.
struct ShownTimeline
{
    explicit ShownTimeline(const UnitRecord& record)
        : timeline(timelineOf(record, smallCatalogue(), day("2024-12-31")))
    {
        view.resize(900, 300);
        view.setTimeline(timeline);
        view.show();
        view.setFocus();
    }
    ShownTimeline()
        : ShownTimeline(twoParts())
    {
    }

    static UnitRecord twoParts()
    {
        auto builder
            = aUnit("HB-01").withPart("suction-accumulator", {"crown", "bottom"}).withPart("fan-blade", {"root"});
        builder.visit("2022-04-10").graded("bottom", 2).graded("crown", 1).graded("root", 1);
        builder.visit("2023-04-10").graded("bottom", 2).graded("crown", 3);
        builder.visit("2024-04-10").graded("bottom", 4).graded("root", 1);
        return builder.build();
    }

    void press(std::initializer_list<Qt::Key> keys, Qt::KeyboardModifiers modifiers = {})
    {
        for (const Qt::Key key : keys)
            QTest::keyClick(&view, key, modifiers);
    }
    /// The group that has two lanes.
    [[nodiscard]] std::size_t accumulator() const { return timeline.groups.at(1).lanes.size() == 2 ? 1 : 2; }
    [[nodiscard]] QPoint headingOf(std::size_t group) const
    {
        const QRectF heading = view.geometryNow().placedGroup(group)->heading;
        return QPoint(30, static_cast<int>(heading.center().y()));
    }

    Timeline timeline;
    TimelineView view{plainEnglish(), Theme::light()};
    QSignalSpy activated{&view, &TimelineView::visitActivated};
    QSignalSpy said{&view, &TimelineView::sentenceChanged};
    QSignalSpy zones{&view, &TimelineView::zoneChosen};
};

} // namespace padside::test
