// SPDX-License-Identifier: MIT
// A sound house gives no danger and no warning, whatever its year and however much of it was looked at. Sound means
// here: wire by Table 310.16 for its device, one neutral for two hots on two legs (tied from 2008 on), guards by place
// from 2023 on, a bonded service and four wires to a panel below it, a second source that is held, kept apart and
// signed.
#include <doctest/doctest.h>
#include <fmt/format.h>

#include "assess/assessment.hpp"
#include "file/read_survey.hpp"
#include "network/network.hpp"
#include "property/draw.hpp"

using namespace doorcard;

namespace {

/// What a circuit of a house serves: its place, device and wire, and the guards that new work has there.
struct Kind {
    const char* name;
    const char* place;
    int amps;
    const char* outlet;
    const char* guards;
};
const std::vector<Kind> kinds = {
    {"Bath receptacles", "bath", 20, "receptacle", "\"ground\""},
    {"Garage receptacles", "garage", 20, "receptacle", "\"ground\""},
    {"Outside receptacles", "outdoors", 20, "receptacle", "\"ground\""},
    {"Laundry receptacles", "laundry", 20, "receptacle", "\"arc\", \"ground\""},
    {"Bedroom receptacles", "bedroom", 15, "receptacle", "\"arc\""},
    {"Living room receptacles", "living room", 15, "receptacle", "\"arc\""},
    {"Upstairs lighting", "hallway", 15, "lighting", "\"arc\""},
    {"Cellar receptacles", "basement", 20, "receptacle", "\"ground\""},
};

/// An appliance on two poles: watts at 240 V, device, wire, duty.
struct Large {
    const char* name;
    int watts, amps;
    const char* size;
    const char* duty;
    const char* place;
    const char* guards;
};
const std::vector<Large> large_ones = {
    {"Range", 9600, 50, "6", "range", "kitchen", "\"ground\""},
    {"Dryer", 5000, 30, "10", "dryer", "laundry", "\"ground\""},
    {"Water heater", 4500, 30, "10", "water-heater", "basement", ""},
    {"Baseboard heaters", 3600, 20, "12", "heating", "basement", ""},
    {"Vehicle supply", 7680, 40, "8", "ev", "garage", ""},
};

class SoundHouse {
public:
    explicit SoundHouse(Draw& draw) : draw_(draw), built_(draw.number(1965, 2025)) {}

    std::string text() {
        add("format = 1\n[survey]\nworker = \"qualified\"\n");
        if (is_new() || draw_.one_in(2)) add("built = {}\n", built_);
        add("[dwelling]\nfloor_area_ft2 = 1600\n");
        add_sources_and_panels();
        add_kitchen();
        for (const Kind& kind : kinds)
            if (draw_.number(1, 4) > 1) add_circuit(kind);
        for (const Large& large : large_ones)
            if (draw_.one_in(2)) add_large(large);
        return text_;
    }

private:
    bool is_new() const { return built_ >= 2023; }
    template <class... Args>
    void add(fmt::format_string<Args...> pattern, Args&&... args) {
        text_ += fmt::format(pattern, std::forward<Args>(args)...);
    }
    /// A line that a surveyor may have left out.
    void maybe(const std::string& line) {
        if (draw_.one_in(2)) text_ += line + "\n";
    }

    void add_sources_and_panels() {
        add("[[source]]\nid = \"utility\"\nkind = \"utility\"\nsystem = \"120/240 1ph 3w\"\n");
        maybe("fault_ka = 9.5");
        if (draw_.one_in(2)) add_second_source();
        add("[[panel]]\nid = \"MAIN\"\nfed_by = \"utility\"\nbus_a = 200\nmain = \"breaker\"\nmain_a = 200\nspaces = "
            "60\n"
            "main_at = \"top\"\n");
        for (const char* line : {"service = true\nneutral_bonded = true", "deadfront = \"ok\"",
                                 "neutrals_doubled = false", "open_spaces_unfilled = 0"})
            maybe(line);
        if (draw_.one_in(2)) return;
        add_breaker("56, 58", 60, "");
        add("[[panel]]\nid = \"SUB\"\nfed_by = \"MAIN:56+58\"\nmain = \"lugs\"\nbus_a = 100\nspaces = 12\n"
            "feeder = {{ size = \"4\", metal = \"cu\", insulation = \"THHN\", ground_size = \"10\" }}\n");
        maybe("neutral_bonded = false");
        maybe("separate_building = true");
    }

    void add_second_source() {
        const bool sun = draw_.one_in(2);
        add_breaker("57, 59", 30, "hold_down = true\n");
        add("[[source]]\nid = \"second\"\nkind = \"{}\"\nsystem = \"120/240 1ph 3w\"\nthrough = \"MAIN:57+59\"\n"
            "output_a = {}\n",
            sun ? "pv" : "generator", draw_.number(10, 24));
        if (!sun) maybe("interlock = \"mechanical\"");
        maybe("labelled = true");
    }

    void add_breaker(const std::string& spaces, int amps, const std::string& keys) {
        add("[[breaker]]\npanel = \"MAIN\"\nspaces = [{}]\namps = {}\n{}", spaces, amps, keys);
        maybe("interrupting_ka = 10");
        maybe("listed_here = true");
        maybe("signs = []");
    }

    /// Guards as new work has them; old work has none, seen or not looked at.
    std::string guards(const std::string& as_new) {
        if (is_new()) return "guards = [" + as_new + "]\n";
        return draw_.one_in(2) ? "guards = []\n" : "";
    }

