// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/models/language.h"

#include <QCoreApplication>
#include <QDir>
#include <QLibraryInfo>
#include <QStandardPaths>
#include <QTranslator>

#include <algorithm>

namespace padside {

namespace {

const QString prefix = QStringLiteral("padside_");
const QString ending = QStringLiteral(".qm");
const QString englishCode = QStringLiteral("en");

Language englishItself()
{
    return {englishCode, QStringLiteral("English"), {}};
}

/// "español (México)" where a country belongs to the code, "español" where none does. A translation says the name of
/// its language itself; Qt's would add a country of its own choice.
QString nameOf(const QString& code, const QTranslator& translation)
{
    const QLocale locale(code);
    //: The name of the language of this translation, as its speakers call it, without a country
    const char* const itsName = QT_TRANSLATE_NOOP("Language", "English");
    const QString said = translation.translate("Language", itsName);
    const QString name = said.isEmpty() ? locale.nativeLanguageName() : said;
    if (name.isEmpty())
        return code;
    return code.contains(u'_') ? QStringLiteral("%1 (%2)").arg(name, locale.nativeTerritoryName()) : name;
}

/// The translators in use; they belong to the application and end with it.
QTranslator* newTranslator(const QString& objectName)
{
    QCoreApplication* application = QCoreApplication::instance();
    if (auto* before = application->findChild<QTranslator*>(objectName, Qt::FindDirectChildrenOnly)) {
        QCoreApplication::removeTranslator(before);
        delete before;
    }
    auto* translator = new QTranslator(application);
    translator->setObjectName(objectName);
    return translator;
}

} // namespace

QStringList translationFolders(const QString& shipped)
{
    QStringList folders = QStandardPaths::locateAll(
        QStandardPaths::GenericDataLocation, QStringLiteral("padside/translations"), QStandardPaths::LocateDirectory);
    folders << QDir(QCoreApplication::applicationDirPath()).filePath(QStringLiteral("../share/padside/translations"));
    folders << shipped;
    return folders;
}

std::vector<Language> languagesIn(const QStringList& folders)
{
    std::vector<Language> languages;
    for (const QString& folder : folders) {
        const QDir directory(folder);
        for (const QString& name : directory.entryList({prefix + u'*' + ending}, QDir::Files, QDir::Name)) {
            const QString code = name.sliced(prefix.size(), name.size() - prefix.size() - ending.size());
            const bool known = code == englishCode || std::ranges::count(languages, code, &Language::code) > 0;
            const QString file = directory.filePath(name);
            QTranslator translation;
            if (!code.isEmpty() && !known && translation.load(file))
                languages.push_back({code, nameOf(code, translation), file});
        }
    }
    std::ranges::sort(languages, [](const Language& left, const Language& right) {
        return QString::localeAwareCompare(left.name, right.name) < 0;
    });
    languages.insert(languages.begin(), englishItself());
    return languages;
}

Language chosenLanguage(const QString& code, const QStringList& wishes, const std::vector<Language>& there)
{
    const auto find = [&](const QString& wanted) -> const Language* {
        const auto found = std::ranges::find(there, wanted, &Language::code);
        return found == there.end() ? nullptr : &*found;
    };
    if (!code.isEmpty()) {
        const Language* chosen = find(code);
        return chosen ? *chosen : englishItself();
    }
    for (const QString& wish : wishes) { // "es-Latn-MX", "es-MX", "es"
        const QLocale locale(wish);
        if (const Language* exact = find(locale.name()))
            return *exact;
        if (const Language* general = find(locale.name().section(u'_', 0, 0)))
            return *general;
    }
    return englishItself();
}

QLocale localeFor(const Language& language, const QLocale& computer)
{
    const QLocale usual(language.code);
    const bool plain = computer.language() == QLocale::C && language.code == englishCode;
    if (usual.language() == computer.language() || usual.language() == QLocale::C || plain)
        return computer;
    const QLocale there(usual.language(), computer.territory());
    return there.language() == usual.language() && !language.code.contains(u'_') ? there : usual;
}

bool speak(const Language& language)
{
    QTranslator* qts = newTranslator(QStringLiteral("qtTranslator"));
    QTranslator* ours = newTranslator(QStringLiteral("padsideTranslator"));
    if (language.file.isEmpty())
        return true;
    if (!ours->load(language.file))
        return false;
    if (qts->load(QLocale(language.code), QStringLiteral("qtbase"), QStringLiteral("_"),
                  QLibraryInfo::path(QLibraryInfo::TranslationsPath)))
        QCoreApplication::installTranslator(qts);
    return QCoreApplication::installTranslator(ours);
}

} // namespace padside
