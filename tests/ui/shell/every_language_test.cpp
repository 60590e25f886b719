// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

// The window in languages longer than English: nothing on its pages may be cut, and what it says must be in the
// translation files.

#include "core/store/visit_book.h"
#include "resources/resources.h"
#include "sample-db/sample_lessons.h"
#include "tests/support/clipped_text.h"
#include "tests/support/pseudo_language.h"
#include "tests/support/shared_letters.h"
#include "tests/support/translation_file.h"
#include "tests/ui/shell/window_fixture.h"
#include "ui/drawing/cutaway_view.h"
#include "ui/drawing/theme.h"
#include "ui/models/fleet_reviewer.h"
#include "ui/models/language.h"
#include "ui/models/record_book.h"
#include "ui/models/setup_log.h"
#include "ui/pages/paper/print_page.h"
#include "ui/pages/preferences/preferences_dialog.h"
#include "ui/pages/setup/import_dialog.h"
#include "ui/pages/setup/retire_dialog.h"
#include "ui/pages/setup/site_dialog.h"
#include "ui/pages/setup/unit_dialog.h"
#include "ui/pages/setup/welcome_page.h"
#include "ui/pages/track/rates_panel.h"
#include "ui/pages/track/track_panel.h"
#include "ui/pages/unit/part_costs_dialog.h"
#include "ui/pages/unit/worth_panel.h"
#include "ui/shell/appearance.h"
#include "ui/shell/main_window.h"

#include <QAbstractItemModel>
#include <QApplication>
#include <QFile>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QTabBar>
#include <QTabWidget>
#include <QTest>
#include <QToolButton>
#include <QTreeView>
#include <QUndoStack>

namespace padside::test {

using Qt::Literals::StringLiterals::operator""_s;

namespace {

constexpr QSize smallScreen{1280, 800};

} // namespace

/// Opens one page after the other.
class EveryPage : public WindowFixture
{
protected:
    EveryPage()
        : m_appearance(*qApp)
    {
        m_appearance.wear({});
    }
    ~EveryPage() override { speak({u"en"_s, u"English"_s, {}}); }

    /// What can't be read whole, on each page and dialog.
    void expectNothingIsCut()
    {
        expectNothingIsCutOnThePages();
        MainWindow window(*m_book, m_appearance.theme());
        open(window);
        window.findChild<QToolButton*>(u"unfoldNameplate"_s)->setChecked(true);
        lookAt(window, "the unit's page with its nameplate");
        lookAtPreferences();
        lookAtSettingUp();
    }

    void expectNothingIsCutOnThePages()
    {
        MainWindow window(*m_book, m_appearance.theme());
        open(window);
        lookAt(window, "the unit's page");
        lookAtWorth(window);
        lookAtVisit(window);
        const VisitId last = closedVisit(units().front());
        window.showUnit(units().front());
        window.showSummary(units().front(), last);
        lookAt(window, "the visit summary");
        window.showHistoryPaper(units().front());
        lookAt(window, "the history on paper");
        window.showOwnerHistory(units().front());
        lookAt(window, "the owner's history on paper");
        window.showFleet();
        lookAt(window, "the fleet");
        lookAtSeason(window);
        lookAtTrack(window);
    }

    Appearance m_appearance;

private:
    /// With the unit's page, which follows the first frame.
    static void open(MainWindow& window)
    {
        window.resize(smallScreen);
        window.show();
        const auto* drawing = window.findChild<CutawayView*>();
        ASSERT_TRUE(QTest::qWaitFor([drawing] { return drawing->isVisible(); }));
    }

    static void lookAt(const QWidget& window, const char* where)
    {
        QApplication::processEvents();
        EXPECT_LE(window.width(), smallScreen.width()) << where << " does not fit on a small screen";
        EXPECT_LE(window.height(), smallScreen.height()) << where << " does not fit on a small screen";
        for (const QString& text : clippedTexts(window))
            ADD_FAILURE() << where << ": " << text.toStdString();
    }

    static void lookAtWorth(MainWindow& window)
    {
        window.findChild<QTabWidget*>(u"evidence"_s)->setCurrentWidget(window.findChild<WorthPanel*>());
        lookAt(window, "what the unit is worth");
        window.findChild<QPushButton*>(u"partCosts"_s)->click();
        auto* costs = window.findChild<PartCostsDialog*>();
        lookAt(*costs, "what a part costs");
        costs->reject();
    }

    void lookAtVisit(MainWindow& window)
    {
        window.startVisit(units().front(), VisitReason::fall);
        lookAt(window, "the visit, readings");
        for (auto* side : window.findChildren<QTabWidget*>()) {
            for (int tab = 0; tab < side->count() && side->isVisible(); ++tab) {
                side->setCurrentIndex(tab);
                lookAt(window, "the visit, beside the zone");
            }
        }
    }

