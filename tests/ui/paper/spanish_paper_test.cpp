// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

// Paper speaks the chosen language, numbers and dates included.

#include "resources/resources.h"
#include "tests/ui/paper/summary_fixture.h"
#include "ui/models/language.h"
#include "ui/models/speaker.h"

#include <QProcess>
#include <QTemporaryDir>

#include <gtest/gtest.h>

namespace padside::test {

using Qt::Literals::StringLiterals::operator""_s;

namespace {

class SpanishPaper : public ::testing::Test
{
protected:
    SpanishPaper()
    {
        const auto there = languagesIn({QString::fromStdString(shippedTranslations())});
        EXPECT_TRUE(speak(chosenLanguage(u"es"_s, {}, there)));
    }
    ~SpanishPaper() override { speak({u"en"_s, u"English"_s, {}}); }

    [[nodiscard]] QString printed() const
    {
        const LocalSpeaker speaker(QLocale(u"es_ES"_s), UnitSystem::metric);
        UnitRecord record = ordinaryRecord();
        record.visits.back().note.clear(); // what a person wrote stays in their language
        SummaryInput plain = summaryOf(record, 4, 5);
        const SummaryInput spanish{plain.record, plain.review,     plain.visit, plain.catalogue, speaker,
                                   plain.photos, plain.contractor, plain.size,  plain.printedOn, plain.forecast};
        const QString path = m_folder.filePath(u"resumen.pdf"_s);
        EXPECT_TRUE(exportVisitSummary(spanish, path));
        QProcess process;
        process.start(u"pdftotext"_s, {u"-layout"_s, path, u"-"_s});
        EXPECT_TRUE(process.waitForFinished(30000)) << "pdftotext is missing: install poppler-utils";
        return QString::fromUtf8(process.readAllStandardOutput());
    }

    QTemporaryDir m_folder;
};

} // namespace

TEST_F(SpanishPaper, HasSpanishHeadingsWordsNumbersAndDates)
{
    const QString text = printed();
    for (const QString& expected :
         {u"Resumen de la visita"_s, u"Qué ha cambiado"_s, u"Avisos"_s, u"Próximas"_s, u"Precauciones"_s, u"Lecturas"_s,
          u"Trabajo realizado"_s, u"Acumulador de succión"_s, u"picaduras."_s, u"primavera"_s, u"4/5/2026"_s,
          u"Página 1 de "_s, u"Técnico"_s, u"Cliente"_s})
        EXPECT_TRUE(text.contains(expected)) << expected.toStdString() << " is not in\n" << text.toStdString();
}

TEST_F(SpanishPaper, HasNoEnglishHeading)
{
    const QString text = printed();
    for (const QString& english :
         {u"Visit summary"_s, u"What changed"_s, u"Flags"_s, u"Next checks"_s, u"Cautions"_s, u"Readings"_s,
          u"Work done"_s, u"Photographs"_s, u"Technician"_s, u"Customer"_s, u"As found"_s, u"As left"_s, u"Page 1"_s,
          u"Follow local codes"_s, u"Not seen"_s, u"Worse since"_s})
        EXPECT_FALSE(text.contains(english)) << english.toStdString();
}

} // namespace padside::test
