// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/pages/setup/welcome_page.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace padside {

using namespace Qt::Literals::StringLiterals;

namespace {

constexpr int welcomeWidth = 560;
constexpr int betweenChoices = 18;
constexpr double headingSize = 1.5;

} // namespace

WelcomePage::WelcomePage(bool mayWrite, QWidget* parent)
    : QWidget(parent)
{
    auto* heading = new QLabel(tr("Welcome"));
    QFont large = heading->font();
    large.setPointSizeF(large.pointSizeF() * headingSize);
    heading->setFont(large);
    auto* lead
        = new QLabel(tr("Padside keeps what you find at each part of an outdoor unit from visit to visit, and says "
                        "what is likely to fail next. This file has no units yet. Four ways to begin:"));
    lead->setWordWrap(true);
    auto* content = new QWidget;
    content->setMaximumWidth(welcomeWidth);
    auto* column = new QVBoxLayout(content);
    column->setContentsMargins(24, 24, 24, 24);
    column->addStretch(2);
    column->addWidget(heading);
    column->addWidget(lead);
    column->addSpacing(betweenChoices);

    QPushButton* add = addChoice(*column, u"welcome-add"_s, tr("&Add your first site and unit…"),
                                 tr("Where it stands, what it is called and what kind it is; everything else can be "
                                    "filled in later. Then its first visit can begin."));
    add->setDefault(true);
    add->setEnabled(mayWrite);
    connect(add, &QPushButton::clicked, this, &WelcomePage::addRequested);
    QPushButton* list
        = addChoice(*column, u"welcome-list"_s, tr("&Bring in a list of units…"),
                    tr("A table saved as CSV, one unit a row. You see what each row becomes before anything "
                       "is written."));
    list->setEnabled(mayWrite);
    connect(list, &QPushButton::clicked, this, &WelcomePage::listRequested);
    QPushButton* sample
        = addChoice(*column, u"welcome-sample"_s, tr("&Look at a sample"),
                    tr("Fourteen units of an invented harbour town with eight years of visits, in a "
                       "file of its own beside yours: try everything there, nothing of yours changes."));
    connect(sample, &QPushButton::clicked, this, &WelcomePage::sampleRequested);
    QPushButton* open
        = addChoice(*column, u"welcome-open"_s, tr("&Open a file…"), tr("A record that is already on this computer."));
    connect(open, &QPushButton::clicked, this, &WelcomePage::openFileRequested);
    column->addStretch(3);

    auto* row = new QHBoxLayout(this);
    row->addStretch(1);
    row->addWidget(content, 10);
    row->addStretch(1);
    setFocusProxy(mayWrite ? add : sample);
}

QPushButton* WelcomePage::addChoice(QVBoxLayout& column, const QString& name, const QString& what, const QString& says)
{
    auto* button = new QPushButton(what);
    button->setObjectName(name);
    button->setAccessibleDescription(says);
    auto* explained = new QLabel(says);
    explained->setWordWrap(true);
    column.addWidget(button, 0, Qt::AlignLeft);
    column.addWidget(explained);
    column.addSpacing(betweenChoices);
    return button;
}

} // namespace padside
