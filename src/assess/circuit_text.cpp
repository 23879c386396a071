// SPDX-License-Identifier: MIT
#include "assess/circuit_text.hpp"

#include <algorithm>
#include <cctype>
#include <map>
#include <set>

#include "assess/thing_names.hpp"
#include "base/words.hpp"

namespace doorcard {
namespace {

constexpr std::size_t rooms_named = 3;  // further rooms are counted

// What one room has on a circuit.
struct RoomUse {
    std::string key;
    Message name;
    int receptacles = 0;
    int lights = 0;

    int kinds() const { return (receptacles > 0 ? 1 : 0) + (lights > 0 ? 2 : 0); }
};

struct Contents {
    std::vector<RoomUse> rooms;  // of outlets that are more than their equipment
    std::vector<Message> equipment;
    std::vector<Message> equipment_rooms;
    std::vector<std::string> labels;
    std::set<std::string> floors;
};

class Gathering {
public:
    Gathering(const Network& network, std::size_t circuit)
        : network_(network), survey_(network.survey()), circuit_(circuit) {}

    Contents contents() {
        for (const std::size_t outlet : network_.outlets_on(circuit_)) add_outlet(outlet);
        const bool outlets_tell = !contents_.rooms.empty() || !contents_.equipment.empty();
        for (const std::size_t index : network_.loads_on(circuit_)) {
            const Load& load = survey_.loads[index];
            if (!load.outlet && (!outlets_tell || is_notable(load))) add_equipment(load_name(load), {});
        }
        contents_.labels.insert(contents_.labels.end(), shared_labels_.begin(), shared_labels_.end());
        return std::move(contents_);
    }

private:
    // A single outlet with a single load is that load's own circuit, cord or not.
    bool only_load() const {
        return network_.outlets_on(circuit_).size() == 1 && network_.loads_on(circuit_).size() == 1;
    }

    void add_outlet(std::size_t index) {
        const Outlet& outlet = survey_.outlets[index];
        const Message room = room_name(survey_, outlet);
        const Room* listed = room_of(survey_, outlet);
        contents_.floors.insert(listed ? listed->floor.value_or("") : "");
        const bool shared = network_.circuits_at(index).size() > 1;
        if (outlet.label) (shared ? shared_labels_ : contents_.labels).push_back(*outlet.label);
        bool told = false;
        for (const std::size_t load : network_.loads_at(index)) {
            const Load& thing = survey_.loads[load];
            const bool tells = is_notable(thing) ||
                               (!load_name(thing).empty() && (only_load() || outlet.kind == OutletKind::equipment));
            if (tells) add_equipment(load_name(thing), room);
            told = told || tells;
        }
        if (told) return;
        if (outlet.kind == OutletKind::equipment) return add_equipment(equipment_name(outlet), room);
        add_use(outlet, room);
    }

    static Message equipment_name(const Outlet& outlet) {
        return outlet.label ? verbatim(*outlet.label) : Message{tr("Equipment"), {}};
    }

    void add_equipment(const Message& name, const Message& room) {
        auto& known = contents_.equipment;
        if (name.empty() || std::find(known.begin(), known.end(), name) != known.end()) return;
        known.push_back(name);
        auto& rooms = contents_.equipment_rooms;
        if (!room.empty() && std::find(rooms.begin(), rooms.end(), room) == rooms.end()) rooms.push_back(room);
    }

    void add_use(const Outlet& outlet, const Message& room) {
        auto& rooms = contents_.rooms;
        const std::string key = room_key(outlet);
        auto use = std::find_if(rooms.begin(), rooms.end(), [&](const RoomUse& r) { return r.key == key; });
        if (use == rooms.end()) use = rooms.insert(rooms.end(), RoomUse{key, room});
        if (outlet.kind == OutletKind::receptacle) ++use->receptacles;
        if (outlet.kind == OutletKind::lighting) ++use->lights;
    }

