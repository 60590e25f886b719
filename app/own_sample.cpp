// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "app/own_sample.h"

#include "core/catalogue/catalogue.h"
#include "core/store/photo_path.h"
#include "core/store/store.h"
#include "resources/resources.h"
#include "sample-db/sample.h"

#include <QDir>
#include <QFileInfo>
#include <QTemporaryDir>

namespace padside {

using namespace Qt::Literals::StringLiterals;

namespace {

StoreError notMade(const QString& file)
{
    return StoreError(
        Problem{ProblemKind::cannotWrite,
                {PADSIDE_SAY("The sample could not be put at {0}: is the disk full, or the folder closed to you?"),
                 {file.toStdString()}}});
}

} // namespace

bool makeOwnSample(const QString& file, const SampleOptions& options, const std::function<bool(double)>& tell)
{
    const QTemporaryDir apart(QFileInfo(file).absolutePath() + u"/sample-XXXXXX"_s);
    if (!apart.isValid())
        throw notMade(file);
    const QString fresh = apart.filePath(QFileInfo(file).fileName());
    bool whole = true;
    {
        const auto store = Store::create(fresh);
        const auto catalogue = Catalogue::load(shippedCatalogue());
        if (!catalogue)
            throw StoreError(catalogue.error());
        buildSample(*store, *catalogue, options, [&](double share) {
            whole = tell(share);
            return whole;
        });
    }
    if (!whole)
        return false;
    QDir().rename(photoFolderOf(fresh), photoFolderOf(file)); // without them the record is still whole, and says so
    if (!QFile::rename(fresh, file))
        throw notMade(file);
    return true;
}

} // namespace padside
