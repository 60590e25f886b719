// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/catalogue/catalogue.h"
#include "core/record/id.h"
#include "core/store/store.h"
#include "ui/models/record_book.h"
#include "ui/shell/appearance.h"

#include <QObject>
#include <QString>

#include <memory>
#include <vector>

class QApplication;

namespace padside {

class MainWindow;

/// The program with a window: it puts store, catalogue, record book and window together and answers what the window
/// can't do by itself (another file, another theme).
class WindowProgram : public QObject
{
    Q_OBJECT
public:
    explicit WindowProgram(QApplication& application);
    ~WindowProgram() override;

    /// Opens `file` (made new if it is not there) and shows the window. False: it could not be opened; the sentence was
    /// shown.
    bool open(const QString& file);

    /// The file used last, else records.padside in the person's data folder.
    [[nodiscard]] static QString usualFile();

private:
    /// All that belongs to one open file; made and dropped together.
    struct OpenFile
    {
        std::unique_ptr<Store> store;
        Catalogue catalogue;
        IdMaker ids;
        std::unique_ptr<RecordBook> book;
        std::unique_ptr<MainWindow> window;
        std::vector<Sentence> complaints; ///< about the file, to be said in its window
    };

    void showWindow();
    void chooseFile();
    void backUp();

    Appearance m_appearance; // outlives the windows that paint with its theme
    std::unique_ptr<OpenFile> m_open;
};

} // namespace padside
