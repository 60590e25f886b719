// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/catalogue/own_changes.h"
#include "core/outlook/kind_lesson.h"
#include "ui/drawing/theme.h"

#include <QWidget>

#include <functional>
#include <memory>
#include <optional>
#include <vector>

class QLabel;
class QPushButton;
class QTableView;

namespace padside {

class RatesModel;
class RecordBook;
class SpreadColumns;
class WorkLine;

/// Learning how long parts live from the person's own records. Nothing changes until they say so; then it is kept in
/// their file's own catalogue, and can be put back to ours.
class RatesPanel : public QWidget
{
    Q_OBJECT
public:
    RatesPanel(RecordBook& book, const Theme& theme, QWidget* parent = nullptr);

    [[nodiscard]] const RatesModel& model() const { return *m_model; }

Q_SIGNALS:
    void learnt(); ///< the lessons are there
    void catalogueChanged(); ///< what the person accepted or put back is kept in the file

protected:
    void showEvent(QShowEvent* event) override;
    void changeEvent(QEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void makeLayout();
    void makeTable();
    void fitTable(); ///< to the letters and sizes that are worn
    void connectParts();
    void showInUse();
    void showLessons(std::vector<KindLesson> lessons);
    void learn();
    void take(const std::vector<KindLesson>& lessons);
    void accept();
    void putBack();
    /// Changes the own catalogue; says why if that can't be.
    void change(const std::function<void(OwnChanges&)>& edit);
    void followChoice();
    void sayCurrent();

    RecordBook& m_book;
    const Theme& m_theme;
    std::shared_ptr<std::optional<std::vector<KindLesson>>> m_found; ///< by the work under way, read once it is done
    RatesModel* m_model;
    WorkLine* m_work;
    QTableView* m_table;
    SpreadColumns* m_columns;
    QLabel* m_state;
    QLabel* m_details;
    QPushButton* m_learn;
    QPushButton* m_all;
    QPushButton* m_accept;
    QPushButton* m_putBack;
    bool m_isFilled = false;
};

} // namespace padside
