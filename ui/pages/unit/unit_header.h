// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "ui/pages/unit/unit_snapshot.h"

#include <QWidget>

class QGridLayout;
class QLabel;
class QToolButton;

namespace padside {

class Catalogue;
class LocalSpeaker;

/// Who the unit is: tag, kind, place, site, age, refrigerant, last visit; the nameplate unfolds below.
class UnitHeader : public QWidget
{
    Q_OBJECT
public:
    UnitHeader(const Catalogue& catalogue, const LocalSpeaker& speaker, QWidget* parent = nullptr);

    void setSnapshot(const UnitSnapshot& snapshot);
    [[nodiscard]] QToolButton* nameplateButton() const { return m_unfold; }

protected:
    void changeEvent(QEvent* event) override;

private:
    void fitTag(); ///< to the size of the program's letters
    [[nodiscard]] QString whereText(const UnitSnapshot& snapshot) const;
    [[nodiscard]] QString factsText(const UnitSnapshot& snapshot) const;
    void fillNameplate(const UnitSnapshot& snapshot);

    const Catalogue& m_catalogue;
    const LocalSpeaker& m_speaker;
    QLabel* m_tag;
    QLabel* m_where;
    QLabel* m_facts;
    QToolButton* m_unfold;
    QWidget* m_nameplate;
    QGridLayout* m_lines;
};

} // namespace padside
