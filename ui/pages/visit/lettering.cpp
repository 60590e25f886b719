// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/pages/visit/lettering.h"

#include "ui/drawing/theme.h"
#include "ui/models/record_book.h"
#include "ui/models/speaker.h"

#include <QAbstractButton>
#include <QApplication>

namespace padside {

using namespace Qt::Literals::StringLiterals;

QLabel* quietLabel(const Theme& theme, const QString& text)
{
    auto* label = new QLabel(text);
    label->setWordWrap(true);
    label->setTextFormat(Qt::PlainText);
    QPalette colours = label->palette();
    colours.setColor(QPalette::WindowText, theme.softInk);
    label->setPalette(colours);
    return label;
}

QLabel* headingLabel(const QString& text)
{
    auto* label = new QLabel(text);
    label->setTextFormat(Qt::PlainText);
    QFont font = label->font();
    font.setPointSizeF(font.pointSizeF() * 1.25);
    font.setBold(true);
    label->setFont(font);
    return label;
}

void makeLarge(QWidget& control)
{
    control.setMinimumHeight(targetHeight);
}

void makeChoice(QAbstractButton& button, const Theme& theme)
{
    button.setCheckable(true);
    QObject::connect(&button, &QAbstractButton::toggled, &button, [&button, &theme](bool chosen) {
        QPalette colours = QApplication::palette(&button);
        if (chosen) {
            colours.setColor(QPalette::Button, theme.accent);
            colours.setColor(QPalette::ButtonText, theme.accentInk);
        }
        button.setPalette(colours);
    });
}

QString translated(const RecordBook& book, std::string_view english)
{
    return QString::fromStdString(book.speaker().translate(std::string(english)));
}

QString partTitle(const RecordBook& book, const Part& part)
{
    const PartKind* kind = book.catalogue().partKind(part.kind);
    const QString name = translated(book, kind ? kind->name : part.kind);
    return part.position.empty() ? name : name + u", "_s + translated(book, part.position);
}

QString zoneTitle(const RecordBook& book, const Part& part, const Zone& zone)
{
    if (!zone.name.empty())
        return translated(book, zone.name);
    const ZoneKind* kind = book.catalogue().zoneKind(part.kind, zone.kind);
    return translated(book, kind ? kind->name : zone.kind);
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
