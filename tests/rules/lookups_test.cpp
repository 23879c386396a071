// SPDX-License-Identifier: MIT
// The lookups over the built-in book, at both ends, in the middle and just outside of each table.
#include "rules/lookups.hpp"

#include <doctest/doctest.h>

#include <stdexcept>

using namespace doorcard;

namespace {

const RuleBook& book() {
    static const RuleBook built_in = built_in_book("NEC-2023").value();
    return built_in;
}

/// The number in an optional quantity; -1 for none, so that a 0 cannot pass for it.
template <class Q>
double value_or_none(const std::optional<Q>& quantity) {
    return quantity ? quantity->value : -1;
}

double ampacity(const char* size, Metal metal, int column) {
    return value_or_none(listed_ampacity(book(), size, metal, column));
}

double motor(const char* hp, double nominal, int phases) {
    return value_or_none(motor_current(book(), hp, Volts(nominal), phases));
}

double range(double kilovolt_amperes) {
    return value_or_none(range_demand(book(), VoltAmperes(1000 * kilovolt_amperes)));
}

double next_standard(double amps) { return value_or_none(standard_rating_at_least(book(), Amperes(amps))); }

}  // namespace

TEST_CASE("listed ampacity: ends, middle, and none where the table has none") {
    CHECK(ampacity("18", Metal::copper, 90) == 14);
    CHECK(ampacity("18", Metal::copper, 60) == -1);
    CHECK(ampacity("14", Metal::copper, 60) == 15);
    CHECK(ampacity("14", Metal::aluminum, 75) == -1);
    CHECK(ampacity("12", Metal::aluminum, 60) == 15);
    CHECK(ampacity("1/0", Metal::copper, 75) == 150);
    CHECK(ampacity("4/0", Metal::aluminum, 75) == 180);
    CHECK(ampacity("500", Metal::copper, 90) == 430);
    CHECK(ampacity("2000", Metal::aluminum, 90) == 630);
    CHECK(ampacity("2250", Metal::copper, 75) == -1);
    CHECK(ampacity("", Metal::copper, 75) == -1);
    CHECK_THROWS_AS(ampacity("12", Metal::copper, 105), std::out_of_range);
}

TEST_CASE("insulation letters: the column of the type, whatever the case and spaces") {
    for (const char* letters : {"TW", "UF", "NM", "NMC"}) CHECK(insulation_column(book(), letters) == 60);
    for (const char* letters : {"RHW", "THW", "THWN", "THHW", "XHHW", "USE", "ZW"})
        CHECK(insulation_column(book(), letters) == 75);
    for (const char* letters :
         {"THHN", "THWN-2", "THW-2", "XHHW-2", "XHH", "RHH", "RHW-2", "USE-2", "SIS", "NM-B", "UF-B"})
        CHECK(insulation_column(book(), letters) == 90);
    CHECK(insulation_column(book(), " nm-b ") == 90);
    CHECK(insulation_column(book(), "thwn -2") == 90);
    CHECK(insulation_column(book(), "THWN2") == std::nullopt);
    CHECK(insulation_column(book(), "cloth") == std::nullopt);
    CHECK(insulation_column(book(), "") == std::nullopt);
}

TEST_CASE("only NM-B and UF-B are held to 60 degrees in the end") {
    CHECK(held_to_60(book(), "NM-B"));
    CHECK(held_to_60(book(), "uf-b"));
    CHECK_FALSE(held_to_60(book(), "THHN"));
    CHECK_FALSE(held_to_60(book(), "TW"));
    CHECK_FALSE(held_to_60(book(), "unheard of"));
}

TEST_CASE("between two ambient rows the hotter") {
    CHECK(ambient_factor(book(), Celsius(30), 90) == 1.0);
    CHECK(ambient_factor(book(), Celsius(30.5), 90) == 0.96);
    CHECK(ambient_factor(book(), Celsius(31), 90) == 0.96);
    CHECK(ambient_factor(book(), Celsius(35), 60) == 0.91);
    CHECK(ambient_factor(book(), Celsius(25.01), 75) == 1.0);
}

