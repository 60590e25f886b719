// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QScrollArea>

namespace padside {

/// Room for a form that scrolls where it is higher than the window. A plain scroll area does not ask how high wrapped
/// sentences get at its width, and squeezes the form instead.
class FormArea final : public QScrollArea
{
    Q_OBJECT
public:
    explicit FormArea(QWidget* form, QWidget* parent = nullptr);

    /// The form and room for some sentences beside its fields.
    [[nodiscard]] QSize sizeHint() const override;

protected:
    void resizeEvent(QResizeEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void giveHeight();
};

} // namespace padside
