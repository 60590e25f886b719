// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "ui/pages/visit/visit_sheet.h"

#include <QWidget>

#include <functional>
#include <optional>

class QLabel;
class QTabWidget;
class QVBoxLayout;

namespace padside {

struct Theme;
class ChargePanel;
class ClosingPanel;
class ConditionsBar;
class CutawayView;
class FollowUpPanel;
class ReadingsPanel;
class RecordBook;
class TreatmentPanel;
class ZoneList;
class ZonePanel;

/// One visit from its first zone to its close. Everything entered is written at once; there is nothing to save.
class VisitPage : public QWidget
{
    Q_OBJECT
public:
    VisitPage(RecordBook& book, const Theme& theme, QWidget* parent = nullptr);
    ~VisitPage() override;

    /// Shows a visit at the first zone that was not looked at yet; a closed one read-only.
    void showVisit(VisitId visit);

    [[nodiscard]] const VisitSheet& sheet() const { return m_sheet; }
    [[nodiscard]] std::optional<ZoneId> zone() const; ///< the zone at hand

    /// Takes the last entry back, or takes it again, and shows the place that changed.
    void undo();
    void redo();
    [[nodiscard]] const QUndoStack& steps() const { return m_log.steps(); } ///< with their names, for menus
    [[nodiscard]] bool isClosed() const { return !m_log.visit().id.isNull() && !m_log.visit().isOpen(); }

Q_SIGNALS:
    void closed(const padside::VisitId& visit);
    void leaveRequested(const padside::UnitId& unit);

protected:
    void dragEnterEvent(QDragEnterEvent* event) override;
    void dropEvent(QDropEvent* event) override;
    void changeEvent(QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    enum Side { readingsSide, workSide, chargeSide, closingSide }; // then the drawing, where it has no other room

    QWidget* makeSide();
    void makeDrawing();
    void fillDrawing();
    void placeDrawing(bool beneath);
    void makeKeys();
    void onKey(const QKeySequence& keys, QWidget* scope, std::function<void()> action);
    void reload();
    void showZone();
    void goTo(std::size_t index);
    void step(int by);
    void goToNextOpenZone();
    void openSide(Side side);
    void goToPlace(const VisitPlace& place);
    void fit(); ///< to the look that is worn
    void fitSide();
    void closeVisit();
    void say(const QString& sentence);
    void hint(const QString& sentence); ///< why a key did nothing; gone with the next zone
    [[nodiscard]] QStringList unfinished() const;

    RecordBook& m_book;
    const Theme& m_theme;
    VisitLog m_log;
    VisitSheet m_sheet;
    std::size_t m_index = 0;

    ConditionsBar* m_conditions;
    ZoneList* m_list;
    QLabel* m_progress;
    QLabel* m_lastColumn;
    QWidget* m_zoneArea;
    ZonePanel* m_zone;
    QTabWidget* m_side;
    QVBoxLayout* m_sideColumn;
    CutawayView* m_cutaway;
    ReadingsPanel* m_readings;
    TreatmentPanel* m_work;
    FollowUpPanel* m_followUps;
    ChargePanel* m_charges;
    ClosingPanel* m_closing;
    QLabel* m_message;
    bool m_messageIsHint = false;
    QLabel* m_keys;
};

} // namespace padside
