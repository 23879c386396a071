// SPDX-License-Identifier: MIT
#include "assess/thing_names.hpp"

#include <algorithm>
#include <cctype>
#include <map>

namespace doorcard {
namespace {

Message place_name(const std::string& place) {
    static const std::map<std::string, const char*, std::less<>> names = {
        {"bath", tr("Bath")},          {"garage", tr("Garage")},      {"outdoors", tr("Outdoors")},
        {"basement", tr("Basement")},  {"kitchen", tr("Kitchen")},    {"laundry", tr("Laundry")},
        {"attic", tr("Attic")},        {"bedroom", tr("Bedroom")},    {"hall", tr("Hall")},
        {"living", tr("Living room")}, {"dining", tr("Dining room")},
    };
    const auto found = names.find(place);
    return found == names.end() ? verbatim(place) : Message{found->second, {}};
}

Message duty_name(Duty duty) {
    switch (duty) {
        case Duty::range:
            return {tr("Range"), {}};
        case Duty::cooktop:
            return {tr("Cooktop"), {}};
        case Duty::oven:
            return {tr("Oven"), {}};
        case Duty::dryer:
            return {tr("Dryer"), {}};
        case Duty::water_heater:
            return {tr("Water heater"), {}};
        case Duty::heating:
            return {tr("Heating"), {}};
        case Duty::cooling:
            return {tr("Air conditioning"), {}};
        case Duty::heat_pump:
            return {tr("Heat pump"), {}};
        case Duty::motor:
            return {tr("Motor"), {}};
        case Duty::ev:
            return {tr("Vehicle charging"), {}};
        case Duty::sign:
            return {tr("Sign"), {}};
        case Duty::show_window:
            return {tr("Show window"), {}};
        case Duty::welder:
            return {tr("Welder"), {}};
        default:
            return {};
    }
}

bool notable_duty(Duty duty) { return duty == Duty::fixed_appliance || !duty_name(duty).empty(); }

}  // namespace

std::string in_sentence(std::string title) {
    const auto upper = [](char c) { return std::isupper(static_cast<unsigned char>(c)) != 0; };
    if (std::count_if(title.begin(), title.end(), upper) != 1 || !upper(title.front()) || title.size() < 2)
        return title;
    title.front() = static_cast<char>(std::tolower(static_cast<unsigned char>(title.front())));
    return title;
}

Message in_sentence(Message message) {
    if (message.pattern == "{0}" && std::holds_alternative<std::string>(message.parts.front()))
        return verbatim(in_sentence(std::get<std::string>(message.parts.front())));
    if (!message.parts.empty()) {
        if (auto* first = std::get_if<Message>(&message.parts.front()); first && message.pattern.starts_with("{0}"))
            *first = in_sentence(*first);
        else if (auto* text = std::get_if<std::string>(&message.parts.front());
                 text && message.pattern.starts_with("{0}"))
            *text = in_sentence(*text);
    }
    return message;
}

Message load_name(const Load& load) {
    if (load.title) return verbatim(*load.title);
    return duty_name(load.duty_or_general());
}

const Room* room_of(const Survey& survey, const Outlet& outlet) {
    return outlet.room ? survey.rooms.find(*outlet.room) : nullptr;
}

Message room_name(const Survey& survey, const Outlet& outlet) {
    if (const Room* room = room_of(survey, outlet)) return verbatim(room->title.value_or(room->id));
    if (outlet.room) return verbatim(*outlet.room);
    if (outlet.place) return place_name(*outlet.place);
    return {};
}

std::string room_key(const Outlet& outlet) { return outlet.room ? *outlet.room : outlet.place.value_or(""); }

bool is_notable(const Load& load) {
    if (load_name(load).empty() || load.duty == Duty::lighting) return false;
    return notable_duty(load.duty_or_general()) || load.connection == Connection::fixed;
}

}  // namespace doorcard
