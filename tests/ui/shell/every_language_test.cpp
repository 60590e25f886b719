// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

// The window in languages longer than English: nothing on its pages may be cut, and what it says must be in the
// translation files.

#include "resources/resources.h"
#include "sample-db/sample_lessons.h"
#include "tests/support/clipped_text.h"
#include "tests/support/pseudo_language.h"
#include "tests/support/shared_letters.h"
#include "tests/support/translation_file.h"
#include "tests/ui/shell/page_walk.h"
#include "tests/ui/shell/window_fixture.h"
#include "ui/drawing/theme.h"
#include "ui/models/language.h"
#include "ui/models/record_book.h"
#include "ui/pages/track/rates_panel.h"
#include "ui/pages/track/track_panel.h"
#include "ui/shell/appearance.h"
#include "ui/shell/main_window.h"

#include <QApplication>
#include <QPushButton>
#include <QTabBar>
#include <QTabWidget>
#include <QTest>

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
        PageWalk(*m_book, m_appearance.theme(), smallScreen, [](const QWidget& window, const char* stop) {
            EXPECT_LE(window.width(), smallScreen.width()) << stop << " does not fit on a small screen";
            EXPECT_LE(window.height(), smallScreen.height()) << stop << " does not fit on a small screen";
            for (const QString& text : clippedTexts(window))
                ADD_FAILURE() << stop << ": " << text.toStdString();
        }).everything();
    }

    Appearance m_appearance;
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
