// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/record/fitted_unit.h" // before id.h, for moc
#include "ui/pages/setup/setup_dialog.h"

#include <optional>
#include <set>
#include <string>
#include <vector>

class QCheckBox;
class QLabel;
class QSpinBox;

namespace padside {

class FittedPartsList;
class SetupLog;
class UnitForm;

/// A new unit, several of one kind, or what is known of one.
class UnitDialog final : public SetupDialog
{
    Q_OBJECT
public:
    /// What to do; each is made by one of the functions below.
    struct Task
    {
        Unit unit; ///< what the form shows first
        std::optional<std::vector<Part>> like; ///< the parts to tick, where another unit is the pattern
        bool isNew = true;
    };
    [[nodiscard]] static Task newAt(SiteId site, RecordBook& book); ///< a null site: it is typed first
    [[nodiscard]] static Task oneLike(const FittedUnit& pattern, RecordBook& book);
    [[nodiscard]] static Task change(const Unit& unit);

    /// Both services outlive it.
    UnitDialog(RecordBook& book, SetupLog& log, Task task, QWidget* parent = nullptr);

Q_SIGNALS:
    void kept(const padside::UnitId& unit); ///< the first, where there are several

protected:
    bool keep() override;
    void announce() override;

private:
    [[nodiscard]] QWidget* makePanes();
    void showTags();
    [[nodiscard]] static QString tagsSaid(const std::vector<std::string>& tags, const std::set<std::string>& taken);
    /// What is wrong with the tags that count up from this one.
    [[nodiscard]] std::optional<Sentence> tagProblem(const std::string& first) const;
    [[nodiscard]] std::vector<FittedUnit> several(const Unit& first) const;
    bool add(Unit unit);

    SetupLog& m_log;
    Task m_task;
    std::set<std::string> m_taken; ///< tags of the other units
    UnitForm* m_form;
    FittedPartsList* m_parts = nullptr; ///< only of a new unit
    QSpinBox* m_count = nullptr;
    QLabel* m_tags = nullptr;
    QCheckBox* m_asOld = nullptr;
};

} // namespace padside
