// SPDX-License-Identifier: MIT
// What names what stands in the key lists, for the reader, and in names.hpp, for edits: the two say the same.
#include <set>

#include "file/keys.hpp"
#include "file/reading.hpp"
#include "survey/references.hpp"

using namespace doorcard;

namespace {

/// A value that names something which is not there.
Value naming(const Field& field) {
    const std::string name = field.refers >= to_address ? "circuit:zz" : "zz";
    if (field.refers == to_hunt_place) return Ids{"run:zz"};
    if (field.form == Form::volts_by_address) return std::map<std::string, Volts>{{name, Volts(1)}};
    if (field.form == Form::columns)
        return std::map<std::string, RecordingColumn>{{"c", {*parse_address(name), {}, {}}}};
    return field.form == Form::text ? Value(name) : Value(Ids{name});
}

/// An entry with all keys that name something.
Survey naming_all(const KeyTable& table) {
    Survey survey;
    table.add(survey);
    table.alter(survey, 0, [&](void* owner) {
        for (const Field& field : table.keys)
            if (field.refers != to_nothing) field.set(owner, naming(field));
    });
    return survey;
}

}  // namespace

TEST_CASE("names: every key that names something is known to edits, and no other") {
    std::size_t named = 0;
    for (const KeyTable& table : all_tables()) {
        CAPTURE(table.name);
        std::set<std::string> by_lists, by_edits;
        for (const Field& field : table.keys)
            if (field.refers != to_nothing) by_lists.emplace(field.name);
        for (const Reference& reference : dangling_references(naming_all(table))) {
            CHECK(reference.id == "zz");
            by_edits.insert(reference.key);
        }
        CHECK(by_lists == by_edits);
        named += by_lists.size();
    }
    CHECK(named > 30);
}

TEST_CASE("names: what is renamed is renamed in every key, and what goes is named nowhere") {
    for (const KeyTable& table : all_tables()) {
        CAPTURE(table.name);
        Survey survey = naming_all(table);
        const std::size_t count = dangling_references(survey).size();
        rename_all(survey, named_anything, "zz", "yy");
        CHECK(dangling_references(survey).size() == count);
        for (const Reference& reference : dangling_references(survey)) CHECK(reference.id == "yy");
        rename_all(survey, named_anything, "yy", std::nullopt);
        CHECK(dangling_references(survey).empty());
    }
}
