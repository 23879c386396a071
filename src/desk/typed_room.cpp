// SPDX-License-Identifier: MIT
#include "desk/typed_room.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "desk/claimed_circuit.hpp"
#include "desk/new_ids.hpp"
#include "desk/outlet_dots.hpp"
#include "desk/room_words.hpp"
#include "desk/typed_words.hpp"
#include "survey/edits/edit.hpp"

namespace doorcard {
namespace {

using Refused = tl::unexpected<std::vector<Complaint>>;

constexpr int most_dots = 99'999;  // of one room's letters

template <class T>
Refused passed_on(Outcome<T>& outcome) {
    return tl::unexpected(std::move(outcome.error()));
}

/// The room of that name, put in where there is none.
KnownRoom room_for(Survey& survey, const std::string& name) {
    if (const auto known = room_named(survey, name)) return *known;
    const std::string id = id_of_words(name, "room");
    Room room;
    room.id = id;
    for (int n = 2; survey.rooms.contains(room.id); ++n) room.id = fmt::format("{}-{}", id, n);
    room.title = name;
    survey.rooms = survey.rooms.with_added(room);
    return {room.id, name};
}

Outlet outlet_of(const RoomItem& item, const KnownRoom& room, std::string id) {
    Outlet outlet;
    outlet.id = std::move(id);
    outlet.room = room.named;
    outlet.kind = item.kind;
    outlet.guards = item.guards;
    if (!item.label.empty()) outlet.label = item.label;
    return outlet;
}

/// The outlets of one item of the line, behind those that are there.
Ids put_outlets(Survey& survey, const RoomItem& item, const KnownRoom& room, const std::string& letters) {
    const int first = next_dot(survey, letters);
    Ids ids;
    for (int n = 0; n < item.count; ++n) {
        ids.push_back(fmt::format("{}{}", letters, first + n));
        survey.outlets = survey.outlets.with_added(outlet_of(item, room, ids.back()));
    }
    return ids;
}

Outcome<Survey> with_item(Survey survey, const RoomItem& item, const KnownRoom& room, std::string_view panel,
                          Ids& put) {
    const auto letters = letters_of_room(survey, room);
    if (!letters) return refused("no letters are left for the dots of this room", "call it something else");
    if (next_dot(survey, *letters) + item.count > most_dots)
        return refused(fmt::format("the numbers of {} are used up", *letters), "call the room something else");
    const Ids ids = put_outlets(survey, item, room, *letters);
    put.insert(put.end(), ids.begin(), ids.end());
    if (item.on.empty()) return survey;
    const auto breaker = typed_breaker_place(survey, panel, item.on);
    if (!breaker) return tl::unexpected(breaker.error());
    const std::string id = (*breaker)->id;
    return with_claim(std::move(survey), id, ids);
}

Message name_of_line(const KnownRoom& room, const Ids& put) {
    if (put.empty()) return {tr("add room {0}"), {room.title}};
    if (put.size() == 1) return {tr("add {0} in {1}"), {put.front(), room.title}};
    return {tr("add {0} to {1} in {2}"), {put.front(), put.back(), room.title}};
}

/// Ids of the dots in a word: `K3`, `K1-K4`, `K1-4`; empty where one of them is not there.
Ids outlets_named(const Survey& survey, std::string_view word) {
    const std::size_t dash = word.find('-');
    const auto first = dot_of(word.substr(0, dash));
    if (!first) return {};
    std::string last_word(dash == std::string_view::npos ? word : word.substr(dash + 1));
    if (!last_word.empty() && last_word.front() >= '0' && last_word.front() <= '9')
        last_word = first->letters + last_word;
    const auto last = dot_of(last_word);
    Ids ids;
    for (const std::size_t at : outlets_with_dots(survey, first->letters)) {
        const int number = dot_of(survey.outlets[at].id)->number;
        if (last && number >= first->number && number <= last->number) ids.push_back(survey.outlets[at].id);
    }
    return ids;
}

/// The word at the begin of a line that names outlets, without a colon behind it.
std::string_view head_of(std::string_view line) { return line.substr(0, line.find_first_of(" :@")); }

void describe(Outlet& outlet, const OutletWords& words) {
    for (const Guard guard : words.guards.value_or(std::vector<Guard>{})) {
        if (!outlet.guards) outlet.guards.emplace();
        if (std::ranges::find(*outlet.guards, guard) == outlet.guards->end()) outlet.guards->push_back(guard);
    }
    if (!words.label.empty()) outlet.label = words.label;
}

}  // namespace

Outcome<LineDone> with_room_line(Survey survey, std::string_view panel, std::string_view line) {
    auto words = room_words(survey, line);
    if (!words) return passed_on(words);
    const KnownRoom room = room_for(survey, words->room);
    Ids put;
    for (const RoomItem& item : words->items) {
        auto with = with_item(std::move(survey), item, room, panel, put);
        if (!with) return passed_on(with);
        survey = *std::move(with);
    }
    return LineDone{std::move(survey), name_of_line(room, put)};
}

bool is_outlet_line(const Survey& survey, std::string_view line) {
    return !outlets_named(survey, head_of(line)).empty();
}

Outcome<LineDone> with_outlet_line(Survey survey, std::string_view panel, std::string_view line) {
    const std::string_view head = head_of(line);
    const Ids ids = outlets_named(survey, head);
    auto words = outlet_words(line.substr(head.size()));
    if (!words) return passed_on(words);
    for (const std::string& id : ids) {
        Outlet outlet = *survey.outlets.find(id);
        describe(outlet, *words);
        survey.outlets = survey.outlets.with_row(survey.outlets.position(id), std::move(outlet));
    }
    Message name{tr("describe {0}"), {std::string(head)}};
    if (words->on.empty()) return LineDone{std::move(survey), std::move(name)};
    const auto breaker = typed_breaker_place(survey, panel, words->on);
    if (!breaker) return tl::unexpected(breaker.error());
    const std::string id = (*breaker)->id;
    auto claimed = with_claim(std::move(survey), id, ids);
    if (!claimed) return passed_on(claimed);
    return LineDone{*std::move(claimed), std::move(name)};
}

}  // namespace doorcard
