// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/record/unit.h"

#include <QListWidget>

#include <optional>
#include <vector>

namespace padside {

struct Theme;
struct VisitSheet;
class RecordBook;

/// All zones of the unit under the names of their parts; each with today's mark and the grade it had last time.
class ZoneList : public QListWidget
{
    Q_OBJECT
public:
    ZoneList(RecordBook& book, const Theme& theme, QWidget* parent = nullptr);

    void showSheet(const VisitSheet& sheet);
    void select(ZoneId zone); ///< without zonePicked

Q_SIGNALS:
    void zonePicked(padside::ZoneId zone);

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    RecordBook& m_book;
    std::vector<std::optional<ZoneId>> m_rows; ///< empty: a part's name
    bool m_filling = false;
};

} // namespace padside
