// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "resources/resources.h"

#include <QDir>
#include <QFile>

// Q_INIT_RESOURCE declares a global function, so it may not stand inside a namespace.
static void keepCatalogueResources()
{
    Q_INIT_RESOURCE(catalogue);
}

static void keepIconResources()
{
    Q_INIT_RESOURCE(icons);
}

static void keepDrawingResources()
{
    Q_INIT_RESOURCE(drawings);
}

static void keepTranslationResources()
{
    Q_INIT_RESOURCE(translations);
}

namespace padside {

std::vector<std::string> shippedCatalogue()
{
    keepCatalogueResources();
    const QDir folder(QStringLiteral(":/padside/catalogue"));
    std::vector<std::string> texts;
    for (const QString& name : folder.entryList({QStringLiteral("*.json")}, QDir::Files, QDir::Name)) {
        QFile file(folder.filePath(name));
        const bool opened = file.open(QIODevice::ReadOnly);
        Q_ASSERT(opened); // built into the program itself
        texts.push_back(file.readAll().toStdString());
    }
    return texts;
}

std::string iconPath()
{
    keepIconResources();
    return ":/padside/icons/padside.svg";
}

std::string drawingPath(std::string_view unitKind)
{
    keepDrawingResources();
    std::string path = ":/padside/drawings/" + std::string(unitKind) + ".svg";
    return QFile::exists(QString::fromStdString(path)) ? path : std::string();
}

std::string shippedTranslations()
{
    keepTranslationResources();
    return ":/padside/translations";
}

} // namespace padside
