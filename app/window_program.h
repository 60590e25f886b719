// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "app/dialogs.h"
#include "core/catalogue/catalogue.h"
#include "core/record/id.h"
#include "core/store/file_claim.h"
#include "core/store/store.h"
#include "ui/models/preferences.h"
#include "ui/models/record_book.h"
#include "ui/shell/appearance.h"

#include <QLocale>
#include <QObject>
#include <QString>

#include <memory>
#include <vector>

class QApplication;

namespace padside {

class ComeForward;
class MainWindow;

/// The program with a window: it puts store, catalogue, record book and window together and answers what the window
/// can't do by itself (another file, another look, other preferences).
class WindowProgram : public QObject
{
    Q_OBJECT
public:
    enum class Opened {
        here, ///< its window is shown
        elsewhere, ///< another window on this computer has the file and came forward
        notAtAll, ///< the person was told why
    };

    explicit WindowProgram(QApplication& application, Dialogs dialogs = messageBoxes());
    ~WindowProgram() override;

    /// Opens `file` (made new if it is not there) and shows the window.
    Opened open(const QString& file);

    /// Opens the file used last; if there was none, or it is gone, records.padside in the person's data folder.
    Opened openUsual();

    [[nodiscard]] MainWindow* window() const; ///< null while no file is open

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    /// All that belongs to one open file; made and dropped together.
    struct OpenFile
    {
        FileClaim claim; ///< first, so that it is given up last
        std::unique_ptr<Store> store;
        std::unique_ptr<const Catalogue> catalogue;
        IdMaker ids;
        std::unique_ptr<RecordBook> book;
        std::unique_ptr<ComeForward> calls; ///< of later starts on the same file
        std::unique_ptr<MainWindow> window;
        std::vector<Sentence> complaints; ///< about the file, to be said in its window
    };

    Opened put(const QString& file); ///< open(), but the file is not remembered as the last one
    FileClaim::Outcome claimFor(const QString& file); ///< asks the person where another computer left its mark
    Opened notClaimed(const QString& file, const FileClaim::Outcome& outcome);
    std::unique_ptr<OpenFile> taken(const QString& file, FileClaim claim);

    void showWindow(OpenFile& file); ///< in a new window that stands where the one before stood
    void changeLook(const Look& look); ///< of the open window, and keeps it
    [[nodiscard]] std::unique_ptr<RecordBook> bookOf(OpenFile& file) const; ///< as the person likes it
    void applyPreferences();
    void showPreferences();
    void choose(const Preferences& preferences, bool catalogueChanged);
    void bringForward();
    void chooseFile();
    void backUp();
    void showSample(); ///< makes it first, in the background, where it is not there yet
    void openSample(const QString& file);
    void tell(const QString& sentence);
    void tell(const Sentence& sentence) { tell(said(sentence)); }
    [[nodiscard]] static QString said(const Sentence& sentence);

    Dialogs m_dialogs;
    bool m_computerIsDark;
    Appearance m_appearance; ///< before the windows that paint with its theme
    std::unique_ptr<OpenFile> m_open;
    QLocale m_computer; ///< as it is set, before the person chooses
    Preferences m_preferences;
    QLocale m_locale; ///< of the language chosen
};

} // namespace padside
