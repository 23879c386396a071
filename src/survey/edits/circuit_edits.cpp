// SPDX-License-Identifier: MIT
#include "survey/edits/circuit_edits.hpp"

#include "survey/edits/thing_edits.hpp"

namespace doorcard {

Edit add_circuit(const Circuit& circuit) {
    return add_thing<Circuit>({tr("add circuit {0}"), {circuit.id}}, &Survey::circuits, circuit);
}

Edit change_circuit(const Circuit& circuit) {
    std::string id = circuit.id;
    Message name{tr("change circuit {0}"), {id}};
    return change_thing<Circuit>(std::move(name), &Survey::circuits, std::move(id), [=](Circuit& it) { it = circuit; });
}

Edit remove_circuit(std::string id, Mentions mentions) {
    return remove_thing<Circuit>({tr("take out circuit {0}"), {id}}, &Survey::circuits, named_circuit, id, mentions);
}

Edit name_circuit(std::string id, const std::string& purpose) {
    Message name{tr("name circuit {0}"), {id}};
    return change_thing<Circuit>(std::move(name), &Survey::circuits, std::move(id), [=](Circuit& it) {
        it.purpose = purpose.empty() ? std::nullopt : std::optional(purpose);
    });
}

Edit feed_circuit(std::string id, const Ids& breakers) {
    Message name{tr("say what feeds circuit {0}"), {id}};
    return change_thing<Circuit>(std::move(name), &Survey::circuits, std::move(id),
                                 [=](Circuit& it) { it.breakers = breakers; });
}

Edit wire_circuit(std::string id, const std::optional<Wire>& wire) {
    Message name{tr("change the wire of circuit {0}"), {id}};
    return change_thing<Circuit>(std::move(name), &Survey::circuits, std::move(id),
                                 [=](Circuit& it) { it.wire = wire; });
}

Edit share_neutral(std::string id, const std::optional<std::string>& neutral) {
    Message name{tr("change the neutral of circuit {0}"), {id}};
    return change_thing<Circuit>(std::move(name), &Survey::circuits, std::move(id),
                                 [=](Circuit& it) { it.neutral = neutral; });
}

Edit trace_circuit(std::string id, const Ids& breakers, const Traced& traced) {
    Message name{tr("trace circuit {0}"), {id}};
    return change_thing<Circuit>(std::move(name), &Survey::circuits, std::move(id), [=](Circuit& it) {
        it.breakers = breakers;
        it.traced = traced;
    });
}

}  // namespace doorcard
