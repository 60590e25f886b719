// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/shell/key_sheet.h"

#include <QDialogButtonBox>
#include <QGridLayout>
#include <QLabel>
#include <QScreen>
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
    return {
        {KeySheet::tr("The zone at hand"),
         {{KeySheet::tr("1 – 5"), KeySheet::tr("give the grade")},
          {KeySheet::tr("N, then 1 – 7"), KeySheet::tr("not seen, and why")},
          {KeySheet::tr("D  M  W"), KeySheet::tr("dry, damp, wet to the touch")},
          {KeySheet::tr("S"), KeySheet::tr("same grade as last time; it is shown on the button")},
          {KeySheet::tr("T, then Esc"), KeySheet::tr("write a note, back to the zone")},
          {KeySheet::tr("P  Ctrl+V"), KeySheet::tr("add a photo from a file, from the clipboard")},
          {KeySheet::tr("B  Delete"), KeySheet::tr("say where the chosen photo belongs, remove it")},
          {KeySheet::tr("L"), KeySheet::tr("as found or as left, once there was work")},
          {KeySheet::tr("C"), KeySheet::tr("all the cautions")}}},
        {KeySheet::tr("From zone to zone"),
         {{KeySheet::tr("Enter  ↓  Space"), KeySheet::tr("next zone")},
          {KeySheet::tr("↑"), KeySheet::tr("zone before")},
          {KeySheet::tr("O"), KeySheet::tr("next zone not looked at yet")}}},
        {KeySheet::tr("The other parts of a visit"),
         {{KeySheet::tr("F2  Esc"), KeySheet::tr("back to the zone")},
          {KeySheet::tr("F3"), KeySheet::tr("readings; Enter goes to the next")},
          {KeySheet::tr("F4"), KeySheet::tr("work; 1 – 6 chooses its kind, Enter enters it")},
          {KeySheet::tr("F5"), KeySheet::tr("refrigerant; 1 – 3 chooses added, recovered, lost")},
          {KeySheet::tr("F6"), KeySheet::tr("finish; Enter closes, Enter again agrees")}}},
        {KeySheet::tr("Everywhere"),
         {{KeySheet::tr("Ctrl+Z"), KeySheet::tr("take back what was done last, of an open visit or in setting up")},
          {KeySheet::tr("Ctrl+Shift+Z"), KeySheet::tr("do it again")},
          {KeySheet::tr("Ctrl+F"), KeySheet::tr("find a unit; Enter opens the first one found")},
          {KeySheet::tr("Ctrl+1 – Ctrl+4"), KeySheet::tr("unit, season, fleet, track record")},
          {KeySheet::tr("Tab  Shift+Tab"), KeySheet::tr("next field, field before")},
          {KeySheet::tr("F1  ?"), KeySheet::tr("this sheet")}}},
        {KeySheet::tr("Season"),
         {{KeySheet::tr("←  →  ↑  ↓"), KeySheet::tr("another trip of the site, another site")},
          {KeySheet::tr("Ctrl+←  Ctrl+→"), KeySheet::tr("the trip before or after, whatever its site")},
          {KeySheet::tr("Alt+←  Alt+→"), KeySheet::tr("move the trip by a week, with Shift by a day")},
          {KeySheet::tr("Enter, Esc"), KeySheet::tr("put the moved trip down, give up moving it")},
          {KeySheet::tr("K"), KeySheet::tr("keep the trip's day, or let it move again")}}},
        {KeySheet::tr("Fleet"),
         {{KeySheet::tr("←  →  ↑  ↓"), KeySheet::tr("the next unit on that side of the field")},
          {KeySheet::tr("Space"), KeySheet::tr("step through units gathered in one place")},
          {KeySheet::tr("Enter"), KeySheet::tr("open the unit")}}},
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
    std::vector<QLabel*> lines;
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
            auto* line = new QLabel(does);
            lines.push_back(line);
            grid->addWidget(line, row++, 1);
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
    resize(content->sizeHint().grownBy({0, 0, 60, 80}).boundedTo(screen()->availableSize() * 9 / 10));
    for (QLabel* line : lines)
        line->setWordWrap(true); // only now: it is as wide as its lines where the screen is
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
