// SPDX-License-Identifier: MIT
// The results of the program against docs/schemas.
#include <doctest/doctest.h>

#include <set>
#include <valijson/adapters/nlohmann_json_adapter.hpp>
#include <valijson/schema.hpp>
#include <valijson/schema_parser.hpp>
#include <valijson/validator.hpp>

#include "cli/ran_program.hpp"

using nlohmann::json;

namespace {

using Adapter = valijson::adapters::NlohmannJsonAdapter;

json schema_of(const std::string& command) {
    return json::parse(file_text(DOORCARD_SOURCE "/docs/schemas/" + command + ".schema.json"));
}

/// A schema, read once.
class Judge {
public:
    explicit Judge(const std::string& command) {
        const json text = schema_of(command);
        const Adapter adapter(text);
        valijson::SchemaParser().populateSchema(adapter, schema_);
    }
    /// What is wrong with a result; empty: nothing.
    std::string faults(const json& result) const {
        valijson::Validator validator;
        valijson::ValidationResults found;
        const Adapter adapter(result);
        if (validator.validate(schema_, adapter, &found)) return "";
        std::string all;
        for (valijson::ValidationResults::Error error; found.popError(error);) {
            for (const std::string& part : error.context) all += part;
            all += ": " + error.description + "\n";
        }
        return all.empty() ? "invalid" : all;
    }

private:
    valijson::Schema schema_;
};

const Judge& judge(const std::string& command) {
    static const std::map<std::string, Judge> judges = [] {
        std::map<std::string, Judge> all;
        for (const char* name : {"check", "card", "new", "find", "set", "schedule"}) all.emplace(name, name);
        return all;
    }();
    return judges.at(command);
}

/// The result of a command line in a folder; null where the program did not accept the file.
json result_of(const std::filesystem::path& folder, const std::string& line) {
    const Ran left = ran(folder, "doorcard " + line + " --json");
    return left.status <= 1 ? json::parse(left.output) : json();
}

json result_of_example(const std::string& command) {
    return result_of(DOORCARD_SOURCE, command + " examples/alder-row.survey.toml");
}

/// The survey of a case; empty where it has none.
std::string survey_of_case(const std::filesystem::path& path) {
    const std::string text = file_text(path), mark = "=== survey\n";
    const auto begin = text.find(mark);
    if (begin == std::string::npos) return "";
    const auto end = text.find("\n=== ", begin);
    return text.substr(begin + mark.size(), end + 1 - begin - mark.size());
}

/// Every object within a value, by its place.
void find_objects(const json& value, const json::json_pointer& at, std::vector<json::json_pointer>& found) {
    if (value.is_object()) {
        found.push_back(at);
        for (const auto& [key, member] : value.items()) find_objects(member, at / key, found);
    }
    if (value.is_array())
        for (std::size_t i = 0; i < value.size(); ++i) find_objects(value[i], at / i, found);
}

/// Keys without which a result is still valid.
std::set<std::string> keys_that_may_be_missing(const std::string& command, const json& result) {
    std::vector<json::json_pointer> objects;
    find_objects(result, json::json_pointer(), objects);
    std::set<std::string> optional;
    for (const auto& at : objects)
        for (const auto& [key, member] : result.at(at).items()) {
            json without = result;
            without.at(at).erase(key);
            if (judge(command).faults(without).empty()) optional.insert(key);
        }
    return optional;
}

/// The first of each list, so that a walk through all of it stays short.
json pruned(json value) {
    if (value.is_array() && value.size() > 1) value.erase(value.begin() + 1, value.end());
    if (value.is_structured())
        for (json& member : value) member = pruned(member);
    return value;
}

void find_keywords(const json& schema, std::set<std::string>& found) {
    if (!schema.is_object()) return;
    for (const auto& [key, member] : schema.items()) {
        found.insert(key);
        if (key == "properties" || key == "$defs")
            for (const json& inner : member) find_keywords(inner, found);
        else
            find_keywords(member, found);
    }
}

}  // namespace

