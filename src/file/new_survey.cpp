// SPDX-License-Identifier: MIT
#include "file/new_survey.hpp"

#include <fmt/format.h>

namespace doorcard {
namespace {

/// A line that says it, or, where it is not known, that asks for it.
std::string line(const std::optional<std::string>& known, std::string_view key, std::string_view example,
                 std::string_view remark) {
    const std::string code = known ? fmt::format("{} = {}", key, *known) : fmt::format("# {} = {}", key, example);
    return fmt::format("{:<36}# {}\n", code, remark);
}

std::optional<std::string> quoted(const std::optional<System>& system) {
    if (!system) return std::nullopt;
    return fmt::format("\"{}\"", facts(*system).name);
}

template <class Number>
std::optional<std::string> written(const std::optional<Number>& number) {
    if (!number) return std::nullopt;
    return fmt::format("{}", *number);
}

constexpr std::string_view heading =
    R"(# A survey for doorcard. What is left out is not seen or not known, never a fact;
# "looked, and there is none" has words of its own: [], "none", "own", "lugs".
# Take the # off a line to use it. All keys: docs/survey-file.md
format = 1

[survey]
# title = ""                        # printed at the head of every sheet
# date = 2026-01-31                 # absent: 'undated'
# surveyor = ""                     # initials or firm
# worker = "qualified"              # = "occupant"
# built = 1978                      # year
# complaint = ""                    # in the caller's words

[[source]]
id = "utility"
kind = "utility"
)";

constexpr std::string_view panel = R"(
[[panel]]
id = "MAIN"
fed_by = "utility"
# title = "Main panel"
# location = "cellar stair"
# bus_a = 200                       # as marked
# main = "breaker"                  # breaker | fuses | lugs | split-bus
)";

constexpr std::string_view examples = R"(# service = true                    # service equipment
# all_breakers_entered = true       # every space without a breaker below is empty

# A breaker, what it feeds, and an outlet of it. A breaker is named PANEL:SPACES (MAIN:5, MAIN:2+4).
#
# [[breaker]]
# panel = "MAIN"
# spaces = [5]                      # [2, 4]: two-pole
# amps = 20
# guards = []                       # arc | ground | equipment-ground; []: looked, none
# old_label = "Kitchen?"            # what the old directory says
#
# [[circuit]]
# id = "kitchen-east"
# breaker = "MAIN:5"
# neutral = "own"                   # traced, not shared; circuits that share one name it alike
# wire = { size = "12", metal = "cu", insulation = "NM-B", length_ft = 62 }
# traced = { how = "switching", on = 2026-01-31, by = "" }
#
# [[outlet]]
# id = "K1"
# circuit = "kitchen-east"
# room = "Kitchen"
# kind = "receptacle"               # receptacle | lighting | equipment | switch | box
# label = "counter, left of sink"
#
# [[load]]
# id = "toaster"
# outlet = "K1"
# va = 1100                         # or watts, amps, hp
# count = 1
#
# [[reading]]
# of = "circuit:kitchen-east"
# at = 2026-01-31T09:30:00
# amps = 11.2
# hours = 3.5                       # how long it was watched
)";

}  // namespace

std::string new_survey(const NewSurvey& known) {
    std::string text(heading);
    text += line(quoted(known.system), "system", "\"120/240 1ph 3w\"", "volts, phases and wires");
    text += line(std::nullopt, "amps", "200", "service rating");
    text += panel;
    text += line(written(known.main_a), "main_a", "200", "rating of its main");
    text += line(written(known.spaces), "spaces", "40", "number of its spaces");
    text += examples;
    return text;
}

}  // namespace doorcard
