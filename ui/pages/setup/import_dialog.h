// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/record/unit.h" // before id.h, for moc
#include "ui/models/unit_import.h"

#include <QDialog>

class QCheckBox;
class QComboBox;
class QLabel;
class QProgressBar;
class QPushButton;
class QTableView;

namespace padside {

class ColumnChoices;
class UnitPlanModel;

/// Units from a list (CSV): choose or drop the file, see what each row will become, add the good ones.
class ImportDialog final : public QDialog
{
    Q_OBJECT
public:
    /// Both services outlive it.
    ImportDialog(RecordBook& book, SetupLog& log, QWidget* parent = nullptr);

    void read(const QString& file);
    void reject() override; ///< stops what is going on; closes where nothing is

Q_SIGNALS:
    void added(int count);

protected:
    void dragEnterEvent(QDragEnterEvent* event) override;
    void dropEvent(QDropEvent* event) override;

private:
    [[nodiscard]] QLayout* fileLine();
    [[nodiscard]] QWidget* columnPart();
    [[nodiscard]] QLayout* footLine();
    void makeTable();
    void connectImport();
    void chooseFile();
    void showList();
    void showPlan();
    void fitColumns(); ///< to what the rows in sight say; none gets narrower
    void chooseFirstSkipped();
    void showRow(const QModelIndex& row);
    void showBusy(bool busy);
    void say(const QString& sentence);

    RecordBook& m_book;
    UnitImport* m_import;
    UnitPlanModel* m_model;
    QLabel* m_file;
    QPushButton* m_choose;
    QWidget* m_columnPart = nullptr;
    ColumnChoices* m_columns;
    QComboBox* m_usualSite;
    QCheckBox* m_onlyBad;
    QTableView* m_table;
    QLabel* m_rowSaid; ///< what is said of the chosen row, whole: its cell may be too narrow
    QLabel* m_counts;
    QLabel* m_said;
    QProgressBar* m_progress;
    QPushButton* m_add;
    QPushButton* m_close;
};

} // namespace padside
