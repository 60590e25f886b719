// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/pages/visit/wetness_choice.h"

#include "ui/pages/visit/lettering.h"

#include <QHBoxLayout>
#include <QPushButton>

namespace padside {

using namespace Qt::Literals::StringLiterals;

WetnessChoice::WetnessChoice(RecordBook& book, QWidget* parent)
    : QWidget(parent)
{
    const std::array keys{tr("D", "key: dry"), tr("M", "key: damp"), tr("W", "key: wet")};
    auto* layout = new QHBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(4);
    std::size_t index = 0;
    for (const auto& [wetness, code, word] : codesOf(Wetness{})) {
        auto* button = new QPushButton(translated(book, word) + u"  "_s + keys[index]);
        button->setObjectName(u"wetness-"_s + QString::fromUtf8(code.data(), static_cast<qsizetype>(code.size())));
        button->setAccessibleName(translated(book, word));
        makeChoice(*button, [this, picked = wetness] { Q_EMIT chosen(picked); });
        makeLarge(*button);
        layout->addWidget(button);
        m_buttons[index++] = button;
    }
}

void WetnessChoice::showWetness(std::optional<Wetness> wetness)
{
    std::size_t index = 0;
    for (const auto& row : codesOf(Wetness{}))
        showChosen(*m_buttons[index++], wetness == row.value);
}

} // namespace padside
