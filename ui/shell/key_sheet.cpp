// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/shell/key_sheet.h"

#include <QDialogButtonBox>
#include <QGridLayout>
#include <QLabel>
#include <QScrollArea>
#include <QVBoxLayout>

namespace padside {

using namespace Qt::Literals::StringLiterals;

namespace {

struct Group
{
    QString title;
    std::vector<std::pair<QString, QString>> lines; ///< key, what it does
};

std::vector<Group> allKeys()
{
    const auto say = [](const char* text) { return KeySheet::tr(text); };
    return {
        {say("The zone at hand"),
         {{say("1 – 5"), say("give the grade")},
          {say("N, then 1 – 7"), say("not seen, and why")},
          {say("D  M  W"), say("dry, damp, wet to the touch")},
          {say("S"), say("same grade as last time; it is shown on the button")},
          {say("T, then Esc"), say("write a note, back to the zone")},
          {say("P  Ctrl+V"), say("add a photo from a file, from the clipboard")},
          {say("L"), say("as found or as left, once there was work")},
          {say("C"), say("all the cautions")}}},
        {say("From zone to zone"),
         {{say("Enter  ↓  Space"), say("next zone")},
          {say("↑"), say("zone before")},
          {say("O"), say("next zone not looked at yet")}}},
        {say("The other parts of a visit"),
         {{say("F2  Esc"), say("back to the zone")},
          {say("F3"), say("readings; Enter goes to the next")},
          {say("F4"), say("work; 1 – 6 chooses its kind, Enter enters it")},
          {say("F5"), say("refrigerant; 1 – 3 chooses added, recovered, lost")},
          {say("F6"), say("finish; Enter closes, Enter again agrees")}}},
        {say("Everywhere"),
         {{say("Ctrl+Z"), say("take the last entry of an open visit back")},
          {say("Ctrl+Shift+Z"), say("enter it again")},
          {say("Ctrl+F"), say("find a unit")},
          {say("Tab  Shift+Tab"), say("next field, field before")},
          {say("F1  ?"), say("this sheet")}}},
    };
}

} // namespace

KeySheet::KeySheet(QWidget* parent)
    : QDialog(parent)
{
    setObjectName(u"keySheet"_s);
    setWindowTitle(tr("Keys"));
    auto* content = new QWidget;
    auto* grid = new QGridLayout(content);
    grid->setHorizontalSpacing(24);
    grid->setColumnStretch(1, 1);
    int row = 0;
    for (const Group& group : allKeys()) {
        auto* title = new QLabel(group.title);
        title->setForegroundRole(QPalette::PlaceholderText);
        if (row > 0)
            grid->setRowMinimumHeight(row++, 8);
        grid->addWidget(title, row++, 0, 1, 2);
        for (const auto& [key, does] : group.lines) {
            auto* name = new QLabel(key);
            QFont bold = name->font();
            bold.setBold(true);
            name->setFont(bold);
            grid->addWidget(name, row, 0);
            grid->addWidget(new QLabel(does), row++, 1);
        }
    }
    auto* scroll = new QScrollArea;
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setWidgetResizable(true);
    scroll->setWidget(content);
    scroll->setAccessibleName(tr("All keys"));
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(scroll, 1);
    layout->addWidget(buttons);
    resize(content->sizeHint().grownBy({0, 0, 60, 80}));
}

void KeySheet::showFor(QWidget& window)
{
    auto* sheet = window.findChild<KeySheet*>(QString(), Qt::FindDirectChildrenOnly);
    if (!sheet)
        sheet = new KeySheet(&window);
    sheet->show();
    sheet->raise();
    sheet->activateWindow();
}

} // namespace padside
