// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/ui/pages/setup/setup_fixture.h"

#include "core/store/site_book.h"
#include "resources/resources.h"

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QSpinBox>
#include <QTest>

#include <set>

namespace padside::test {

using Qt::Literals::StringLiterals::operator""_s;

namespace {

Instant noon()
{
    return Instant{*parseDate("2026-05-04") + std::chrono::hours(12), std::chrono::minutes(0)};
}

} // namespace

SetupFixture::SetupFixture()
    : m_catalogue(Catalogue::load(shippedCatalogue()).value())
    , m_store(Store::create(m_folder.filePath(u"record.padside"_s)))
    , m_ids([] { return std::int64_t{1'777'000'000'000}; }, 3)
    , m_book(std::make_unique<RecordBook>(*m_store, m_catalogue, m_ids,
                                          RecordBook::Surroundings{&noon, QLocale::c(), UnitSystem::metric, {}}))
    , m_log(std::make_unique<SetupLog>(*m_book, m_stack))
{
    m_site.id = m_ids.make<SiteId>();
    m_site.name = "Harbour House";
    m_store->sites().addSite(m_site);
}

void SetupFixture::type(const QString& field, const QString& text) const
{
    find<QLineEdit>(field)->setText(text);
}

void SetupFixture::choose(const QString& field, const QString& code) const
{
    auto* box = find<QComboBox>(field);
    ASSERT_GE(box->findData(code), 0) << code.toStdString();
    box->setCurrentIndex(box->findData(code));
}

QString SetupFixture::typed(const QString& field) const
{
    return find<QLineEdit>(field)->text();
}

QString SetupFixture::problem(const QString& field) const
{
    const auto* label = find<QLabel>(field + u"-problem"_s);
    return label->isVisible() ? label->text() : QString();
}

void SetupFixture::expectEveryFieldIsNamed() const
{
    for (const QWidget* widget : m_dialog->findChildren<QWidget*>()) {
        const bool isField = qobject_cast<const QComboBox*>(widget) || qobject_cast<const QSpinBox*>(widget)
            || (qobject_cast<const QLineEdit*>(widget) && !qobject_cast<const QSpinBox*>(widget->parentWidget()));
        if (isField) {
            EXPECT_FALSE(widget->accessibleName().isEmpty()) << widget->objectName().toStdString();
        }
    }
}

void SetupFixture::expectTabReachesEveryControl() const
{
    std::set<const QWidget*> left;
    for (const QWidget* widget : m_dialog->findChildren<QWidget*>()) {
        if (widget->isVisible() && widget->isEnabled() && !widget->focusProxy() && widget->focusPolicy() & Qt::TabFocus)
            left.insert(widget);
    }
    ASSERT_TRUE(QTest::qWaitForWindowActive(m_dialog.get()));
    const std::size_t controls = left.size();
    EXPECT_GT(controls, 1U);
    for (std::size_t pressed = 0; pressed < 2 * controls; ++pressed) { // a key may go to a control within another
        ASSERT_NE(m_dialog->focusWidget(), nullptr);
        left.erase(m_dialog->focusWidget());
        QTest::keyClick(m_dialog->focusWidget(), Qt::Key_Tab);
    }
    for (const QWidget* widget : left) {
        ADD_FAILURE() << "not reached: " << widget->metaObject()->className() << " "
                      << widget->objectName().toStdString();
    }
}

std::vector<Site> SetupFixture::sites() const
{
    return m_store->sites().sites();
}

std::vector<Unit> SetupFixture::units() const
{
    return m_store->sites().units();
}

} // namespace padside::test
