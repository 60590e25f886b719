// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/models/unit_import.h"

#include "core/exchange/text_file.h"
#include "core/store/site_book.h"
#include "core/store/store.h"
#include "ui/models/record_book.h"
#include "ui/models/setup_log.h"
#include "ui/models/speaker.h"

#include <QFileInfo>

#include <utility>

namespace padside {

namespace {

template <typename T> T valueOrThrow(Result<T> result)
{
    if (!result)
        throw StoreError(result.error());
    return std::move(*result);
}

/// A maker of keys for another thread; keys of both makers can't meet, for their random bits differ.
std::shared_ptr<IdMaker> makerLike(IdMaker& ids, const Instant& now)
{
    const UuidBytes bytes = ids.next();
    std::uint64_t seed = 0;
    for (std::size_t i = 8; i < bytes.size(); ++i)
        seed = seed << 8U | bytes[i];
    const std::int64_t moment = now.utc.time_since_epoch().count() * 1000;
    return std::make_shared<IdMaker>([moment] { return moment; }, seed);
}

} // namespace

UnitImport::UnitImport(RecordBook& book, SetupLog& log, QObject* parent)
    : QObject(parent)
    , m_book(book)
    , m_log(log)
    , m_basis(std::make_shared<const UnitPlanBasis>(UnitPlanBasis{book.catalogue(), {}, {}, {}, book.today()}))
{
    connect(&m_work, &LongWork::progressed, this, &UnitImport::progressed);
    connect(&m_work, &LongWork::done, this, [this] {
        Q_EMIT ended();
        m_then();
    });
    connect(&m_work, &LongWork::failed, this, [this](const Sentence& why) {
        Q_EMIT ended();
        Q_EMIT failed(why);
    });
    connect(&m_work, &LongWork::cancelled, this, [this] {
        Q_EMIT ended();
        if (std::exchange(m_again, false))
            understand();
        else
            Q_EMIT cancelled();
    });
}

void UnitImport::begin(const QString& doing, LongWork::Work work, std::function<void()> then)
{
    m_then = std::move(then);
    if (m_work.start(std::move(work)))
        Q_EMIT started(doing);
}

bool UnitImport::refreshBasis()
{
    return m_book.attempt([this] {
        UnitPlanBasis basis{m_book.catalogue(), m_book.store().sites().sites(), m_book.store().sites().tags(),
                            m_usualSite, m_book.today()};
        const auto translate = [&](std::string_view english) {
            basis.readersWords[std::string(english)] = m_book.speaker().translate(std::string(english));
        };
        for (const UnitKind& kind : m_book.catalogue().unitKinds())
            translate(kind.name);
        for (const auto& metering : codesOf(Metering{}))
            translate(metering.word);
        m_basis = std::make_shared<const UnitPlanBasis>(std::move(basis));
    });
}

void UnitImport::read(const QString& file)
{
    if (isBusy())
        return;
    m_list = std::make_shared<const CsvSalvage>();
    m_plan = std::make_shared<const UnitPlan>();
    m_columns.clear();
    Q_EMIT listRead();
    Q_EMIT planned();
    const auto list = std::make_shared<CsvSalvage>();
    begin(
        tr("Reading %1").arg(QFileInfo(file).fileName()),
        [list, path = file.toStdString(), name = QFileInfo(file).fileName().toStdString()](const LongWork::Tell& tell) {
            const std::string text = valueOrThrow(readTextFile(path));
            *list = valueOrThrow(salvageCsv(text, name));
            return tell(1.0);
        },
        [this, list] {
            m_list = list;
            m_columns = recognisedColumns(m_list->table.columns);
            Q_EMIT listRead();
            understand();
        });
}

void UnitImport::setColumns(const UnitColumns& columns)
{
    if (columns == m_columns)
        return;
    m_columns = columns;
    understand();
}

void UnitImport::setUsualSite(const QString& name)
{
    if (name.toStdString() == m_usualSite)
        return;
    m_usualSite = name.toStdString();
    understand();
}

void UnitImport::understand()
{
    if (m_list->table.columns.empty())
        return;
    if (isBusy()) { // with what was chosen before: stop, and once more
        m_again = true;
        m_work.cancel();
        return;
    }
    if (!refreshBasis())
        return;
    const auto plan = std::make_shared<UnitPlan>();
    begin(
        tr("Looking at the rows"),
        [plan, list = m_list, basis = m_basis, columns = m_columns](const LongWork::Tell& tell) {
            *plan = planUnits(*list, columns, *basis, tell);
            return tell(1.0);
        },
        [this, plan] {
            if (std::exchange(m_again, false))
                return understand();
            m_plan = plan;
            Q_EMIT planned();
        });
}

void UnitImport::add()
{
    const auto count = static_cast<int>(m_plan->goodCount());
    if (isBusy() || count == 0)
        return;
    if (m_plan->goodCount() <= mostUndone) {
        NewRecords made = newRecords(*m_plan, *m_basis, m_book.ids());
        if (m_log.add(std::move(made.sites), std::move(made.units)))
            Q_EMIT added(count);
        return;
    }
    const auto ids = makerLike(m_book.ids(), m_book.now());
    begin(
        tr("Adding %n units", nullptr, count),
        [plan = m_plan, basis = m_basis, ids, path = m_book.store().path()](const LongWork::Tell& tell) {
            const NewRecords made = newRecords(*plan, *basis, *ids);
            const auto store = Store::open(path); // a store belongs to one thread
            return store->sites().addAll(made.sites, made.units, tell);
        },
        [this, count] {
            Q_EMIT m_book.sitesChanged();
            Q_EMIT added(count);
        });
}

void UnitImport::cancel()
{
    m_again = false;
    m_work.cancel();
}

} // namespace padside
