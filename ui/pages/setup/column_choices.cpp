// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/pages/setup/column_choices.h"

#include "ui/models/speaker.h"

#include <QComboBox>
#include <QGridLayout>
#include <QLabel>

namespace padside {

namespace {

constexpr int pairsInARow = 4; ///< of a word and its choice

} // namespace

ColumnChoices::ColumnChoices(const LocalSpeaker& speaker, QWidget* parent)
    : QWidget(parent)
{
    auto* grid = new QGridLayout(this);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setHorizontalSpacing(10);
    int place = 0;
    for (const Coded<UnitField>& field : codesOf(UnitField{})) {
        const QString word = shown(speaker.translate(std::string(field.word)));
        auto* choice = new QComboBox;
        choice->setObjectName(QStringLiteral("column-") + shown(field.code));
        choice->setAccessibleName(tr("Column for: %1").arg(word));
        choice->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
        choice->setMinimumContentsLength(9);
        auto* label = new QLabel(word);
        label->setBuddy(choice);
        const int row = place / pairsInARow;
        const int column = 2 * (place % pairsInARow);
        grid->addWidget(label, row, column);
        grid->addWidget(choice, row, column + 1);
        grid->setColumnStretch(column + 1, 1);
        m_choices.emplace(field.value, choice);
        connect(choice, &QComboBox::activated, this, &ColumnChoices::chosen);
        ++place;
    }
}

void ColumnChoices::show(const std::vector<std::string>& headings, const UnitColumns& columns)
{
    for (const auto& [field, choice] : m_choices) {
        choice->clear();
        choice->addItem(tr("– none –"));
        for (const std::string& heading : headings)
            choice->addItem(shown(heading));
        const auto column = columns.find(field);
        choice->setCurrentIndex(column == columns.end() ? 0 : static_cast<int>(column->second) + 1);
    }
}

UnitColumns ColumnChoices::columns() const
{
    UnitColumns columns;
    for (const auto& [field, choice] : m_choices) {
        if (choice->currentIndex() > 0)
            columns.emplace(field, static_cast<std::size_t>(choice->currentIndex()) - 1);
    }
    return columns;
}

} // namespace padside
