// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/record/site.h"
#include "ui/pages/setup/setup_dialog.h"

#include <optional>

namespace padside {

class SetupLog;
class SiteForm;

/// A new site, or what is known of one.
class SiteDialog final : public SetupDialog
{
    Q_OBJECT
public:
    /// Without `site`, a new one. Both services outlive it.
    SiteDialog(RecordBook& book, SetupLog& log, const std::optional<Site>& site, QWidget* parent = nullptr);

Q_SIGNALS:
    void kept(const padside::SiteId& site);

protected:
    bool keep() override;
    void announce() override;

private:
    SetupLog& m_log;
    bool m_isNew;
    Site m_before;
    SiteForm* m_form;
};

} // namespace padside