    const Network& network_;
    const Survey& survey_;
    std::size_t circuit_;
    Contents contents_;
    std::vector<std::string> shared_labels_;  // of outlets that other circuits feed too: last
};

using Parts = std::vector<Message::Part>;

Message comma(Message first, Message second) {
    if (first.empty()) return second;
    if (second.empty()) return first;
    return {tr("{0}, {1}"), {std::move(first), std::move(second)}};
}

// 'Hall, stair and cellar'; from five on 'Hall, stair, cellar and 2 more rooms'.
Message list_of_rooms(const std::vector<Message>& rooms) {
    Parts parts;
    for (const Message& room : rooms) parts.emplace_back(parts.empty() ? room : in_sentence(room));
    if (rooms.size() <= rooms_named + 1) return and_list(std::move(parts));
    Message named = rooms.front();
    for (std::size_t i = 1; i < rooms_named; ++i) named = comma(std::move(named), std::get<Message>(parts[i]));
    return {tr("{0} and {1:.0f} more rooms"), {std::move(named), static_cast<double>(rooms.size() - rooms_named)}};
}

// Patterns by kinds (1 receptacles, 2 lighting, 3 both): with rooms, and where no room is known.
const char* pattern_of(int kinds, bool single, bool many_rooms) {
    if (kinds == 1) return many_rooms ? tr("Receptacles: {0}") : single ? tr("{0} receptacle") : tr("{0} receptacles");
    if (kinds == 2) return many_rooms ? tr("Lighting: {0}") : tr("{0} lighting");
    if (kinds == 3)
        return many_rooms ? tr("Receptacles and lighting: {0}")
               : single   ? tr("{0} receptacle and lighting")
                          : tr("{0} receptacles and lighting");
    return "{0}";
}

Message without_room(int kinds, bool single) {
    if (kinds == 1) return {single ? tr("Receptacle") : tr("Receptacles"), {}};
    if (kinds == 2) return {tr("Lighting"), {}};
    if (kinds == 3) return {tr("Receptacles and lighting"), {}};
    return {};
}

Message phrase(const std::vector<const RoomUse*>& uses) {
    std::vector<Message> rooms;
    int receptacles = 0;
    for (const RoomUse* use : uses) {
        receptacles += use->receptacles;
        if (!use->name.empty()) rooms.push_back(use->name);
    }
    const int kinds = uses.front()->kinds();
    if (rooms.empty()) return without_room(kinds, receptacles == 1);
    return {pattern_of(kinds, receptacles == 1, rooms.size() > rooms_named), {list_of_rooms(rooms)}};
}

// One phrase for each set of rooms that have the same kinds; more than four rooms of several sets are listed alone.
Message rooms_text(const std::vector<RoomUse>& rooms) {
    std::map<int, std::vector<const RoomUse*>> by_kinds;
    std::vector<int> order;
    for (const RoomUse& use : rooms) {
        auto& same = by_kinds[use.kinds()];
        if (same.empty()) order.push_back(use.kinds());
        same.push_back(&use);
    }
    if (order.size() > 1 && rooms.size() > rooms_named + 1) {
        std::vector<Message> names;
        for (const RoomUse& use : rooms)
            if (!use.name.empty()) names.push_back(use.name);
        if (!names.empty()) return list_of_rooms(names);
    }
    Message text;
    for (const int kinds : order) {
        Message next = phrase(by_kinds[kinds]);
        text = comma(text, text.empty() ? next : in_sentence(std::move(next)));
    }
    return text;
}

Message equipment_text(const Contents& contents, const Detail& detail, bool first) {
    constexpr std::size_t named = 3;
    const auto& equipment = contents.equipment;
    Parts parts;
    for (const Message& name : equipment) parts.emplace_back(first && parts.empty() ? name : in_sentence(name));
    Message text;
    if (parts.size() <= named + 1) {
        text = and_list(std::move(parts));
    } else {
        parts.resize(named);
        Message list = std::get<Message>(parts[0]);
        for (std::size_t i = 1; i < named; ++i) list = comma(std::move(list), std::get<Message>(parts[i]));
        text = {tr("{0} and {1:.0f} more"), {std::move(list), static_cast<double>(equipment.size() - named)}};
    }
    if (detail.room && !contents.equipment_rooms.empty())
        text = comma(std::move(text), in_sentence(list_of_rooms(contents.equipment_rooms)));
    return text;
}

Message label_text(const std::vector<std::string>& labels, std::size_t most) {
    Message text;
    for (std::size_t i = 0; i < std::min(most, labels.size()); ++i)
        text = comma(std::move(text), verbatim(in_sentence(labels[i])));
    return text;
}

// The floor that all rooms are on: 'floor 2', 'upstairs'.
Message floor_text(const std::set<std::string>& floors) {
    if (floors.size() != 1 || floors.begin()->empty()) return {};
    const std::string& floor = *floors.begin();
    const bool number = std::all_of(floor.begin(), floor.end(), [](unsigned char c) { return std::isdigit(c) != 0; });
    return number ? Message{tr("floor {0}"), {floor}} : verbatim(in_sentence(floor));
}

using Group = std::vector<std::size_t>;  // positions of circuits whose texts are alike

// Composed texts that are alike, or like a purpose; each group in order.
std::vector<Group> groups_alike(const Network& network, const std::vector<std::size_t>& circuits,
                                const std::vector<Message>& texts) {
    std::map<std::string, Group> by_text;
    std::map<std::string, int> purposes;
    for (std::size_t i = 0; i < circuits.size(); ++i) {
        if (texts[i].empty()) continue;
        if (network.survey().circuits[circuits[i]].purpose)
            ++purposes[plain_form(texts[i])];
        else
            by_text[plain_form(texts[i])].push_back(i);
    }
    std::vector<Group> groups;
    for (auto& [text, group] : by_text)
        if (group.size() > 1 || purposes.contains(text)) groups.push_back(std::move(group));
    return groups;
}

// Of the details, the first that sets a group's texts apart from each other and from the rest, else the best.
void set_apart(const Network& network, const std::vector<std::size_t>& circuits, const Group& group,
               std::vector<Message>& texts) {
    std::set<std::string> others;
    for (std::size_t i = 0; i < texts.size(); ++i)
        if (std::find(group.begin(), group.end(), i) == group.end()) others.insert(plain_form(texts[i]));
    std::size_t most = 0;
    std::vector<Message> best;
    for (const Detail& detail : {Detail{}, Detail{true}, Detail{true, true}, Detail{false, false, 1},
                                 Detail{false, false, 2}, Detail{true, true, 2}}) {
        std::vector<Message> tried;
        std::set<std::string> different;
        for (const std::size_t i : group) {
            tried.push_back(circuit_text(network, circuits[i], detail));
            if (const std::string plain = plain_form(tried.back()); !others.contains(plain)) different.insert(plain);
        }
        if (best.empty() || different.size() > most) best = std::move(tried);
        most = std::max(most, different.size());
        if (most == group.size()) break;
    }
    for (std::size_t i = 0; i < group.size(); ++i) texts[group[i]] = std::move(best[i]);
}

// What the old directory says of a circuit that is known from it alone: its breaker feeds no other.
Message old_label_text(const Network& network, std::size_t circuit) {
    const auto& traced = network.survey().circuits[circuit].traced;
    const auto& breakers = network.breakers_of(circuit);
    if (!traced || traced->how != "old-directory" || breakers.size() != 1) return {};
    const auto& label = network.survey().breakers[breakers.front()].old_label;
    if (!label || network.circuits_on(breakers.front()).size() != 1) return {};
    return verbatim(*label);
}

}  // namespace

std::string plain_form(const Message& message) {
    std::string plain;
    for (const char c : Words::in("en").say(message)) {
        const auto byte = static_cast<unsigned char>(c);
        if (byte >= 0x80 || std::isalnum(byte))
            plain += static_cast<char>(byte >= 0x80 ? byte : std::tolower(byte));
        else if (!plain.empty() && plain.back() != ' ')
            plain += ' ';
    }
    while (!plain.empty() && plain.back() == ' ') plain.pop_back();
    return plain;
}

Message source_name(const Source& source) {
    if (source.title) return verbatim(*source.title);
    static const std::map<std::string, const char*, std::less<>> kinds = {
        {"utility", tr("Utility")}, {"generator", tr("Generator")}, {"pv", tr("Solar")},
        {"battery", tr("Battery")}, {"wind", tr("Wind")},
    };
    const auto found = kinds.find(source.kind.value_or(""));
    return found == kinds.end() ? verbatim(source.id) : Message{found->second, {}};
}

Message panel_name(const Panel& panel) { return verbatim(panel.title.value_or(panel.id)); }

Message circuit_text(const Network& network, std::size_t circuit, const Detail& detail) {
    const Circuit& thing = network.survey().circuits[circuit];
    if (thing.purpose) return verbatim(*thing.purpose);
    const Contents contents = Gathering(network, circuit).contents();
    Message text = rooms_text(contents.rooms);
    const bool first = text.empty();
    text = comma(std::move(text), equipment_text(contents, detail, first));
    if (text.empty()) return old_label_text(network, circuit);
    if (detail.floor) text = comma(std::move(text), floor_text(contents.floors));
    return comma(std::move(text), label_text(contents.labels, detail.labels));
}

std::vector<Message> distinct_texts(const Network& network, const std::vector<std::size_t>& circuits) {
    std::vector<Message> texts;
    texts.reserve(circuits.size());
    for (const std::size_t circuit : circuits) texts.push_back(circuit_text(network, circuit));
    for (const Group& group : groups_alike(network, circuits, texts)) set_apart(network, circuits, group, texts);
    for (const Group& group : groups_alike(network, circuits, texts))
        for (std::size_t i = 0; i < group.size(); ++i)
            texts[group[i]] = {tr("{0}, circuit {1:.0f}"), {std::move(texts[group[i]]), static_cast<double>(i + 1)}};
    return texts;
}

}  // namespace doorcard
