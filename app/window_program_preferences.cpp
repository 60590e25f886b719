// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

// What the person chose, and what follows from it. A look is worn by the open window; for language and units, record
// book and window are made anew.

#include "app/clock.h"
#include "app/come_forward.h"
#include "app/commands/of_file.h"
#include "app/window_program.h"
#include "resources/resources.h"
#include "ui/models/language.h"
#include "ui/models/speaker.h"
#include "ui/pages/preferences/preferences_dialog.h"
#include "ui/shell/main_window.h"

#include <QApplication>
#include <QSettings>

#include <utility>

namespace padside {

namespace {

std::vector<Language> languages()
{
    return languagesIn(translationFolders(QString::fromStdString(shippedTranslations())));
}

} // namespace

std::unique_ptr<RecordBook> WindowProgram::bookOf(OpenFile& file) const
{
    return std::make_unique<RecordBook>(*file.store, *file.catalogue, file.ids,
                                        RecordBook::Surroundings{&now, m_locale,
                                                                 unitChoice(m_preferences, usualUnits(m_computer)),
                                                                 m_preferences.technician, m_preferences.currency});
}

void WindowProgram::applyPreferences()
{
    const Language language = chosenLanguage(m_preferences.language, QLocale::system().uiLanguages(), languages());
    m_locale = localeFor(language, m_computer);
    QLocale::setDefault(m_locale);
    speak(language);
    m_appearance.wear(lookFor(m_preferences, m_computerIsDark));
}

void WindowProgram::showPreferences()
{
    m_preferences = readPreferences(QSettings()); // the summary's page keeps some too
    auto* dialog = new PreferencesDialog(*m_open->book, m_preferences,
                                         {languages(), usualUnits(m_computer), shippedCatalogue()}, window());
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    connect(dialog, &PreferencesDialog::chosen, this, &WindowProgram::choose, Qt::QueuedConnection);
    dialog->open();
}

void WindowProgram::changeLook(const Look& look)
{
    m_preferences = readPreferences(QSettings()); // the summary's page keeps some too
    if (look.theme != m_appearance.look().theme) // else it may go on following the computer
        m_preferences.theme = QString::fromStdString(std::string(codeOf(look.theme)));
    m_preferences.fieldSize = look.fieldSize;
    QSettings settings;
    keepPreferences(m_preferences, settings);
    m_appearance.wear(look);
}

void WindowProgram::choose(const Preferences& preferences, bool catalogueChanged)
{
    OpenFile& file = *m_open;
    std::unique_ptr<const Catalogue> catalogue;
    const auto readAgain = [&] {
        catalogue = std::make_unique<const Catalogue>(
            catalogueFor(*file.store, [&](const Sentence& why) { file.complaints.push_back(why); }));
    };
    if (catalogueChanged && !file.book->attempt(readAgain))
        return;
    m_preferences = preferences;
    QSettings settings;
    keepPreferences(preferences, settings);
    if (QWidget* typing = window()->focusWidget())
        typing->clearFocus(); // what is being typed is entered as it was meant, before units and language change
    applyPreferences();

    // The window before and what it shows go only when the new one stands in its place.
    if (catalogue)
        catalogue.swap(file.catalogue);
    const auto bookBefore = std::exchange(file.book, bookOf(file));
    showWindow(file);
}

} // namespace padside