TEST_CASE("ambient factors at both ends, and 0 where it is too hot") {
    CHECK(ambient_factor(book(), Celsius(0), 60) == 1.29);
    CHECK(ambient_factor(book(), Celsius(-20), 90) == 1.15);
    CHECK(ambient_factor(book(), Celsius(10), 75) == 1.20);
    CHECK(ambient_factor(book(), Celsius(55), 60) == 0.41);
    CHECK(ambient_factor(book(), Celsius(55.1), 60) == 0);
    CHECK(ambient_factor(book(), Celsius(70), 75) == 0.33);
    CHECK(ambient_factor(book(), Celsius(70.1), 75) == 0);
    CHECK(ambient_factor(book(), Celsius(85), 90) == 0.29);
    CHECK(ambient_factor(book(), Celsius(85.1), 90) == 0);
    CHECK(ambient_factor(book(), Celsius(400), 90) == 0);
}

TEST_CASE("bundling factors change at 4, 7, 10, 21, 31 and 41 conductors") {
    const std::pair<int, double> steps[] = {{0, 1.0},   {1, 1.0},  {3, 1.0},  {4, 0.8},   {6, 0.8},
                                            {7, 0.7},   {9, 0.7},  {10, 0.5}, {20, 0.5},  {21, 0.45},
                                            {30, 0.45}, {31, 0.4}, {40, 0.4}, {41, 0.35}, {500, 0.35}};
    for (const auto& [conductors, factor] : steps) {
        CAPTURE(conductors);
        CHECK(bundling_factor(book(), conductors) == factor);
    }
}

TEST_CASE("devices of small conductors, and none from 8 AWG on") {
    CHECK(value_or_none(small_conductor_device(book(), "18", Metal::copper)) == 7);
    CHECK(value_or_none(small_conductor_device(book(), "14", Metal::copper)) == 15);
    CHECK(value_or_none(small_conductor_device(book(), "12", Metal::copper)) == 20);
    CHECK(value_or_none(small_conductor_device(book(), "10", Metal::copper)) == 30);
    CHECK(value_or_none(small_conductor_device(book(), "12", Metal::aluminum)) == 15);
    CHECK(value_or_none(small_conductor_device(book(), "10", Metal::aluminum)) == 25);
    CHECK(small_conductor_device(book(), "14", Metal::aluminum) == std::nullopt);
    CHECK(small_conductor_device(book(), "8", Metal::copper) == std::nullopt);
}

TEST_CASE("next standard rating: itself where it is one, else the next, none above the largest") {
    CHECK(next_standard(0) == 10);
    CHECK(next_standard(10) == 10);
    CHECK(next_standard(10.1) == 15);
    CHECK(next_standard(20) == 20);
    CHECK(next_standard(20 * (1 + 1e-12)) == 20);
    CHECK(next_standard(20.001) == 25);
    CHECK(next_standard(53.75) == 60);
    CHECK(next_standard(101) == 110);
    CHECK(next_standard(801) == 1000);
    CHECK(next_standard(6000) == 6000);
    CHECK(next_standard(6000.1) == -1);
}

TEST_CASE("conductors of a dwelling's service: both ends, between two ratings, and outside of the table") {
    CHECK(dwelling_service_size(book(), Metal::copper, Amperes(100)) == "4");
    CHECK(dwelling_service_size(book(), Metal::aluminum, Amperes(100)) == "2");
    CHECK(dwelling_service_size(book(), Metal::copper, Amperes(160)) == "1/0");
    CHECK(dwelling_service_size(book(), Metal::aluminum, Amperes(200)) == "4/0");
    CHECK(dwelling_service_size(book(), Metal::copper, Amperes(400)) == "400");
    CHECK(dwelling_service_size(book(), Metal::aluminum, Amperes(400)) == "600");
    CHECK(dwelling_service_size(book(), Metal::copper, Amperes(99.9)) == std::nullopt);
    CHECK(dwelling_service_size(book(), Metal::copper, Amperes(401)) == std::nullopt);
}

TEST_CASE("sizes in the order of the table") {
    CHECK(at_least_size(book(), "4/0", "2/0") == true);
    CHECK(at_least_size(book(), "2/0", "4/0") == false);
    CHECK(at_least_size(book(), "12", "12") == true);
    CHECK(at_least_size(book(), "14", "12") == false);
    CHECK(at_least_size(book(), "1", "2") == true);
    CHECK(at_least_size(book(), "250", "4/0") == true);
    CHECK(at_least_size(book(), "5", "12") == std::nullopt);
    CHECK(at_least_size(book(), "12", "") == std::nullopt);
}

