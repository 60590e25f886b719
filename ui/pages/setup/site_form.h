// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "ui/models/setup_input.h" // before id.h, for moc
#include "ui/pages/setup/checked_form.h"

namespace padside {

class LocalSpeaker;

/// What a person can say about a site.
class SiteForm : public CheckedForm
{
    Q_OBJECT
public:
    explicit SiteForm(const InputStyle& style, QWidget* parent = nullptr);

    void setInput(const SiteInput& input);
    [[nodiscard]] SiteInput input() const;
    void say(const std::map<SiteField, Sentence>& problems, const LocalSpeaker& speaker);
};

} // namespace padside
