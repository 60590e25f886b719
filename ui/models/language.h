// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QLocale>
#include <QString>
#include <QStringList>

#include <vector>

namespace padside {

/// A language the window can speak.
struct Language
{
    QString code; ///< "es", "pt_BR"; as in padside_es.qm
    QString name; ///< as its speakers call it
    QString file; ///< the translation; empty for English, which the program is written in

    friend bool operator==(const Language&, const Language&) = default;
};

/// Where translations are looked for, in this order: the person's data folder and the system's
/// (…/share/padside/translations), beside the program (<prefix>/share/padside/translations), `shipped` inside the
/// program. A translation found earlier stands before a later one of the same language, so that one can be corrected
/// without building.
[[nodiscard]] QStringList translationFolders(const QString& shipped);

/// English, and every language with a readable padside_<code>.qm in one of the folders, by name.
[[nodiscard]] std::vector<Language> languagesIn(const QStringList& folders);

/// The language with this code; an empty code means the first of `wishes` (a locale's uiLanguages()) that is there.
/// English if there is none.
[[nodiscard]] Language chosenLanguage(const QString& code, const QStringList& wishes,
                                      const std::vector<Language>& there);

/// How numbers and dates are written in a language on this computer: the computer's own way if it speaks the language,
/// else the language's way in the computer's country if that is known, else the language's usual one.
[[nodiscard]] QLocale localeFor(const Language& language, const QLocale& computer);

/// Makes the program speak `language`: Qt's own buttons and dialogs too. Takes the place of the language before it.
/// False: the file can't be read; the program then speaks English.
bool speak(const Language& language);

} // namespace padside
