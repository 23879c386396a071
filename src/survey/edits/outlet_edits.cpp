// SPDX-License-Identifier: MIT
#include "survey/edits/outlet_edits.hpp"

#include "survey/edits/thing_edits.hpp"

namespace doorcard {

Edit add_outlet(const Outlet& outlet) {
    return add_thing<Outlet>({tr("add outlet {0}"), {outlet.id}}, &Survey::outlets, outlet);
}

Edit change_outlet(const Outlet& outlet) {
    std::string id = outlet.id;
    Message name{tr("change outlet {0}"), {id}};
    return change_thing<Outlet>(std::move(name), &Survey::outlets, std::move(id), [=](Outlet& it) { it = outlet; });
}

Edit remove_outlet(std::string id, Mentions mentions) {
    return remove_thing<Outlet>({tr("take out outlet {0}"), {id}}, &Survey::outlets, named_outlet, id, mentions);
}

Edit assign_outlet(std::string id, const Ids& circuits) {
    Message name{tr("assign outlet {0}"), {id}};
    return change_thing<Outlet>(std::move(name), &Survey::outlets, std::move(id),
                                [=](Outlet& it) { it.circuits = circuits; });
}

Edit chain_outlet(std::string id, const std::optional<std::string>& upstream) {
    Message name{tr("say what outlet {0} is fed through"), {id}};
    return change_thing<Outlet>(std::move(name), &Survey::outlets, std::move(id),
                                [=](Outlet& it) { it.upstream = upstream; });
}

}  // namespace doorcard
