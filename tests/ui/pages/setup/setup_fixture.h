// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/catalogue/catalogue.h"
#include "core/record/unit_record.h"
#include "core/store/store.h"
#include "ui/models/record_book.h"
#include "ui/models/setup_log.h"

#include <QDialog>
#include <QTemporaryDir>

#include <gtest/gtest.h>

namespace padside::test {

/// A file with one site and the shipped catalogue, and a form opened on it.
class SetupFixture : public ::testing::Test
{
protected:
    SetupFixture();

    /// Shows the dialog; it is kept here (and not deleted when it closes) so that it can be asked afterwards.
    template <typename Dialog> Dialog* show(std::unique_ptr<Dialog> dialog)
    {
        Dialog* shown = dialog.get();
        shown->setAttribute(Qt::WA_DeleteOnClose, false);
        m_dialog = std::move(dialog);
        shown->show();
        return shown;
    }
    template <typename Widget> [[nodiscard]] Widget* find(const QString& name) const
    {
        auto* found = m_dialog->findChild<Widget*>(name);
        EXPECT_NE(found, nullptr) << name.toStdString();
        return found;
    }
    void type(const QString& field, const QString& text) const;
    void choose(const QString& field, const QString& code) const;
    [[nodiscard]] QString typed(const QString& field) const;
    [[nodiscard]] QString problem(const QString& field) const; ///< the sentence that is shown below it
    void expectEveryFieldIsNamed() const;
    void expectTabReachesEveryControl() const;

    [[nodiscard]] std::vector<Site> sites() const;
    [[nodiscard]] std::vector<Unit> units() const;

    QTemporaryDir m_folder;
    Catalogue m_catalogue;
    std::unique_ptr<Store> m_store;
    IdMaker m_ids;
    std::unique_ptr<RecordBook> m_book;
    QUndoStack m_stack;
    std::unique_ptr<SetupLog> m_log;
    std::unique_ptr<QDialog> m_dialog;
    Site m_site;
};

} // namespace padside::test
