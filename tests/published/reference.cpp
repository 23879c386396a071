// SPDX-License-Identifier: MIT
#include "published/reference.hpp"

#include <doctest/doctest.h>
#include <toml++/toml.h>

#include <filesystem>
#include <iostream>

namespace reference {
namespace {

const std::string shared = DOORCARD_SHARED;
const char* const facts_file = "reference/circuit_facts.toml";
const char* const loads_file = "reference/load_tables.toml";

toml::table parsed(const std::string& file) { return toml::parse_file(shared + "/" + file); }

/// The entry of `list` whose `id` is this.
const toml::table& entry(const toml::table& file, const char* list, const std::string& id) {
    for (const toml::node& one : *file[list].as_array())
        if ((*one.as_table())["id"].value<std::string>() == id) return *one.as_table();
    FAIL("the reference has no " << list << " " << id);
    return file;
}

std::optional<doorcard::Cell> cell(const toml::node& value) {
    if (auto text = value.value_exact<std::string>()) return *text;
    if (value.is_number()) return *value.value<double>();
    return std::nullopt;
}

Rows rows_of(const toml::array& list) {
    Rows rows;
    for (const toml::node& one : list) {
        std::vector<doorcard::Cell> row;
        if (const toml::array* cells = one.as_array()) {
            for (const toml::node& value : *cells)
                if (auto found = cell(value)) row.push_back(*found);
        } else if (auto found = cell(one)) {
            row.push_back(*found);
        }
        rows.push_back(row);
    }
    return rows;
}

}  // namespace

bool present(const std::string& file) {
    if (std::filesystem::exists(shared + "/" + file)) return true;
    std::cout << "skipped: ../shared is absent\n";
    return false;
}

Rows table_rows(const std::string& id) {
    const toml::table file = parsed(facts_file);
    return rows_of(*entry(file, "table", id).get("rows")->as_array());
}

double fact(const std::string& id, const std::string& key) {
    const toml::table file = parsed(facts_file);
    const toml::node& value = *entry(file, "fact", id).get("value");
    const toml::node& number = key.empty() ? value : *value.as_table()->get(key);
    return number.value<double>().value();
}

std::vector<double> fact_list(const std::string& id) {
    const toml::table file = parsed(facts_file);
    std::vector<double> list;
    for (const auto& row : rows_of(*entry(file, "fact", id).get("value")->as_array()))
        list.push_back(std::get<double>(row.front()));
    return list;
}

Rows load_rows(const std::string& section, const std::string& key) {
    const toml::table file = parsed(loads_file);
    return rows_of(*file[section][key].as_array());
}

double load_figure(const std::string& section, const std::string& key) {
    return parsed(loads_file)[section][key].value<double>().value();
}

std::vector<Case> cases() {
    const toml::table file = parsed("reference/circuit_cases.toml");
    std::vector<Case> all;
    for (const toml::node& one : *file["case"].as_array()) {
        const toml::table& given = *one.as_table();
        all.push_back({given["id"].value<std::string>().value(), given["kind"].value<std::string>().value()});
    }
    return all;
}

RealPanel real_panel() {
    const toml::table file = parsed("data/panel_rae_house1.toml");
    RealPanel panel;
    panel.service_a = file["service_A"].value<double>().value();
    panel.positions = file["positions"].value<int>().value();
    panel.sum_l1 = file["sum_of_ratings_A"]["L1"].value<double>().value();
    panel.sum_l2 = file["sum_of_ratings_A"]["L2"].value<double>().value();
    panel.labels_on_two_poles = file["labels_on_two_poles"].value<int>().value();
    for (const toml::node& one : *file["poles_without_breaker"].as_array())
        panel.without_breaker.push_back(one.value<int>().value());
    for (const toml::node& one : *file["pole"].as_array()) {
        const toml::table& pole = *one.as_table();
        panel.poles.push_back({pole["position"].value<int>().value(), pole["leg"].value<std::string>().value(),
                               pole["breaker_A"].value<double>().value(), pole["label"].value<std::string>().value()});
    }
    return panel;
}

}  // namespace reference
