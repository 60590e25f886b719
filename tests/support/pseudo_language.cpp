// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/support/pseudo_language.h"

#include <QHash>
#include <QRegularExpression>

namespace padside::test {

using Qt::Literals::StringLiterals::operator""_s;

namespace {

QChar accented(QChar letter)
{
    static const QHash<QChar, QChar> accents{{u'a', u'á'}, {u'e', u'é'}, {u'i', u'í'}, {u'o', u'ö'}, {u'u', u'ü'},
                                             {u'n', u'ñ'}, {u'c', u'ç'}, {u's', u'š'}, {u'y', u'ý'}, {u'A', u'Å'},
                                             {u'E', u'É'}, {u'O', u'Ø'}, {u'U', u'Ü'}, {u'N', u'Ñ'}, {u'S', u'Š'}};
    return accents.value(letter, letter);
}

} // namespace

QString PseudoLanguage::lengthened(const QString& text)
{
    static const QRegularExpression untouched(uR"(\{\d+\}|%L?\d+|%n|<[^>]*>|&.|\[\*\])"_s);
    QString changed;
    qsizetype from = 0;
    const auto change = [&](qsizetype until) {
        for (; from < until; ++from)
            changed += accented(text[from]);
    };
    for (auto match = untouched.globalMatch(text); match.hasNext();) {
        const auto one = match.next();
        change(one.capturedStart());
        changed += one.captured();
        from = one.capturedEnd();
    }
    change(text.size());
    // Longer by whole words, as other languages are: a wrapped text can still break.
    const qsizetype more = std::max<qsizetype>(1, text.size() * 4 / 10 - 2);
    for (qsizetype i = 0; i < more; ++i)
        changed += i % 7 == 0 && more > 7 ? u' ' : u'ŵ';
    return u'[' + changed + u']';
}

QString PseudoLanguage::translate(const char* context, const char* text, const char* comment, int n) const
{
    const QString where = QString::fromUtf8(context);
    const bool isOurs = where.startsWith(u"padside::"_s) || where == u"core"_s || where == u"catalogue"_s
        || where == u"Paper"_s || where == u"Visit"_s || where.endsWith(u"Text"_s) || where == u"VisitSummary"_s;
    const QString note = QString::fromUtf8(comment);
    if (!isOurs)
        return {};
    m_asked.insert({where, QString::fromUtf8(text), note});
    if (note.startsWith(u"key:"_s))
        return {};
    QString said = lengthened(QString::fromUtf8(text));
    if (n >= 0)
        said.replace(u"%n"_s, QString::number(n));
    return said;
}

} // namespace padside::test
