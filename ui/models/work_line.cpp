// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/models/work_line.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QProgressBar>
#include <QPushButton>

#include <cmath>

namespace padside {

namespace {

constexpr int progressSteps = 1000;

} // namespace

WorkLine::WorkLine(QWidget* parent)
    : QWidget(parent)
    , m_work(new LongWork(this))
    , m_said(new QLabel)
    , m_progress(new QProgressBar)
{
    setObjectName(QStringLiteral("workLine"));
    m_progress->setObjectName(QStringLiteral("workProgress"));
    m_progress->setRange(0, progressSteps);
    m_progress->setTextVisible(false);
    auto* cancel = new QPushButton(tr("Cancel"));
    cancel->setObjectName(QStringLiteral("cancelWork"));
    auto* layout = new QHBoxLayout(this);
    layout->addWidget(m_said);
    layout->addWidget(m_progress, 1);
    layout->addWidget(cancel);
    hide();

    connect(cancel, &QPushButton::clicked, m_work, &LongWork::cancel);
    connect(m_work, &LongWork::progressed, this,
            [this](double share) { m_progress->setValue(static_cast<int>(std::lround(share * progressSteps))); });
    connect(m_work, &LongWork::done, this, &QWidget::hide);
    connect(m_work, &LongWork::cancelled, this, &QWidget::hide);
    connect(m_work, &LongWork::failed, this, &QWidget::hide);
}

bool WorkLine::start(const QString& name, LongWork::Work work)
{
    if (!m_work->start(std::move(work)))
        return false;
    m_name = name;
    m_said->setText(name);
    m_progress->setAccessibleName(name);
    m_progress->setValue(0);
    show();
    return true;
}

} // namespace padside
