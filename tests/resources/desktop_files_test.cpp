// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "app/version.h"
#include "core/store/store.h"

#include <QDir>
#include <QFile>
#include <QMimeDatabase>
#include <QProcess>
#include <QTemporaryDir>

#include <gtest/gtest.h>

using namespace Qt::Literals::StringLiterals;

namespace padside::test {

namespace {

const QString folder = QStringLiteral(PADSIDE_SOURCE_DIR "/resources/desktop/");
const QString id = u"org.padside.Padside"_s;

QByteArray content(const QString& path)
{
    QFile file(path);
    EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << path.toStdString();
    return file.readAll();
}

/// What a checking program complains about; empty if all is well.
std::string complaints(const QString& program, const QStringList& arguments)
{
    QProcess check;
    check.setProcessChannelMode(QProcess::MergedChannels);
    check.start(program, arguments);
    if (!check.waitForFinished())
        return program.toStdString() + " did not run: " + check.errorString().toStdString();
    return check.exitCode() == 0 ? std::string() : check.readAll().toStdString();
}

/// Our type beside all common ones in one folder, as installing puts them, and no other; before anything asks for one.
class MimeTypes : public ::testing::Test
{
protected:
    MimeTypes()
    {
        const QString packages = m_folder.filePath(u"mime/packages"_s);
        const QString common = u"freedesktop.org.xml"_s;
        EXPECT_TRUE(QDir().mkpath(packages));
        EXPECT_TRUE(QFile::copy(u"/usr/share/mime/packages/"_s + common, packages + u'/' + common))
            << "shared-mime-info is not installed";
        EXPECT_TRUE(QFile::copy(folder + id + u".xml"_s, packages + u'/' + id + u".xml"_s));
        qputenv("XDG_DATA_DIRS", m_folder.path().toUtf8());
        (void)Store::create(m_record);
    }

    QTemporaryDir m_folder;
    QString m_record = m_folder.filePath(u"harbour.padside"_s);
};

} // namespace

TEST(DesktopFiles, TheEntryIsValid)
{
    EXPECT_EQ(complaints(u"desktop-file-validate"_s, {folder + id + u".desktop"_s}), "");
}

TEST(DesktopFiles, TheDescriptionForSoftwareCentresIsValid)
{
    EXPECT_EQ(complaints(u"appstreamcli"_s, {u"validate"_s, u"--no-net"_s, folder + id + u".metainfo.xml"_s}), "");
}

TEST(DesktopFiles, TheyAllSpeakOfOneProgramAndOneType)
{
    const QByteArray entry = content(folder + id + u".desktop"_s);
    const QByteArray description = content(folder + id + u".metainfo.xml"_s);
    const QByteArray type = content(folder + id + u".xml"_s);
    EXPECT_TRUE(entry.contains("\nExec=padside %f\n"));
    EXPECT_TRUE(entry.contains("\nIcon=org.padside.Padside\n"));
    EXPECT_TRUE(entry.contains("\nMimeType=application/x-padside;\n"));
    EXPECT_TRUE(description.contains("<launchable type=\"desktop-id\">org.padside.Padside.desktop</launchable>"));
    EXPECT_TRUE(description.contains("<mediatype>application/x-padside</mediatype>"));
    EXPECT_TRUE(type.contains("type=\"application/x-padside\""));
    EXPECT_TRUE(description.contains(QByteArray("<release version=\"") + programVersion + "\""))
        << "the description names another version than " << programVersion;
}

TEST_F(MimeTypes, ARecordIsKnownByItsNameAndByWhatIsInIt)
{
    const QMimeDatabase types;
    EXPECT_EQ(types.mimeTypeForFile(m_record, QMimeDatabase::MatchExtension).name(), u"application/x-padside"_s);
    EXPECT_EQ(types.mimeTypeForData(content(m_record)).name(), u"application/x-padside"_s);
    EXPECT_TRUE(types.mimeTypeForName(u"application/x-padside"_s).inherits(u"application/vnd.sqlite3"_s));
}

TEST_F(MimeTypes, AnotherSqliteDatabaseIsNotARecord)
{
    QByteArray other = content(m_record);
    other[68] = 'X'; // the first byte of the application_id
    EXPECT_EQ(QMimeDatabase().mimeTypeForData(other).name(), u"application/vnd.sqlite3"_s);
}

} // namespace padside::test
