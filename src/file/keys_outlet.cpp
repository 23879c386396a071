// SPDX-License-Identifier: MIT
#include "file/keys.hpp"
#include "file/patterns.hpp"

namespace doorcard {
namespace {

constexpr std::string_view wirings[] = {"ok", "reversed", "open-ground", "open-neutral", "neutral-as-ground"};
constexpr std::string_view terminals[] = {"screw", "push-in", "pigtail"};
constexpr std::string_view leakage_kinds[] = {"resistive", "capacitive"};

constexpr Field room_list[] = {
    text<&Room::id>("id", "its name").of(id_pattern).required().marked(),
    text<&Room::title>("title", "what it is called in print"),
    text<&Room::floor>("floor", "the floor it is on"),
    text<&Room::place>("place", "its outlets take it where they have none"),
    text<&Room::note>("note", "a remark"),
    plain<&Room::photos>(Form::photos, "photos", "pictures that stay beside the survey"),
};

constexpr Field outlet_list[] = {
    text<&Outlet::id>("id", "its name; no load may have the same").of(id_pattern).required().marked(),
    plain<&Outlet::circuits>(
        Form::text_or_texts, "circuit",
        "its circuit; a list: fed by several at once; absent: unknown, or inherited through upstream")
        .names(to_circuit),
    text<&Outlet::upstream>(
        "upstream", "the outlet or box it is fed through; \"home-run\": straight from the panel; absent: not known")
        .names(to_outlet, "home-run"),
    measure<&Outlet::run, false>("run_ft", "feet", "run", "one way, from upstream to here"),
    measure<&Outlet::run, true>("run_m", "metres", "run", "the same in metres"),
    text<&Outlet::room>("room", "a room's id, or plain text"),
    word<&Outlet::kind>("kind", "what it is"),
    text<&Outlet::label>("label", "what it is or where, in a few words"),
    text<&Outlet::config>("config", "NEMA configuration, such as \"5-20R\"; amps and volts follow from it"),
    number<&Outlet::amps>("amps", "A", "rating").at_least(1),
    whole<&Outlet::receptacles>("receptacles", "", "places to plug in; = 2 for a receptacle; 1: a single one"),
    whole<&Outlet::yokes>("yokes", "", "devices on straps of their own; = 1").at_least(1),
    text<&Outlet::strap>("strap", "halves of one split-wired device name the same strap"),
    text<&Outlet::box>("box", "things in one box name the same box, whatever feeds them"),
    texts<&Outlet::switched_by>("switched_by", "switches that switch it").names(to_outlet),
    plain<&Outlet::guards>(Form::texts, "guards",
                           "guards in it, which protect itself and all downstream; []: none seen")
        .one_of(enum_words<Guard>),
    text<&Outlet::wired>("wired", "what a tester showed").one_of(wirings),
    text<&Outlet::terminals>("terminals", "how the wires end").one_of(terminals),
    text<&Outlet::place>("place",
                         "bath, garage, outdoors, basement, kitchen, laundry ... as the guard rules name places"),
    texts<&Outlet::old_breakers>("old_breakers", "where the old directory puts it").names(to_breaker),
    text<&Outlet::keep_on>("keep_on", "a reason never to plan switching it off"),
    text<&Outlet::note>("note", "a remark"),
    plain<&Outlet::photos>(Form::photos, "photos", "pictures that stay beside the survey"),
};

constexpr Field load_list[] = {
    text<&Load::id>("id", "its name; no outlet may have the same").of(id_pattern).required().marked(),
    text<&Load::outlet>("outlet", "the outlet it hangs on").names(to_outlet).either("place of a load"),
    text<&Load::circuit>("circuit", "its circuit, while less is known").names(to_circuit).either("place of a load"),
    text<&Load::panel>("panel", "its panel, while less is known").names(to_panel).either("place of a load"),
    text<&Load::title>("title", "what it is called in print"),
    number<&Load::va>("va", "VA", "nameplate volt-amperes of one").either("nameplate"),
    number<&Load::watts>("watts", "W", "nameplate watts of one").either("nameplate"),
    number<&Load::amps>("amps", "A", "nameplate amperes of one; hp may stand beside them, and the marked amperes rule")
        .either("nameplate", "hp"),
    plain<&Load::hp>(Form::text_or_number, "hp", "horsepower of one; may stand beside amps")
        .of(hp_pattern)
        .either("nameplate", "amps"),
    whole<&Load::count>("count", "", "how many of them; = 1").at_least(1),
    number<&Load::volts>("volts", "V", "marked volts, between the conductors it uses; = nominal").at_least(1),
    whole<&Load::phases>("phases", "", "1 or 3; = 1").at_least(1).at_most(3).marked(),
    text<&Load::legs>("legs", "the conductors it uses; absent: its volts decide").of(load_legs),
    number<&Load::power_factor>("power_factor", "", "of the fundamental, lagging; above 0, at most 1; = 1, with hp 0.8")
        .above_zero()
        .at_most(1),
    flag<&Load::leading>("leading", "its current leads; = false"),
    number<&Load::third_harmonic>("third_harmonic", "", "third harmonic over the fundamental, RMS; = 0"),
    flag<&Load::continuous>("continuous", "runs 3 hours or more; absent: by duty"),
    word<&Load::duty>("duty", "what it does; = \"general\""),
    word<&Load::connection>("connection", "= cord on a receptacle, else fixed"),
    number<&Load::min_circuit_a>("min_circuit_a", "A", "nameplate minimum circuit ampacity"),
    number<&Load::max_device_a>("max_device_a", "A", "nameplate largest overcurrent device").at_least(1),
    number<&Load::gallons>("gallons", "gallons", "size of a water heater"),
    flag<&Load::storage>("storage", "false: a tankless water heater"),
    flag<&Load::per_unit>("per_unit", "counts once in each dwelling unit; = false"),
    text<&Load::control>("control", "heating: what is controlled together; absent: all such loads are one"),
    text<&Load::supplements>("supplements", "the heat pump that this auxiliary heat belongs to").names(to_load),
    flag<&Load::locked_out>("locked_out", "never runs with that heat pump's compressor"),
    texts<&Load::never_with>("never_with", "loads that never run with it").names(to_load),
    text<&Load::managed>("managed", "its energy management system").names(to_managed),
    number<&Load::leakage_ma>("leakage_ma", "mA", "standing leakage to ground"),
    text<&Load::leakage_kind>("leakage_kind", "absent: sums are arithmetic").one_of(leakage_kinds),
    number<&Load::largest_motor_a>("largest_motor_a", "A", "full-load current of the largest motor inside"),
    measure<&Load::length, false>("length_ft", "feet", "length", "of a show window"),
    measure<&Load::length, true>("length_m", "metres", "length", "the same in metres"),
    text<&Load::keep_on>("keep_on", "a reason never to plan switching it off"),
    clock<&Load::backed_up_until>("backed_up_until", "may lose power until then"),
    text<&Load::note>("note", "a remark"),
    plain<&Load::photos>(Form::photos, "photos", "pictures that stay beside the survey"),
};

constexpr Field managed_list[] = {
    text<&Managed::id>("id", "name of the energy management system").of(id_pattern).required().marked(),
    number<&Managed::max_a>("max_a", "A", "what its loads together are held to"),
    text<&Managed::source>("source", "where that figure stands"),
    text<&Managed::note>("note", "a remark"),
    plain<&Managed::photos>(Form::photos, "photos", "pictures that stay beside the survey"),
};

}  // namespace

FieldList room_keys() { return room_list; }
FieldList outlet_keys() { return outlet_list; }
FieldList load_keys() { return load_list; }
FieldList managed_keys() { return managed_list; }

}  // namespace doorcard
