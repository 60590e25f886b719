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

constexpr int columnWidth = 560;
constexpr int betweenChoices = 18;
constexpr double headingSize = 1.5;

} // namespace

WelcomePage::WelcomePage(QWidget* parent)
    : QWidget(parent)
{
    auto* heading = new QLabel(tr("This file has no units yet"));
    QFont large = heading->font();
    large.setPointSizeF(large.pointSizeF() * headingSize);
    heading->setFont(large);
    auto* content = new QWidget;
    content->setMaximumWidth(columnWidth);
    auto* column = new QVBoxLayout(content);
    column->setContentsMargins(24, 24, 24, 24);
    column->addStretch(2);
    column->addWidget(heading);
    column->addSpacing(betweenChoices);

    QPushButton* add = addChoice(*column, tr("&Add your first site and unit…"),
                                 tr("Where it stands, what it is called and what kind it is; everything else can be "
                                    "filled in later. Then its first visit can begin."));
    add->setObjectName(u"welcome-add"_s);
    add->setDefault(true);
    connect(add, &QPushButton::clicked, this, &WelcomePage::addRequested);
    QPushButton* sample
        = addChoice(*column, tr("&Look at a sample"),
                    tr("Fourteen units of an invented harbour town with eight years of visits, in a "
                       "file of its own beside yours: try everything there, nothing of yours changes."));
    sample->setObjectName(u"welcome-sample"_s);
    connect(sample, &QPushButton::clicked, this, &WelcomePage::sampleRequested);
    QPushButton* open = addChoice(*column, tr("&Open a file…"), tr("A record that is already on this computer."));
    open->setObjectName(u"welcome-open"_s);
    connect(open, &QPushButton::clicked, this, &WelcomePage::openFileRequested);
    column->addStretch(3);

    auto* row = new QHBoxLayout(this);
    row->addStretch(1);
    row->addWidget(content, 10);
    row->addStretch(1);
    setFocusProxy(add);
}

QPushButton* WelcomePage::addChoice(QVBoxLayout& column, const QString& what, const QString& says)
{
    auto* button = new QPushButton(what);
    button->setAccessibleDescription(says);
    auto* explained = new QLabel(says);
    explained->setWordWrap(true);
    column.addWidget(button, 0, Qt::AlignLeft);
    column.addWidget(explained);
    column.addSpacing(betweenChoices);
    return button;
}

} // namespace padside
