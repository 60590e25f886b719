// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/pages/visit/entry_lines.h"

#include "ui/pages/visit/lettering.h"

#include <QHBoxLayout>
#include <QPushButton>
#include <QVBoxLayout>

namespace padside {

EntryLines::EntryLines(QWidget* parent)
    : QWidget(parent)
    , m_layout(new QVBoxLayout(this))
{
    m_layout->setContentsMargins(0, 0, 0, 0);
    m_layout->setSpacing(4);
}

void EntryLines::showLines(const std::vector<Line>& lines)
{
    while (QLayoutItem* item = m_layout->takeAt(0)) {
        if (QWidget* old = item->widget()) {
            old->hide();
            old->deleteLater(); // its own button may be asking for this
        }
        delete item;
    }
    for (const Line& line : lines) {
        auto* row = new QWidget;
        auto* layout = new QHBoxLayout(row);
        layout->setContentsMargins(0, 0, 0, 0);
        auto* text = new QLabel(line.text);
        text->setTextFormat(Qt::PlainText);
        text->setWordWrap(true);
        layout->addWidget(text, 1);
        const auto add = [&](const QString& verb, const std::function<void()>& action) {
            if (!action)
                return;
            auto* button = new QPushButton(verb);
            button->setAccessibleName(tr("%1: %2").arg(verb, line.text));
            makeLarge(*button);
            layout->addWidget(button);
            connect(button, &QPushButton::clicked, this, action);
        };
        add(tr("Take back"), line.takeBack);
        add(tr("Correct"), line.correct);
        m_layout->addWidget(row);
    }
    setVisible(!lines.empty());
}

} // namespace padside
