// SPDX-License-Identifier: MIT
#include "sheet/card_back_words.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <cctype>

#include "assess/circuit_text.hpp"
#include "assess/directory.hpp"
#include "assess/thing_names.hpp"
#include "sheet/panel_facts.hpp"

namespace doorcard {
namespace {

using Parts = std::vector<Message::Part>;

bool is_letter(char c) { return std::isalpha(static_cast<unsigned char>(c)) != 0; }

// Letters that a number beside them is read into: 'O1', 'I1'.
bool reads_as_figure(const std::string& code) { return code == "O" || code == "I" || code == "l"; }

// The least letters of an id that no other of these ids begins with: 'S' of SHOP, 'SH' beside STABLE.
std::string code_of(const std::string& id, const std::vector<std::string>& others) {
    for (std::size_t length = 1; length < id.size(); ++length) {
        const std::string code = id.substr(0, length);
        const bool own = std::ranges::none_of(others, [&](const std::string& o) { return o.starts_with(code); });
        if (own && !reads_as_figure(code)) return code;
    }
    return id;
}

bool any_line(const RoomDirectory& directory, HandleTrust trust) {
    return std::ranges::any_of(directory.parts, [trust](const RoomPart& part) {
        return std::ranges::any_of(part.lines, [trust](const RoomLine& line) { return line.trust == trust; });
    });
}

std::string off_reasons(const Survey& survey, const RoomDirectory& directory, const HandleNames& names) {
    std::vector<std::string> reasons;
    for (const std::size_t breaker : directory.kept_off)
        if (survey.breakers[breaker].off_why)
            reasons.push_back(names.name(breaker) + ": " + *survey.breakers[breaker].off_why);
    return reasons.empty() ? "" : fmt::format("{}.", fmt::join(reasons, "; "));
}

std::string handles_not_traced(const RoomDirectory& directory, const Words& words) {
    const int count = directory.handles_not_traced;
    if (count == 0) return "";
    if (count == directory.handles_in_use)
        return words(tr("No handle is traced: what each one feeds is not known. Treat everything as live."));
    return words.count(
        trn("{0} handle is not traced: what it feeds is missing here. Treat as live what is missing.",
            "{0} handles are not traced: what they feed is missing here. Treat as live what is missing."),
        count);
}

void add_trip_words(BackWords& found, const Network& network, std::size_t panel, const Words& words) {
    const auto& breakers = network.breakers_in(panel);
    const auto is_fuse = [&](std::size_t b) {
        const auto& device = network.survey().breakers[b].device;
        return device && *device != "breaker";
    };
    const auto fuses = std::ranges::count_if(breakers, is_fuse);
    found.resets = breakers.empty() || fuses < static_cast<std::ptrdiff_t>(breakers.size());
    found.trip_steps = {words(tr("Unplug what was running."))};
    if (found.resets) {
        found.trip_steps.push_back(words(tr("Push the handle fully off, then on, once.")));
        found.two_sided = network.survey().panels[panel].numbering != Numbering::single_column;
        found.reset_note = found.two_sided ? words(tr("Off is away from the middle of the panel.")) + " " : "";
        found.reset_note += words(tr("A tripped handle may look on."));
        found.after_reset = {words(tr("Trips again? Leave it off; call a licensed electrician."))};
    }
    if (fuses > 0) found.after_reset.push_back(words(tr("A fuse that has blown: call a licensed electrician.")));
}

void add_off_words(BackWords& found, const Network& network, std::size_t panel, const Words& words) {
    found.off_steps = all_off_steps(network, panel, words);
    if (found.off_steps.size() > 1)
        found.off_note = words(tr("All of these: with one left on, parts stay live.")) + " ";
    found.off_note += has_own_main(network.survey().panels[panel]) ? words(tr("The line side of the main stays live."))
                                                                   : words(tr("What comes to that handle stays live."));
}

std::string place_text(const ResetPlace& place, bool rooms_alone, const Words& words) {
    if (place.room.empty()) return words.say(place.label);
    if (place.label.empty() || rooms_alone) return words.say(place.room);
    return words.say({tr("{0}: {1}"), {place.room, place.label}});
}

// Up to so many places are named to the wall; of more, the rooms.
std::string reset_places(const RoomDirectory& directory, const Words& words) {
    constexpr std::size_t places_named = 12;
    const bool rooms_alone = directory.resets.size() > places_named;
    std::vector<std::string> places;
    for (const ResetPlace& place : directory.resets) {
        std::string text = place_text(place, rooms_alone, words);
        if (std::ranges::find(places, text) == places.end()) places.push_back(std::move(text));
    }
    if (places.empty()) return "";
    return words.say(
        {tr("Press RESET once: {0}. If it does not hold, leave it."), {fmt::format("{}", fmt::join(places, "; "))}});
}

}  // namespace

HandleNames::HandleNames(const Network& network, const RoomDirectory& directory, const Words& words)
    : network_(network), directory_(directory), words_(words) {
    const auto& panels = network.survey().panels;
    for (const std::size_t panel : directory.panels) {
        if (panel == directory.panel) continue;
        std::vector<std::string> others;
        for (const std::size_t other : directory.panels)
            if (other != panel) others.push_back(panels[other].id);
        const std::string code = code_of(panels[panel].id, others);
        codes_[panel] = std::ranges::all_of(code, is_letter) ? code : code + ":";
    }
}

std::string HandleNames::name(std::size_t breaker) const {
    const auto code = codes_.find(network_.panel_of(breaker));
    const std::vector<Position> positions = positions_of(network_.survey().breakers[breaker]);
    if (code == codes_.end()) return name_of(positions);
    std::string name;
    for (const Position position : positions) name += (name.empty() ? "" : "+") + code->second + name_of(position);
    return name;
}

bool HandleNames::any_fuse(const std::vector<std::size_t>& breakers) const {
    return std::ranges::any_of(breakers, [&](std::size_t b) { return network_.survey().breakers[b].device == "fuse"; });
}

std::string HandleNames::names(const std::vector<std::size_t>& breakers) const {
    Parts parts;
    for (const std::size_t breaker : breakers) parts.emplace_back(name(breaker));
    return words_.say(and_list(std::move(parts)));
}

std::string HandleNames::place_of(std::size_t panel) const {
    const Panel& thing = network_.survey().panels[panel];
    return thing.location ? words_.say({tr("{0}, {1}"), {thing.id, *thing.location}}) : thing.id;
}

std::string HandleNames::key() const {
    std::string key = words_.say({tr("Numbers are handles in {0}."), {place_of(directory_.panel)}});
    for (const auto& [panel, code] : codes_)
        key += " " + words_.say({tr("{0}: handles in {1}."),
                                 {code.ends_with(':') ? code.substr(0, code.size() - 1) : code, place_of(panel)}});
    return key;
}

RoomAnswer answer_of(const RoomLine& line, const HandleNames& names, const Words& words) {
    RoomAnswer answer{"", false, line.trust};
    switch (line.trust) {
        case HandleTrust::traced:
            answer.text = names.names(line.breakers);
            answer.number = true;
            if (names.any_fuse(line.breakers)) {  // pulled on load, a fuse burns; beside it, parts are live
                answer.number = false;
                answer.text = words.say({tr("fuse {0}: everything off first"), {answer.text}});
            }
            if (!line.kept_off.empty()) answer.text = words.say({tr("{0}; see WARNING"), {answer.text}});
            break;
        case HandleTrust::claimed:
            answer.text = words.say({tr("said to be {0}"), {names.names(line.breakers)}});
            break;
        case HandleTrust::not_traced:
            answer.text = words(tr("not traced: treat as live"));
            break;
        case HandleTrust::kept_off:
            answer.text = words(tr("kept off: see WARNING"));
            break;
        case HandleTrust::fire_alarm:
            answer.text = words(tr("FIRE ALARM: leave on"));
            break;
        case HandleTrust::all_off:
            answer.text = words(tr("see 'Everything off'"));
            break;
    }
    return answer;
}

std::string what_of(const RoomPart& part, const RoomLine& line, const Words& words) {
    const std::string what = words.say(line.what);
    if (part.heading == RoomHeading::panels) return words.say({tr("all of {0}"), {what}});
    return part.heading == RoomHeading::circuits ? what : in_sentence(what);
}

std::string heading_of(const RoomDirectory& directory, const RoomPart& part, const Words& words) {
    if (part.heading == RoomHeading::room) return words.say(part.name);
    if (part.heading == RoomHeading::no_room) return words(tr("Room not noted"));
    if (part.heading == RoomHeading::panels) return words(tr("Whole panels"));
    const bool rooms = std::ranges::any_of(directory.parts, [](const RoomPart& other) {
        return other.heading == RoomHeading::room || other.heading == RoomHeading::no_room;
    });
    return rooms ? words(tr("Other circuits")) : words(tr("Circuits"));
}

BackWords back_words(const Network& network, const RoomDirectory& directory, const HandleNames& names,
                     const Words& words) {
    BackWords found;
    if (!directory.kept_off.empty()) {
        found.off_title = words.say({tr("Do not switch on {0}"), {names.names(directory.kept_off)}});
        found.off_reasons = off_reasons(network.survey(), directory, names);
    }
    if (any_line(directory, HandleTrust::claimed)) found.claimed = words(tr("only said, not traced: treat as live."));
    found.not_traced = handles_not_traced(directory, words);
    found.danger_title =
        words(tr("Heat, smell, smoke, buzz, flicker, shock, water, lights too bright or too dim: do not reset."));
    found.danger_text = words(
        tr("Switch off the main only if you can do so safely, with dry hands; else keep away. Call the utility or "
           "the fire service."));
    add_trip_words(found, network, directory.panel, words);
    add_off_words(found, network, directory.panel, words);
    found.receptacles = reset_places(directory, words);
    if (!found.receptacles.empty())
        found.receptacles_shortly =
            words(tr("Press RESET once, on it or on another receptacle near it. If it does not hold, leave it."));
    found.off_is_not_dead = words(tr("Off here is not proof of dead. Test before you touch."));
    return found;
}

std::vector<TagItem> tag_items(const RoomDirectory& directory, const HandleNames& names, const Words& words) {
    std::vector<TagItem> items;
    for (const LeaveOn& entry : directory.leave_on) {
        TagItem item{names.names(entry.breakers), fmt::format("{}", fmt::join(entry.why, ", ")), false};
        item.claimed = entry.trust == HandleTrust::claimed;
        if (item.claimed) item.handles = words.say({tr("said to be {0}"), {item.handles}});
        items.push_back(std::move(item));
    }
    return items;
}

}  // namespace doorcard
