// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/pages/unit/photo_years.h"

#include "ui/drawing/theme.h"
#include "ui/models/photo_loader.h"
#include "ui/models/record_book.h"
#include "ui/models/speaker.h"
#include "ui/pages/unit/photo_viewer.h"
#include "ui/pages/unit/photo_year_delegate.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QListView>
#include <QScrollBar>
#include <QStandardItemModel>
#include <QToolButton>
#include <QVBoxLayout>
#include <QWheelEvent>

using namespace Qt::Literals::StringLiterals;

namespace padside {

namespace {

constexpr int titleWidth = 140;

} // namespace

PhotoYears::PhotoYears(const RecordBook& book, PhotoLoader& loader, const Theme& theme, QWidget* parent)
    : QWidget(parent)
    , m_book(book)
    , m_title(new QLabel)
    , m_close(new QToolButton)
    , m_none(new QLabel)
    , m_list(new QListView)
    , m_model(new QStandardItemModel(this))
    , m_viewer(new PhotoViewer(loader, theme, this))
{
    m_list->setObjectName(u"photoYears"_s);
    m_list->setModel(m_model);
    m_list->setItemDelegate(new PhotoYearDelegate(loader, theme, m_list));
    m_list->setFlow(QListView::LeftToRight);
    m_list->setWrapping(false);
    m_list->setHorizontalScrollMode(QAbstractItemView::ScrollPerPixel);
    m_list->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_list->setEditTriggers(QAbstractItemView::NoEditTriggers);
    m_list->setTabKeyNavigation(false);
    m_list->setFrameShape(QFrame::NoFrame);
    m_list->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    m_list->viewport()->installEventFilter(this);
    m_title->setTextFormat(Qt::PlainText);
    m_title->setBuddy(m_list);
    m_none->setForegroundRole(QPalette::PlaceholderText);
    m_none->setText(tr("No photographs of this zone yet."));
    m_close->setText(tr("Close"));
    m_close->setAutoRaise(true);
    m_close->setAccessibleName(tr("Close the photographs"));
    m_close->setObjectName(u"closePhotoYears"_s);
    m_title->setWordWrap(true);
    m_title->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    m_title->setFixedWidth(titleWidth);
    auto* about = new QVBoxLayout;
    about->setSpacing(2);
    about->addWidget(m_title);
    about->addStretch(1);
    about->addWidget(m_close, 0, Qt::AlignLeft);
    auto* line = new QHBoxLayout(this);
    line->setContentsMargins(0, 0, 0, 0);
    line->setSpacing(8);
    line->addLayout(about);
    line->addWidget(m_none, 1);
    line->addWidget(m_list, 1);
    connect(m_close, &QToolButton::clicked, this, &PhotoYears::closeRequested);
    connect(m_list, &QListView::clicked, this, &PhotoYears::enlarge);
    connect(m_list, &QListView::activated, this, &PhotoYears::enlarge);
    connect(&loader, &PhotoLoader::loaded, m_list->viewport(), qOverload<>(&QWidget::update));
    connect(m_viewer, &PhotoViewer::stepped, this,
            [this](int row) { m_list->setCurrentIndex(m_model->index(row, 0)); });
}

QString PhotoYears::labelOf(const ZonePicture& picture) const
{
    QString label = picture.phase == Phase::asLeft ? tr("as left") : tr("as found");
    if (picture.newPart)
        label = tr("new part, %1").arg(label);
    return picture.caption.empty() ? label : tr("%1: %2", "phase, caption").arg(label, shown(picture.caption));
}

QString PhotoYears::sentenceOf(const ZonePicture& picture) const
{
    const auto word
        = [this](std::string_view english) { return shown(m_book.speaker().translate(std::string(english))); };
    const QString what = picture.grade
        ? tr("%1 %2", "numeral and word of a grade").arg(numeral(*picture.grade)).arg(word(wordOf(*picture.grade)))
        : picture.notSeen ? tr("not seen (%1)").arg(word(wordOf(*picture.notSeen)))
                          : tr("no grade");
    return tr("%1, %2: %3, %4", "zone, date: grade, phase")
        .arg(m_name, m_book.speaker().shownDate(picture.on), what, labelOf(picture));
}

void PhotoYears::showPictures(const QString& name, const std::vector<ZonePicture>& pictures)
{
    const auto chosen = m_list->currentIndex().data(pictureRole).value<ZonePicture>().photo;
    m_name = name;
    m_title->setText(pictures.empty() ? name
                         : pictures.size() == 1
                         ? tr("%1: 1 photograph", "zone").arg(name)
                         : tr("%1: %2 photographs", "zone, count").arg(name).arg(pictures.size()));
    m_list->setAccessibleName(tr("Photographs of %1 through the years").arg(name));
    m_model->clear();
    m_none->setVisible(pictures.empty());
    m_list->setVisible(!pictures.empty());
    std::vector<PhotoViewer::Sheet> sheets;
    int row = static_cast<int>(pictures.size()) - 1;
    for (const ZonePicture& picture : pictures) {
        const QString sentence = sentenceOf(picture);
        auto* item = new QStandardItem;
        item->setData(QVariant::fromValue(picture), pictureRole);
        // The second of a pair is of the same day as the one beside it.
        item->setData(picture.paired ? tr("as left") : m_book.speaker().shownDate(picture.on), underRole);
        item->setData(sentence, Qt::AccessibleTextRole);
        item->setToolTip(sentence);
        if (picture.photo == chosen)
            row = m_model->rowCount();
        m_model->appendRow(item);
        sheets.push_back(PhotoViewer::Sheet{picture.photo, sentence, picture.grade, picture.notSeen.has_value()});
    }
    m_viewer->setSheets(std::move(sheets));
    if (row >= 0) {
        const QModelIndex index = m_model->index(row, 0);
        m_list->setCurrentIndex(index);
        m_list->setFixedHeight(m_list->sizeHintForIndex(index).height()
                               + m_list->horizontalScrollBar()->sizeHint().height() + 2);
        m_list->scrollTo(index);
    }
}

void PhotoYears::enlarge(const QModelIndex& index)
{
    if (index.isValid())
        m_viewer->showSheet(index.row());
}

void PhotoYears::keyPressEvent(QKeyEvent* event)
{
    if (event->key() == Qt::Key_Escape)
        Q_EMIT closeRequested();
    else
        QWidget::keyPressEvent(event);
}

bool PhotoYears::eventFilter(QObject* watched, QEvent* event)
{
    // The strip only moves sideways: so does the wheel.
    if (watched == m_list->viewport() && event->type() == QEvent::Wheel) {
        const QPoint delta = static_cast<QWheelEvent*>(event)->angleDelta();
        QScrollBar* bar = m_list->horizontalScrollBar();
        bar->setValue(bar->value() - (delta.x() != 0 ? delta.x() : delta.y()));
        return true;
    }
    return QWidget::eventFilter(watched, event);
}

} // namespace padside
