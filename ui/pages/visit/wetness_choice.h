// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/record/grade.h"

#include <QWidget>

#include <array>
#include <optional>

class QPushButton;

namespace padside {

class RecordBook;

/// Dry, damp or wet to the touch.
class WetnessChoice : public QWidget
{
    Q_OBJECT
public:
    WetnessChoice(RecordBook& book, QWidget* parent = nullptr);

    void showWetness(std::optional<Wetness> wetness);

Q_SIGNALS:
    void chosen(padside::Wetness wetness);

private:
    std::array<QPushButton*, 3> m_buttons{};
};

} // namespace padside
