// SPDX-License-Identifier: MIT
// That nothing of a survey is out of reach: every key of every table has its field, its label and its words.
#include <doctest/doctest.h>

#include <algorithm>
#include <set>

#include "assess/rule_list.hpp"
#include "desk/entry_keys.hpp"
#include "desk/field_labels.hpp"
#include "desk/form.hpp"
#include "desk/form_order.hpp"
#include "file/read_survey.hpp"

using namespace doorcard;

namespace {

/// One entry of every table, with the keys that it must have and no others.
const char* const one_of_each = R"(format = 1
[survey]
[[dwelling]]
[[occupancy]]
[grounding]
[[source]]
id = "u"
[[panel]]
id = "M"
[[breaker]]
panel = "M"
spaces = [1]
[[circuit]]
id = "c"
[[room]]
id = "r"
[[outlet]]
id = "o"
[[load]]
id = "l"
[[managed]]
id = "g"
[[reading]]
of = "panel:M"
[[recording]]
file = "a.csv"
[[waveform]]
file = "w.csv"
of = "panel:M"
[[demand]]
of = "panel:M"
[[limit]]
of = "panel:M"
key = "amps"
[[round]]
off = ["M:1"]
[mapping]
[[trip]]
of = "breaker:M:1"
[[hunt]]
circuit = "c"
[[trial]]
circuit = "c"
kind = "watch"
[[accepted]]
rule = "voltage-drop"
of = "circuit:c"
[[photo]]
file = "p.jpg"
)";

Survey survey_of(const char* text) {
    const auto read = read_survey({"test.survey.toml", text});
    REQUIRE_MESSAGE(read.has_value(), (read ? "" : read.error().front().wrong));
    return read->survey;
}

std::string address_of_first(const Survey& survey, const KeyTable& table) {
    const std::string_view id = id_of(survey, table, 0);
    return std::string(table.name) + ":" + (table.shape == Shape::one ? "" : id.empty() ? "1" : std::string(id));
}

std::set<std::string> keys_on(const std::vector<FormGroup>& groups) {
    std::set<std::string> keys;
    for (const FormGroup& group : groups)
        for (const FormField& field : group.fields) keys.insert(field.key);
    return keys;
}

void add_keys(std::vector<std::string>& keys, FieldList list, const std::string& before) {
    for (const Field& field : list) {
        if (field.form == Form::table)
            add_keys(keys, field.keys, before + std::string(field.name) + ".");
        else
            keys.push_back(before + std::string(field.name));
    }
}

}  // namespace

TEST_CASE("every key of every table is on the form of its entry, or edited where it is said to be") {
    const Survey survey = survey_of(one_of_each);
    for (const KeyTable& table : all_tables()) {
        REQUIRE_MESSAGE(table.count(survey) > 0, table.name);
        const auto on = keys_on(form_of(survey, address_of_first(survey, table), Units::feet));
        std::vector<std::string> keys;
        add_keys(keys, table.keys, "");
        for (const std::string& key : keys) {
            const MeasureKeys measure = measure_keys(list_with(table.keys, key), key);
            const bool is_there = on.contains(key) || on.contains(measure.feet);
            CHECK_MESSAGE(is_there != is_edited_elsewhere(table.name, key), table.name << " " << key);
        }
    }
    for (const KeyElsewhere& one : keys_elsewhere()) CHECK(std::string(one.where) != "");
}

TEST_CASE("every field has a label of its own words, and every closed word is said in the trade's") {
    const Survey survey = survey_of(one_of_each);
    for (const KeyTable& table : all_tables())
        for (const FormGroup& group : form_of(survey, address_of_first(survey, table), Units::feet))
            for (const FormField& field : group.fields) {
                CHECK_MESSAGE(field.label.parts.empty(), table.name << " " << field.key);
                const Field* key = field_named(table.keys, field.key);
                REQUIRE(key);
                // Letters of legs, systems and editions are what they are.
                for (const FieldChoice& choice : field.choices)
                    if (!key->words.empty() && std::islower(static_cast<unsigned char>(choice.value[0])))
                        CHECK_MESSAGE(choice.label.parts.empty(),
                                      table.name << " " << field.key << " " << choice.value);
                CHECK((field.entry != Entry::choice || field.choices.size() > 1));
            }
}

TEST_CASE("every rule's findings lead to the field that mends them") {
    for (const RuleEntry& rule : rule_list()) CHECK_MESSAGE(is_rule_mended(rule.name), rule.name);
}
