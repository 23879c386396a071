// SPDX-License-Identifier: MIT
#include "assess/find_places.hpp"

#include <algorithm>
#include <array>

#include "assess/circuit_text.hpp"
#include "assess/label_words.hpp"
#include "base/words.hpp"
#include "file/enum_words.hpp"

namespace doorcard {
namespace {

// How much a hit tells, by where it stands.
constexpr double of_text = 1, of_load = 1, of_label = 0.95, of_room = 0.85, of_id = 0.8, of_old_label = 0.7,
                 of_note = 0.5, of_panel_name = 0.3;

struct HowSure {
    std::string_view how;
    const char* text;
};

constexpr std::array<HowSure, 6> ways = {{{"switching", tr("proved by switching")},
                                          {"test-load", tr("proved by a test load")},
                                          {"seen", tr("seen")},
                                          {"tracer", tr("not proved: found by a tracer alone")},
                                          {"old-directory", tr("not proved: the old directory says so")},
                                          {"told", tr("not proved: somebody said so")}}};

}  // namespace

Message sureness(const std::optional<Traced>& traced) {
    const auto way = std::ranges::find(ways, traced ? traced->how.value_or("") : "", &HowSure::how);
    return {way == ways.end() ? tr("not proved: nobody says how it was traced") : way->text, {}};
}

namespace {

std::vector<std::string> folded_words(std::string_view text) {
    std::vector<std::string> words;
    for (const LabelWord& word : words_of(text)) words.push_back(word.folded);
    return words;
}

/// Gathers what is said about one place.
class PlaceBuilder {
public:
    PlaceBuilder(const Network& network, FindPlace& place)
        : network_(network), survey_(network.survey()), place_(place) {}

    std::size_t thing(Address of, Message text) {
        place_.things.push_back({std::move(of), std::move(text)});
        return place_.things.size() - 1;
    }
    void says(std::size_t thing, std::string_view text, double weight, bool of_panel = false, bool claimed = false) {
        place_.tellings.push_back({thing, folded_words(text), weight, of_panel, claimed});
    }
    void says(std::size_t thing, const std::optional<std::string>& text, double weight) {
        if (text) says(thing, std::string_view(*text), weight);
    }
    /// In both languages, where it is not somebody's own words.
    void says(std::size_t thing, const Message& text, double weight) {
        static const Words english = Words::in("en"), spanish = Words::in("es");
        for (const Words* words : {&english, &spanish}) says(thing, std::string_view(words->say(text)), weight);
    }

    void add_breaker(std::size_t index) {
        const Breaker& breaker = survey_.breakers[index];
        const std::size_t self = thing({ThingKind::breaker, breaker.id, ""}, breaker_text(breaker));
        says(self, std::string_view(name_of(positions_of(breaker))), of_id);
        if (breaker.id_given) says(self, std::string_view(breaker.id), of_id);
        if (breaker.old_label) says(self, std::string_view(*breaker.old_label), of_old_label, false, true);
        for (const auto* note : {&breaker.note, &breaker.off_why, &breaker.keep_on}) says(self, *note, of_note);
        if (breaker.state == BreakerState::spare) says(self, Message{tr("Spare"), {}}, of_text);
        add_panel_name(self, survey_.panels[network_.panel_of(index)]);
    }

    void add_circuit(std::size_t index) {
        const Circuit& circuit = survey_.circuits[index];
        const Message text = circuit_text(network_, index);
        const std::size_t self =
            thing({ThingKind::circuit, circuit.id, ""}, text.empty() ? Message{tr("circuit {0}"), {circuit.id}} : text);
        says(self, text, of_text);
        says(self, std::string_view(circuit.id), of_id);
        says(self, circuit.note, of_note);
        for (const std::size_t outlet : network_.outlets_on(index)) add_outlet(outlet);
        for (const std::size_t load : network_.loads_on(index))
            if (!survey_.loads[load].outlet) add_load(load, {});
    }

