// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/catalogue/catalogue.h"
#include "core/record/unit.h"
#include "core/store/store.h"
#include "ui/models/record_book.h"
#include "ui/pages/preferences/preferences_dialog.h"

#include <QTemporaryDir>

#include <gtest/gtest.h>

namespace padside::test {

/// A file with two sites and nothing else, and the preferences opened on it.
class PreferencesFixture : public ::testing::Test
{
protected:
    PreferencesFixture();

    void open(const Preferences& preferences = {}, const QLocale& locale = QLocale::c());
    template <typename Widget> [[nodiscard]] Widget* find(const QString& name) const
    {
        auto* found = m_dialog->findChild<Widget*>(name);
        EXPECT_NE(found, nullptr) << name.toStdString();
        return found;
    }
    void choose(const QString& box, const QVariant& data) const; ///< in a combo box
    [[nodiscard]] QString said() const; ///< empty while nothing is wrong
    [[nodiscard]] std::vector<Site> sites() const;

    QTemporaryDir m_folder;
    Catalogue m_catalogue;
    std::unique_ptr<Store> m_store;
    IdMaker m_ids;
    std::unique_ptr<RecordBook> m_book;
    std::unique_ptr<PreferencesDialog> m_dialog;
    std::vector<Preferences> m_chosen; ///< what the dialog said, newest last
    bool m_catalogueChanged = false;
};

} // namespace padside::test
