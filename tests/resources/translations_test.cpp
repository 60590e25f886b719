// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

// Every text of the program has a finished translation that keeps its places. The texts are collected anew here, so a
// new sentence without a translation fails by name.

#include "tests/support/translation_file.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QProcess>
#include <QRegularExpression>
#include <QTemporaryDir>

#include <algorithm>
#include <gtest/gtest.h>
#include <map>

namespace padside::test {

using Qt::Literals::StringLiterals::operator""_s;

namespace {

/// {0}, %1, %n and their like, sorted; each once, for a translation may need to say one twice.
QStringList places(const QString& text)
{
    static const QRegularExpression place(uR"(\{\d+\}|%\d+|%L\d+|%n)"_s);
    QStringList found;
    for (auto match = place.globalMatch(text); match.hasNext();)
        found << match.next().captured();
    found.removeDuplicates();
    found.sort();
    return found;
}

std::string named(const Translated& entry)
{
    return (entry.context + u": “"_s + entry.source + u"”"_s).toStdString();
}

/// The translations brought up to date in a folder of their own.
class CollectedAnew : public ::testing::TestWithParam<QString>
{
protected:
    void SetUp() override
    {
        const QString name = QFileInfo(GetParam()).fileName();
        ASSERT_TRUE(QFile::copy(GetParam(), m_folder.filePath(name)));
        QFile::setPermissions(m_folder.filePath(name), QFile::ReadOwner | QFile::WriteOwner);
        QProcess update;
        update.setProcessChannelMode(QProcess::MergedChannels);
        update.start(QStringLiteral(PADSIDE_SOURCE_DIR "/resources/translations/update"), {m_folder.path()});
        ASSERT_TRUE(update.waitForFinished(120000)) << update.errorString().toStdString();
        ASSERT_EQ(update.exitCode(), 0) << update.readAll().toStdString();
        m_entries = readTranslationFile(m_folder.filePath(name));
        ASSERT_GT(m_entries.size(), 1000U);
    }

    QTemporaryDir m_folder;
    std::vector<Translated> m_entries;
};

std::string languageOf(const ::testing::TestParamInfo<QString>& file)
{
    return QFileInfo(file.param).completeBaseName().section(u'_', 1).replace(u'-', u'_').toStdString();
}

} // namespace

TEST(Translations, ThereAreSome)
{
    EXPECT_TRUE(translationFiles().join(u' ').contains(u"padside_es.ts"_s));
}

TEST_P(CollectedAnew, EveryTextOfTheProgramIsTranslated)
{
    for (const Translated& entry : m_entries) {
        EXPECT_TRUE(entry.finished) << named(entry)
                                    << " has no finished translation: run resources/translations/update";
        for (const QString& translation : entry.translations)
            EXPECT_FALSE(translation.trimmed().isEmpty()) << named(entry);
    }
}

TEST_P(CollectedAnew, NothingStandsInTheFileThatTheProgramDoesNotSay)
{
    const auto kept = readTranslationFile(GetParam());
    for (const Translated& entry : kept) {
        const bool said = std::ranges::any_of(m_entries, [&](const Translated& one) {
            return one.context == entry.context && one.source == entry.source && one.comment == entry.comment;
        });
        EXPECT_TRUE(said) << named(entry) << " is gone from the program: run resources/translations/update";
    }
}

TEST_P(CollectedAnew, EveryTranslationKeepsThePlacesOfItsText)
{
    for (const Translated& entry : m_entries) {
        for (const QString& translation : entry.translations)
            EXPECT_EQ(places(translation), places(entry.source)) << named(entry) << " ↔ " << translation.toStdString();
    }
}

TEST_P(CollectedAnew, BlanksAtTheEndsAreKept)
{
    for (const Translated& entry : m_entries) {
        for (const QString& translation : entry.translations) {
            EXPECT_EQ(translation.startsWith(u' '), entry.source.startsWith(u' ')) << named(entry);
            EXPECT_EQ(translation.endsWith(u' '), entry.source.endsWith(u' ')) << named(entry);
        }
    }
}

TEST_P(CollectedAnew, TheKeysOfTheVisitDiffer)
{
    std::map<QString, QString> meaning;
    for (const Translated& entry : m_entries) {
        if (!entry.comment.startsWith(u"key: "_s))
            continue;
        const QString key = entry.translations.front();
        const auto [place, isNew] = meaning.emplace(key, entry.comment);
        EXPECT_TRUE(isNew || place->second == entry.comment)
            << key.toStdString() << " is both “" << place->second.toStdString() << "” and “"
            << entry.comment.toStdString() << "”";
    }
    EXPECT_GE(meaning.size(), 9U);
}

INSTANTIATE_TEST_SUITE_P(EachLanguage, CollectedAnew, ::testing::ValuesIn(translationFiles()), languageOf);

} // namespace padside::test
