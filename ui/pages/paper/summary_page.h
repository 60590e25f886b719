// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/record/unit_record.h"

#include <QWidget>

#include <functional>

class QComboBox;
class QLabel;
class QLineEdit;
class QPrinter;
class QPushButton;

namespace padside {

struct SummaryInput;
struct Theme;
enum class PaperSize;
class PagePreview;
class RecordBook;

/// A visit's summary as it will be printed, to be exported as PDF or printed.
class SummaryPage : public QWidget
{
    Q_OBJECT
public:
    /// Asks for the file to write, offering a name; empty: not now.
    using FileChooser = std::function<QString(const QString& suggestedPath)>;
    /// Lets the person choose a printer; false: not now.
    using PrinterChooser = std::function<bool(QPrinter& printer)>;

    SummaryPage(RecordBook& book, const Theme& theme, QWidget* parent = nullptr);

    /// Shows the summary of the visit, as of its own day. A record that can't be read is said by the book.
    void showVisit(UnitId unit, VisitId visit);

    void setFileChooser(FileChooser chooser) { m_chooseFile = std::move(chooser); }
    void setPrinterChooser(PrinterChooser chooser) { m_choosePrinter = std::move(chooser); }

Q_SIGNALS:
    void left();

private:
    void makeBar();
    void layPages();
    void exportPdf();
    void print();
    void sayDone(const QString& sentence);
    void sayProblem(const QString& sentence);
    [[nodiscard]] SummaryInput input() const;
    [[nodiscard]] PaperSize chosenSize() const;

    RecordBook& m_book;
    FileChooser m_chooseFile;
    PrinterChooser m_choosePrinter;
    UnitRecord m_record;
    VisitId m_visit;
    QWidget* m_bar;
    QPushButton* m_back;
    QPushButton* m_export;
    QPushButton* m_print;
    QComboBox* m_size;
    QLineEdit* m_contractor;
    QLabel* m_said;
    PagePreview* m_preview;
};

} // namespace padside