    void add_branch(const std::string& id, const std::string& name, const std::string& spaces, int amps,
                    const std::string& size, const std::string& keys) {
        std::string breaker = "MAIN:" + spaces;
        if (const std::size_t comma = breaker.find(", "); comma != std::string::npos) breaker.replace(comma, 2, "+");
        const char* ground = amps <= 15 ? "14" : amps <= 20 ? "12" : "10";
        add("[[circuit]]\nid = \"{}\"\nbreaker = \"{}\"\npurpose = \"{}\"\n{}", id, breaker, name, keys);
        add("wire = {{ size = \"{}\", metal = \"cu\", insulation = \"NM-B\" }}\n", size);
        maybe(fmt::format("ground = {{ size = \"{}\", kind = \"wire\", metal = \"cu\" }}", ground));
        maybe("traced = { how = \"switching\" }");
    }

    void add_outlets(const std::string& circuit, const std::string& kind, const std::string& place, int count) {
        for (int i = 0; i < count; ++i) {
            add("[[outlet]]\nid = \"{0}-{1}\"\ncircuit = \"{0}\"\nkind = \"{2}\"\n", circuit, i, kind);
            maybe("place = \"" + place + "\"");
            if (kind == "receptacle") maybe("wired = \"ok\"");
        }
    }

    /// Two circuits of 20 A on one cable, on two legs.
    void add_kitchen() {
        const bool tied = built_ >= 2008;
        if (is_new()) {
            add_circuit({"Kitchen counter, north", "kitchen", 20, "receptacle", "\"arc\", \"ground\""});
            add_circuit({"Kitchen counter, south", "kitchen", 20, "receptacle", "\"arc\", \"ground\""});
            return;
        }
        if (!tied) text_.replace(text_.find("[survey]\n"), 9, year_known());
        add_breaker("1", 20, tied ? "tied_with = [\"MAIN:3\"]\n" : "");
        add_breaker("3", 20, "");
        for (const auto& [id, space] : {std::pair("kitchen-a", "1"), std::pair("kitchen-b", "3")}) {
            add_branch(id, fmt::format("Kitchen counter {}", space), space, 20, "12",
                       "neutral = \"N1\"\nneutral_size = \"12\"\n");
            maybe("neutral_spliced = true");
            add_outlets(id, "receptacle", "kitchen", draw_.number(2, 4));
            add("[[load]]\nid = \"{0}-load\"\noutlet = \"{0}-0\"\ntitle = \"Kettle\"\nwatts = {1}\n", id,
                draw_.number(600, 1800));
        }
    }

    /// An untied pair is lawful old work only where the year is known.
    std::string year_known() {
        const bool told = text_.find("built = ") != std::string::npos;
        return told ? "[survey]\n" : fmt::format("[survey]\nbuilt = {}\n", built_);
    }

    void add_circuit(const Kind& kind) {
        const int space = next_space_;
        next_space_ += 1;
        const std::string id = fmt::format("c{}", space);
        add_breaker(std::to_string(space), kind.amps, guards(kind.guards));
        add_branch(id, kind.name, std::to_string(space), kind.amps, kind.amps == 15 ? "14" : "12", "");
        add_outlets(id, kind.outlet, kind.place, draw_.number(1, 5));
        if (draw_.one_in(3))
            add("[[load]]\nid = \"{0}-load\"\noutlet = \"{0}-0\"\ntitle = \"Lamp\"\nwatts = 300\n", id);
    }

    void add_large(const Large& large) {
        const int space = next_pair_;
        next_pair_ += 4;
        const std::string spaces = fmt::format("{}, {}", space, space + 2);
        const std::string id = fmt::format("p{}", space);
        add_breaker(spaces, large.amps, guards(large.guards));
        add_branch(id, large.name, spaces, large.amps, large.size, "");
        add("[[outlet]]\nid = \"{0}-0\"\ncircuit = \"{0}\"\nkind = \"equipment\"\nplace = \"{1}\"\n", id, large.place);
        add("[[load]]\nid = \"{0}-load\"\noutlet = \"{0}-0\"\ntitle = \"{1}\"\nduty = \"{2}\"\n", id, large.name,
            large.duty);
        maybe(fmt::format("watts = {}\nvolts = 240", large.watts));
    }

    Draw& draw_;
    int built_;
    int next_space_ = 5;
    int next_pair_ = 25;
    std::string text_;
};

Assessment assessed(const std::string& text) {
    const auto read = read_survey({"s", text});
    if (!read) FAIL(complaint_line("s", read.error().front()) << "\n" << text);
    static const RuleBook book = built_in_book("NEC-2023").value();
    return assess(network_of(read->survey), book);
}

}  // namespace

TEST_CASE("law: a sound house drawn at random gives no danger, no warning, and at most three cautions") {
    std::size_t circuits = 0;
    for (int i = 0; i < 300; ++i) {
        Draw draw(static_cast<std::uint64_t>(i) + 4242);
        const std::string text = SoundHouse(draw).text();
        const Assessment assessment = assessed(text);
        int cautions = 0;
        for (const Finding& finding : assessment.findings) {
            CHECK_MESSAGE(finding.severity > Severity::warning,
                          i << " " << finding.rule << " " << finding.of.text() << " " << finding.text.pattern);
            cautions += finding.severity == Severity::caution;
        }
        CHECK(cautions <= 3);
        circuits += assessment.circuits.size();
    }
    CHECK(circuits > 1500);  // else the law would say little
}
