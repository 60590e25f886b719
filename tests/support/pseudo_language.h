// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QTranslator>

#include <set>
#include <tuple>

namespace padside::test {

/// A language nobody speaks: every text in brackets, with accents, and 40 % longer. Places (%1, {0}) and markup stay;
/// keys of the keyboard stay too. It remembers what it was asked for.
class PseudoLanguage : public QTranslator
{
public:
    using Asked = std::tuple<QString, QString, QString>; ///< context, text, comment

    [[nodiscard]] bool isEmpty() const override { return false; }
    [[nodiscard]] QString translate(const char* context, const char* text, const char* comment, int n) const override;

    [[nodiscard]] const std::set<Asked>& asked() const { return m_asked; }

    [[nodiscard]] static QString lengthened(const QString& text);

private:
    mutable std::set<Asked> m_asked;
};

} // namespace padside::test
