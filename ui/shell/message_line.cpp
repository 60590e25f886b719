// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/shell/message_line.h"

#include "ui/drawing/theme.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPainter>
#include <QPushButton>

namespace padside {

MessageLine::MessageLine(const Theme& theme, QWidget* parent)
    : QWidget(parent)
    , m_theme(theme)
    , m_text(new QLabel)
{
    m_text->setObjectName(QStringLiteral("messageText"));
    m_text->setWordWrap(true);
    m_text->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    auto* dismiss = new QPushButton(tr("Dismiss"));
    dismiss->setAccessibleName(tr("Dismiss the message"));
    auto* layout = new QHBoxLayout(this);
    layout->addWidget(m_text, 1);
    layout->addWidget(dismiss);
    connect(dismiss, &QPushButton::clicked, this, &QWidget::hide);
    hide();
}

void MessageLine::paintEvent(QPaintEvent*)
{
    QPainter(this).fillRect(rect(), mixed(m_theme.fill(Grade::poor), m_theme.ground, 0.25));
}

void MessageLine::say(const QString& sentence)
{
    m_text->setText(sentence);
    m_text->setAccessibleName(sentence);
    show();
}

QString MessageLine::text() const
{
    return m_text->text();
}

} // namespace padside
