// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/pages/visit/lettering.h"

#include "ui/drawing/size.h"
#include "ui/models/record_book.h"
#include "ui/models/speaker.h"

#include <QAbstractButton>
#include <QApplication>
#include <QKeyEvent>
#include <QPushButton>
#include <QShortcut>
#include <QSignalBlocker>

#include <array>
#include <utility>

namespace padside {

using namespace Qt::Literals::StringLiterals;

namespace {

constexpr double headingSize = 1.25;

/// Follows the size of the program's letters when it is changed.
class HeadingLabel : public QLabel
{
public:
    explicit HeadingLabel(const QString& text)
        : QLabel(text)
    {
        fit();
    }

protected:
    void changeEvent(QEvent* event) override
    {
        if (event->type() == QEvent::ApplicationFontChange)
            fit();
        QLabel::changeEvent(event);
    }

private:
    void fit()
    {
        QFont large = QApplication::font();
        large.setPointSizeF(large.pointSizeF() * headingSize);
        large.setBold(true);
        setFont(large);
    }
};

} // namespace

QLabel* quietLabel(const QString& text)
{
    auto* label = new QLabel(text);
    label->setWordWrap(true);
    label->setTextFormat(Qt::PlainText);
    label->setForegroundRole(QPalette::PlaceholderText); // second-rank text in every theme
    return label;
}

QLabel* headingLabel(const QString& text)
{
    auto* label = new HeadingLabel(text);
    label->setTextFormat(Qt::PlainText);
    return label;
}

bool isUndoOrRedo(const QKeyEvent& key)
{
    return key.matches(QKeySequence::Undo) || key.matches(QKeySequence::Redo);
}

QString frenchDigit(int digit)
{
    static const std::array bare{u"&"_s, u"é"_s, u"\""_s, u"'"_s, u"("_s, u"-"_s, u"è"_s};
    return bare.at(static_cast<std::size_t>(digit) - 1);
}

void addDigit(QWidget& panel, int digit, QAbstractButton& button)
{
    for (const QString& text : {QString::number(digit), frenchDigit(digit)}) {
        auto* shortcut = new QShortcut(QKeySequence(text), &panel);
        shortcut->setContext(Qt::WidgetWithChildrenShortcut);
        QObject::connect(shortcut, &QShortcut::activated, &button, &QAbstractButton::click);
    }
}

void makeLarge(QWidget& control)
{
    control.setMinimumHeight(Size::desk().target); // the style makes it larger for the field
    if (auto* button = qobject_cast<QPushButton*>(&control))
        button->setAutoDefault(true); // Enter presses it as well as Space
}

void makeChoice(QAbstractButton& button, std::function<void()> chosen)
{
    button.setCheckable(true);
    // Not clicked(): assistive technology toggles what can be checked.
    QObject::connect(&button, &QAbstractButton::toggled, &button, [&button, chosen = std::move(chosen)] {
        showChosen(button, true);
        chosen();
    });
}

void showChosen(QAbstractButton& button, bool chosen)
{
    const QSignalBlocker quiet(button);
    button.setChecked(chosen);
}

QString gradeText(const RecordBook& book, const Part& part, const Zone& zone, Grade grade)
{
    return translated(book, book.catalogue().gradeSentence(part.kind, zone.kind, grade));
}

QString sightText(const RecordBook& book, const Finding& finding)
{
    if (const auto grade = finding.grade())
        return QString::number(numeral(*grade)) + u' ' + translated(book, wordOf(*grade));
    return QCoreApplication::translate("Visit", "not seen: %1")
        .arg(translated(book, wordOf(std::get<NotSeenReason>(finding.sight))));
}

} // namespace padside
