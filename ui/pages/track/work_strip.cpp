// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/pages/track/work_strip.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QProgressBar>
#include <QPushButton>

#include <cmath>

namespace padside {

namespace {

constexpr int progressSteps = 1000;

} // namespace

WorkStrip::WorkStrip(const QString& name, QWidget* parent)
    : QWidget(parent)
    , m_work(new LongWork(this))
    , m_progress(new QProgressBar)
{
    m_progress->setRange(0, progressSteps);
    m_progress->setTextVisible(false);
    m_progress->setAccessibleName(name);
    auto* cancel = new QPushButton(tr("Cancel"));
    cancel->setObjectName(QStringLiteral("cancel"));
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->addWidget(new QLabel(name));
    row->addWidget(m_progress, 1);
    row->addWidget(cancel);
    hide();
    connect(cancel, &QPushButton::clicked, m_work, &LongWork::cancel);
    connect(m_work, &LongWork::progressed, this,
            [this](double share) { m_progress->setValue(static_cast<int>(std::lround(share * progressSteps))); });
    connect(m_work, &LongWork::done, this, &QWidget::hide);
    connect(m_work, &LongWork::cancelled, this, &QWidget::hide);
    connect(m_work, &LongWork::failed, this, &QWidget::hide);
}

bool WorkStrip::start(LongWork::Work work)
{
    m_progress->setValue(0);
    if (!m_work->start(std::move(work)))
        return false;
    show();
    return true;
}

} // namespace padside
