// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

// Writes a picture of every page and dialog, and every paper as PDF, so that they can be opened and judged: in every
// size of screen, theme, size of controls, language and amount of data that is asked for.

#include "core/store/own_catalogue.h"
#include "core/store/store.h"
#include "resources/resources.h"
#include "sample-db/sample.h"
#include "tests/support/clipped_text.h"
#include "tests/support/test_surroundings.h"
#include "tests/ui/shell/page_walk.h"
#include "ui/models/language.h"
#include "ui/models/record_book.h"
#include "ui/pages/paper/paper_work.h"
#include "ui/pages/paper/print_page.h"
#include "ui/shell/appearance.h"

#include <QApplication>
#include <QDir>
#include <QFileInfo>
#include <QPushButton>
#include <QTemporaryDir>
#include <QTest>

#include <CLI/CLI.hpp>
#include <iostream>
#include <map>
#include <stdexcept>

namespace {

using namespace padside;
using Qt::Literals::StringLiterals::operator""_s;

const std::map<std::string, QSize> sizes{{"1280x800", {1280, 800}}, {"1920x1080", {1920, 1080}}};
const std::map<std::string, ThemeKind> themes{
    {"light", ThemeKind::light}, {"dark", ThemeKind::dark}, {"sunlight", ThemeKind::sunlight}};

/// What is wanted: one value or several of each.
struct Wanted
{
    std::string folder;
    std::vector<std::string> sizes{"1280x800", "1920x1080"};
    std::vector<std::string> themes{"light", "dark", "sunlight"};
    std::vector<std::string> controls{"desk", "field"};
    std::vector<std::string> languages{"en", "es"};
    std::vector<std::string> data{"empty", "ordinary", "long"};
};

/// One look at the whole program.
struct View
{
    std::string size;
    std::string theme;
    std::string controls;
    std::string language;
    std::string data;

    [[nodiscard]] std::string name() const { return data + "-" + size + "-" + theme + "-" + controls + "-" + language; }
};

Instant noon()
{
    return Instant{*parseDate("2026-11-25") + std::chrono::hours(11), std::chrono::minutes(60)};
}

/// The sample's file: nothing in it, as a person gets it, or with 20 years of visits.
std::unique_ptr<Store> makeStore(const QTemporaryDir& folder, const Catalogue& catalogue, const std::string& data)
{
    auto store = Store::create(folder.filePath(u"pictures.padside"_s));
    if (data == "empty")
        return store;
    SampleOptions options;
    if (data == "long")
        options.years = 20;
    buildSample(*store, catalogue, options, [](double) { return true; });
    return store;
}

class PictureTaker
{
public:
    PictureTaker(QDir folder, const View& view)
        : m_folder(std::move(folder))
        , m_view(view)
    {
    }

    void take(QWidget& window, const std::string& stop)
    {
        const QString name = QString::fromStdString(stop).replace(u", "_s, u"_"_s).replace(u' ', u'-').remove(u'\'');
        const QString number = u"%1-"_s.arg(++m_number, 2, 10, QChar(u'0'));
        const QString path = m_folder.filePath(number + name + u".png"_s);
        if (!window.grab().save(path))
            throw std::runtime_error(path.toStdString() + " can't be written");
        for (const QString& text : test::clippedTexts(window))
            std::cout << m_view.name() << ", " << stop << ": " << text.toStdString() << '\n';
        if (auto* page = window.findChild<PrintPage*>(); page != nullptr && page->isVisible())
            exportPaper(*page, m_folder.filePath(name + u".pdf"_s));
    }

private:
    static void exportPaper(PrintPage& page, const QString& path)
    {
        page.setFileChooser([path](const QString&) { return path; });
        page.findChild<QPushButton*>(u"exportPdf"_s)->click();
        const auto* work = page.findChild<PaperWork*>();
        if (!QTest::qWaitFor([work] { return !work->isRunning(); }, 60000) || !QFileInfo::exists(path))
            throw std::runtime_error(path.toStdString() + " was not written within a minute");
    }

    QDir m_folder;
    const View& m_view;
    int m_number = 0;
};

void takeAll(const View& view, const QDir& pictures, Appearance& appearance)
{
    const auto languages = languagesIn({QString::fromStdString(shippedTranslations())});
    const Language language = chosenLanguage(QString::fromStdString(view.language), {}, languages);
    if (!speak(language))
        throw std::runtime_error("no language " + view.language);
    appearance.wear({themes.at(view.theme), view.controls == "field"});

    const QTemporaryDir folder;
    const auto store = makeStore(folder, Catalogue::load(shippedCatalogue()).value(), view.data);
    const Catalogue catalogue = Catalogue::load(shippedCatalogue(), store->ownCatalogue().changes()).value();
    IdMaker ids([] { return std::int64_t{1'795'600'000'000}; }, 7);
    RecordBook book(*store, catalogue, ids,
                    {&noon, localeFor(language, QLocale::c()), UnitSystem::metric, u"A. Perez"_s});
    const QString name = QString::fromStdString(view.name());
    if (!pictures.mkpath(name))
        throw std::runtime_error("the folder " + view.name() + " can't be made");
    PictureTaker taker(QDir(pictures.filePath(name)), view);
    test::PageWalk(book, appearance.theme(), sizes.at(view.size), [&taker](QWidget& window, const char* stop) {
        taker.take(window, stop);
    }).everything();
}

std::vector<View> viewsOf(const Wanted& wanted)
{
    std::vector<View> views;
    for (const auto& data : wanted.data)
        for (const auto& size : wanted.sizes)
            for (const auto& theme : wanted.themes)
                for (const auto& controls : wanted.controls)
                    for (const auto& language : wanted.languages)
                        views.push_back({size, theme, controls, language, data});
    return views;
}

} // namespace

int main(int argc, char** argv)
{
    const test::TestSurroundings surroundings; // nothing of the person's own settings is in the pictures
    Wanted wanted; // at first all there is
    CLI::App line("Writes a picture of every page and dialog, and every paper as PDF; says which texts are cut.");
    line.add_option("folder", wanted.folder, "where the pictures go: one folder for each combination")->required();
    const auto oneOf = [&line](const char* name, std::vector<std::string>& values) {
        line.add_option(name, values)->check(CLI::IsMember(values))->delimiter(',');
    };
    oneOf("--size", wanted.sizes);
    oneOf("--theme", wanted.themes);
    oneOf("--controls", wanted.controls);
    oneOf("--data", wanted.data);
    line.add_option("--language", wanted.languages)->delimiter(',');
    CLI11_PARSE(line, argc, argv);

    QApplication application(argc, argv);
    Appearance appearance(application);
    try {
        for (const View& view : viewsOf(wanted))
            takeAll(view, QDir(QString::fromStdString(wanted.folder)), appearance);
    } catch (const std::exception& problem) {
        std::cerr << problem.what() << '\n';
        return 1;
    }
    return 0;
}