    void add_outlet(std::size_t index) {
        const Outlet& outlet = survey_.outlets[index];
        const std::size_t self = thing({ThingKind::outlet, outlet.id, ""}, outlet_text(outlet));
        says(self, std::string_view(outlet.id), of_id);
        says(self, outlet.label, of_label);
        add_room(self, outlet);
        says(self, outlet.keep_on, of_note);
        says(self, outlet.note, of_note);
        if (outlet.kind)
            says(self, std::string_view(enum_words<OutletKind>[static_cast<std::size_t>(*outlet.kind)]), of_note);
        for (const std::size_t load : network_.loads_at(index)) add_load(load, outlet);
    }

    void add_load(std::size_t index, const std::optional<Outlet>& outlet) {
        const Load& load = survey_.loads[index];
        const std::size_t self = thing({ThingKind::load, load.id, ""}, verbatim(load.title.value_or(load.id)));
        says(self, load.title, of_load);
        says(self, std::string_view(load.id), of_id);
        says(self, load.keep_on, of_note);
        says(self, load.note, of_note);
        if (load.duty) says(self, std::string_view(enum_words<Duty>[static_cast<std::size_t>(*load.duty)]), of_label);
        if (outlet) add_room(self, *outlet);
    }

    void add_panel(std::size_t index) {
        const Panel& panel = survey_.panels[index];
        const std::size_t self = thing({ThingKind::panel, panel.id, ""}, panel_name(panel));
        says(self, std::string_view(panel.id), of_text);
        says(self, panel.title, of_text);
        says(self, panel.location, of_room);
        says(self, panel.note, of_note);
        says(self, Message{tr("panel"), {}}, of_note);
    }

    void add_panel_name(std::size_t thing, const Panel& panel) {
        for (const auto& text : {std::optional(panel.id), panel.title, panel.location})
            if (text) says(thing, *text, of_panel_name, true);
    }

private:
    void add_room(std::size_t thing, const Outlet& outlet) {
        says(thing, outlet.room, of_room);
        says(thing, outlet.place, of_room);
        const Room* room = outlet.room ? survey_.rooms.find(*outlet.room) : nullptr;
        if (!room) return;
        for (const auto* text : {&room->title, &room->floor, &room->place, &room->note}) says(thing, *text, of_room);
    }

    static Message breaker_text(const Breaker& breaker) {
        if (breaker.old_label) return {tr("'{0}' in the old directory"), {*breaker.old_label}};
        if (breaker.state == BreakerState::spare) return {tr("Spare"), {}};
        return {tr("a breaker that nobody described"), {}};
    }

    /// "Kitchen, counter left of sink (K1)"
    Message outlet_text(const Outlet& outlet) const {
        const Room* room = outlet.room ? survey_.rooms.find(*outlet.room) : nullptr;
        const std::string where = room ? room->title.value_or(room->id) : outlet.room.value_or("");
        if (where.empty() && !outlet.label) return {tr("outlet {0}"), {outlet.id}};
        if (where.empty() || !outlet.label)
            return {tr("{0} (outlet {1})"), {where + outlet.label.value_or(""), outlet.id}};
        return {tr("{0}, {1} (outlet {2})"), {where, *outlet.label, outlet.id}};
    }

