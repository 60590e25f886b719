// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/catalogue/catalogue.h"
#include "core/record/id.h"
#include "core/store/store.h"
#include "ui/models/record_book.h"

#include <QTemporaryDir>

#include <gtest/gtest.h>

namespace padside::test {

/// A fresh small sample and its record book on a fixed day, for tests of the whole window.
class WindowFixture : public ::testing::Test
{
protected:
    static constexpr int unitCount = 3;

    WindowFixture();

    /// Units of the file that are still there, in the order of the list.
    [[nodiscard]] std::vector<UnitId> units() const;

    QTemporaryDir m_folder;
    Catalogue m_catalogue;
    std::unique_ptr<Store> m_store;
    IdMaker m_ids;
    std::unique_ptr<RecordBook> m_book;
};

} // namespace padside::test
