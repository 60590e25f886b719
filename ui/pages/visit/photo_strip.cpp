// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/pages/visit/photo_strip.h"

#include "core/store/photo_files.h"
#include "core/store/store.h"
#include "ui/models/photo_intake.h"
#include "ui/models/record_book.h"
#include "ui/models/speaker.h"
#include "ui/models/visit_log.h"
#include "ui/pages/visit/photo_frame.h"
#include "ui/pages/visit/photo_place_dialog.h"
#include "ui/pages/visit/visit_sheet.h"

#include <QClipboard>
#include <QContextMenuEvent>
#include <QDragEnterEvent>
#include <QFileDialog>
#include <QGuiApplication>
#include <QMenu>
#include <QMimeData>

namespace padside {

using namespace Qt::Literals::StringLiterals;

namespace {

constexpr int thumbWidth = 84;
constexpr int thumbHeight = 63;

QStringList askForFiles(QWidget* parent)
{
    return QFileDialog::getOpenFileNames(
        parent, PhotoStrip::tr("Add photos"), {},
        PhotoStrip::tr("Photos (*.jpg *.jpeg *.png *.webp *.tif *.tiff *.gif);;All files (*)"));
}

} // namespace

PhotoStrip::PhotoStrip(RecordBook& book, VisitLog& log, QWidget* parent)
    : QListWidget(parent)
    , m_book(book)
    , m_log(log)
    , m_chooser(askForFiles)
    , m_placer([this](QWidget* above, const Photo& photo) -> std::optional<Photo> {
        UnitRecord record;
        if (!m_book.attempt([&] { record = m_book.record(photo.unitId); }))
            return std::nullopt;
        PhotoPlaceDialog dialog(m_book, record, photo, above);
        return dialog.exec() == QDialog::Accepted ? std::optional(dialog.photo()) : std::nullopt;
    })
{
    setObjectName(u"photoStrip"_s);
    setAccessibleName(tr("Today's photos of this zone"));
    setViewMode(QListView::IconMode);
    setFlow(QListView::LeftToRight);
    setWrapping(false);
    setMovement(QListView::Static);
    setIconSize(QSize(thumbWidth, thumbHeight));
    setAcceptDrops(true);
    setDragDropMode(QAbstractItemView::DropOnly);
    setFrameShape(QFrame::NoFrame);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAsNeeded);
    setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    connect(this, &QListWidget::itemDoubleClicked, this, &PhotoStrip::placeCurrent);
}

QSize PhotoStrip::sizeHint() const
{
    return {200, thumbHeight + 22};
}

void PhotoStrip::showLine(const ZoneLine& line, Phase phase)
{
    m_zone = line.zone.id;
    m_phase = phase;
    if (line.photos == m_photos && count() == static_cast<int>(m_photos.size()))
        return;
    m_photos = line.photos;
    clear();
    for (const Photo& photo : m_photos) {
        QPixmap picture;
        m_book.attempt([&] {
            if (!picture.loadFromData(m_book.store().photos().thumbnail(photo.id)))
                picture = QPixmap::fromImage(smallImage(m_book.store().photos().path(photo), thumbnailEdge));
        });
        auto* item = new QListWidgetItem(QIcon(picture), QString(), this);
        const QString name = tr("%1, %2 photo")
                                 .arg(shown(photo.caption.empty() ? photo.originalName : photo.caption),
                                      m_book.speaker().said(Sentence{std::string(wordOf(photo.phase)), {}}));
        item->setData(Qt::AccessibleTextRole, name);
        item->setToolTip(name);
    }
}

void PhotoStrip::chooseFiles()
{
    for (const QString& path : m_chooser(this)) {
        QMimeData file;
        file.setUrls({QUrl::fromLocalFile(path)});
        take(file);
    }
}

void PhotoStrip::paste()
{
    const QMimeData* copied = QGuiApplication::clipboard()->mimeData();
    if (copied && holdsPhotos(*copied))
        take(*copied);
    else
        Q_EMIT refused(tr("There is no photo on the clipboard. Copy one first, then paste it here."));
}

void PhotoStrip::take(const QMimeData& given)
{
    for (const Result<TakenPhoto>& photo : readPhotos(given)) {
        if (photo)
            m_log.addPhoto(*photo, m_zone, m_phase);
        else
            Q_EMIT refused(m_book.speaker().said(photo.error().what));
    }
}

const Photo* PhotoStrip::currentPhoto() const
{
    const int row = currentRow();
    return row >= 0 && row < static_cast<int>(m_photos.size()) ? &m_photos[static_cast<std::size_t>(row)] : nullptr;
}

void PhotoStrip::removeCurrent()
{
    if (const Photo* photo = currentPhoto())
        m_log.remove(Photo(*photo));
}

void PhotoStrip::placeCurrent()
{
    const Photo* photo = currentPhoto();
    if (!photo && !m_photos.empty())
        photo = &m_photos.back(); // none is chosen: the newest
    if (!photo) {
        Q_EMIT refused(tr("There is no photo of this zone today. Add one first."));
        return;
    }
    if (!m_log.mayWrite()) {
        Q_EMIT refused(tr("This visit is closed. To say where this photo belongs, press F6 and say why first."));
        return;
    }
    const auto placed = m_placer(this, Photo(*photo));
    if (placed && *placed != *photo)
        m_log.put(*placed);
}

void PhotoStrip::dragEnterEvent(QDragEnterEvent* event)
{
    if (isEnabled() && event->mimeData() && holdsPhotos(*event->mimeData()))
        event->acceptProposedAction();
}

void PhotoStrip::dragMoveEvent(QDragMoveEvent* event)
{
    event->acceptProposedAction();
}

void PhotoStrip::dropEvent(QDropEvent* event)
{
    if (!event->mimeData())
        return;
    event->setDropAction(Qt::CopyAction); // the original stays where it was
    event->accept();
    take(*event->mimeData());
}

void PhotoStrip::keyPressEvent(QKeyEvent* event)
{
    if (event->key() == Qt::Key_Delete)
        removeCurrent();
    else if (event->key() == Qt::Key_Left || event->key() == Qt::Key_Right)
        QListWidget::keyPressEvent(event);
    else
        event->ignore(); // letters and digits are the page's keys, not a search
}

void PhotoStrip::contextMenuEvent(QContextMenuEvent* event)
{
    if (!currentPhoto())
        return;
    QMenu menu;
    menu.addAction(tr("&Where it belongs…"), QKeySequence(tr("B", "key: where the photo belongs")), this,
                   &PhotoStrip::placeCurrent);
    QAction* remove = menu.addAction(tr("&Remove"), QKeySequence(Qt::Key_Delete), this, &PhotoStrip::removeCurrent);
    remove->setEnabled(m_log.visit().isOpen());
    menu.exec(event->globalPos());
}

} // namespace padside
