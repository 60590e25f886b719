// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "ui/models/setup_input.h" // before id.h, for moc
#include "ui/pages/setup/checked_form.h"

class QComboBox;

namespace padside {

class Catalogue;
class LocalSpeaker;

/// What a person can say about a unit.
class UnitForm : public CheckedForm
{
    Q_OBJECT
public:
    /// Both outlive it.
    UnitForm(const Catalogue& catalogue, const LocalSpeaker& speaker, QWidget* parent = nullptr);

    /// The sites to choose from; `chosen` is shown, if there is one. Where `orNew`, the name of a site that is not in
    /// the record may be typed, and its address.
    void setSites(const std::vector<Site>& sites, SiteId chosen, bool orNew);
    void setInput(const UnitInput& input);
    [[nodiscard]] UnitInput input() const;
    [[nodiscard]] SiteId site() const; ///< null where it is not in the record
    [[nodiscard]] Site newSite() const; ///< name and address as typed, without a key
    /// A unit in the record keeps its kind: its parts and findings stand on it.
    void fixKind();
    void say(const std::map<UnitField, Sentence>& problems);

Q_SIGNALS:
    void kindChosen(const QString& code);
    void tagEdited(const QString& tag);

private:
    void addLine(UnitField field, const QString& label, const QString& name, const QString& example = {});
    void addKinds(const Catalogue& catalogue);
    void addMeterings();
    void addRefrigerants();
    void followSite();

    const Catalogue& m_catalogue;
    const LocalSpeaker& m_speaker;
    std::vector<Site> m_sites;
    QComboBox* m_site;
    QComboBox* m_kind;
};

} // namespace padside
