// SPDX-License-Identifier: MIT
// Writes the survey of a building of our own invention to standard output: PANELS lighting and appliance panels of 42
// circuits, fed through distribution panels of 40 feeders; OUTLETS outlets with a load each; READINGS readings.
#include <fmt/format.h>

#include <cstdio>
#include <cstdlib>
#include <string>
#include <string_view>

namespace {

constexpr int circuits_per_panel = 42, feeders_per_distribution = 40;

struct Size {
    int panels, outlets, readings;
    int circuits() const { return panels * circuits_per_panel; }
    int distributions() const { return (panels + feeders_per_distribution - 1) / feeders_per_distribution; }
};

void print(const std::string& text) { std::fwrite(text.data(), 1, text.size(), stdout); }

std::string circuit_id(int circuit) {
    return fmt::format("P{:03}-{:02}", circuit / circuits_per_panel + 1, circuit % circuits_per_panel + 1);
}

// Three-pole spaces of the n-th feeder, down the left side and then the right.
std::string feeder_spaces(int feeder) {
    const int first = (feeder % 2 == 0 ? 1 : 2) + feeder / 2 * 6;
    return fmt::format("{}, {}, {}", first, first + 2, first + 4);
}

void print_breaker(std::string_view panel, std::string_view id, const std::string& spaces, int amps) {
    print(
        fmt::format("[[breaker]]\npanel = \"{}\"\nid = \"{}\"\nspaces = [{}]\namps = {}\n\n", panel, id, spaces, amps));
}

void print_service(const Size& size) {
    print(
        "format = 1\n\n[survey]\ntitle = \"Long Wharf Hall\"\ndate = 2026-05-14\nworker = \"qualified\"\nbuilt = "
        "2021\n\n"
        "[[occupancy]]\nkind = \"retail\"\nfloor_area_ft2 = 90000\n\n"
        "[[source]]\nid = \"utility\"\nkind = \"utility\"\nsystem = \"208Y/120 3ph 4w\"\namps = 4000\n\n"
        "[[panel]]\nid = \"SVC\"\ntitle = \"Service\"\nfed_by = \"utility\"\nbus_a = 4000\nmain = \"breaker\"\n"
        "main_a = 4000\nspaces = 42\nservice = true\nneutral_bonded = true\n\n");
    for (int d = 0; d < size.distributions(); ++d) {
        print_breaker("SVC", fmt::format("to-D{}", d + 1), feeder_spaces(d), 1200);
        print(
            fmt::format("[[panel]]\nid = \"D{0}\"\ntitle = \"Distribution {0}\"\nfed_by = \"to-D{0}\"\nbus_a = 1200\n"
                        "main = \"lugs\"\nspaces = 120\nlocation = \"riser {0}\"\n\n",
                        d + 1));
    }
}

void print_panel(int panel) {
    const std::string id = fmt::format("P{:03}", panel + 1);
    print_breaker(fmt::format("D{}", panel / feeders_per_distribution + 1), "to-" + id,
                  feeder_spaces(panel % feeders_per_distribution), 200);
    print(fmt::format(
        "[[panel]]\nid = \"{0}\"\ntitle = \"Hall {1}\"\nfed_by = \"to-{0}\"\nbus_a = 225\nmain = \"lugs\"\n"
        "spaces = 42\nlocation = \"hall {1}, north wall\"\nall_breakers_entered = true\n"
        "feeder = {{ size = \"4/0\", metal = \"cu\", insulation = \"THHN\", length_ft = {2}, terminal_c = 75 "
        "}}\n\n",
        id, panel + 1, 40 + panel % 160));
}

// Spaces 1, 3 and 5, then 2, 4 and 6 and so on stand on three legs; every fourth such group shares a neutral.
std::string neutral_of(int circuit) {
    const int space = circuit % circuits_per_panel + 1;
    const int group = (space - 1) / 6 * 2 + space % 2;
    if (group % 4 != 0) return "own";
    return fmt::format("N{:03}-{}", circuit / circuits_per_panel + 1, group);
}

void print_circuit(int circuit) {
    const int panel = circuit / circuits_per_panel + 1, space = circuit % circuits_per_panel + 1;
    print(fmt::format(
        "[[breaker]]\npanel = \"P{:03}\"\nspaces = [{}]\namps = 20\nguards = []\nold_label = \"Row {}\"\n\n", panel,
        space, space));
    print(
        fmt::format("[[circuit]]\nid = \"{0}\"\nbreaker = \"P{1:03}:{2}\"\nneutral = \"{3}\"\nwire = {{ size = \"12\", "
                    "metal = \"cu\", insulation = \"THHN\", length_ft = {4}, terminal_c = 75 }}\ntraced = {{ how = "
                    "\"switching\", on = 2026-05-12, by = \"rk\" }}\n\n",
                    circuit_id(circuit), panel, space, neutral_of(circuit), 20 + circuit % 90));
}

void print_outlet(int outlet, const Size& size) {
    const int circuit = outlet % size.circuits();
    print(fmt::format(
        "[[outlet]]\nid = \"K{0}\"\ncircuit = \"{1}\"\nroom = \"Stall {2}\"\nkind = \"receptacle\"\nconfig = "
        "\"5-20R\"\n"
        "label = \"bench {3}\"\n\n[[load]]\nid = \"L{0}\"\noutlet = \"K{0}\"\ntitle = \"Lamp {3}\"\nva = {4}\n\n",
        outlet + 1, circuit_id(circuit), circuit / 3 + 1, outlet / size.circuits() + 1, 60 + outlet * 7 % 140));
}

void print_reading(int reading, const Size& size) {
    const int circuit = reading % size.circuits();
    print(fmt::format("[[reading]]\nat = 2026-05-13T{:02}:{:02}:00\nof = \"circuit:{}\"\namps = {}.{}\n\n",
                      reading / 3600 % 24, reading / 60 % 60, circuit_id(circuit), 2 + reading % 9, reading % 10));
}

}  // namespace

int main(int count, char** arguments) {
    if (count != 4) return std::fputs("usage: large_survey PANELS OUTLETS READINGS\n", stderr), 2;
    const Size size{std::atoi(arguments[1]), std::atoi(arguments[2]), std::atoi(arguments[3])};
    print_service(size);
    for (int panel = 0; panel < size.panels; ++panel) print_panel(panel);
    for (int circuit = 0; circuit < size.circuits(); ++circuit) print_circuit(circuit);
    for (int outlet = 0; outlet < size.outlets; ++outlet) print_outlet(outlet, size);
    for (int reading = 0; reading < size.readings; ++reading) print_reading(reading, size);
}
