// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/store/store.h"
#include "tests/support/record_builder.h"
#include "ui/models/record_book.h"
#include "ui/pages/visit/visit_page.h"

#include <QTemporaryDir>

#include <gtest/gtest.h>
#include <memory>

class QLineEdit;

namespace padside::test {

/// A unit with an accumulator, a fan motor and a capacitor, a closed spring visit of last year, and the visit page on
/// it.
class VisitPageTest : public ::testing::Test
{
protected:
    VisitPageTest();
    ~VisitPageTest() override;

    /// Makes book and page anew, as after a start of the program; `locale` is the person's.
    void open(const QLocale& locale = QLocale(QLocale::English, QLocale::UnitedStates),
              UnitSystem units = UnitSystem::metric);
    /// Ends the program without any farewell and opens the file again.
    void killAndReopen();
    void start(VisitReason reason = VisitReason::spring);

    template <typename Widget = QWidget> [[nodiscard]] Widget* find(const char* name) const
    {
        auto* found = m_page->findChild<Widget*>(QString::fromUtf8(name));
        EXPECT_NE(found, nullptr) << name;
        return found;
    }
    void key(Qt::Key key, Qt::KeyboardModifiers modifiers = Qt::NoModifier); ///< to whatever has the focus
    void type(const QString& text); ///< to whatever has the focus
    void typeInto(const char* field, const QString& text); ///< and Enter
    void goTo(const char* zoneKind);
    [[nodiscard]] QString echoOf(const char* field) const;
    [[nodiscard]] QString message() const; ///< empty if none is shown

    [[nodiscard]] UnitRecord record() const;
    [[nodiscard]] std::optional<Finding> finding(const char* zoneKind, Phase phase = Phase::asFound) const; ///< today's
    [[nodiscard]] ZoneId zoneId(const char* zoneKind) const;

    QTemporaryDir m_folder;
    QString m_path;
    Catalogue m_catalogue;
    IdMaker m_ids;
    std::unique_ptr<Store> m_store;
    std::unique_ptr<RecordBook> m_book;
    std::unique_ptr<VisitPage> m_page;
    UnitId m_unit;
    VisitId m_visit;
    QLocale m_locale;
    UnitSystem m_units = UnitSystem::metric;
    int m_kills = 0;
};

[[nodiscard]] Instant springMorning(); ///< 2026-05-04, 09:00 +02:00

} // namespace padside::test
