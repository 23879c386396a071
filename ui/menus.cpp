// SPDX-License-Identifier: MIT
#include "ui/menus.hpp"

#include <wx/frame.h>
#include <wx/menu.h>

#include <memory>

#include "ui/text.hpp"

namespace doorcard {
namespace {

struct Placed {
    wxMenuItem* item;
    MenuCommand command;
};

void freshen(const std::vector<Placed>& all) {
    for (const Placed& one : all) {
        if (one.command.can) one.item->Enable(one.command.can());
        if (one.command.is_on) one.item->Check(one.command.is_on());
        if (one.command.name) {
            const std::string name = one.command.name();
            one.item->SetItemLabel(wide(name + (one.command.key.empty() ? "" : "\t" + one.command.key)));
        }
    }
}

wxMenu* menu_of(wxFrame* frame, const MenuList& list, std::vector<Placed>& placed) {
    auto* menu = new wxMenu;
    for (const MenuCommand& command : list.commands) {
        if (command.label.empty()) {
            menu->AppendSeparator();
            continue;
        }
        const wxString label = wide(command.label + (command.key.empty() ? "" : "\t" + command.key));
        wxMenuItem* item = menu->Append(wxID_ANY, label, "", command.is_on ? wxITEM_CHECK : wxITEM_NORMAL);
        frame->Bind(
            wxEVT_MENU,
            [command](wxCommandEvent&) {
                if (!command.can || command.can()) command.act();
            },
            item->GetId());
        placed.push_back({item, command});
    }
    return menu;
}

}  // namespace

void set_menus(wxFrame* frame, std::vector<MenuList> lists) {
    auto placed = std::make_shared<std::vector<Placed>>();
    auto* bar = new wxMenuBar;
    for (const MenuList& list : lists) bar->Append(menu_of(frame, list, *placed), wide(list.title));
    frame->SetMenuBar(bar);
    frame->Bind(wxEVT_MENU_OPEN, [placed](wxMenuEvent& event) {
        event.Skip();
        freshen(*placed);
    });
}

}  // namespace doorcard
