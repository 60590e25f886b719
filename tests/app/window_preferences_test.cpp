// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

// What a person chooses in the preferences reaches the open window at once, in the place where they are.

#include "app/window_program.h"
#include "core/store/own_catalogue.h"
#include "tests/app/command_runner.h"
#include "ui/drawing/theme.h"
#include "ui/models/language.h"
#include "ui/models/preferences.h"
#include "ui/models/record_book.h"
#include "ui/pages/preferences/preferences_dialog.h"
#include "ui/pages/unit/unit_page.h"
#include "ui/shell/main_window.h"

#include <QApplication>
#include <QComboBox>
#include <QLineEdit>
#include <QListWidget>
#include <QMenuBar>
#include <QSettings>
#include <QTableView>
#include <QTemporaryDir>

#include <gtest/gtest.h>

using namespace Qt::Literals::StringLiterals;

namespace padside::test {

class WindowPreferencesTest : public ::testing::Test
{
protected:
    WindowPreferencesTest()
    {
        QSettings().clear();
        EXPECT_EQ(run({"demo", "--out", m_file.toStdString(), "--units", "2", "--years", "1", "--no-photos"}).exitCode,
                  exitDone);
        m_program = std::make_unique<WindowProgram>(*qobject_cast<QApplication*>(qApp));
        EXPECT_EQ(m_program->open(m_file), WindowProgram::Opened::here);
    }
    ~WindowPreferencesTest() override
    {
        m_program.reset();
        QSettings().clear();
        speak({u"en"_s, u"English"_s, {}});
        QLocale::setDefault(QLocale::c());
    }

    /// The dialog, as the menu opens it.
    [[nodiscard]] PreferencesDialog* dialog() const
    {
        Q_EMIT m_program->window()->preferencesRequested();
        QApplication::processEvents();
        return m_program->window()->findChild<PreferencesDialog*>();
    }
    static void pick(const QDialog& dialog, const QString& box, const QVariant& data)
    {
        auto* combo = dialog.findChild<QComboBox*>(box);
        combo->setCurrentIndex(combo->findData(data));
    }
    static void accept(QDialog& dialog)
    {
        dialog.accept();
        QApplication::processEvents();
        QApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    }
    [[nodiscard]] QString firstMenu() const { return m_program->window()->menuBar()->actions().front()->text(); }

    QTemporaryDir m_folder;
    QString m_file = m_folder.filePath(u"harbour.padside"_s);
    std::unique_ptr<WindowProgram> m_program;
};

TEST_F(WindowPreferencesTest, ALookChosenInTheViewMenuIsWornByTheOpenWindowAndKept)
{
    const MainWindow* before = m_program->window();
    auto* fieldSize = before->findChild<QAction*>(u"fieldSize"_s);
    fieldSize->trigger();
    EXPECT_TRUE(readPreferences(QSettings()).fieldSize);
    EXPECT_EQ(readPreferences(QSettings()).theme, QString()) << "colours go on following the computer";

    for (QAction* action : before->findChildren<QAction*>()) {
        if (action->text().startsWith(u"Sunli&ght"_s))
            action->trigger();
    }
    QApplication::processEvents();
    EXPECT_EQ(before->palette().color(QPalette::WindowText), Theme::sunlight().ink);
    EXPECT_EQ(readPreferences(QSettings()).theme, u"sunlight"_s);
    EXPECT_EQ(m_program->window(), before) << "nothing is made anew";

    PreferencesDialog* chosen = dialog();
    EXPECT_EQ(chosen->findChild<QComboBox*>(u"theme"_s)->currentData(), u"sunlight"_s);
    pick(*chosen, u"theme"_s, u"dark"_s);
    accept(*chosen);
    EXPECT_EQ(m_program->window()->palette().color(QPalette::WindowText), Theme::darkTheme().ink);
    EXPECT_TRUE(readPreferences(QSettings()).fieldSize);
}

TEST_F(WindowPreferencesTest, TheLanguageChangesAtOnceAndThePlaceStays)
{
    const UnitId unit = m_program->window()->findChild<UnitPage*>()->unit();
    EXPECT_EQ(firstMenu(), u"&File"_s);
    PreferencesDialog* first = dialog();
    ASSERT_NE(first, nullptr);
    pick(*first, u"language"_s, u"es"_s);
    accept(*first);
    EXPECT_EQ(firstMenu(), u"&Archivo"_s);
    EXPECT_EQ(m_program->window()->findChild<UnitPage*>()->unit(), unit);
    EXPECT_EQ(readPreferences(QSettings()).language, u"es"_s) << "and is kept for the next start";

    PreferencesDialog* second = dialog();
    pick(*second, u"language"_s, u"en"_s);
    accept(*second);
    EXPECT_EQ(firstMenu(), u"&File"_s) << "and back";
}

TEST_F(WindowPreferencesTest, NameAndUnitsAreThoseOfTheNextVisit)
{
    PreferencesDialog* first = dialog();
    first->findChild<QLineEdit*>(u"technician"_s)->setText(u"A. Tester"_s);
    pick(*first, u"units-gauge-pressure"_s, u"barg"_s);
    accept(*first);
    const UnitId unit = m_program->window()->findChild<UnitPage*>()->unit();
    m_program->window()->startVisit(unit, VisitReason::callOut);
    EXPECT_EQ(m_program->window()->findChild<QLineEdit*>(u"technician"_s)->text(), u"A. Tester"_s);
    auto* pressure = m_program->window()->findChild<QLineEdit*>(u"reading-suction-pressure"_s);
    ASSERT_NE(pressure, nullptr);
    EXPECT_EQ(pressure->placeholderText(), u"bar"_s);
}

TEST_F(WindowPreferencesTest, AnOwnNameOfAPartIsShownAtOnce)
{
    PreferencesDialog* first = dialog();
    auto* parts = first->findChild<QListWidget*>(u"catalogue-parts"_s);
    parts->setCurrentRow(parts->count() - 1); // part kinds stand below what is for all units
    const QString name = parts->currentItem()->text();
    auto* table = first->findChild<QTableView*>(u"catalogue-fields"_s)->model();
    ASSERT_TRUE(table->setData(table->index(0, 2), u"Our word"_s, Qt::EditRole));
    accept(*first);
    PreferencesDialog* second = dialog();
    parts = second->findChild<QListWidget*>(u"catalogue-parts"_s);
    EXPECT_EQ(parts->findItems(u"Our word"_s, Qt::MatchStartsWith).size(), 1);
    EXPECT_TRUE(parts->findItems(name, Qt::MatchExactly).isEmpty());
}

} // namespace padside::test
