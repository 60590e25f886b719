// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/verdict/verdict.h"

#include <QLabel>

#include <vector>

namespace padside {

class RecordBook;

/// What the readings so far mean, beside the reading that completed them: the judgement in bold, the sentence, and
/// where the limit comes from in second-rank text. Hidden while there is nothing to say.
class VerdictLabel : public QLabel
{
    Q_OBJECT
public:
    explicit VerdictLabel(const RecordBook& book, QWidget* parent = nullptr);

    void show(const std::vector<Verdict>& verdicts);
    [[nodiscard]] bool isBlank() const { return m_verdicts.empty(); }
    [[nodiscard]] const std::vector<Verdict>& verdicts() const { return m_verdicts; }
    [[nodiscard]] QString plainText() const;

protected:
    void changeEvent(QEvent* event) override;

private:
    void write();

    const RecordBook& m_book;
    std::vector<Verdict> m_verdicts;
};

} // namespace padside
