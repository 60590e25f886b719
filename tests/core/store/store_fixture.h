// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/record/unit_record.h"
#include "core/store/store.h"
#include "tests/support/record_builder.h"

#include <QTemporaryDir>

#include <functional>
#include <gtest/gtest.h>

namespace padside::test {

/// A record file in a folder of its own, gone after the test.
class StoreTest : public ::testing::Test
{
protected:
    StoreTest();

    [[nodiscard]] QString pathOf(const QString& name) const { return m_folder.filePath(name); }
    /// Closes the store and opens the file again.
    void reopen();

    QTemporaryDir m_folder;
    QString m_path;
    std::unique_ptr<Store> m_store;
};

/// Writes a whole record through the books as the program would: site, unit, parts, then visit by visit, closed where
/// the record says so, corrections last. The site may be there already.
void writeRecord(Store& store, const UnitRecord& record);

/// What the action was refused with; a failure of the test if it went well. An empty sentence is a failure too.
[[nodiscard]] StoreError refusalOf(const std::function<void()>& action);

} // namespace padside::test
