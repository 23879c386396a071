// SPDX-License-Identifier: MIT
#include "desk/field_labels.hpp"

namespace doorcard {
namespace {

constexpr FieldLabel hints[] = {
    {"survey", "worker", tr("an occupant is offered only what an occupant may do")},
    {"survey", "local_rules", tr("a file beside the survey")},
    {"dwelling", "floor_area_ft2", tr("outside dimensions of one unit, without open porches")},
    {"dwelling", "garage_ft2", tr("detached ones too")},
    {"dwelling", "panels", tr("with commas between; nothing: the whole premises")},
    {"occupancy", "panel", tr("nothing: the whole premises")},
    {"source", "through", tr("the breaker it is back-fed through")},
    {"source", "disconnect", tr("where one throws it")},
    {"panel", "fed_by", tr("several, with commas: one at a time, by transfer equipment")},
    {"panel", "system", tr("nothing: as what feeds it")},
    {"panel", "empty_spaces", tr("spaces, with commas: looked, nothing there")},
    {"panel", "neutral_bonded", tr("no: looked, there is none")},
    {"panel", "legs_down", tr("letters of the rows from the top, such as AB or ABC")},
    {"panel", "tandem_spaces", tr("spaces, with commas")},
    {"panel", "condition", tr("rust, water, heat; none: looked, in order")},
    {"breaker", "guards", tr("arc, ground, equipment-ground; none: looked, there is none")},
    {"breaker", "tied_with", tr("breakers of one handle tie, with commas: 7, 9")},
    {"breaker", "keep_on", tr("its reason; it is never planned to be switched off")},
    {"breaker", "signs", tr("hot, buzz, smell, scorch, melted, loose; none: looked")},
    {"breaker", "volts", tr("as marked, such as 120/240")},
    {"circuit", "purpose", tr("what the card says; nothing: composed from its outlets")},
    {"circuit", "breaker", tr("several, with commas: found fed by all of them at once")},
    {"circuit", "wire.size", tr("12, 4/0, 250: read it, never guess it")},
    {"circuit", "wire.ambient_c", tr("nothing: 30")},
    {"circuit", "wire.terminal_c", tr("nothing: 60 up to 100 A, else 75")},
    {"outlet", "upstream", tr("the outlet or box before it")},
    {"outlet", "config", tr("such as 5-20R")},
    {"outlet", "guards", tr("arc, ground, equipment-ground; none: looked, there is none")},
    {"load", "volts", tr("as marked; nothing: nominal")},
    {"load", "hp", tr("3/4, 1.5; marked amperes may stand beside it")},
    {"load", "continuous", tr("nothing: by its duty")},
    {"load", "keep_on", tr("its reason; it is never planned to be switched off")},
    {"reading", "of", tr("5, 2+4, 9 N, MAIN A, K3")},
    {"reading", "together", tr("one name: taken at one moment")},
    {"reading", "volts_to", tr("13 = 0.4, 15 = 240; near 0: the same leg")},
    {"trip", "of", tr("5, K3, a circuit, a panel, or survey: for something that went off")},
    {"recording", "columns", tr("\"L1 (A)\" = \"panel:MAIN/A\", ...")},
    {"limit", "key", tr("amps, volts, leakage_ma, demand15_a ...")},
};

}  // namespace

std::span<const FieldLabel> field_hints() { return hints; }

}  // namespace doorcard