    const Network& network_;
    const Survey& survey_;
    FindPlace& place_;
};

void set_breaker(const Network& network, std::size_t breaker, Match& match) {
    match.breaker = breaker;
    match.panel = network.panel_of(breaker);
    match.positions = positions_of(network.survey().breakers[breaker]);
}

FindPlace circuit_place(const Network& network, std::size_t circuit, std::optional<std::size_t> breaker) {
    const Circuit& thing = network.survey().circuits[circuit];
    FindPlace place;
    place.match.circuit = circuit;
    PlaceBuilder builder(network, place);
    builder.add_circuit(circuit);
    if (!breaker) {
        place.match.sure = {tr("its breaker is not known: treat as live"), {}};
        return place;
    }
    builder.add_breaker(*breaker);
    set_breaker(network, *breaker, place.match);
    if (thing.traced) place.match.traced = thing.traced->how;
    place.match.proved = thing.traced && thing.traced->proves();
    place.match.sure = sureness(thing.traced);
    for (const std::size_t other : network.breakers_of(circuit))
        if (other != *breaker) place.match.also_fed_by.push_back(other);
    return place;
}

FindPlace breaker_place(const Network& network, std::size_t breaker) {
    FindPlace place;
    set_breaker(network, breaker, place.match);
    PlaceBuilder(network, place).add_breaker(breaker);
    const bool spare = network.survey().breakers[breaker].state == BreakerState::spare;
    place.match.sure = {spare ? tr("recorded as spare") : tr("not traced: treat as live"), {}};
    return place;
}

/// An outlet whose circuit nobody knows; the old directory may claim a breaker.
FindPlace outlet_place(const Network& network, std::size_t outlet) {
    FindPlace place;
    PlaceBuilder(network, place).add_outlet(outlet);
    place.match.sure = {tr("its breaker is not known: treat as live"), {}};
    const auto& claimed = network.survey().outlets[outlet].old_breakers;
    if (!claimed || claimed->empty()) return place;
    set_breaker(network, network.survey().breakers.position(claimed->front()), place.match);
    place.match.traced = "old-directory";
    place.match.sure = sureness(Traced{"old-directory", {}, {}});
    for (std::size_t i = 1; i < claimed->size(); ++i)
        place.match.also_fed_by.push_back(network.survey().breakers.position((*claimed)[i]));
    return place;
}

FindPlace load_place(const Network& network, std::size_t load) {
    const auto& panel = network.survey().loads[load].panel;
    FindPlace place;
    PlaceBuilder builder(network, place);
    builder.add_load(load, {});
    place.match.sure = {tr("its breaker is not known: treat as live"), {}};
    if (!panel) return place;
    place.match.panel = network.survey().panels.position(*panel);
    builder.add_panel_name(0, network.survey().panels[*place.match.panel]);
    return place;
}

FindPlace panel_place(const Network& network, std::size_t panel) {
    FindPlace place;
    PlaceBuilder(network, place).add_panel(panel);
    place.match.panel = panel;
    place.match.sure = {tr("a panel"), {}};
    for (const std::size_t feeder : network.breakers_feeding(panel)) {
        if (place.match.breaker) {
            place.match.also_fed_by.push_back(feeder);
            continue;
        }
        set_breaker(network, feeder, place.match);
        place.match.sure = {tr("a panel; this feeds it"), {}};
    }
    return place;
}

}  // namespace

std::vector<FindPlace> find_places(const Network& network) {
    const Survey& survey = network.survey();
    std::vector<FindPlace> places;
    for (std::size_t i = 0; i < survey.circuits.size(); ++i) {
        for (const std::size_t breaker : network.breakers_of(i)) places.push_back(circuit_place(network, i, breaker));
        if (network.breakers_of(i).empty()) places.push_back(circuit_place(network, i, std::nullopt));
    }
    for (std::size_t i = 0; i < survey.breakers.size(); ++i)
        if (network.circuits_on(i).empty() && network.panels_fed_by(i).empty())
            places.push_back(breaker_place(network, i));
    for (std::size_t i = 0; i < survey.outlets.size(); ++i)
        if (network.circuits_at(i).empty()) places.push_back(outlet_place(network, i));
    for (std::size_t i = 0; i < survey.loads.size(); ++i)
        if (!survey.loads[i].circuit && !survey.loads[i].outlet) places.push_back(load_place(network, i));
    for (std::size_t i = 0; i < survey.panels.size(); ++i) places.push_back(panel_place(network, i));
    return places;
}

}  // namespace doorcard
