// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/catalogue/catalogue.h"
#include "core/record/unit.h" // before id.h, for moc
#include "core/store/store.h"
#include "tests/support/small_catalogue.h"
#include "ui/models/record_book.h"
#include "ui/models/visit_log.h"

#include <QTemporaryDir>

#include <gtest/gtest.h>

namespace padside::test {

/// An open fall visit to a fan motor with two zones.
class OpenVisitFixture : public ::testing::Test
{
protected:
    OpenVisitFixture();

    QTemporaryDir m_folder;
    std::unique_ptr<Store> m_store;
    Catalogue m_catalogue = smallCatalogue();
    IdMaker m_ids;
    RecordBook m_book;
    VisitLog m_log;
    UnitId m_unit;
    Part m_part;
    VisitId m_visit;
};

} // namespace padside::test
