// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/exchange/unit_plan.h"
#include "ui/models/long_work.h"

#include <QObject>

#include <memory>

namespace padside {

class RecordBook;
class SetupLog;

/// A list of units on its way into the record: read, understood, looked at, added. Reading, understanding and adding go
/// on beside the window. No widgets here.
class UnitImport : public QObject
{
    Q_OBJECT
public:
    /// Lists up to this long are added as one step that can be undone; writing and taking back more would make the
    /// window wait.
    static constexpr std::size_t mostUndone = 50;

    /// Both outlive it.
    UnitImport(RecordBook& book, SetupLog& log, QObject* parent = nullptr);

    /// Reads a file and recognises its columns.
    void read(const QString& file);
    /// Understands the list anew with these columns.
    void setColumns(const UnitColumns& columns);
    /// The site of rows that name none.
    void setUsualSite(const QString& name);
    /// Adds the units of the good rows.
    void add();
    void cancel();

    [[nodiscard]] bool isBusy() const { return m_work.isRunning(); }
    [[nodiscard]] const std::vector<std::string>& headings() const { return m_list->table.columns; }
    [[nodiscard]] const UnitColumns& columns() const { return m_columns; }
    [[nodiscard]] const std::shared_ptr<const UnitPlan>& plan() const { return m_plan; } ///< never null

Q_SIGNALS:
    void started(const QString& doing);
    void progressed(double share);
    void ended(); ///< whichever way
    void listRead(); ///< headings() and columns() are others
    void planned(); ///< plan() is another one
    void failed(const padside::Sentence& why);
    void cancelled();
    void added(int count);

private:
    void understand();
    void begin(const QString& doing, LongWork::Work work, std::function<void()> then);
    [[nodiscard]] bool refreshBasis();

    RecordBook& m_book;
    SetupLog& m_log;
    LongWork m_work;
    std::function<void()> m_then; ///< what follows when the work is done
    std::shared_ptr<const UnitPlanBasis> m_basis;
    std::shared_ptr<const CsvSalvage> m_list = std::make_shared<const CsvSalvage>();
    std::shared_ptr<const UnitPlan> m_plan = std::make_shared<const UnitPlan>();
    UnitColumns m_columns;
    std::string m_usualSite;
    bool m_again = false; ///< columns changed while the list was being understood
};

} // namespace padside
