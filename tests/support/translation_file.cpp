// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/support/translation_file.h"

#include <QDir>
#include <QFile>
#include <QXmlStreamReader>

#include <stdexcept>

namespace padside::test {

using Qt::Literals::StringLiterals::operator""_s;

namespace {

void readTranslation(QXmlStreamReader& xml, Translated& entry)
{
    entry.finished = xml.attributes().value(u"type"_s).isEmpty();
    QString text;
    while (!xml.atEnd()) {
        xml.readNext();
        if (xml.isEndElement() && xml.name() == u"translation"_s)
            break;
        if (xml.isStartElement() && xml.name() == u"numerusform"_s)
            entry.translations << xml.readElementText();
        else if (xml.isCharacters())
            text += xml.text();
    }
    if (!entry.plural)
        entry.translations << text;
}

Translated readMessage(QXmlStreamReader& xml, const QString& context)
{
    Translated entry;
    entry.context = context;
    entry.plural = xml.attributes().value(u"numerus"_s) == u"yes"_s;
    while (xml.readNextStartElement()) {
        if (xml.name() == u"source"_s)
            entry.source = xml.readElementText();
        else if (xml.name() == u"comment"_s)
            entry.comment = xml.readElementText();
        else if (xml.name() == u"translation"_s)
            readTranslation(xml, entry);
        else
            xml.skipCurrentElement();
    }
    return entry;
}

} // namespace

std::vector<Translated> readTranslationFile(const QString& path)
{
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly))
        throw std::runtime_error((path + u": "_s + file.errorString()).toStdString());
    QXmlStreamReader xml(&file);
    std::vector<Translated> entries;
    QString context;
    while (!xml.atEnd()) {
        xml.readNext();
        if (!xml.isStartElement())
            continue;
        if (xml.name() == u"name"_s)
            context = xml.readElementText();
        else if (xml.name() == u"message"_s)
            entries.push_back(readMessage(xml, context));
    }
    if (xml.hasError())
        throw std::runtime_error((path + u": "_s + xml.errorString()).toStdString());
    return entries;
}

QStringList translationFiles()
{
    const QDir folder(QStringLiteral(PADSIDE_SOURCE_DIR "/resources/translations"));
    QStringList files;
    for (const QString& name : folder.entryList({u"padside_*.ts"_s}, QDir::Files))
        files << folder.filePath(name);
    return files;
}

} // namespace padside::test
