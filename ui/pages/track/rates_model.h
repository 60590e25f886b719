// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/outlook/kind_lesson.h"

#include <QAbstractTableModel>

#include <array>
#include <vector>

namespace padside {

class RecordBook;

/// What a person's records teach about the life of each part kind, a line for each; lines can be chosen.
class RatesModel : public QAbstractTableModel
{
    Q_OBJECT
public:
    enum Column {
        kind,
        ours,
        inUse,
        gradesInUse,
        inUseSince,
        learnt,
        spread,
        gradesLearnt,
        evidence,
        fromRecords,
        columns
    };
    /// Empty but for lessons just learned.
    static constexpr std::array<Column, 5> ofLearning{learnt, spread, gradesLearnt, evidence, fromRecords};

    explicit RatesModel(const RecordBook& book, QObject* parent = nullptr);

    void setLessons(std::vector<KindLesson> lessons);
    [[nodiscard]] const KindLesson& lesson(int row) const { return m_lessons[static_cast<std::size_t>(row)]; }
    [[nodiscard]] bool anyLearnt() const; ///< just now
    [[nodiscard]] std::vector<KindLesson> chosen() const;
    void chooseAll(bool chosen);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    bool setData(const QModelIndex& index, const QVariant& value, int role) override;
    [[nodiscard]] Qt::ItemFlags flags(const QModelIndex& index) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

Q_SIGNALS:
    void choiceChanged();

private:
    [[nodiscard]] QString text(const KindLesson& lesson, int column) const;

    const RecordBook& m_book;
    std::vector<KindLesson> m_lessons;
    std::vector<bool> m_chosen;
};

} // namespace padside
