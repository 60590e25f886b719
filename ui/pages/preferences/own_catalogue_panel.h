// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/catalogue/own_changes.h"
#include "ui/pages/preferences/catalogue_subject.h"

#include <QWidget>

#include <map>
#include <string>
#include <vector>

class QCheckBox;
class QLabel;
class QListWidget;
class QPushButton;
class QTableView;

namespace padside {

class OwnCatalogueModel;
class RecordBook;

/// The person's own catalogue, kept in their file: at the left figures for all units and part kinds, the texts and
/// figures of the chosen one in a table beside ours, below it what the chosen line decides and where ours comes from,
/// and what a spent part takes with it.
class OwnCataloguePanel : public QWidget
{
    Q_OBJECT
public:
    OwnCataloguePanel(RecordBook& book, const std::vector<std::string>& shipped, QWidget* parent = nullptr);

    [[nodiscard]] QString problem() const; ///< what stands in the way of keeping the changes; empty if nothing does
    [[nodiscard]] bool differs() const; ///< from what the file keeps
    /// Writes the changes into the file. False: the store refused, as RecordBook::failed says.
    bool keep();

private:
    void makeList();
    void makeTable();
    [[nodiscard]] QWidget* makeConsequences();
    void addHeading(const QString& text);
    void addSubject(const CatalogueSubject& subject);
    void showSubject();
    void shareColumns();
    void showAbout();
    void markList();
    void setConsequences();
    void putBackSelected();
    [[nodiscard]] CatalogueSubject shownSubject() const;
    [[nodiscard]] QString nameOf(const CatalogueSubject& subject) const;

    RecordBook& m_book;
    QString m_unreadable; ///< why the changes in the file can't be read; they are then left alone
    OwnChanges m_changes;
    std::string m_kept; ///< the patch as it is in the file
    OwnCatalogueModel* m_model;
    std::map<int, CatalogueSubject> m_subjects; ///< by row of the list; headings have none
    QListWidget* m_list;
    QTableView* m_table;
    QLabel* m_about;
    QLabel* m_said;
    QPushButton* m_putAllBack;
    QWidget* m_consequencesBox = nullptr;
    std::map<Consequence, QCheckBox*> m_consequences;
};

} // namespace padside
