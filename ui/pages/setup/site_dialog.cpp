// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/pages/setup/site_dialog.h"

#include "ui/models/record_book.h"
#include "ui/models/setup_log.h"
#include "ui/models/speaker.h"
#include "ui/pages/setup/site_form.h"

namespace padside {

namespace {

constexpr QSize siteSize{560, 680};

Site newSite(IdMaker& ids)
{
    Site site;
    site.id = ids.make<SiteId>();
    return site;
}

} // namespace

SiteDialog::SiteDialog(RecordBook& book, SetupLog& log, const std::optional<Site>& site, QWidget* parent)
    : SetupDialog(book, site ? tr("Site %1").arg(shown(site->name)) : tr("New site"), parent)
    , m_log(log)
    , m_isNew(!site)
    , m_before(site ? *site : newSite(book.ids()))
    , m_form(new SiteForm(inputStyleOf(book), book.speaker()))
{
    setObjectName(QStringLiteral("site-dialog"));
    m_form->setInput(inputOf(m_before, inputStyleOf(book)));
    if (m_isNew)
        setForm(
            m_form, tr("Add the site"),
            tr("A name is enough; the rest can be filled in later. Next you add the first unit that stands there."));
    else
        setForm(m_form, tr("Keep"));
    resize(siteSize);
}

bool SiteDialog::keep()
{
    const CheckedSite checked = checkedSite(m_form->input(), m_before, inputStyleOf(m_book));
    m_form->say(checked.problems, m_book.speaker());
    if (!checked.problems.empty())
        return false;
    return m_isNew ? m_log.add({checked.site}, {}) : m_log.change(m_before, checked.site);
}

void SiteDialog::announce()
{
    Q_EMIT kept(m_before.id);
}

} // namespace padside
