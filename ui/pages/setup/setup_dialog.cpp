// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/pages/setup/setup_dialog.h"

#include "ui/models/record_book.h"
#include "ui/pages/setup/form_area.h"

#include <QDialogButtonBox>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

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

void SetupDialog::setForm(QWidget* form, const QString& keep, const QString& next)
{
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel);
    m_keep = buttons->addButton(keep, QDialogButtonBox::AcceptRole);
    connect(buttons, &QDialogButtonBox::accepted, this, &SetupDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &SetupDialog::reject);
    auto* layout = new QVBoxLayout(this);
    if (!next.isEmpty()) {
        auto* said = new QLabel(next);
        said->setObjectName(u"setup-next"_s);
        said->setWordWrap(true);
        layout->addWidget(said);
    }
    layout->addWidget(new FormArea(form), 1);
    layout->addWidget(m_said);
    layout->addWidget(buttons);
    setTabOrder(m_keep, buttons->button(QDialogButtonBox::Cancel)); // the box puts it where Tab never comes by
    m_keep->setDefault(true); // now that it is in the window: before, Enter would press Cancel
}

void SetupDialog::resizeToForm(int width)
{
    constexpr int mostHigh = 680; // px; the smallest screen we build for is 800 high
    resize(width, std::min(sizeHint().height(), mostHigh));
}

void SetupDialog::setKeepText(const QString& keep)
{
    m_keep->setText(keep);
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
