// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "ui/pages/visit/visit_sheet.h"

#include <QWidget>

#include <optional>

class QLabel;
class QLayout;
class QPlainTextEdit;
class QPushButton;
class QScrollArea;

namespace padside {

struct Theme;
class CautionLine;
class GradeChoice;
class PhotoFrame;
class PhotoStrip;
class RecordBook;
class VisitLog;
class WetnessChoice;

/// One zone at a time: what it was last time beside what it is today. Every choice is written at once.
class ZonePanel : public QWidget
{
    Q_OBJECT
public:
    ZonePanel(RecordBook& book, VisitLog& log, const Theme& theme, QWidget* parent = nullptr);

    void showLine(const ZoneLine& line, const QString& place, bool mayWrite);
    void showEmpty();
    [[nodiscard]] Phase phase() const { return m_phase; }
    [[nodiscard]] PhotoStrip& photos() { return *m_photos; }
    [[nodiscard]] GradeChoice& grades() { return *m_grades; }

    void setPhase(Phase phase);
    void togglePhase();
    void setWetness(Wetness wetness);
    void sameAsLastTime();
    void toggleCautions();
    void scrollToTop();
    void writeNote(); ///< puts the cursor into the note
    bool keepNote(); ///< enters what was typed; false if the store refused it
    [[nodiscard]] bool isWritingNote() const;

Q_SIGNALS:
    void refused(const QString& sentence);
    void nothingToDo(const QString& because); ///< a key that has nothing to act on
    void nextRequested();

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    [[nodiscard]] QWidget* makeSight();
    [[nodiscard]] QLayout* makeFoot(); ///< always in view: every zone is said to be dry, damp or wet
    void connectAll();
    [[nodiscard]] QLayout* makeComparison();
    void showCautions();
    void showLastTime();
    void showToday();
    void showTodaysPhoto();
    [[nodiscard]] VisitLog::Look look() const { return m_line->look(m_phase); }

    RecordBook& m_book;
    VisitLog& m_log;
    std::optional<ZoneLine> m_line;
    Phase m_phase = Phase::asFound;
    bool m_mayWrite = true;
    QString m_shownNote;
    std::pair<ZoneId, Phase> m_noteOwner;

    QScrollArea* m_area = nullptr; ///< all but the foot
    QLabel* m_title;
    QLabel* m_place;
    CautionLine* m_caution;
    QWidget* m_phaseRow;
    QPushButton* m_asFound;
    QPushButton* m_asLeft;
    PhotoFrame* m_lastFrame;
    QLabel* m_lastHeading;
    QLabel* m_lastText;
    PhotoFrame* m_todayFrame;
    PhotoStrip* m_photos;
    QPushButton* m_addPhoto;
    QLabel* m_todayHeading;
    GradeChoice* m_grades;
    WetnessChoice* m_wetness;
    QPushButton* m_same;
    QPlainTextEdit* m_note;
};

} // namespace padside
