// SPDX-License-Identifier: MIT
#include <algorithm>
#include <array>

#include "file/keys.hpp"
#include "file/keys_wire.hpp"
#include "file/patterns.hpp"

namespace doorcard {
namespace {

constexpr std::string_view source_kinds[] = {"utility", "generator", "pv", "battery", "wind", "other"};
constexpr std::string_view interlocks[] = {"transfer", "mechanical", "none"};
constexpr std::string_view starts[] = {"auto", "by-hand"};
constexpr std::string_view ends[] = {"top", "bottom", "center"};
constexpr std::string_view high_legs[] = {"B", "C"};
constexpr std::string_view half_legs[] = {"same", "alternate"};
constexpr std::string_view deadfronts[] = {"ok", "gaps", "missing"};
constexpr std::string_view panel_places[] = {"closet", "bath", "over-steps"};
constexpr double most_spaces = 999;

constexpr Field source_list[] = {
    text<&Source::id>("id", "its name").of(id_pattern).required().marked(),
    text<&Source::title>("title", "what it is called in print"),
    text<&Source::kind>("kind", "what it is").one_of(source_kinds),
    word<&Source::system>("system", "volts, phases and wires that it gives"),
    number<&Source::amps>("amps", "A", "service or source rating").at_least(1),
    number<&Source::fault_ka>("fault_ka", "kA", "available fault current"),
    date<&Source::fault_on>("fault_on", "when the fault current was determined"),
    text<&Source::through>(
        "through", "the breaker it comes in through, beside what feeds that panel; absent: only as some panel's fed_by")
        .names(to_breaker),
    number<&Source::output_a>("output_a", "A", "rated output current"),
    text<&Source::interlock>("interlock", "what keeps it and the utility apart; \"none\": looked, there is none")
        .one_of(interlocks),
    text<&Source::starts>("starts", "how a generator starts").one_of(starts),
    text<&Source::disconnect>("disconnect", "where it is shut off"),
    text<&Source::location>("location", "where it stands"),
    flag<&Source::labelled>("labelled", "the sign that names this source was seen"),
    text<&Source::note>("note", "a remark"),
    plain<&Source::photos>(Form::photos, "photos", "pictures that stay beside the survey"),
};

constexpr Field transformer_list[] = {
    number<&Transformer::kva>("kva", "kVA", "rating"),
    number<&Transformer::impedance_percent>("impedance_percent", "%", "impedance as marked"),
};

constexpr Field clearance_list[] = {
    number<&Clearance::width>("width", "inches", "of the clear working space"),
    number<&Clearance::depth>("depth", "inches", "of the clear working space"),
    number<&Clearance::height>("height", "inches", "of the clear working space"),
};

constexpr Field panel_list[] = {
    text<&Panel::id>("id", "its name").of(panel_id_pattern).required().marked(),
    text<&Panel::title>("title", "what it is called in print"),
    text<&Panel::location>("location", "where it hangs"),
    plain<&Panel::fed_by>(Form::text_or_texts, "fed_by", "what feeds it; a list: one at a time (transfer equipment)")
        .names(to_source | to_breaker),
    word<&Panel::system>("system", "volts, phases and wires at its bus; = what feeds it"),
    number<&Panel::bus_a>("bus_a", "A", "rating of its bus").at_least(1),
    word<&Panel::main>("main", "what its main is; \"lugs\": looked, there is no main device"),
    number<&Panel::main_a>("main_a", "A", "rating of its main").at_least(1),
    text<&Panel::main_at>("main_at", "where the bus is fed").one_of(ends),
    text<&Panel::marking>("marking", "make and type as marked on it"),
    whole<&Panel::spaces>("spaces", "", "number of its spaces").at_least(1).at_most(most_spaces).marked(),
    plain<&Panel::empty_spaces>(Form::wholes, "empty_spaces", "looked: nothing there")
        .at_least(1)
        .at_most(most_spaces)
        .marked(),
    flag<&Panel::all_breakers_entered>("all_breakers_entered", "true: every other space is empty; = false"),
    word<&Panel::numbering>("numbering", "how spaces are numbered; = \"odd-left\""),
    text<&Panel::legs_down>("legs_down", "the building's leg letters of the rows from the top, repeating")
        .of(leg_letters),
    flag<&Panel::turned_over>("turned_over", "space 1 is at the bottom; = false"),
    text<&Panel::high_leg>("high_leg", "the high leg of a high-leg system; = \"B\"").one_of(high_legs),
    flag<&Panel::service>("service", "service equipment"),
    flag<&Panel::neutral_bonded>("neutral_bonded", "main bonding jumper or strap seen; false: looked, there is none"),
    flag<&Panel::separate_building>("separate_building", "in a building of its own; = false"),
    table<&Panel::feeder>("feeder", {}, "the conductors that feed it"),
    table<&Panel::transformer>("transformer", transformer_list,
                               "a transformer before it, needed where its system is not that of what feeds it"),
    plain<&Panel::tandem_spaces>(Form::wholes, "tandem_spaces", "spaces where tandems are allowed")
        .at_least(1)
        .at_most(most_spaces)
        .marked(),
    text<&Panel::half_legs>("half_legs", "whether the halves of a tandem sit on one leg; = \"same\"").one_of(half_legs),
    number<&Panel::fault_ka>("fault_ka", "kA", "available fault current here"),
    date<&Panel::fault_on>("fault_on", "when the fault current was determined"),
    text<&Panel::deadfront>("deadfront", "state of the dead front").one_of(deadfronts),
    whole<&Panel::open_spaces_unfilled>("open_spaces_unfilled", "", "openings in the dead front without a filler"),
    flag<&Panel::neutrals_doubled>("neutrals_doubled", "two neutrals under one screw"),
    table<&Panel::clear_in>("clear_in", clearance_list, "clear working space before it"),
    text<&Panel::place>("place", "a place that 240.24 rules out").one_of(panel_places),
    texts<&Panel::condition>("condition", "rust, water, heat ... as seen; []: looked, none"),
    text<&Panel::note>("note", "a remark"),
    plain<&Panel::photos>(Form::photos, "photos", "pictures that stay beside the survey"),
};

}  // namespace

FieldList source_keys() { return source_list; }

FieldList panel_keys() {
    static const auto list = [] {
        auto copy = std::to_array(panel_list);
        std::ranges::find(copy, "feeder", &Field::name)->keys = feeder_keys();
        return copy;
    }();
    return list;
}

}  // namespace doorcard
