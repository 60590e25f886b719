// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/pages/setup/setup_dialog.h"

#include "ui/models/record_book.h"

#include <QDialogButtonBox>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>

namespace padside {

using namespace Qt::Literals::StringLiterals;

SetupDialog::SetupDialog(RecordBook& book, const QString& title, QWidget* parent)
    : QDialog(parent)
    , m_book(book)
    , m_said(new QLabel)
{
    setWindowTitle(title);
    setAttribute(Qt::WA_DeleteOnClose);
    m_said->setObjectName(u"setup-said"_s);
    m_said->setWordWrap(true);
    QFont bold = m_said->font();
    bold.setBold(true);
    m_said->setFont(bold);
    m_said->hide();
    connect(&book, &RecordBook::failed, this, [this](const QString& sentence) {
        m_said->setText(sentence);
        m_said->show();
    });
}

void SetupDialog::setForm(QWidget* form, const QString& keep)
{
    auto* scroll = new QScrollArea;
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setWidgetResizable(true);
    scroll->setFocusPolicy(Qt::NoFocus);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll->setWidget(form);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel);
    buttons->addButton(keep, QDialogButtonBox::AcceptRole)->setDefault(true);
    connect(buttons, &QDialogButtonBox::accepted, this, &SetupDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &SetupDialog::reject);
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(scroll, 1);
    layout->addWidget(m_said);
    layout->addWidget(buttons);
}

void SetupDialog::accept()
{
    m_said->hide();
    if (!keep())
        return;
    QDialog::accept();
    announce();
}

} // namespace padside
