// SPDX-License-Identifier: MIT
#include "survey/edits/load_edits.hpp"

#include "survey/edits/thing_edits.hpp"

namespace doorcard {

Edit add_load(const Load& load) { return add_thing<Load>({tr("add load {0}"), {load.id}}, &Survey::loads, load); }

Edit change_load(const Load& load) {
    std::string id = load.id;
    Message name{tr("change load {0}"), {id}};
    return change_thing<Load>(std::move(name), &Survey::loads, std::move(id), [=](Load& it) { it = load; });
}

Edit remove_load(std::string id, Mentions mentions) {
    return remove_thing<Load>({tr("take out load {0}"), {id}}, &Survey::loads, named_load, id, mentions);
}

namespace {

Edit hang(std::string id, const std::optional<std::string>& outlet, const std::optional<std::string>& circuit,
          const std::optional<std::string>& panel) {
    Message name{tr("hang load {0} elsewhere"), {id}};
    return change_thing<Load>(std::move(name), &Survey::loads, std::move(id), [=](Load& it) {
        it.outlet = outlet;
        it.circuit = circuit;
        it.panel = panel;
    });
}

}  // namespace

Edit hang_load_on_outlet(std::string id, const std::string& outlet) { return hang(std::move(id), outlet, {}, {}); }
Edit hang_load_on_circuit(std::string id, const std::string& circuit) { return hang(std::move(id), {}, circuit, {}); }
Edit hang_load_on_panel(std::string id, const std::string& panel) { return hang(std::move(id), {}, {}, panel); }

}  // namespace doorcard
