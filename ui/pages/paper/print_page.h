// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/record/unit_record.h"
#ifndef Q_MOC_RUN // moc 6.4 stumbles over the concepts below
#include "ui/paper/sheet.h"
#endif

#include <QWidget>

#include <functional>
#include <optional>

class QComboBox;
class QLabel;
class QLineEdit;
class QPrinter;
class QPushButton;

namespace padside {

struct Theme;
class PagePreview;
class PaperWork;
class RecordBook;

/// A paper as it will be printed, to be exported as PDF or printed: a visit's summary, a unit's history, or a sheet
/// made elsewhere.
class PrintPage : public QWidget
{
    Q_OBJECT
public:
    /// Asks for the file to write, offering a name; empty: not now.
    using FileChooser = std::function<QString(const QString& suggestedPath)>;
    /// Lets the person choose a printer; false: not now.
    using PrinterChooser = std::function<bool(QPrinter& printer)>;

    PrintPage(RecordBook& book, const Theme& theme, QWidget* parent = nullptr);

    /// Shows the summary of the visit, as of its own day. A record that can't be read is said by the book.
    void showVisit(UnitId unit, VisitId visit);

    /// Shows the unit's timeline as of today. A record that can't be read is said by the book.
    void showHistory(UnitId unit);

    /// Shows the unit's history for its owner as of today. A record that can't be read is said by the book.
    void showOwnerHistory(UnitId unit);

    /// Shows a sheet; `back` is what the way back is called.
    void showSheet(Sheet sheet, const QString& back);

    [[nodiscard]] VisitId visit() const { return m_visit; } ///< null if none is shown

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
    void show(std::optional<Sheet> sheet, const QString& back);
    [[nodiscard]] Sheet sheetOf(UnitRecord record, VisitId visit) const;
    [[nodiscard]] Sheet historyOf(UnitRecord record) const;
    [[nodiscard]] Sheet ownerHistoryOf(UnitRecord record) const; ///< throws StoreError
    [[nodiscard]] PhotoSource photosOf(const UnitRecord& record) const;
    [[nodiscard]] PaperDocument document() const;
    [[nodiscard]] PaperSize chosenSize() const;

    RecordBook& m_book;
    FileChooser m_chooseFile;
    PrinterChooser m_choosePrinter;
    VisitId m_visit;
    std::optional<Sheet> m_sheet; ///< empty: there is nothing to show
    QWidget* m_bar;
    QPushButton* m_back;
    QPushButton* m_export;
    QPushButton* m_print;
    QComboBox* m_size;
    QLabel* m_contractorLabel;
    QLineEdit* m_contractor;
    QLabel* m_said;
    PagePreview* m_preview;
    PaperWork* m_work;
};

} // namespace padside
