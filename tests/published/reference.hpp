// SPDX-License-Identifier: MIT
#pragma once
#include <optional>
#include <string>
#include <vector>

#include "rules/book.hpp"

/// The reference figures beside the project (../shared/reference, ../shared/data). Where they are absent a test says
/// 'skipped: ../shared is absent' and passes.
namespace reference {

using Rows = std::vector<std::vector<doorcard::Cell>>;

/// True where the file is there; else prints the line and is false.
bool present(const std::string& file);

/// Rows of the `[[table]]` of this id in circuit_facts.toml. Nested lists are left out of a row.
Rows table_rows(const std::string& id);
/// The value of a `[[fact]]` of circuit_facts.toml: a number, or the member `key` of a table.
double fact(const std::string& id, const std::string& key = "");
/// The list that is the value of a `[[fact]]`.
std::vector<double> fact_list(const std::string& id);

/// A list of lists, or of numbers (a row each), under [section] of load_tables.toml.
Rows load_rows(const std::string& section, const std::string& key);
double load_figure(const std::string& section, const std::string& key);

/// Id and kind of every case of circuit_cases.toml.
struct Case {
    std::string id;
    std::string kind;
};
std::vector<Case> cases();

/// A pole of the real panel in data/panel_rae_house1.toml.
struct Pole {
    int position = 0;
    std::string leg;
    double amps = 0;
    std::string label;
};
struct RealPanel {
    double service_a = 0;
    int positions = 0;
    std::vector<int> without_breaker;
    double sum_l1 = 0, sum_l2 = 0;
    int labels_on_two_poles = 0;
    std::vector<Pole> poles;
};
RealPanel real_panel();

}  // namespace reference
