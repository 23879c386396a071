// SPDX-License-Identifier: MIT
// The tables of the book against the reference figures beside the project (row by row), and against literals that need
// no file. Sources stand beside the checks.
#include <doctest/doctest.h>

#include <map>
#include <set>

#include "published/reference.hpp"
#include "rules/lookups.hpp"
#include "rules/protection_lookups.hpp"

using namespace doorcard;

namespace {

const char* const facts_file = "reference/circuit_facts.toml";
const char* const loads_file = "reference/load_tables.toml";

const RuleBook& book() {
    static const RuleBook built_in = built_in_book("NEC-2023").value();
    return built_in;
}

double number(const Cell& cell) { return std::get<double>(cell); }
const std::string& text(const Cell& cell) { return std::get<std::string>(cell); }

/// The row of a table whose first cell is this; fails where there is none.
const std::vector<Cell>& row(const char* table, const Cell& key) {
    for (const std::vector<Cell>& one : book().table(table).rows)
        if (one.front() == key) return one;
    FAIL("no such row in " << table);
    return book().table(table).rows.front();
}

/// The numbers from the second cell on.
std::vector<double> numbers(const std::vector<Cell>& cells) {
    std::vector<double> found;
    for (std::size_t i = 1; i < cells.size(); ++i) found.push_back(number(cells[i]));
    return found;
}

/// Every row of the reference stands in the book with the same figures, and it has as many rows as it should.
void same_rows(const char* reference_table, const char* table) {
    const reference::Rows rows = reference::table_rows(reference_table);
    REQUIRE(rows.size() > 1);
    for (const auto& one : rows) {
        CAPTURE(reference_table);
        CAPTURE(std::holds_alternative<std::string>(one[0]) ? text(one[0]) : std::to_string(number(one[0])));
        CHECK(numbers(row(table, one[0])) == numbers(one));
    }
}

double amps(const std::optional<Amperes>& current) { return current ? current->value : 0; }

/// A row of the motor tables: hp as a number, then the currents.
void same_motor_rows(const reference::Rows& rows, const char* table) {
    REQUIRE(rows.size() > 10);
    for (const auto& one : rows) {
        CAPTURE(number(one[0]));
        bool found = false;
        for (const std::vector<Cell>& ours : book().table(table).rows)
            if (std::abs(horsepower(text(ours[0])).value() - number(one[0])) < 1e-3) {
                CHECK(numbers(ours) == numbers(one));
                found = true;
            }
        CHECK(found);
    }
}

}  // namespace

TEST_CASE("reference: Table 310.16, corrections and devices are those of circuit_facts.toml") {
    if (!reference::present(facts_file)) return;
    same_rows("nec-310-16", "nec-310-16");
    same_rows("nec-310-15-b-1", "nec-310-15-b-1");
    same_rows("ansi-c84-1-120", "ansi-c84-1-120");
    same_rows("nec-430-248", "nec-430-248");
    CHECK(book().table("nec-310-15-b-1").rows.size() == reference::table_rows("nec-310-15-b-1").size());
    CHECK(book().table("nec-430-248").rows.size() == reference::table_rows("nec-430-248").size());
}

TEST_CASE("reference: Table 310.15(C)(1), whose rows the reference names by their last count") {
    if (!reference::present(facts_file)) return;
    double from = 1;
    for (const auto& one : reference::table_rows("nec-310-15-c-1")) {
        CHECK(bundling_factor(book(), static_cast<int>(from)) == number(one[1]));
        CHECK(bundling_factor(book(), static_cast<int>(number(one[0]))) == number(one[1]));
        from = number(one[0]) + 1;
    }
    for (const auto& one : reference::load_rows("adjustment", "rows"))
        CHECK(bundling_factor(book(), static_cast<int>(number(one[0]))) == doctest::Approx(number(one.back()) / 100));
}

TEST_CASE("reference: 240.4(D), every row") {
    if (!reference::present(facts_file)) return;
    std::set<std::vector<Cell>> ours, theirs;
    for (const auto& one : book().table("nec-240-4-d").rows) ours.insert(one);
    for (const auto& one : reference::table_rows("nec-240-4-d")) theirs.insert(one);
    CHECK(ours == theirs);
}

