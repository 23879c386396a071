// SPDX-License-Identifier: MIT
#include "file/key_changes.hpp"

#include "file/edit_keys.hpp"
#include "file/reading.hpp"

using namespace doorcard;

namespace {

using What = KeyChange::What;

std::vector<KeyChange> changes(const std::string& before, const std::string& after) {
    return key_changes(survey_of("format = 1\n" + before), survey_of("format = 1\n" + after));
}

std::string first_refusal(const EntryEdit& edit) {
    const auto outcome = edited(survey_of(small_house), edit);
    REQUIRE_FALSE(outcome);
    return outcome.error().front().wrong;
}

EntryEdit change(const std::string& address, const std::vector<KeyEdit>& keys) {
    return {EntryEdit::Kind::change, address, keys, Mentions::refuse};
}

}  // namespace

TEST_CASE("key changes: by kind, id and key, as the file writes it") {
    CHECK(changes("[[circuit]]\nid = \"c\"\nwire = { size = \"12\" }\n",
                  "[survey]\ntitle = \"x\"\n[[circuit]]\nid = \"c\"\npurpose = \"p\"\nwire = { size = \"10\" }\n") ==
          std::vector<KeyChange>{{What::changed, "survey:", "title", {}, "\"x\""},
                                 {What::changed, "circuit:c", "purpose", {}, "\"p\""},
                                 {What::changed, "circuit:c", "wire.size", "\"12\"", "\"10\""}});
}

TEST_CASE("key changes: entries that come and go, those without an id by their place") {
    CHECK(changes("[[room]]\nid = \"a\"\n[mapping]\n", "[[room]]\nid = \"b\"\n[[trip]]\nof = \"survey:\"\n") ==
          std::vector<KeyChange>{{What::removed, "room:a", "", {}, {}},
                                 {What::added, "room:b", "", {}, {}},
                                 {What::removed, "mapping:", "", {}, {}},
                                 {What::added, "trip:1", "", {}, {}}});
}

TEST_CASE("key edits: what was typed becomes the value that the key takes") {
    const Survey survey = *edited(survey_of(small_house), change("outlet:K1", {{"label", "it's \"here\""},
                                                                               {"guards", "arc, ground"},
                                                                               {"run_ft", "11.5"},
                                                                               {"kind", "switch"},
                                                                               {"circuit", "[\"c\"]"},
                                                                               {"photos", "a.jpg"},
                                                                               {"switched_by", ""}}));
    const Outlet& outlet = survey.outlets[0];
    CHECK(outlet.label == "it's \"here\"");
    CHECK(outlet.guards == std::vector{Guard::arc, Guard::ground});
    CHECK(outlet.run == Length{11.5, false});
    CHECK(outlet.kind == OutletKind::switch_);
    CHECK(outlet.photos->front().file == "a.jpg");
    CHECK(outlet.switched_by == Ids{});  // looked: none
}

TEST_CASE("key edits: keys that are taken out, inner tables made, single tables made") {
    const Survey wired =
        *edited(survey_of(small_house), change("circuit:c", {{"wire.size", "12"}, {"breaker", std::nullopt}}));
    CHECK(wired.circuits[0].wire->size == "12");
    CHECK(wired.circuits[0].breakers.empty());
    CHECK(edited(wired, change("circuit:c", {{"wire", std::nullopt}}))->circuits[0].wire == std::nullopt);
    CHECK(edited(wired, change("grounding:", {{"gec.size", "4"}}))->grounding->gec_size == "4");
}

TEST_CASE("key edits: refusals in the manner of the file") {
    CHECK(first_refusal(change("circuit:d", {})) == "there is no circuit \"d\"");
    CHECK(first_refusal(change("circuit:c", {{"wire.seize", "12"}})) == "unknown key \"seize\" in wire of [[circuit]]");
    CHECK(first_refusal(change("load:t", {{"va", "many"}})) == "va = many is no value");
    CHECK(first_refusal(change("load:t", {{"va", "\"many\""}})) == "\"va\" in [[load]] is text");
    CHECK(first_refusal(change("load:t", {{"va", ""}})) == "\"va\" in [[load]] is text");
    CHECK(first_refusal(change("load:t", {{"va", "1\nx = 2"}})) == "unknown key \"x\" in [[load]]");
    CHECK(first_refusal(change("breaker:MAIN:5", {{"spaces", std::nullopt}})) == "[[breaker]] needs \"spaces\"");
    CHECK(first_refusal(change("reading:1", {})) == "there is no reading \"1\"");
    CHECK(first_refusal({EntryEdit::Kind::add, "circuit:c", {}, Mentions::refuse}) == "circuit \"c\" is there already");
}
