// SPDX-License-Identifier: MIT
#include <algorithm>
#include <array>

#include "file/keys.hpp"
#include "file/keys_wire.hpp"
#include "file/patterns.hpp"

namespace doorcard {
namespace {

constexpr std::string_view halves[] = {"a", "b"};
constexpr std::string_view devices[] = {"breaker", "fuse", "pullout"};
constexpr std::string_view breaker_signs[] = {"hot", "buzz", "smell", "scorch", "melted", "loose"};
constexpr std::string_view alarm_systems[] = {"normal", "fire-alarm", "emergency", "standby"};
constexpr std::string_view legs[] = {"A", "B", "C"};
constexpr std::string_view ground_kinds[] = {"wire", "armor", "raceway", "none"};
constexpr std::string_view ways_of_tracing[] = {"switching", "test-load", "seen", "tracer", "old-directory", "told"};

constexpr Field tested_list[] = {
    date<&Tested::on>("on", "when"),
    flag<&Tested::trips>("trips", "it tripped when its TEST button was pressed"),
};

/// A default id is not written.
std::optional<Value> given_id(const void* breaker) {
    const auto* owner = static_cast<const Breaker*>(breaker);
    return owner->id_given ? held(owner->id) : std::nullopt;
}

constexpr Field breaker_list[] = {
    text<&Breaker::id>("id", "its name; = PANEL:SPACES, such as MAIN:5, MAIN:2+4, MAIN:13a")
        .of(id_pattern)
        .got_by(given_id)
        .marked(),
    text<&Breaker::panel>("panel", "the panel it sits in").names(to_panel).required(),
    plain<&Breaker::spaces>(Form::wholes, "spaces", "its spaces, one for each pole, in any order")
        .at_least(1)
        .at_most(999)
        .required()
        .marked(),
    plain<&Breaker::halves>(Form::text_or_texts, "half", "of a tandem: its half, or a list with one for each space")
        .one_of(halves)
        .marked(),
    text<&Breaker::legs>("legs", "its legs, in the order of spaces; overrides what the spaces say")
        .of(leg_letters)
        .marked(),
    number<&Breaker::amps>("amps", "A", "rating").at_least(1),
    text<&Breaker::device>("device", "what it is; = \"breaker\"").one_of(devices),
    plain<&Breaker::guards>(Form::texts, "guards",
                            "arc, ground (4 to 6 mA), equipment-ground (30 mA); []: none seen; absent: not looked at")
        .one_of(enum_words<Guard>),
    texts<&Breaker::tied_with>("tied_with", "breakers whose handles are tied to it by an identified tie")
        .names(to_breaker),
    word<&Breaker::state>("state", "= \"in-use\""),
    text<&Breaker::off_why>("off_why", "why it is off"),
    text<&Breaker::old_label>("old_label", "what the old directory says"),
    text<&Breaker::keep_on>("keep_on", "a reason never to plan switching it off"),
    number<&Breaker::off_minutes>("off_minutes", "minutes",
                                  "worth, in minutes of work, of one round without power there; = 0"),
    flag<&Breaker::full_rated>("full_rated", "listed for 100 % continuous duty; = false"),
    flag<&Breaker::serves_as_main>("serves_as_main", "back-fed main or service disconnect; = false"),
    flag<&Breaker::hold_down>("hold_down", "a back-fed device is held by a fastener"),
    number<&Breaker::interrupting_ka>("interrupting_ka", "kA", "interrupting rating"),
    flag<&Breaker::series_rated>("series_rated", "marked as part of a series-rated combination; = false"),
    text<&Breaker::volts>("volts", "voltage marking, for slash ratings").of(slash_volts),
    flag<&Breaker::listed_here>("listed_here", "its type belongs in this panel"),
    whole<&Breaker::conductors>("conductors", "", "conductors under its terminal, per pole"),
    flag<&Breaker::two_wire_listed>("two_wire_listed", "its terminal is listed for two conductors"),
    texts<&Breaker::signs>("signs", "signs of trouble; []: looked, none").one_of(breaker_signs),
    table<&Breaker::tested>("tested", tested_list, "its TEST button"),
    text<&Breaker::system>("system", "what it serves; = \"normal\"").one_of(alarm_systems),
    text<&Breaker::note>("note", "a remark"),
    plain<&Breaker::photos>(Form::photos, "photos", "pictures that stay beside the survey"),
};

constexpr Field ground_list[] = {
    text<&GroundWire::size>("size", "AWG or kcmil"),
    text<&GroundWire::kind>("kind", "what grounds it; \"none\": looked, there is none").one_of(ground_kinds),
    word<&GroundWire::metal>("metal", "copper or aluminum"),
};

constexpr Field traced_list[] = {
    text<&Traced::how>("how", "switching, test-load and seen prove; the others are claims").one_of(ways_of_tracing),
    date<&Traced::on>("on", "when"),
    text<&Traced::by>("by", "who"),
};

constexpr Field circuit_list[] = {
    text<&Circuit::id>("id", "its name").of(id_pattern).required().marked(),
    plain<&Circuit::breakers>(Form::text_or_texts, "breaker",
                              "what feeds it; absent while unknown; a list: found fed by all of these at once")
        .names(to_breaker),
    text<&Circuit::leg>("leg", "the leg of a multi-pole breaker that a line-to-neutral circuit uses").one_of(legs),
    text<&Circuit::purpose>("purpose", "directory text; absent: composed from its outlets"),
    text<&Circuit::neutral>(
        "neutral", "circuits that name the same neutral share it; \"own\": traced, not shared; absent: not traced")
        .of(id_pattern)
        .marked(),
    flag<&Circuit::three_wire>("three_wire", "two hots and one neutral seen in one cable: a neutral is likely shared"),
    text<&Circuit::neutral_size>("neutral_size", "AWG or kcmil of its neutral; one value per neutral").marked(),
    table<&Circuit::wire>("wire", {}, "its hot conductors"),
    table<&Circuit::ground>("ground", ground_list, "its equipment ground"),
    table<&Circuit::traced>("traced", traced_list, "how it is known that this breaker feeds it"),
    whole<&Circuit::installed>("installed", "year", "when it was installed"),
    flag<&Circuit::neutral_spliced>("neutral_spliced", "a shared neutral is joined in the boxes, not through devices"),
    text<&Circuit::note>("note", "a remark"),
    plain<&Circuit::photos>(Form::photos, "photos", "pictures that stay beside the survey"),
};

}  // namespace

FieldList breaker_keys() { return breaker_list; }

FieldList circuit_keys() {
    static const auto list = [] {
        auto copy = std::to_array(circuit_list);
        std::ranges::find(copy, "wire", &Field::name)->keys = wire_keys();
        return copy;
    }();
    return list;
}

}  // namespace doorcard