TEST_CASE("reference: 240.6(A), both lists") {
    if (!reference::present(facts_file)) return;
    std::vector<double> ours, loads;
    for (const auto& one : book().table("nec-240-6-a").rows) ours.push_back(number(one[0]));
    for (const auto& one : reference::load_rows("ocpd", "ratings")) loads.push_back(number(one[0]));
    CHECK(ours == reference::fact_list("nec-240-6-a"));
    CHECK(ours == loads);
}

TEST_CASE("reference: Table 430.52, every row") {
    if (!reference::present(facts_file)) return;
    const std::map<std::string, std::string> names = {{"single-phase", "single-phase"},
                                                      {"squirrel cage", "squirrel-cage"},
                                                      {"squirrel cage design B", "squirrel-cage-design-b"},
                                                      {"synchronous", "synchronous"},
                                                      {"wound rotor", "wound-rotor"},
                                                      {"direct current", "direct-current"}};
    for (const auto& one : reference::table_rows("nec-430-52"))
        CHECK(numbers(row("nec-430-52", names.at(text(one[0])))) == numbers(one));
    CHECK(book().table("nec-430-52").rows.size() == names.size());
}

TEST_CASE("reference: single figures of circuit_facts.toml") {
    if (!reference::present(facts_file)) return;
    CHECK(book().figure("continuous-hours") == reference::fact("continuous-load"));
    CHECK(book().figure("continuous-factor") == reference::fact("continuous-factor-ocpd"));
    CHECK(book().figure("continuous-factor") == reference::fact("water-heater-continuous"));
    CHECK(book().figure("continuous-factor") == reference::fact("space-heat-continuous"));
    CHECK(book().figure("continuous-factor") == reference::fact("ev-continuous"));
    CHECK(book().figure("full-rated-factor") == reference::fact("continuous-100-percent-exception"));
    CHECK(book().figure("cord-share") == reference::fact("cord-80"));
    CHECK(book().figure("fixed-share") == reference::fact("fixed-50"));
    CHECK(book().figure("next-size-limit") == reference::fact("next-size-up"));
    CHECK(book().figure("terminal-limit") == reference::fact("terminal-temperature"));
    CHECK(book().figure("terminal-low-c") == reference::fact("nm-b-60"));
    CHECK(book().figure("receptacle-yoke-va") == reference::fact("receptacle-va", "per_yoke"));
    CHECK(book().figure("receptacle-each-va") == reference::fact("receptacle-va", "per_receptacle_of_four_or_more"));
    CHECK(book().figure("calculated-tolerance") == reference::fact("fraction-of-ampere"));
    CHECK(book().figure("motor-conductor") == reference::fact("motor-conductor"));
    CHECK(book().figure("single-appliance-150") == reference::fact("single-appliance-150"));
}

TEST_CASE("reference: ampacity in load_tables.toml, every size and column") {
    if (!reference::present(loads_file)) return;
    for (const auto& [key, metal] : {std::pair("copper", Metal::copper), std::pair("aluminum", Metal::aluminum)})
        for (const auto& one : reference::load_rows("ampacity", key))
            for (std::size_t column = 1; column <= 3; ++column) {
                CAPTURE(text(one[0]));
                const int degrees = 45 + 15 * static_cast<int>(column);
                CHECK(amps(listed_ampacity(book(), text(one[0]), metal, degrees)) == number(one[column]));
            }
}

TEST_CASE("reference: motors in load_tables.toml, every row") {
    if (!reference::present(loads_file)) return;
    same_motor_rows(reference::load_rows("motor_flc_single_phase", "rows"), "nec-430-248");
    same_motor_rows(reference::load_rows("motor_flc_three_phase", "rows"), "nec-430-250");
    const reference::Rows cage = reference::load_rows("motor_ocpd", "squirrel_cage");
    CHECK(number(row("nec-430-52", Cell("squirrel-cage"))[2]) == number(cage[1][0]));
    CHECK(number(row("nec-430-52", Cell("squirrel-cage"))[4]) == number(cage[3][0]));
}

