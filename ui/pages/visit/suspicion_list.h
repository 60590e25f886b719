// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/verdict/suspicion.h"

#include <QWidget>

#include <vector>

class QLabel;

namespace padside {

class RecordBook;

/// What several readings together may point to, the likeliest first: what speaks for it and against it, and what would
/// decide. Hidden while nothing does.
class SuspicionList : public QWidget
{
    Q_OBJECT
public:
    explicit SuspicionList(const RecordBook& book, QWidget* parent = nullptr);

    void show(const std::vector<Suspicion>& suspicions);
    [[nodiscard]] const std::vector<Suspicion>& suspicions() const { return m_suspicions; }

private:
    const RecordBook& m_book;
    QLabel* m_text;
    std::vector<Suspicion> m_suspicions;
};

} // namespace padside
