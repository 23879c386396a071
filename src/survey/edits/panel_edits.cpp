// SPDX-License-Identifier: MIT
#include "survey/edits/panel_edits.hpp"

#include "survey/edits/thing_edits.hpp"

namespace doorcard {

Edit add_panel(const Panel& panel) {
    return add_thing<Panel>({tr("add panel {0}"), {panel.id}}, &Survey::panels, panel);
}

Edit change_panel(const Panel& panel) {
    std::string id = panel.id;
    Message name{tr("change panel {0}"), {id}};
    return change_thing<Panel>(std::move(name), &Survey::panels, std::move(id), [=](Panel& it) { it = panel; });
}

Edit remove_panel(std::string id, Mentions mentions) {
    return remove_thing<Panel>({tr("take out panel {0}"), {id}}, &Survey::panels, named_panel, id, mentions);
}

Edit feed_panel(std::string id, const Ids& fed_by) {
    Message name{tr("say what feeds panel {0}"), {id}};
    return change_thing<Panel>(std::move(name), &Survey::panels, std::move(id), [=](Panel& it) { it.fed_by = fed_by; });
}

}  // namespace doorcard
