// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/shell/work_line.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QProgressBar>
#include <QPushButton>

#include <cmath>

namespace padside {

namespace {

constexpr int steps = 1000;

} // namespace

WorkLine::WorkLine(QWidget* parent)
    : QWidget(parent)
    , m_work(new LongWork(this))
    , m_name(new QLabel)
    , m_progress(new QProgressBar)
{
    setObjectName(QStringLiteral("workLine"));
    m_progress->setObjectName(QStringLiteral("workProgress"));
    m_progress->setRange(0, steps);
    m_progress->setTextVisible(false);
    auto* cancel = new QPushButton(tr("Cancel"));
    cancel->setObjectName(QStringLiteral("cancelWork"));
    auto* layout = new QHBoxLayout(this);
    layout->addWidget(m_name);
    layout->addWidget(m_progress, 1);
    layout->addWidget(cancel);
    hide();

    connect(cancel, &QPushButton::clicked, m_work, &LongWork::cancel);
    connect(m_work, &LongWork::progressed, this,
            [this](double share) { m_progress->setValue(static_cast<int>(std::lround(share * steps))); });
    connect(m_work, &LongWork::done, this, [this] {
        hide();
        Q_EMIT done(m_running);
    });
    connect(m_work, &LongWork::cancelled, this, [this] {
        hide();
        Q_EMIT cancelled(m_running);
    });
    connect(m_work, &LongWork::failed, this, [this](const Sentence& why) {
        hide();
        Q_EMIT failed(why);
    });
}

void WorkLine::start(const QString& name, LongWork::Work work)
{
    if (!m_work->start(std::move(work))) {
        Q_EMIT refused(m_running);
        return;
    }
    m_running = name;
    m_name->setText(name);
    m_progress->setAccessibleName(name);
    m_progress->setValue(0);
    show();
}

} // namespace padside
