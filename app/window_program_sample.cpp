// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

// The sample that a person may look at before they set up anything of their own.

#include "app/own_sample.h"
#include "app/window_program.h"
#include "sample-db/sample.h"
#include "ui/shell/main_window.h"

#include <QDir>
#include <QFileInfo>
#include <QStandardPaths>

namespace padside {

using namespace Qt::Literals::StringLiterals;

void WindowProgram::showSample()
{
    const QString folder = QStandardPaths::writableLocation(QStandardPaths::AppDataLocation);
    const QString file = QDir(folder).filePath(u"sample.padside"_s);
    if (QFileInfo::exists(file)) {
        openSample(file);
        return;
    }
    QDir().mkpath(folder);
    window()->doLongWork(tr("Making the sample"), [this, file](const LongWork::Tell& tell) {
        const bool made = makeOwnSample(file, {}, tell);
        if (made) // opened in the window's thread, when this work has ended
            QMetaObject::invokeMethod(
                this, [this, file] { openSample(file); }, Qt::QueuedConnection);
        return made;
    });
}

void WindowProgram::openSample(const QString& file)
{
    const QString own = QFileInfo(window()->file()).fileName();
    // Not remembered as the last file: the next start is about the person's own units again.
    if (put(file) == Opened::here)
        tell(
            tr("This is the sample; change in it what you like. Your own file, %1, comes back with File, Open, or when "
               "Padside starts again.")
                .arg(own));
}

} // namespace padside
