// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "ui/models/setup_input.h" // before id.h, for moc
#include "ui/pages/setup/checked_form.h"

namespace padside {

class LocalSpeaker;
class SiteAirPanel;

/// What a person can say about a site.
class SiteForm : public CheckedForm
{
    Q_OBJECT
public:
    /// `speaker` outlives it.
    SiteForm(const InputStyle& style, const LocalSpeaker& speaker, QWidget* parent = nullptr);

    void setInput(const SiteInput& input);
    [[nodiscard]] SiteInput input() const;
    void say(const std::map<SiteField, Sentence>& problems, const LocalSpeaker& speaker);
    [[nodiscard]] SiteAirPanel* airPanel() const { return m_airPanel; }

private:
    void showAir();
    void takeMeans(double temperatureK, double relativeHumidity);

    const InputStyle m_style;
    SiteAirPanel* m_airPanel;
};

} // namespace padside
