// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "ui/models/language.h"

#include <QWidget>

class QCheckBox;
class QComboBox;

namespace padside {

struct Preferences;

/// What the window looks like and which language it speaks.
class LookPanel : public QWidget
{
    Q_OBJECT
public:
    LookPanel(const Preferences& preferences, const std::vector<Language>& languages, QWidget* parent = nullptr);
    void writeTo(Preferences& preferences) const;

private:
    QComboBox* m_language;
    QComboBox* m_theme;
    QCheckBox* m_fieldSize;
};

} // namespace padside