TEST_CASE("schemas: the example's results are as they say") {
    for (const char* command : {"check", "card", "schedule"}) {
        const json result = result_of_example(command);
        REQUIRE(result.is_object());
        CHECK(judge(command).faults(result) == "");
    }
    const TemporaryFolder folder;
    CHECK(judge("new").faults(result_of(folder.path(), "new house.survey.toml")) == "");
    for (const char* line :
         {"room:attic --add title=x", "room:attic title=y", "room:attic title=y", "room:attic --remove"}) {
        const json result = result_of(folder.path(), "set house.survey.toml " + std::string(line));
        REQUIRE(result.is_object());
        CHECK(judge("set").faults(result) == "");
    }
    write_file(folder / "old.txt", "1 Hall\n2 Bath\n4-Feb Range\n");
    const json listed = json::parse(ran(folder.path(), "doorcard new a.toml --from old.txt --json").output);
    CHECK(judge("new").faults(listed) == "");
    CHECK(listed["refused"].size() == 1);
    CHECK(judge("find").faults(result_of(DOORCARD_SOURCE, "find examples/alder-row.survey.toml kitchen")) == "");
}

TEST_CASE("schemas: so are those of every survey among the cases, and all kinds of rows are among them") {
    std::map<std::string, std::size_t> rows;
    for (const auto& entry : std::filesystem::directory_iterator(DOORCARD_SOURCE "/tests/cases")) {
        const std::string survey = survey_of_case(entry.path());
        if (survey.empty()) continue;
        CAPTURE(entry.path().filename().string());
        const TemporaryFolder folder;
        write_file(folder / "house.toml", survey);
        for (const char* command : {"check", "card", "schedule"}) {
            const json result = result_of(folder.path(), std::string(command) + " house.toml");
            if (result.is_null()) continue;
            CHECK(judge(command).faults(result) == "");
            for (const auto& [key, list] : result.items()) rows[command + (" " + key)] += list.size();
        }
    }
    CHECK(rows.size() == 11);
    for (const auto& [key, count] : rows) CHECK_MESSAGE(count > 0, key);
}

TEST_CASE("schemas: every key of the contract must be there") {
    // What is beside the contract's keys may be missing, and a leg of legs_a that the thing does not have.
    CHECK(keys_that_may_be_missing("check", pruned(result_of_example("check"))) == std::set<std::string>{"A", "B"});
    CHECK(keys_that_may_be_missing("card", pruned(result_of_example("card"))) ==
          std::set<std::string>{"claimed", "halves", "under"});
    CHECK(keys_that_may_be_missing("new", {{"files", {"a"}}}).empty());
    CHECK(
        keys_that_may_be_missing(
            "set", {{"files", {"a"}},
                    {"changes",
                     {{{"what", "changed"}, {"of", "room:a"}, {"key", "title"}, {"was", nullptr}, {"now", "\"x\""}}}}})
            .empty());
    CHECK(keys_that_may_be_missing("find", result_of(DOORCARD_SOURCE, "find examples/alder-row.survey.toml frezer")) ==
          std::set<std::string>{"slips", "wanted", "taken", "halves", "proved", "also_fed_by"});
}

TEST_CASE("schemas: further keys are allowed, wrong values are not") {
    json result = result_of_example("check");
    result["further"] = 1;
    CHECK(judge("check").faults(result) == "");
    for (const auto& [place, value] : std::map<std::string, json>{{"/findings/0/severity", "fatal"},
                                                                  {"/findings/0/of", "N5"},
                                                                  {"/findings/0/value", "26.3"},
                                                                  {"/findings/0/source", ""},
                                                                  {"/circuits/0/legs/0", "D"},
                                                                  {"/circuits/0/legs_a", json::array()},
                                                                  {"/circuits/0/legs_a/D", 1},
                                                                  {"/panels/0/system", "110 V"},
                                                                  {"/neutrals/0/amps", "-"}}) {
        json wrong = result;
        wrong[json::json_pointer(place)] = value;
        CHECK_MESSAGE(judge("check").faults(wrong) != "", place);
    }
}

TEST_CASE("schemas: draft 2020-12, and only words that the validator of this test knows") {
    const std::set<std::string> known = {
        "$schema", "$defs", "$ref",    "title",     "description", "type",     "required",      "properties",
        "items",   "enum",  "pattern", "minLength", "minimum",     "minItems", "propertyNames", "additionalProperties"};
    for (const char* command : {"check", "card", "new", "find", "set", "schedule"}) {
        CHECK(schema_of(command)["$schema"] == "https://json-schema.org/draft/2020-12/schema");
        std::set<std::string> used;
        find_keywords(schema_of(command), used);
        for (const std::string& word : used) CHECK_MESSAGE(known.contains(word), command << ": " << word);
    }
}
