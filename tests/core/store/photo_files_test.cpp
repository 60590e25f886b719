// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/store/drafts.h"
#include "core/store/own_catalogue.h"
#include "core/store/photo_files.h"
#include "core/store/record_reader.h"
#include "core/store/visit_book.h"
#include "tests/core/store/file_tools.h"
#include "tests/core/store/store_fixture.h"

#include <QDir>

using namespace Qt::Literals::StringLiterals;

namespace padside::test {

namespace {

class PhotoFilesTest : public StoreTest
{
protected:
    [[nodiscard]] QStringList files() const
    {
        return QDir(m_store->photos().folder()).entryList(QDir::Files | QDir::Hidden);
    }

    [[nodiscard]] Photo photoAt(const UnitRecord& record, const PhotoFiles::Kept& kept) const
    {
        Photo photo;
        photo.id = PhotoId(UuidBytes{7});
        photo.unitId = record.unit.id;
        photo.visitId = record.visits[0].id;
        photo.on = record.visits[0].on;
        photo.enteredAt = record.visits[0].openedAt;
        photo.sha256 = kept.sha256;
        photo.bytes = kept.bytes;
        photo.mediaType = "image/png";
        return photo;
    }

    UnitRecord m_record = aUnit("HB-01").visit("2024-02-29", VisitReason::spring, false).build();
};

using DraftsTest = StoreTest;
using OwnCatalogueTest = StoreTest;

} // namespace

TEST_F(PhotoFilesTest, AFileIsNamedByItsSha256)
{
    // "abc": the example of FIPS 180-4 (NIST, Secure Hash Standard examples).
    const auto kept = m_store->photos().keep("abc", "image/png");
    EXPECT_EQ(kept.sha256, "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    EXPECT_EQ(kept.bytes, 3);
    EXPECT_EQ(files(), QStringList{QString::fromStdString(kept.sha256) + u".png"_s});
    EXPECT_EQ(m_store->photos().folder(), m_path + u".photos"_s);
}

TEST_F(PhotoFilesTest, TheSameContentTwiceIsOneFileAndADamagedOneIsWrittenAnew)
{
    const auto kept = m_store->photos().keep("abc", "image/png");
    const QString path = m_store->photos().folder() + u'/' + files()[0];
    writeContent(path, "abd");
    (void)m_store->photos().keep("abc", "image/png");
    EXPECT_EQ(files().size(), 1);
    EXPECT_EQ(contentOf(path), "abc");
    EXPECT_EQ(m_store->photos().path(photoAt(m_record, kept)), path);
}

TEST_F(PhotoFilesTest, TheFileStaysWhenItsRowGoes)
{
    writeRecord(*m_store, m_record);
    const Photo photo = photoAt(m_record, m_store->photos().keep("abc", "image/png"));
    m_store->visits().put(photo);
    m_store->photos().setThumbnail(photo.id, "small");
    m_store->photos().setThumbnail(photo.id, "smaller");
    EXPECT_EQ(m_store->photos().thumbnail(photo.id), "smaller");
    m_store->visits().remove(photo);
    EXPECT_EQ(m_store->photos().thumbnail(photo.id), QByteArray());
    EXPECT_EQ(files().size(), 1);
}

TEST_F(PhotoFilesTest, AnEmptyPictureAndAThumbnailOfNothingAreRefused)
{
    EXPECT_EQ(refusalOf([&] { (void)m_store->photos().keep({}, "image/png"); }).problem().kind, ProblemKind::badInput);
    EXPECT_EQ(refusalOf([&] { m_store->photos().setThumbnail(PhotoId(UuidBytes{1}), "x"); }).problem().kind,
              ProblemKind::refused);
}

TEST_F(PhotoFilesTest, WhereTheFolderCantBeWrittenNothingIsLeftBehind)
{
    ASSERT_TRUE(QDir().mkdir(m_path + u".photos"_s));
    const AsAnotherUser somebody;
    EXPECT_EQ(refusalOf([&] { (void)m_store->photos().keep("abc", "image/png"); }).problem().kind,
              ProblemKind::cannotWrite);
    EXPECT_TRUE(files().isEmpty());
}

TEST_F(DraftsTest, AreKeptAsTheyAreTyped)
{
    EXPECT_EQ(m_store->drafts().text(u"visit/note"_s), std::nullopt);
    m_store->drafts().setText(u"visit/note"_s, u"half a sen"_s);
    m_store->drafts().setText(u"visit/note"_s, u"half a sentence \U0001F9CA"_s);
    m_store->drafts().setText(u"other"_s, {});
    reopen();
    EXPECT_EQ(m_store->drafts().text(u"visit/note"_s), u"half a sentence \U0001F9CA"_s);
    EXPECT_EQ(m_store->drafts().text(u"other"_s), QString());
    m_store->drafts().remove(u"visit/note"_s);
    EXPECT_EQ(m_store->drafts().text(u"visit/note"_s), std::nullopt);
}

TEST_F(OwnCatalogueTest, ChangesAreKeptAndOnlyAnObjectIsTaken)
{
    EXPECT_EQ(m_store->ownCatalogue().changes(), "");
    m_store->ownCatalogue().setChanges(R"({"assumptions": {"x": {"value": 1}}})");
    reopen();
    EXPECT_EQ(m_store->ownCatalogue().changes(), R"({"assumptions": {"x": {"value": 1}}})");
    for (const char* bad : {"{", "[]", "1", "null"})
        EXPECT_EQ(refusalOf([&] { m_store->ownCatalogue().setChanges(bad); }).problem().kind, ProblemKind::badInput)
            << bad;
    EXPECT_EQ(m_store->ownCatalogue().changes(), R"({"assumptions": {"x": {"value": 1}}})");
    m_store->ownCatalogue().setChanges("");
    EXPECT_EQ(m_store->ownCatalogue().changes(), "");
}

} // namespace padside::test