TEST_CASE("reference: dwelling conductors and ranges in load_tables.toml") {
    if (!reference::present(loads_file)) return;
    const reference::Rows rows = reference::load_rows("dwelling_conductors", "rows");
    CHECK(book().table("nec-310-12").rows == rows);
    CHECK(100 * book().figure("dwelling-service-share") == reference::load_figure("dwelling_conductors", "percent"));
    CHECK(100 * book().figure("range-step") == reference::load_figure("cooking", "step_percent_per_kw"));
    CHECK(book().figure("range-table-kva") == reference::load_figure("cooking", "base_kw"));
    CHECK(book().figure("range-top-kva") == reference::load_figure("cooking", "maximum_kw"));
    CHECK(book().figure("range-demand-kva") == number(reference::load_rows("cooking", "rows")[0][3]));
}

TEST_CASE("reference: Tables 250.122 and 250.66 in load_tables.toml, every row") {
    if (!reference::present(loads_file)) return;
    CHECK(book().table("nec-250-122").rows == reference::load_rows("equipment_grounding", "rows"));
    const reference::Rows rows = reference::load_rows("grounding_electrode", "rows");
    const auto& ours = book().table("nec-250-66").rows;
    REQUIRE(ours.size() == rows.size());
    for (std::size_t row = 0; row < rows.size(); ++row)
        for (std::size_t column = 0; column < 4; ++column) {
            CAPTURE(row);
            CAPTURE(column);
            // The reference has 1 AWG aluminum in the first row; the book prints 1/0 (from memory): the literal below.
            if (row == 0 && column == 1) continue;
            const std::string theirs = text(rows[row][column]);
            CHECK(text(ours[row][column]) == (theirs == "open" ? "over" : theirs));
        }
}

TEST_CASE("reference: receptacles by Table 210.21(B)(3) in circuit_facts.toml, the circuits that it has rows for") {
    if (!reference::present(facts_file)) return;
    const reference::Rows rows = reference::table_rows("nec-210-21-b-3");
    REQUIRE(rows.size() == book().table("nec-210-21-b-3").rows.size());
    for (const auto& one : rows) CHECK(receptacle_range(book(), Amperes(number(one[0]))));
}

TEST_CASE("literals: NEC 2023 Tables 250.122, 250.66 and 210.21(B)(3), from memory") {
    CHECK(ground_wire_size(book(), Amperes(15), Metal::copper) == "14");
    CHECK(ground_wire_size(book(), Amperes(30), Metal::copper) == "10");
    CHECK(ground_wire_size(book(), Amperes(40), Metal::copper) == "10");
    CHECK(ground_wire_size(book(), Amperes(200), Metal::aluminum) == "4");
    CHECK(ground_wire_size(book(), Amperes(201), Metal::copper) == "4");
    CHECK(ground_wire_size(book(), Amperes(6001), Metal::copper) == std::nullopt);
    const auto gec = [](const char* size, Metal metal, int sets = 1) {
        return electrode_conductor_size(book(), size, metal, sets, Metal::copper).value_or("");
    };
    CHECK(gec("2", Metal::copper) == "8");
    CHECK(gec("1/0", Metal::aluminum) == "8");
    CHECK(gec("4/0", Metal::aluminum) == "4");
    CHECK(gec("2/0", Metal::copper) == "4");
    CHECK(gec("350", Metal::copper) == "2");
    CHECK(gec("400", Metal::copper) == "1/0");
    CHECK(gec("600", Metal::copper, 2) == "3/0");
    const std::map<double, double> least = {{15, 15}, {20, 15}, {30, 30}, {40, 40}, {50, 50}};
    for (const auto& [circuit, receptacle] : least)
        CHECK(receptacle_range(book(), Amperes(circuit))->least.value == receptacle);
}

TEST_CASE("literals: Table 250.122 grows with the device, aluminum two gauges larger up to 100 A") {
    const RuleTable& table = book().table("nec-250-122");
    for (std::size_t row = 1; row < table.rows.size(); ++row)
        for (const std::size_t column : {1U, 2U})
            CHECK(*circular_mils(book(), table.text(row, column)) >=
                  *circular_mils(book(), table.text(row - 1, column)));
    for (std::size_t row = 0; row < table.rows.size(); ++row)
        CHECK(*circular_mils(book(), table.text(row, 2)) > *circular_mils(book(), table.text(row, 1)));
}

