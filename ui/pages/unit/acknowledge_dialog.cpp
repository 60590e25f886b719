// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/pages/unit/acknowledge_dialog.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

using namespace Qt::Literals::StringLiterals;

namespace padside {

namespace {

QLabel* paragraph(const QString& text)
{
    auto* label = new QLabel(text);
    label->setTextFormat(Qt::PlainText);
    label->setWordWrap(true);
    return label;
}

} // namespace

AcknowledgeDialog::AcknowledgeDialog(const QString& sentence, const QString& clears, QWidget* parent)
    : QDialog(parent)
    , m_reason(new QComboBox)
{
    setObjectName(u"acknowledge-dialog"_s);
    setWindowTitle(tr("Acknowledge a flag"));
    // What is said most often; any other words will do.
    m_reason->setEditable(true);
    m_reason->setInsertPolicy(QComboBox::NoInsert);
    m_reason->setCompleter(nullptr); // words stay as they are typed
    m_reason->setObjectName(u"acknowledge-reason"_s);
    m_reason->setAccessibleName(tr("Reason"));
    m_reason->addItems({tr("The spare is ordered"), tr("The customer knows and waits"), tr("Work is planned"),
                        tr("Usual for this unit")});
    m_reason->setCurrentIndex(-1);
    m_reason->lineEdit()->setPlaceholderText(tr("Why it may stand as it is"));
    auto* label = new QLabel(tr("&Reason"));
    label->setBuddy(m_reason);

    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel);
    m_keep = buttons->addButton(tr("Ac&knowledge"), QDialogButtonBox::AcceptRole);
    m_keep->setObjectName(u"acknowledge-keep"_s);
    m_keep->setEnabled(false);
    m_keep->setDefault(true);
    // Else Enter would give up as long as there was no reason when the dialog was shown.
    buttons->button(QDialogButtonBox::Cancel)->setAutoDefault(false);
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    connect(m_reason, &QComboBox::editTextChanged, this, [this] {
        m_keep->setEnabled(!reason().isEmpty());
        m_keep->setDefault(true);
    });

    auto* column = new QVBoxLayout(this);
    column->addWidget(paragraph(sentence));
    if (!clears.isEmpty())
        column->addWidget(paragraph(clears));
    column->addWidget(paragraph(tr("An acknowledged flag stands below the others and is not counted. It comes back "
                                   "when it gets worse.")));
    column->addWidget(label);
    column->addWidget(m_reason);
    column->addStretch(1);
    column->addWidget(buttons);
    m_reason->setFocus();
    resize(520, sizeHint().height());
}

QString AcknowledgeDialog::reason() const
{
    return m_reason->currentText().trimmed();
}

} // namespace padside
