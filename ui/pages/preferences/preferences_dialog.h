// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "ui/models/language.h"
#include "ui/models/preferences.h"

#include <QDialog>

#include <string>
#include <vector>

class QLabel;
class QTabWidget;

namespace padside {

class LookPanel;
class OwnCataloguePanel;
class PersonPanel;
class RecordBook;
class SeasonPanel;
class UnitsPanel;

/// What a person may choose: for themselves on this computer (kept by the owner of this dialog), and for the open file
/// (kept in it: season weeks, their own catalogue). Nothing is kept before OK; an entry that can't be taken keeps the
/// dialog open on it.
class PreferencesDialog : public QDialog
{
    Q_OBJECT
public:
    /// What there is to choose from; passed in so that tests can fix it.
    struct Offered
    {
        std::vector<Language> languages;
        UnitSystem usualUnits = UnitSystem::metric; ///< where the computer is
        std::vector<std::string> shippedCatalogue;
    };

    PreferencesDialog(RecordBook& book, const Preferences& preferences, const Offered& offered,
                      QWidget* parent = nullptr);

    void accept() override;

Q_SIGNALS:
    /// The person chose, and the file keeps what belongs to it.
    void chosen(const padside::Preferences& preferences, bool catalogueChanged);

private:
    [[nodiscard]] QWidget* makeYours();
    bool stay(QWidget* panel, const QString& why); ///< says what is wrong, if anything, and shows where

    Preferences m_before;
    QTabWidget* m_tabs;
    QWidget* m_yours = nullptr; ///< the page with the person's panel and the look's
    PersonPanel* m_person;
    UnitsPanel* m_units;
    LookPanel* m_look;
    SeasonPanel* m_seasons;
    OwnCataloguePanel* m_catalogue;
    QLabel* m_said;
};

} // namespace padside