TEST_CASE("literals: NEC 2023 Table 310.16, first, middle and last rows") {
    CHECK(amps(listed_ampacity(book(), "14", Metal::copper, 60)) == 15);
    CHECK(amps(listed_ampacity(book(), "14", Metal::copper, 90)) == 25);
    CHECK(amps(listed_ampacity(book(), "6", Metal::copper, 60)) == 55);
    CHECK(amps(listed_ampacity(book(), "2", Metal::copper, 75)) == 115);
    CHECK(amps(listed_ampacity(book(), "1/0", Metal::aluminum, 75)) == 120);
    CHECK(amps(listed_ampacity(book(), "4/0", Metal::copper, 75)) == 230);
    CHECK(amps(listed_ampacity(book(), "1000", Metal::copper, 75)) == 545);    // from memory
    CHECK(amps(listed_ampacity(book(), "2000", Metal::aluminum, 75)) == 560);  // from memory
}

TEST_CASE("literals: NEC 2023 Table 310.15(B)(1)(1) follows from the heat that the insulation can shed") {
    // Circuit theory of the table (IEEE 835 in its simplest form): sqrt((Tc - Ta) / (Tc - 30)), at a row's hot end.
    for (const std::vector<Cell>& one : book().table("nec-310-15-b-1").rows)
        for (const auto& [column, hottest] : {std::pair(1, 60.0), std::pair(2, 75.0), std::pair(3, 90.0)}) {
            const double factor = number(one[static_cast<std::size_t>(column)]);
            if (factor == 0) continue;
            CHECK(factor == doctest::Approx(std::sqrt((hottest - number(one[0])) / (hottest - 30))).epsilon(0.008));
        }
}

TEST_CASE("literals: NEC 2023 Table 240.6(A), 240.4(D), Table 310.12(A)") {
    CHECK(book().table("nec-240-6-a").rows.size() == 38);
    CHECK(amps(standard_rating_at_least(book(), Amperes(53.75))) == 60);
    CHECK(amps(small_conductor_device(book(), "14", Metal::copper)) == 15);
    CHECK(amps(small_conductor_device(book(), "10", Metal::copper)) == 30);
    CHECK(dwelling_service_size(book(), Metal::copper, Amperes(100)) == "4");
    CHECK(dwelling_service_size(book(), Metal::aluminum, Amperes(200)) == "4/0");
    CHECK(dwelling_service_size(book(), Metal::copper, Amperes(400)) == "400");
}

TEST_CASE(
    "literals: NEC 2023 Table 310.12(A) is the least size of 83 per cent of the rating at 75 degrees (310.12(A), "
    "(B))") {
    for (const std::vector<Cell>& one : book().table("nec-310-12").rows) {
        const double needed = book().figure("dwelling-service-share") * number(one[0]);
        CAPTURE(number(one[0]));
        CHECK(amps(listed_ampacity(book(), text(one[1]), Metal::copper, 75)) >= needed - 0.5);
        CHECK(amps(listed_ampacity(book(), text(one[2]), Metal::aluminum, 75)) >= needed - 0.5);
    }
}

TEST_CASE("literals: NEC 2023 Tables 430.248 and 430.250") {
    CHECK(amps(motor_current(book(), "1/2", Volts(120), 1)) == 9.8);
    CHECK(amps(motor_current(book(), "3", Volts(120), 1)) == 34);
    CHECK(amps(motor_current(book(), "5", Volts(240), 1)) == 28);
    CHECK(amps(motor_current(book(), "1/2", Volts(208), 3)) == 2.4);
    CHECK(amps(motor_current(book(), "25", Volts(208), 3)) == 74.8);
    CHECK(amps(motor_current(book(), "100", Volts(480), 3)) == 124);
    CHECK(amps(motor_current(book(), "500", Volts(480), 3)) == 590);  // from memory
}

TEST_CASE("literals: the copper columns never fall with the size, nor aluminum above copper") {
    const RuleTable& table = book().table("nec-310-16");
    for (std::size_t size = 1; size < table.rows.size(); ++size)
        for (std::size_t column = 1; column <= 6; ++column)
            CHECK(table.number(size, column) >= table.number(size - 1, column));
    for (std::size_t size = 0; size < table.rows.size(); ++size)
        for (std::size_t column = 1; column <= 3; ++column)
            CHECK(table.number(size, column) >= table.number(size, column + 3));
}