    static void lookAtSeason(MainWindow& window)
    {
        window.showSeason();
        const auto* fleet = window.findChild<FleetReviewer*>();
        EXPECT_TRUE(QTest::qWaitFor([fleet] { return !fleet->isRunning(); }, 20000));
        lookAt(window, "the season");
        window.findChild<QPushButton*>(u"daySheet"_s)->click();
        EXPECT_TRUE(window.findChild<PrintPage*>()->isVisible());
        lookAt(window, "the day's sheet");
    }

    static void lookAtTrack(MainWindow& window)
    {
        window.showTrack();
        const auto* track = window.findChild<TrackPanel*>();
        EXPECT_TRUE(QTest::qWaitFor([track] { return track->summary() != nullptr; }, 20000));
        lookAt(window, "the track record");
        window.showTrack(true);
        QSignalSpy learnt(window.findChild<RatesPanel*>(), &RatesPanel::learnt);
        window.findChild<QPushButton*>(u"learn"_s)->click();
        lookAt(window, "the rates, while they are learned");
        EXPECT_TRUE(learnt.count() > 0 || learnt.wait(60000));
        lookAt(window, "the rates");
    }

    void lookAtPreferences()
    {
        PreferencesDialog dialog(*m_book, {}, {languagesIn({}), UnitSystem::metric, shippedCatalogue()});
        dialog.show();
        auto* tabs = dialog.findChild<QTabWidget*>(u"preference-tabs"_s);
        for (int tab = 0; tab < tabs->count(); ++tab) {
            tabs->setCurrentIndex(tab);
            lookAt(dialog, "the preferences");
        }
    }

    void lookAtSettingUp()
    {
        WelcomePage welcome(true);
        welcome.resize(smallScreen);
        welcome.show();
        lookAt(welcome, "the welcome");
        QUndoStack stack;
        SetupLog log(*m_book, stack);
        const UnitRecord record = m_book->record(units().front());
        lookAtForm(*new SiteDialog(*m_book, log, std::nullopt), "a new site");
        lookAtForm(*new SiteDialog(*m_book, log, record.site), "a site");
        lookAtForm(*new UnitDialog(*m_book, log, UnitDialog::newAt({}, *m_book)), "a new unit");
        lookAtForm(*new UnitDialog(*m_book, log, UnitDialog::oneLike({record.unit, record.parts}, *m_book)),
                   "one like another");
        lookAtForm(*new UnitDialog(*m_book, log, UnitDialog::change(record.unit)), "a unit");
        lookAtForm(*new RetireDialog(*m_book, log, record.unit), "retiring a unit");
        lookAtList(log);
    }

    /// As it opens, and with what it says of fields left empty or filled with what can't be understood.
    static void lookAtForm(QDialog& form, const char* where)
    {
        form.setAttribute(Qt::WA_DeleteOnClose, false);
        form.show();
        lookAt(form, where);
        for (auto* line : form.findChildren<QLineEdit*>()) {
            if (line->isVisible() && line->isEnabled() && line->objectName() != u"qt_spinbox_lineedit"_s)
                line->clear();
        }
        form.accept();
        lookAt(form, where);
        for (auto* line : form.findChildren<QLineEdit*>()) {
            if (line->isVisible() && line->isEnabled() && line->objectName() != u"qt_spinbox_lineedit"_s)
                line->setText(u"14/6/08"_s);
        }
        form.accept();
        lookAt(form, where);
        delete &form;
    }

    void lookAtList(SetupLog& log)
    {
        QFile list(m_folder.filePath(u"units.csv"_s));
        ASSERT_TRUE(list.open(QIODevice::WriteOnly));
        list.write("site,tag,kind\nQuay 4,RT-901,heat-pump\nQuay 4,RT-902,windmill\nQuay 4,,heat-pump\n");
        list.close();
        auto dialog = std::make_unique<ImportDialog>(*m_book, log);
        dialog->setAttribute(Qt::WA_DeleteOnClose, false);
        dialog->show();
        lookAt(*dialog, "no list yet");
        dialog->read(list.fileName());
        const auto* add = dialog->findChild<QPushButton*>(u"import-add"_s);
        ASSERT_TRUE(QTest::qWaitFor([add] { return add->isEnabled(); }, 20000));
        lookAt(*dialog, "a list with bad rows");
    }

