// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/support/shared_letters.h"

#include <QAbstractButton>
#include <QKeySequence>
#include <QLabel>
#include <QMainWindow>
#include <QMap>
#include <QMenuBar>
#include <QTabBar>

namespace padside::test {

using Qt::Literals::StringLiterals::operator""_s;

namespace {

class Letters
{
public:
    void take(const QString& text)
    {
        const QKeySequence letter = QKeySequence::mnemonic(text);
        if (!letter.isEmpty())
            m_places[letter] << text;
    }
    [[nodiscard]] QStringList shared() const
    {
        QStringList lines;
        for (auto letter = m_places.begin(); letter != m_places.end(); ++letter) {
            if (letter->size() > 1)
                lines << letter.key().toString() + u": "_s + letter->join(u" | "_s);
        }
        return lines;
    }

private:
    QMap<QKeySequence, QStringList> m_places;
};

} // namespace

QStringList sharedLetters(const QMainWindow& window)
{
    Letters letters;
    for (const QAction* menu : window.menuBar()->actions())
        letters.take(menu->text());
    for (const QWidget* widget : window.findChildren<QWidget*>()) {
        if (!widget->isVisible())
            continue;
        if (const auto* button = qobject_cast<const QAbstractButton*>(widget))
            letters.take(button->text());
        else if (const auto* label = qobject_cast<const QLabel*>(widget); label && label->buddy())
            letters.take(label->text());
        else if (const auto* tabs = qobject_cast<const QTabBar*>(widget)) {
            for (int tab = 0; tab < tabs->count(); ++tab)
                letters.take(tabs->tabText(tab));
        }
    }
    return letters.shared();
}

} // namespace padside::test
