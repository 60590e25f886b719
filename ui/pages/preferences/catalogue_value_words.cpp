// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/pages/preferences/catalogue_value_words.h"

#include "core/quantity/measure.h"
#include "ui/models/record_book.h"
#include "ui/models/speaker.h"
#include "ui/models/written_number.h"

#include <QCoreApplication>
#include <QRegularExpression>

namespace padside {

using namespace Qt::Literals::StringLiterals;

namespace {

struct ValueWords
{
    Q_DECLARE_TR_FUNCTIONS(padside::ValueWords)
};

QString translated(const RecordBook& book, const std::string& english)
{
    return QString::fromStdString(book.speaker().translate(english));
}

QString yesOrNo(const RecordBook& book, bool value)
{
    return translated(book, value ? PADSIDE_SAY("yes") : PADSIDE_SAY("no"));
}

struct ValueText
{
    const RecordBook& book;
    const OwnField& field;
    bool isOurs;

    QString operator()(const std::string& text) const
    {
        return isOurs ? translated(book, text) : QString::fromStdString(text);
    }
    QString operator()(double number) const { return writtenNumber(book, number * field.shownTimes); }
    QString operator()(bool value) const { return yesOrNo(book, value); }
    QString operator()(const std::vector<double>& numbers) const
    {
        QStringList all;
        for (const double number : numbers)
            all << (*this)(number);
        return all.join(u" / "_s);
    }
};

Result<CatalogueValue> readYesOrNo(const RecordBook& book, const QString& typed)
{
    for (const bool value : {true, false}) {
        if (typed.compare(yesOrNo(book, value), Qt::CaseInsensitive) == 0)
            return value;
    }
    return problem(ProblemKind::badInput, PADSIDE_SAY("“{0}” is neither “{1}” nor “{2}”. Choose one of the two."),
                   {typed.toStdString(), Word{"yes"}, Word{"no"}});
}

Result<CatalogueValue> readNumbers(const RecordBook& book, const QString& typed)
{
    static const QRegularExpression between(u"[/;]"_s);
    std::vector<double> numbers;
    for (const QString& one : typed.split(between)) {
        const auto number = parseNumber(one.toStdString(), book.numberStyle());
        if (!number)
            return tl::unexpected(number.error());
        numbers.push_back(*number);
    }
    return numbers;
}

} // namespace

QString ourValueText(const RecordBook& book, const OwnField& field)
{
    return field.ours ? std::visit(ValueText{book, field, true}, *field.ours) : ValueWords::tr("(nothing)");
}

QString ownValueText(const RecordBook& book, const OwnField& field)
{
    return field.own ? std::visit(ValueText{book, field, false}, *field.own) : QString();
}

Result<CatalogueValue> readValue(const RecordBook& book, const OwnField& field, const QString& typed)
{
    switch (field.form) {
    case OwnField::Form::text:
        return typed.toStdString();
    case OwnField::Form::yesNo:
        return readYesOrNo(book, typed);
    case OwnField::Form::numbers:
        return readNumbers(book, typed);
    case OwnField::Form::number:
        break;
    }
    const auto number = parseNumber(typed.toStdString(), book.numberStyle());
    if (!number)
        return tl::unexpected(number.error());
    return *number / field.shownTimes;
}

QStringList valueChoices(const RecordBook& book, const OwnField& field)
{
    return field.form == OwnField::Form::yesNo ? QStringList{yesOrNo(book, true), yesOrNo(book, false)} : QStringList();
}

QString valueAbout(const RecordBook& book, const OwnField& field)
{
    QStringList sentences;
    if (!field.sentence.empty())
        sentences << translated(book, field.sentence);
    if (!field.source.empty())
        sentences << ValueWords::tr("Source: %1.").arg(translated(book, field.source));
    return sentences.join(u' ');
}

} // namespace padside
