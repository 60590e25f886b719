// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/store/store_error.h"

#include <QString>

#include <memory>

namespace padside {

class Connection;
class SiteBook;
class VisitBook;
class RecordReader;
class PhotoFiles;
class OwnCatalogue;
class Drafts;
class ForecastBook;
class JudgementBook;

/// One open record file: a SQLite database and, beside it, the folder `<file>.photos` with the photographs.
/// Everything written is on disk when the call returns. All functions throw StoreError. One thread only: another thread
/// opens its own Store.
class Store
{
public:
    enum class Access { readWrite, readOnly };

    /// Makes a new file; refuses if there is one already.
    [[nodiscard]] static std::unique_ptr<Store> create(const QString& path);

    /// Opens a file, bringing an older schema up to date step by step (after a backup beside it, named in
    /// migratedFrom()). A file newer than the program opens read-only and says so in openedReadOnlyBecause(); a foreign
    /// or damaged one is refused.
    [[nodiscard]] static std::unique_ptr<Store> open(const QString& path, Access access = Access::readWrite);

    ~Store();
    Store(const Store&) = delete;
    Store& operator=(const Store&) = delete;

    [[nodiscard]] QString path() const;
    [[nodiscard]] bool isReadOnly() const;
    [[nodiscard]] const std::optional<Sentence>& openedReadOnlyBecause() const;
    [[nodiscard]] const QString& backupBeforeMigration() const; ///< empty if none was needed

    [[nodiscard]] SiteBook& sites(); ///< sites, units, parts, zones
    [[nodiscard]] VisitBook& visits(); ///< visits and their entries
    [[nodiscard]] RecordReader& records(); ///< whole unit records; the fleet pass
    [[nodiscard]] ForecastBook& forecasts(); ///< as they were made at each closing
    [[nodiscard]] JudgementBook& judgements(); ///< flags acknowledged, figures assumed
    [[nodiscard]] PhotoFiles& photos();
    [[nodiscard]] OwnCatalogue& ownCatalogue();
    [[nodiscard]] Drafts& drafts();
    [[nodiscard]] Connection& connection(); ///< for the other files of core/store only

private:
    struct Private;
    explicit Store(std::unique_ptr<Private> d);
    std::unique_ptr<Private> m_d;
};

} // namespace padside
