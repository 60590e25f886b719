// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/verdict/zone_measure.h"
#include "ui/pages/unit/unit_snapshot.h"

#include <QScrollArea>

namespace padside {

struct Theme;
class RecordBook;

/// What was measured of a unit's zones: walls and rusted shares through the years, each with its limit, where it may
/// go, and what that means.
class MeasuredPanel : public QScrollArea
{
    Q_OBJECT
public:
    MeasuredPanel(const RecordBook& book, const Theme& theme, QWidget* parent = nullptr);

    /// The charts are made when the panel is first looked at.
    void setSnapshot(UnitSnapshotPtr snapshot);

protected:
    void showEvent(QShowEvent* event) override;

private:
    void fill();
    [[nodiscard]] QWidget* entryOf(const UnitRecord& record, const ZoneMeasure& measure);

    const RecordBook& m_book;
    const Theme& m_theme;
    UnitSnapshotPtr m_toShow; ///< not shown yet
};

} // namespace padside
