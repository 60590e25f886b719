// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QDialog>

namespace padside {

/// All keys on one sheet. It stands beside the work and does not stop it.
class KeySheet : public QDialog
{
    Q_OBJECT
public:
    explicit KeySheet(QWidget* parent = nullptr);

    static void showFor(QWidget& window); ///< the window's own sheet, made when it is first asked for
};

} // namespace padside
