// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/store/store.h"

#include "core/store/connection.h"
#include "core/store/drafts.h"
#include "core/store/forecast_book.h"
#include "core/store/judgement_book.h"
#include "core/store/opening.h"
#include "core/store/own_catalogue.h"
#include "core/store/photo_files.h"
#include "core/store/photo_path.h"
#include "core/store/record_reader.h"
#include "core/store/site_book.h"
#include "core/store/visit_book.h"

#include <utility>

namespace padside {

struct Store::Private
{
    explicit Private(OpenedFile opened)
        : file(std::move(opened))
        , sites(*file.connection)
        , visits(*file.connection)
        , records(*file.connection)
        , forecasts(*file.connection)
        , judgements(*file.connection)
        , photos(*file.connection, photoFolderOf(file.connection->path()))
        , ownCatalogue(*file.connection)
        , drafts(*file.connection)
    {
    }

    OpenedFile file;
    SiteBook sites;
    VisitBook visits;
    RecordReader records;
    ForecastBook forecasts;
    JudgementBook judgements;
    PhotoFiles photos;
    OwnCatalogue ownCatalogue;
    Drafts drafts;
};

Store::Store(std::unique_ptr<Private> priv)
    : m_d(std::move(priv))
{
}

Store::~Store() = default;

std::unique_ptr<Store> Store::create(const QString& path)
{
    createRecordFile(path);
    return open(path);
}

std::unique_ptr<Store> Store::open(const QString& path, Access access)
{
    OpenedFile file = openRecordFile(path, access == Access::readOnly, migrations());
    return std::unique_ptr<Store>(new Store(std::make_unique<Private>(std::move(file))));
}

QString Store::path() const
{
    return m_d->file.connection->path();
}

bool Store::isReadOnly() const
{
    return m_d->file.connection->isReadOnly();
}

const std::optional<Sentence>& Store::openedReadOnlyBecause() const
{
    return m_d->file.readOnlyBecause;
}

const QString& Store::backupBeforeMigration() const
{
    return m_d->file.backup;
}

SiteBook& Store::sites()
{
    return m_d->sites;
}

VisitBook& Store::visits()
{
    return m_d->visits;
}

RecordReader& Store::records()
{
    return m_d->records;
}

ForecastBook& Store::forecasts()
{
    return m_d->forecasts;
}

JudgementBook& Store::judgements()
{
    return m_d->judgements;
}

PhotoFiles& Store::photos()
{
    return m_d->photos;
}

OwnCatalogue& Store::ownCatalogue()
{
    return m_d->ownCatalogue;
}

Drafts& Store::drafts()
{
    return m_d->drafts;
}

Connection& Store::connection()
{
    return *m_d->file.connection;
}

} // namespace padside
