// SPDX-License-Identifier: MIT
#include "assess/room_directory.hpp"

#include <algorithm>

#include "assess/circuit_text.hpp"
#include "assess/directory.hpp"
#include "assess/room_reach.hpp"
#include "assess/thing_names.hpp"

namespace doorcard {
namespace {

struct RoomOutlets {
    Message name;  // empty: nobody noted the room
    std::vector<std::size_t> outlets;
    bool reached = false;
};

bool guards_ground(const Outlet& outlet) {
    return outlet.kind != OutletKind::box && outlet.guards &&
           std::ranges::find(*outlet.guards, Guard::ground) != outlet.guards->end();
}

class ByRoom {
public:
    ByRoom(const Network& network, std::size_t panel)
        : network_(network), survey_(network.survey()), reach_(network, panel) {
        found_.panel = panel;
    }

    RoomDirectory directory() {
        add_rooms();
        add_circuits();
        add_panels();
        for (const std::size_t panel : reach_.covered()) count_and_keep(panel);
        keep_unknown();
        gather_kept_off();
        name_panels();
        return std::move(found_);
    }

private:
    // Listed rooms in file order, then those in plain text as they come; what has none last.
    std::vector<std::pair<std::string, RoomOutlets>> rooms() const {
        std::vector<std::pair<std::string, RoomOutlets>> rooms;
        for (const Room& room : survey_.rooms) rooms.push_back({room.id, {}});
        for (std::size_t i = 0; i < survey_.outlets.size(); ++i) {
            const Outlet& outlet = survey_.outlets[i];
            if (reach_.elsewhere(i)) continue;
            const std::string key = room_key(outlet);
            auto at = std::ranges::find(rooms, key, &std::pair<std::string, RoomOutlets>::first);
            if (at == rooms.end()) at = rooms.insert(rooms.end(), {key, {}});
            at->second.name = room_name(survey_, outlet);
            at->second.outlets.push_back(i);
            at->second.reached = at->second.reached || reach_.reaches_outlet(i);
        }
        std::ranges::stable_partition(rooms, [](const auto& room) { return !room.second.name.empty(); });
        return rooms;
    }

    void add_rooms() {
        for (auto& [key, room] : rooms()) {
            if (!room.reached) continue;
            const bool named = !room.name.empty();
            if (!named) std::erase_if(room.outlets, [&](std::size_t outlet) { return !reach_.reaches_outlet(outlet); });
            found_.parts.push_back(
                {named ? RoomHeading::room : RoomHeading::no_room, room.name, lines_of_room(network_, room.outlets)});
            for (const std::size_t outlet : room.outlets)
                if (guards_ground(survey_.outlets[outlet])) add_reset(survey_.outlets[outlet], room.name);
        }
    }

    void add_reset(const Outlet& outlet, const Message& room) {
        const Message label = outlet.label ? verbatim(in_sentence(*outlet.label)) : Message{};
        ResetPlace place{room, label};
        const bool said = !room.empty() || !label.empty();
        if (said && std::ranges::find(found_.resets, place) == found_.resets.end())
            found_.resets.push_back(std::move(place));
    }

    // In the order of the panels' rows; those whose breaker nobody knows last.
    void add_circuits() {
        RoomPart part{RoomHeading::circuits, {}, {}};
        std::vector<std::size_t> told;
        for (const std::size_t panel : reach_.covered())
            for (const DirectoryRow& row : directory_of(network_, panel).rows)
                for (std::size_t i = 0; i < row.circuits.size(); ++i) {
                    const std::size_t circuit = row.circuits[i];
                    if (std::ranges::find(told, circuit) != told.end()) continue;
                    told.push_back(circuit);
                    add_circuit(part, circuit, row.circuit_texts[i]);
                }
        for (std::size_t circuit = 0; circuit < survey_.circuits.size(); ++circuit)
            if (network_.breakers_of(circuit).empty() && reach_.at_the_root())
                add_circuit(part, circuit, circuit_text(network_, circuit));
        if (!part.lines.empty()) found_.parts.push_back(std::move(part));
    }

    void add_circuit(RoomPart& part, std::size_t circuit, Message text) const {
        if (network_.outlets_on(circuit).empty()) {
            if (text.empty() || says_spare(text)) return;  // counted with the handles that are not traced
            part.lines.push_back(line_of(network_, {circuit}));
            part.lines.back().what = std::move(text);
            return;
        }
        for (const std::size_t index : network_.loads_on(circuit)) {
            const Load& load = survey_.loads[index];
            if (load.outlet || !is_notable(load)) continue;
            part.lines.push_back(line_of(network_, {circuit}));
            part.lines.back().what = load_name(load);
        }
    }

