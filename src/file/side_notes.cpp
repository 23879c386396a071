// SPDX-License-Identifier: MIT
#include "file/side_notes.hpp"

#include <fmt/format.h>
#include <unistd.h>

#include <cmath>
#include <cstdio>
#include <filesystem>
#include <nlohmann/json.hpp>

#include "file/beside.hpp"
#include "file/read_text.hpp"

namespace doorcard {
namespace {

using Json = nlohmann::ordered_json;
constexpr const char* version_key = "doorcard_plan";
constexpr int version = 1;
constexpr int most_spaces = 999;

/// What a note says is not what it can mean.
struct Unreadable {
    std::string wrong;
};

// --- written

Json json_of(const BreakerPlace& place) {
    return {{"panel", place.panel},
            {"spaces", place.spaces},
            {"halves", std::string(place.halves.begin(), place.halves.end())}};
}
Json json_of(const FoundBreaker& breaker) {
    return {{"id", breaker.id}, {"place", json_of(breaker.place)}, {"feeds", breaker.feeds}};
}
template <class T>
Json json_of(const std::optional<T>& value) {
    return value ? Json(*value) : Json();
}
Json json_of(const std::optional<Amperes>& amps) { return amps ? Json(amps->value) : Json(); }

struct WriteChange {
    Json operator()(const PlannedMove& it) const {
        return {{"kind", "move"}, {"breaker", json_of(it.breaker)}, {"to", json_of(it.to)}};
    }
    Json operator()(const PlannedSwap& it) const {
        return {{"kind", "swap"}, {"one", json_of(it.one)}, {"other", json_of(it.other)}};
    }
    Json operator()(const PlannedRating& it) const {
        return {
            {"kind", "rating"}, {"breaker", json_of(it.breaker)}, {"was", json_of(it.was)}, {"amps", json_of(it.amps)}};
    }
    Json operator()(const PlannedTie& it) const {
        Json breakers = Json::array();
        for (const FoundBreaker& breaker : it.breakers) breakers.push_back(json_of(breaker));
        return {{"kind", "tie"}, {"breakers", std::move(breakers)}};
    }
    Json operator()(const PlannedUntie& it) const { return {{"kind", "untie"}, {"breaker", json_of(it.breaker)}}; }
    Json operator()(const PlannedState& it) const {
        return {{"kind", it.state == BreakerState::spare ? "spare" : "in-use"}, {"breaker", json_of(it.breaker)}};
    }
    Json operator()(const PlannedNeutral& it) const {
        return {
            {"kind", "neutral"}, {"circuit", it.circuit}, {"was", json_of(it.was)}, {"neutral", json_of(it.neutral)}};
    }
};

// --- read: a key that is missing or of another type throws Json::exception

std::string text_of(const Json& json) { return json.get_ref<const std::string&>(); }
bool flag_of(const Json& json) { return json.get_ref<const bool&>(); }
const Json& list_of(const Json& json) {
    json.get_ref<const Json::array_t&>();
    return json;
}

Ids ids_of(const Json& json) {
    Ids ids;
    for (const Json& id : list_of(json)) ids.push_back(text_of(id));
    return ids;
}

std::vector<int> spaces_of(const Json& json) {
    std::vector<int> spaces;
    for (const Json& space : list_of(json)) {
        if (!space.is_number_unsigned() || space > most_spaces || space == 0)
            throw Unreadable{fmt::format("a space is a whole number from 1 to {}", most_spaces)};
        spaces.push_back(space.get<int>());
    }
    if (spaces.empty()) throw Unreadable{"a breaker sits in one space at least"};
    return spaces;
}

BreakerPlace place_of(const Json& json) {
    const std::string halves = text_of(json.at("halves"));
    BreakerPlace place{text_of(json.at("panel")), spaces_of(json.at("spaces")), {halves.begin(), halves.end()}};
    if (halves.find_first_not_of("ab") != std::string::npos) throw Unreadable{"a half of a space is a or b"};
    if (!halves.empty() && halves.size() != place.spaces.size()) throw Unreadable{"there is one half for each space"};
    return place;
}

FoundBreaker breaker_of(const Json& json) {
    return {text_of(json.at("id")), place_of(json.at("place")), ids_of(json.at("feeds"))};
}

std::optional<std::string> maybe_text(const Json& json) {
    return json.is_null() ? std::nullopt : std::optional(text_of(json));
}
std::optional<Amperes> maybe_amperes(const Json& json) {
    if (json.is_null()) return std::nullopt;
    const double amps = json.is_number() ? json.get<double>() : 0;
    if (!std::isfinite(amps) || amps <= 0) throw Unreadable{"a rating is a number of amperes above 0"};
    return Amperes(amps);
}

std::vector<FoundBreaker> breakers_of(const Json& json) {
    std::vector<FoundBreaker> breakers;
    for (const Json& breaker : list_of(json)) breakers.push_back(breaker_of(breaker));
    return breakers;
}

Planned change_of(const Json& json) {
    const std::string kind = text_of(json.at("kind"));
    if (kind == "move") return PlannedMove{breaker_of(json.at("breaker")), place_of(json.at("to"))};
    if (kind == "swap") return PlannedSwap{breaker_of(json.at("one")), breaker_of(json.at("other"))};
    if (kind == "rating")
        return PlannedRating{breaker_of(json.at("breaker")), maybe_amperes(json.at("was")),
                             maybe_amperes(json.at("amps"))};
    if (kind == "tie") return PlannedTie{breakers_of(json.at("breakers"))};
    if (kind == "untie") return PlannedUntie{breaker_of(json.at("breaker"))};
    if (kind == "spare") return PlannedState{breaker_of(json.at("breaker")), BreakerState::spare};
    if (kind == "in-use") return PlannedState{breaker_of(json.at("breaker")), BreakerState::in_use};
    if (kind == "neutral")
        return PlannedNeutral{text_of(json.at("circuit")), maybe_text(json.at("was")), maybe_text(json.at("neutral"))};
    throw Unreadable{fmt::format("no change is of the kind \"{}\"", kind)};
}

void check_version(const Json& json) {
    const Json& written = json.at(version_key);
    if (!written.is_number_unsigned() || written == 0) throw Unreadable{"its version is no number"};
    if (written > version)
        throw Unreadable{fmt::format("it is of version {}, this doorcard knows {}", written.dump(), version)};
}

SideNotes notes_of(const Json& json) {
    check_version(json);
    SideNotes notes;
    notes.plan.as_found_locked = flag_of(json.at("as_found_locked"));
    for (const Json& change : list_of(json.at("changes"))) notes.plan.changes.push_back(change_of(change));
    notes.snapshot = maybe_text(json.at("snapshot"));
    return notes;
}

tl::unexpected<std::vector<Complaint>> unreadable(const std::string& why) {
    return tl::unexpected(std::vector{Complaint{{},
                                                "the plan kept beside the survey cannot be read: " + why,
                                                "the survey itself is whole; mend or delete the file of the plan"}});
}

}  // namespace

std::string side_notes_text(const SideNotes& notes) {
    Json changes = Json::array();
    for (const Planned& change : notes.plan.changes) changes.push_back(std::visit(WriteChange(), change));
    const Json json = {{version_key, version},
                       {"as_found_locked", notes.plan.as_found_locked},
                       {"changes", std::move(changes)},
                       {"snapshot", json_of(notes.snapshot)}};
    return json.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

Outcome<SideNotes> read_side_notes(std::string_view text) try {
    return notes_of(Json::parse(text));
} catch (const Unreadable& error) {
    return unreadable(error.wrong);
} catch (const Json::exception&) {
    return unreadable("it is not as doorcard wrote it");
}

std::string side_notes_file_of(const std::string& survey) { return file_beside(survey, "plan"); }

Outcome<SideNotes> kept_side_notes(const std::string& survey) {
    const std::string file = side_notes_file_of(survey);
    std::error_code ignored;
    if (!std::filesystem::exists(file, ignored)) return SideNotes();
    const auto text = read_text(file);
    if (!text) return tl::unexpected(text.error());
    return read_side_notes(text->bytes);
}

void keep_side_notes(const std::string& survey, const SideNotes& notes) {
    const std::string file = side_notes_file_of(survey);
    if (!kept_side_notes(survey)) std::rename(file.c_str(), (file + ".broken").c_str());
    if (notes.empty()) return drop_side_notes(survey);
    write_beside(survey, "plan", side_notes_text(notes));
}

void drop_side_notes(const std::string& survey) { ::unlink(side_notes_file_of(survey).c_str()); }

}  // namespace doorcard
