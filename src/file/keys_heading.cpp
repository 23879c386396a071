// SPDX-License-Identifier: MIT
#include "file/keys.hpp"
#include "file/patterns.hpp"

namespace doorcard {
namespace {

constexpr std::string_view workers[] = {"occupant", "qualified"};
constexpr std::string_view rule_books[] = {"NEC-2023", "NEC-2020"};

constexpr Field survey_list[] = {
    text<&Heading::title>("title", "what was surveyed, as printed at the head of every sheet"),
    date<&Heading::date>("date", "when; printed; absent: 'undated'"),
    text<&Heading::revision>("revision", "revision of the survey, as printed"),
    text<&Heading::surveyor>("surveyor", "initials or firm of whoever surveyed"),
    text<&Heading::worker>("worker", "who works: for an occupant (=) only tests that an occupant may make are proposed")
        .one_of(workers),
    text<&Heading::complaint>("complaint", "what is wrong, in the caller's words"),
    whole<&Heading::built>("built", "year", "when the building was built; old work is judged as such"),
    text<&Heading::address>("address", "where it is; left out of a pack without address"),
    text<&Heading::contact>("contact", "whom to ask; left out of a pack without address"),
    text<&Heading::permit>("permit", "permit number; left out of a pack without address"),
    text<&Heading::licence>("licence", "licence of whoever works; left out of a pack without address"),
    text<&Heading::notes>("notes", "anything else; left out of a pack without address"),
    text<&Heading::rules>("rules", "the edition that findings are judged by; = \"NEC-2023\"").one_of(rule_books),
    text<&Heading::local_rules>("local_rules", "file of local amendments, relative to the survey file"),
    text<&Heading::note>("note", "a remark"),
    plain<&Heading::photos>(Form::photos, "photos", "pictures that stay beside the survey"),
};

constexpr Field dwelling_list[] = {
    text<&Dwelling::id>("id", "name of this kind of unit; = \"dwelling\"").of(id_pattern).marked(),
    measure<&Dwelling::floor_area, false>(
        "floor_area_ft2", "square feet", "floor area",
        "floor area of one unit, outside dimensions, without open porches and spaces that can never be lived in"),
    measure<&Dwelling::floor_area, true>("floor_area_m2", "square metres", "floor area", "the same in square metres"),
    measure<&Dwelling::garage, false>("garage_ft2", "square feet", "garage area",
                                      "garage of one unit, detached ones too; counted from the 2023 edition on"),
    measure<&Dwelling::garage, true>("garage_m2", "square metres", "garage area", "the same in square metres"),
    whole<&Dwelling::small_appliance_circuits>("small_appliance_circuits", "",
                                               "small-appliance circuits per unit; = 2"),
    whole<&Dwelling::laundry_circuits>("laundry_circuits", "", "laundry circuits per unit; = 1"),
    texts<&Dwelling::panels>("panels", "panels of its units; absent: the whole premises").names(to_panel),
    plain<&Dwelling::stands_for>(Form::wholes, "stands_for", "units that each of these panels stands for; = 1 each")
        .marked(),
    whole<&Dwelling::units>("units", "", "number of units; = the sum of stands_for").marked(),
    text<&Dwelling::note>("note", "a remark"),
    plain<&Dwelling::photos>(Form::photos, "photos", "pictures that stay beside the survey"),
};

constexpr Field occupancy_list[] = {
    text<&Occupancy::kind>("kind", "its use: a row of the rule book's unit-load table"),
    measure<&Occupancy::floor_area, false>("floor_area_ft2", "square feet", "floor area", "floor area of this use"),
    measure<&Occupancy::floor_area, true>("floor_area_m2", "square metres", "floor area", "the same in square metres"),
    text<&Occupancy::panel>("panel", "the panel that serves it; absent: the whole premises").names(to_panel),
    text<&Occupancy::note>("note", "a remark"),
    plain<&Occupancy::photos>(Form::photos, "photos", "pictures that stay beside the survey"),
};

constexpr Field gec_list[] = {
    text<&Grounding::gec_size>("size", "AWG or kcmil, such as \"4\" or \"2/0\""),
    word<&Grounding::gec_metal>("metal", "copper or aluminum"),
};

const void* look_gec(const void* grounding) {
    const auto* owner = static_cast<const Grounding*>(grounding);
    return owner->gec_size || owner->gec_metal ? owner : nullptr;
}

constexpr Field gec_table() {
    Field field;
    field.name = "gec";
    field.form = Form::table;
    field.meaning = "grounding electrode conductor, as seen";
    field.open = [](void* grounding) { return grounding; };  // its keys are members of the grounding itself
    field.look = &look_gec;
    field.clear = [](void* grounding) {
        static_cast<Grounding*>(grounding)->gec_size.reset();
        static_cast<Grounding*>(grounding)->gec_metal.reset();
    };
    field.keys = gec_list;
    return field;
}

constexpr Field grounding_list[] = {
    texts<&Grounding::electrodes>("electrodes", "electrodes seen: rod, water pipe, ufer ...; []: looked, none"),
    gec_table(),
    flag<&Grounding::bonded>("bonded", "electrodes bonded together, as seen"),
    text<&Grounding::note>("note", "a remark"),
    plain<&Grounding::photos>(Form::photos, "photos", "pictures that stay beside the survey"),
};

}  // namespace

FieldList survey_keys() { return survey_list; }
FieldList dwelling_keys() { return dwelling_list; }
FieldList occupancy_keys() { return occupancy_list; }
FieldList grounding_keys() { return grounding_list; }

}  // namespace doorcard