    void add_panels() {
        RoomPart part{RoomHeading::panels, {}, {}};
        for (std::size_t panel = 0; panel < survey_.panels.size(); ++panel) {
            if (panel == found_.panel) continue;
            const auto& feeders = network_.breakers_feeding(panel);
            if (std::ranges::none_of(feeders, [&](std::size_t b) { return reach_.covers(network_.panel_of(b)); }))
                continue;
            RoomLine line = line_of_panel(network_, panel);
            const Panel& thing = survey_.panels[panel];
            const Message name = panel_name(thing);
            line.what = thing.location ? Message{tr("{0}, {1}"), {name, *thing.location}} : name;
            part.lines.push_back(std::move(line));
        }
        if (!part.lines.empty()) found_.parts.push_back(std::move(part));
    }

    void count_and_keep(std::size_t panel) {
        const PanelDirectory directory = directory_of(network_, panel);
        found_.handles_in_use += directory.in_use();
        for (const DirectoryRow& row : directory.rows) {
            if (row.kind == RowKind::not_traced || row.kind == RowKind::not_described) ++found_.handles_not_traced;
            if (row.breaker && row.kind != RowKind::off) keep(row, panel);
        }
    }

    void keep(const DirectoryRow& row, std::size_t panel) {
        LeaveOn entry;
        const auto add = [&entry](const std::optional<std::string>& why) {
            if (why && std::ranges::find(entry.why, *why) == entry.why.end()) entry.why.push_back(*why);
        };
        add(survey_.breakers[*row.breaker].keep_on);
        const bool by_breaker = !entry.why.empty();
        for (const std::size_t circuit : row.circuits) {
            for (const std::size_t outlet : network_.outlets_on(circuit)) add(survey_.outlets[outlet].keep_on);
            for (const std::size_t load : network_.loads_on(circuit)) add(survey_.loads[load].keep_on);
        }
        if (entry.why.empty()) return;
        if (row.claimed && !by_breaker) entry.trust = HandleTrust::claimed;
        entry.breakers = {*row.breaker};
        for (std::size_t above = panel; above != found_.panel;) {
            const auto& feeders = network_.breakers_feeding(above);
            if (feeders.empty()) break;
            entry.breakers.insert(entry.breakers.end(), feeders.begin(), feeders.end());
            above = network_.panel_of(feeders.front());
        }
        found_.leave_on.push_back(std::move(entry));
    }

    // What must stay on, and nobody knows by which handle.
    void keep_unknown() {
        if (!reach_.at_the_top()) return;
        LeaveOn entry{{}, HandleTrust::not_traced, {}};
        const auto add = [&entry](const std::optional<std::string>& why) {
            if (why && std::ranges::find(entry.why, *why) == entry.why.end()) entry.why.push_back(*why);
        };
        const auto known = [&](std::size_t outlet) {
            return std::ranges::any_of(network_.circuits_at(outlet),
                                       [&](std::size_t c) { return !network_.breakers_of(c).empty(); });
        };
        for (std::size_t outlet = 0; outlet < survey_.outlets.size(); ++outlet) {
            if (known(outlet)) continue;
            add(survey_.outlets[outlet].keep_on);
            for (const std::size_t load : network_.loads_at(outlet)) add(survey_.loads[load].keep_on);
        }
        for (const Load& load : survey_.loads) {
            const std::size_t circuit =
                load.circuit ? survey_.circuits.position(*load.circuit) : survey_.circuits.size();
            const bool nowhere = !load.outlet && !load.panel && circuit == survey_.circuits.size();
            if (nowhere || (circuit < survey_.circuits.size() && network_.breakers_of(circuit).empty()))
                add(load.keep_on);
        }
        if (!entry.why.empty()) found_.leave_on.push_back(std::move(entry));
    }

    void gather_kept_off() {
        std::set<std::size_t> off;
        for (std::size_t breaker = 0; breaker < survey_.breakers.size(); ++breaker)
            if (reach_.covers(network_.panel_of(breaker)) && survey_.breakers[breaker].state == BreakerState::off)
                off.insert(breaker);
        for (const RoomPart& part : found_.parts)
            for (const RoomLine& line : part.lines) off.insert(line.kept_off.begin(), line.kept_off.end());
        found_.kept_off.assign(off.begin(), off.end());
        sort_handles(network_, found_.kept_off);
    }

    void name_panels() {
        std::set<std::size_t> named;
        const auto add = [&](const std::vector<std::size_t>& breakers) {
            for (const std::size_t breaker : breakers) named.insert(network_.panel_of(breaker));
        };
        for (const RoomPart& part : found_.parts)
            for (const RoomLine& line : part.lines) add(line.breakers);
        for (const LeaveOn& entry : found_.leave_on) add(entry.breakers);
        add(found_.kept_off);
        named.erase(found_.panel);
        found_.panels = {found_.panel};
        found_.panels.insert(found_.panels.end(), named.begin(), named.end());
    }

    const Network& network_;
    const Survey& survey_;
    RoomReach reach_;
    RoomDirectory found_;
};

}  // namespace

RoomDirectory rooms_of(const Network& network, std::size_t panel) { return ByRoom(network, panel).directory(); }

}  // namespace doorcard