    [[nodiscard]] VisitId closedVisit(UnitId unit) const
    {
        const UnitRecord record = m_book->record(unit);
        for (auto visit = record.visits.rbegin(); visit != record.visits.rend(); ++visit) {
            if (visit->closedAt)
                return visit->id;
        }
        return {};
    }
};

TEST_F(EveryPage, InEnglishNothingIsCut)
{
    expectNothingIsCut();
}

TEST_F(EveryPage, InSpanishNothingIsCut)
{
    const auto there = languagesIn({QString::fromStdString(shippedTranslations())});
    ASSERT_TRUE(speak(chosenLanguage(u"es"_s, {}, there)));
    expectNothingIsCut();
}

TEST_F(EveryPage, InSpanishInFieldSizeNothingIsCut)
{
    const auto there = languagesIn({QString::fromStdString(shippedTranslations())});
    ASSERT_TRUE(speak(chosenLanguage(u"es"_s, {}, there)));
    m_appearance.wear({ThemeKind::sunlight, true});
    expectNothingIsCut();
    m_appearance.wear({});
}

TEST_F(EveryPage, LookingBackNoLetterIsGivenTwice)
{
    const auto there = languagesIn({QString::fromStdString(shippedTranslations())});
    const Catalogue learned = Catalogue::load(shippedCatalogue(), lessonsPatch(*parseDate("2026-01-10"))).value();
    RecordBook book(*m_store, learned, m_ids, m_book->surroundings());
    for (const QString& language : {u"en"_s, u"es"_s}) {
        ASSERT_TRUE(speak(chosenLanguage(language, {}, there)));
        MainWindow window(book, m_appearance.theme());
        window.show();
        window.showTrack();
        const auto* track = window.findChild<TrackPanel*>();
        ASSERT_TRUE(QTest::qWaitFor([track] { return track->summary() != nullptr; }, 20000));
        EXPECT_EQ(sharedLetters(window), QStringList());
        window.showTrack(true);
        auto* all = window.findChild<QPushButton*>(u"all"_s);
        ASSERT_TRUE(all->isVisible()) << "what was learned before is listed";
        EXPECT_EQ(sharedLetters(window), QStringList());
        all->click();
        EXPECT_EQ(sharedLetters(window), QStringList()) << "once all are chosen";
    }
}

TEST_F(EveryPage, TheTabsBesideTheZoneStandWholeOnASmallScreenAtADeskAndInTheField)
{
    const auto there = languagesIn({QString::fromStdString(shippedTranslations())});
    for (const QString& language : {u"en"_s, u"es"_s}) {
        ASSERT_TRUE(speak(chosenLanguage(language, {}, there)));
        for (const bool fieldSize : {false, true}) {
            m_appearance.wear({ThemeKind::light, fieldSize});
            MainWindow window(*m_book, m_appearance.theme());
            window.resize(smallScreen);
            window.show();
            window.startVisit(units().front(), VisitReason::fall);
            QApplication::processEvents();
            const auto* tabs = window.findChild<QTabWidget*>(u"side"_s)->tabBar();
            ASSERT_EQ(tabs->count(), 5);
            for (int tab = 0; tab < tabs->count(); ++tab) {
                EXPECT_GT(tabs->tabRect(tab).width(), tabs->fontMetrics().horizontalAdvance(tabs->tabText(tab)))
                    << language.toStdString() << ": " << tabs->tabText(tab).toStdString();
            }
        }
    }
    m_appearance.wear({});
}

TEST_F(EveryPage, InALanguageFortyPercentLongerNothingIsCutAndEveryTextIsInTheTranslations)
{
    PseudoLanguage pseudo;
    QCoreApplication::installTranslator(&pseudo);
    expectNothingIsCut();
    QCoreApplication::removeTranslator(&pseudo);

    std::set<PseudoLanguage::Asked> known;
    for (const Translated& entry : readTranslationFile(translationFiles().front()))
        known.insert({entry.context, entry.source, entry.comment});
    EXPECT_GT(pseudo.asked().size(), 200U) << "the pages were not opened";
    for (const auto& [context, text, comment] : pseudo.asked()) {
        if (context == u"core"_s || context == u"catalogue"_s) // either; a person's own words are in neither
            continue;
        EXPECT_TRUE(known.contains({context, text, comment}))
            << context.toStdString() << ": “" << text.toStdString() << "” is not in "
            << translationFiles().front().toStdString();
    }
}

TEST_F(EveryPage, EveryWordOfTheCatalogueAndOfCoreThatIsShownIsTranslated)
{
    PseudoLanguage pseudo;
    QCoreApplication::installTranslator(&pseudo);
    {
        MainWindow window(*m_book, Theme::light());
        window.show();
        window.startVisit(units().front(), VisitReason::fall);
        QApplication::processEvents();
    }
    QCoreApplication::removeTranslator(&pseudo);
    std::set<QString> known;
    for (const Translated& entry : readTranslationFile(translationFiles().front())) {
        if (entry.context == u"core"_s || entry.context == u"catalogue"_s)
            known.insert(entry.source);
    }
    QStringList missing;
    for (const auto& [context, text, comment] : pseudo.asked()) {
        if (context == u"core"_s && !known.contains(text))
            missing << text;
    }
    // What the sample's people named themselves.
    const QStringList theirs{};
    EXPECT_EQ(missing, theirs);
}

} // namespace padside::test