TEST_CASE("horsepower as it is written") {
    CHECK(horsepower("3/4") == 0.75);
    CHECK(horsepower("1-1/2") == 1.5);
    CHECK(horsepower("7-1/2") == 7.5);
    CHECK(horsepower("5") == 5.0);
    CHECK(horsepower("1.5") == 1.5);
    CHECK(horsepower(".5") == 0.5);
    for (const char* none : {"", "0", "-1", "1/0", "0/4", "one", "1-2", "1-", "-1/2", "3/", "/4", "3/4/5", "5 hp",
                             "1/2-1", "nan", "inf", "1e999", "3/-4"}) {
        CAPTURE(none);
        CHECK(horsepower(none) == std::nullopt);
    }
}

TEST_CASE("single-phase motors: the column of the nominal volts, the next larger row") {
    CHECK(motor("1/6", 120, 1) == 4.4);
    CHECK(motor("1/8", 120, 1) == 4.4);
    CHECK(motor("1", 120, 1) == 16);
    CHECK(motor("3/4", 208, 1) == 7.6);
    CHECK(motor("5", 240, 1) == 28);
    CHECK(motor("4", 240, 1) == 28);
    CHECK(motor("1.5", 240, 1) == 10);
    CHECK(motor("1-1/2", 240, 1) == 10);
    CHECK(motor("10", 240, 1) == 50);
    CHECK(motor("10.1", 240, 1) == -1);
    CHECK(motor("1", 277, 1) == -1);
    CHECK(motor("1", 480, 1) == -1);
    CHECK(motor("some", 120, 1) == -1);
}

TEST_CASE("three-phase motors") {
    CHECK(motor("1/2", 208, 3) == 2.4);
    CHECK(motor("25", 208, 3) == 74.8);
    CHECK(motor("30", 480, 3) == 40);
    CHECK(motor("200", 208, 3) == 528);
    CHECK(motor("201", 208, 3) == -1);
    CHECK(motor("201", 480, 3) == 302);
    CHECK(motor("500", 480, 3) == 590);
    CHECK(motor("501", 480, 3) == -1);
    CHECK(motor("5", 120, 3) == -1);
}

TEST_CASE("devices of motor circuits in per cent") {
    CHECK(motor_device_percent(book(), false, 1) == 250);
    CHECK(motor_device_percent(book(), true, 1) == 175);
    CHECK(motor_device_percent(book(), false, 3) == 250);
    CHECK(motor_device_percent(book(), true, 3) == 175);
}

TEST_CASE("demand of one household range") {
    CHECK(range(1.0) == -1);
    CHECK(range(1.75) == -1);
    CHECK(range(1.76) == 8000);
    CHECK(range(8) == 8000);
    CHECK(range(12) == 8000);
    CHECK(range(12.4) == 8000);
    CHECK(range(12.5) == doctest::Approx(8400).epsilon(1e-12));
    CHECK(range(13) == doctest::Approx(8400).epsilon(1e-12));
    CHECK(range(16) == doctest::Approx(9600).epsilon(1e-12));
    CHECK(range(26.6) == doctest::Approx(14000).epsilon(1e-12));
    CHECK(range(27) == doctest::Approx(14000).epsilon(1e-12));
    CHECK(range(27.01) == -1);
    CHECK(book().table("nec-220-55-c").number(0, 1) == book().figure("range-demand-kva"));
}

TEST_CASE("configurations of receptacles and plugs") {
    const auto said = [](const char* name) {
        const std::optional<Configuration> found = configuration(book(), name);
        return found ? std::pair(found->volts.value, found->amps.value) : std::pair(-1.0, -1.0);
    };
    CHECK(said("1-15") == std::pair(120.0, 15.0));
    CHECK(said("5-20R") == std::pair(120.0, 20.0));
    CHECK(said("5-15p") == std::pair(120.0, 15.0));
    CHECK(said("14-50R") == std::pair(240.0, 50.0));
    CHECK(said(" l14-30r") == std::pair(240.0, 30.0));
    CHECK(said("TT-30R") == std::pair(120.0, 30.0));
    CHECK(said("18-60R") == std::pair(208.0, 60.0));
    CHECK(said("L23-30") == std::pair(600.0, 30.0));
    for (const char* none : {"5-17R", "5-20", "5-20RR", "R", "", "NEMA 5-20R", "20", "5-2O"})
        CHECK(said(none) == (std::string(none) == "5-20" ? std::pair(120.0, 20.0) : std::pair(-1.0, -1.0)));
}
