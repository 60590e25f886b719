// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/store/store.h"
#include "tests/support/record_builder.h"
#include "ui/models/record_book.h"
#include "ui/models/speaker.h"
#include "ui/pages/unit/unit_page.h"
#include "ui/pages/unit/unit_snapshot.h"

#include <QTemporaryDir>
#include <QUndoStack>

#include <gtest/gtest.h>
#include <memory>

namespace padside::test {

/// An accumulator whose bottom went from 2 to 3 to 4, whose crown was not seen at the last visit, and whose shell
/// nobody ever looked at; a fan blade in order.
[[nodiscard]] RecordBuilder worseningUnit();

/// The day on which everything is looked at.
[[nodiscard]] Date today();

[[nodiscard]] UnitSnapshotPtr snapshotOf(const UnitRecord& record, const Catalogue& catalogue);

/// ISO dates and English words, whatever the machine's locale.
[[nodiscard]] LocalSpeaker englishSpeaker();

/// A store with `record` in it, and the page.
class UnitPageTest : public ::testing::Test
{
protected:
    UnitPageTest();
    ~UnitPageTest() override;

    /// Writes a record with its site; closed visits are closed again.
    void write(const UnitRecord& record);
    void show(UnitId unit);
    /// A zone of the unit is found spent at its last visit, as if on another page; false: the record refused.
    [[nodiscard]] bool findSpentElsewhere(const UnitRecord& record, ZoneId zone);

    template <typename Widget> [[nodiscard]] Widget* find(const char* name) const
    {
        auto* found = m_page->findChild<Widget*>(QString::fromUtf8(name));
        EXPECT_NE(found, nullptr) << name;
        return found;
    }

    QTemporaryDir m_folder;
    Catalogue m_catalogue;
    IdMaker m_ids;
    std::unique_ptr<Store> m_store;
    std::unique_ptr<RecordBook> m_book;
    QUndoStack m_undo;
    std::unique_ptr<UnitPage> m_page;
};

} // namespace padside::test
