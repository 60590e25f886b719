// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/record/unit_record.h"

#include <QWidget>

#include <functional>

class QComboBox;
class QLabel;
class QPrinter;
class QPushButton;

namespace padside {

struct PaperDocument;
struct Theme;
class PagePreview;
class PdfExportWork;
class RecordBook;

/// A unit's timeline as it will be printed, to be exported as PDF or printed.
class HistoryPage : public QWidget
{
    Q_OBJECT
public:
    /// Asks for the file to write, offering a name; empty: not now.
    using FileChooser = std::function<QString(const QString& suggestedPath)>;
    /// Lets the person choose a printer; false: not now.
    using PrinterChooser = std::function<bool(QPrinter& printer)>;

    HistoryPage(RecordBook& book, const Theme& theme, QWidget* parent = nullptr);

    /// Shows the unit's history as of today. A record that can't be read is said by the book.
    void showUnit(UnitId unit);

    void setFileChooser(FileChooser chooser) { m_chooseFile = std::move(chooser); }
    void setPrinterChooser(PrinterChooser chooser) { m_choosePrinter = std::move(chooser); }

Q_SIGNALS:
    void left();

private:
    void makeBar();
    void layPages();
    void exportPdf();
    void print();
    void say(const QString& sentence, bool problem);
    [[nodiscard]] PaperDocument document() const;

    RecordBook& m_book;
    FileChooser m_chooseFile;
    PrinterChooser m_choosePrinter;
    std::optional<UnitRecord> m_record;
    QWidget* m_bar;
    QPushButton* m_back;
    QPushButton* m_export;
    QPushButton* m_print;
    QComboBox* m_size;
    QLabel* m_said;
    PagePreview* m_preview;
    PdfExportWork* m_work;
};

} // namespace padside
