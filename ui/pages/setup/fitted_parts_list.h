// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/catalogue/catalogue.h"
#include "core/record/unit.h"

#include <QListWidget>

#include <set>

namespace padside {

class LocalSpeaker;

/// The parts a kind of unit usually has, ticked; unticked are those this unit lacks.
class FittedPartsList : public QListWidget
{
    Q_OBJECT
public:
    FittedPartsList(const Catalogue& catalogue, const LocalSpeaker& speaker, QWidget* parent = nullptr);

    void showKind(const std::string& kind);
    /// Unticks what is not among these parts.
    void tickOnly(const std::vector<Part>& parts);
    [[nodiscard]] std::set<std::size_t> leftOut() const; ///< places in UnitKind::parts

private:
    const Catalogue& m_catalogue;
    const LocalSpeaker& m_speaker;
    const UnitKind* m_kind = nullptr;
};

} // namespace padside
