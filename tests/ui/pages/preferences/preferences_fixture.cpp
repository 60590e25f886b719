// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/ui/pages/preferences/preferences_fixture.h"

#include "core/store/site_book.h"
#include "resources/resources.h"

#include <QComboBox>
#include <QLabel>

namespace padside::test {

using Qt::Literals::StringLiterals::operator""_s;

namespace {

Instant noon()
{
    return Instant{*parseDate("2026-05-04") + std::chrono::hours(12), std::chrono::minutes(0)};
}

} // namespace

PreferencesFixture::PreferencesFixture()
    : m_catalogue(Catalogue::load(shippedCatalogue()).value())
    , m_store(Store::create(m_folder.filePath(u"record.padside"_s)))
    , m_ids([] { return std::int64_t{1'777'000'000'000}; }, 3)
{
    for (const char* name : {"Harbour House", "Old Mill"}) {
        Site site;
        site.id = m_ids.make<SiteId>();
        site.name = name;
        m_store->sites().addSite(site);
    }
}

void PreferencesFixture::open(const Preferences& preferences, const QLocale& locale)
{
    m_dialog.reset();
    m_book = std::make_unique<RecordBook>(*m_store, m_catalogue, m_ids,
                                          RecordBook::Surroundings{&noon, locale, UnitSystem::metric, {}});
    const std::vector<Language> languages{{u"en"_s, u"English"_s, {}}, {u"es"_s, u"español"_s, u"padside_es.qm"_s}};
    m_dialog = std::make_unique<PreferencesDialog>(
        *m_book, preferences, PreferencesDialog::Offered{languages, UnitSystem::usCustomary, shippedCatalogue()});
    QObject::connect(m_dialog.get(), &PreferencesDialog::chosen, m_dialog.get(),
                     [this](const Preferences& chosen, bool catalogueChanged) {
                         m_chosen.push_back(chosen);
                         m_catalogueChanged = catalogueChanged;
                     });
    m_dialog->show();
}

void PreferencesFixture::choose(const QString& box, const QVariant& data) const
{
    auto* combo = find<QComboBox>(box);
    const int index = combo->findData(data);
    EXPECT_GE(index, 0) << box.toStdString();
    combo->setCurrentIndex(index);
}

QString PreferencesFixture::said() const
{
    const auto* label = find<QLabel>(u"preferences-said"_s);
    return label->isVisible() ? label->text() : QString();
}

std::vector<Site> PreferencesFixture::sites() const
{
    return m_store->sites().sites();
}

} // namespace padside::test
