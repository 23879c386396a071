// SPDX-License-Identifier: MIT
#include "desk/update.hpp"

#include <doctest/doctest.h>

#include "desk/face_gestures.hpp"
#include "desk/typed_breaker.hpp"
#include "file/read_survey.hpp"

using namespace doorcard;

namespace {

const std::string cellar = R"(format = 1
[survey]
title = "Nine steps down"
[[panel]]
id = "MAIN"
spaces = 12
[[breaker]]
panel = "MAIN"
spaces = [1]
amps = 20
[[circuit]]
id = "bench"
breaker = "MAIN:1"
purpose = "Workbench"
)";

std::shared_ptr<const RuleBook> usual_book() {
    static const auto book = std::make_shared<const RuleBook>(*built_in_book("NEC-2023"));
    return book;
}

/// A desk that is driven as a window would, and all that it wanted done outside.
struct Driven {
    Desk desk;
    Effects effects;
    void act(Action action) {
        auto [next, wanted] = update(std::move(desk), std::move(action));
        desk = std::move(next);
        effects.insert(effects.end(), wanted.begin(), wanted.end());
    }
    template <class Kind>
    const Kind* last() const {
        const Kind* found = nullptr;
        for (const Effect& one : effects)
            if (const auto* kind = std::get_if<Kind>(&one)) found = kind;
        return found;
    }
    void type(int space, std::string_view typed) {
        act(Apply{typed_breaker(desk.survey, desk.spot.panel, {space, ' '}, typed)->edit});
    }
};

Driven opened(const std::string& text = cellar) {
    Driven driven;
    auto read = read_survey({"house.survey.toml", text});
    driven.act(Opened{"house.survey.toml", text, read->survey, usual_book(), std::nullopt});
    return driven;
}

}  // namespace

TEST_CASE("desk: a survey that was opened shows its first panel, and nothing of it is changed") {
    const Driven driven = opened();
    CHECK(driven.desk.is_open);
    CHECK(driven.desk.spot.panel == "MAIN");
    CHECK(!driven.desk.is_changed);
    CHECK(keeping_of(driven.desk).pattern == "all in the file");
    CHECK(driven.last<Remember>() != nullptr);
}

TEST_CASE("desk: an edit is kept in the journal and not in the file; undo and redo go both ways") {
    Driven driven = opened();
    driven.type(3, "20 Kitchen");
    CHECK(driven.desk.survey.breakers.contains("MAIN:3"));
    CHECK(driven.desk.is_changed);
    REQUIRE(driven.last<KeepJournal>() != nullptr);
    CHECK(driven.last<KeepJournal>()->now == driven.desk.survey);
    CHECK(driven.last<SaveFile>() == nullptr);
    driven.act(Undo{});
    CHECK(!driven.desk.survey.breakers.contains("MAIN:3"));
    CHECK(!driven.desk.is_changed);
    CHECK(driven.last<DropJournal>() != nullptr);
    driven.act(Redo{});
    CHECK(driven.desk.survey.breakers.contains("MAIN:3"));
}

TEST_CASE("desk: what follows from an edit is there with it") {
    Driven driven = opened();
    const auto before = driven.desk.assessed.assessment.circuits.size();
    driven.type(3, "20 Kitchen");
    CHECK(driven.desk.assessed.assessment.circuits.size() == before + 1);
    CHECK(driven.desk.assessed.survey == driven.desk.survey);
}

TEST_CASE("desk: an edit that is refused changes nothing and says why") {
    Driven driven = opened();
    driven.act(Apply{*move_to(driven.desk.survey, "MAIN", {1, ' '}, {3, ' '})});
    const Survey moved = driven.desk.survey;
    driven.act(Apply{Edit{{"fails", {}}, [](Survey) -> Outcome<Survey> { return refused("no", "yes"); }}});
    CHECK(driven.desk.survey == moved);
    REQUIRE(driven.desk.said);
    CHECK(driven.desk.said->kind == Said::Kind::refused);
    CHECK(driven.desk.said->complaints.front().wrong == "no");
}

TEST_CASE("desk: saving asks for the file as it was read; after it nothing is unsaved, but for later edits") {
    Driven driven = opened();
    driven.type(3, "20 Kitchen");
    driven.act(Save{});
    const SaveFile* wanted = driven.last<SaveFile>();
    REQUIRE(wanted != nullptr);
    CHECK(wanted->was == cellar);
    const Survey saved = wanted->now;
    driven.type(5, "15 Hall");
    driven.act(Saved{"house.survey.toml", "the new text", saved});
    CHECK(driven.desk.is_changed);
    driven.act(Undo{});
    CHECK(!driven.desk.is_changed);
}

TEST_CASE("desk: a file that somebody else changed is offered; theirs can be undone, mine is kept for the next save") {
    Driven driven = opened();
    driven.type(3, "20 Kitchen");
    const Survey mine = driven.desk.survey;
    std::string other = cellar;
    other.replace(other.find("Workbench"), 9, "Long bench");
    driven.act(FileChanged{other});
    CHECK(driven.desk.survey == mine);
    REQUIRE(driven.desk.theirs);
    Driven taken = driven;
    taken.act(TakeTheirs{});
    CHECK(taken.desk.survey.circuits.find("bench")->purpose == "Long bench");
    CHECK(!taken.desk.is_changed);
    taken.act(Undo{});
    CHECK(taken.desk.survey == mine);
    driven.act(KeepMine{});
    CHECK(driven.desk.survey == mine);
    driven.act(Save{});
    CHECK(driven.last<SaveFile>()->was == other);
}

TEST_CASE("desk: a file that somebody else broke is not taken") {
    Driven driven = opened();
    driven.act(FileChanged{"format = 1\n[[brekaer]]\n"});
    driven.act(TakeTheirs{});
    CHECK(driven.desk.survey.circuits.contains("bench"));
    CHECK(driven.desk.said->kind == Said::Kind::refused);
}

TEST_CASE("desk: what a crash left is offered, and taking it is a step that can be undone") {
    std::string kept = cellar;
    kept.replace(kept.find("Workbench"), 9, "Long bench");
    Driven driven = opened();
    driven.act(LeftFound{{kept, true}});
    CHECK(driven.desk.survey.circuits.find("bench")->purpose == "Workbench");
    driven.act(TakeJournal{});
    CHECK(driven.desk.survey.circuits.find("bench")->purpose == "Long bench");
    CHECK(driven.desk.is_changed);
    driven.act(Undo{});
    CHECK(driven.desk.survey.circuits.find("bench")->purpose == "Workbench");
}

TEST_CASE("desk: going to what a finding is about opens its slip at its row, and back leads where one was") {
    Driven driven = opened();
    driven.act(ShowPage{JobPage::measure});
    const Spot before = driven.desk.spot;
    driven.act(GoTo{"circuit:bench", "wire.size"});
    CHECK(driven.desk.spot.row == Position{1, ' '});
    CHECK(driven.desk.spot.slip == "circuit:bench");
    CHECK(driven.desk.spot.field == "wire.size");
    driven.act(GoBack{});
    CHECK(driven.desk.spot == before);
}

TEST_CASE("desk: once locked as found, a move and a rating are planned; text is still written down") {
    Driven driven = opened();
    driven.act(LockAsFound{true});
    driven.act(Apply{*move_to(driven.desk.survey, "MAIN", {1, ' '}, {3, ' '})});
    CHECK(driven.desk.survey.breakers.contains("MAIN:1"));
    CHECK(driven.desk.notes.plan.changes.size() == 1);
    driven.type(1, "30 Long bench");
    CHECK(driven.desk.survey.breakers.find("MAIN:1")->amps == Amperes(20));
    CHECK(driven.desk.survey.circuits.find("bench")->purpose == "Long bench");
    CHECK(driven.desk.notes.plan.changes.size() == 2);
    REQUIRE(driven.last<KeepNotes>() != nullptr);
    CHECK(driven.last<KeepNotes>()->notes == driven.desk.notes);
}

TEST_CASE("desk: what is planned is done as one step") {
    Driven driven = opened();
    driven.act(LockAsFound{true});
    driven.act(Apply{*move_to(driven.desk.survey, "MAIN", {1, ' '}, {3, ' '})});
    driven.act(CarryOutPlan{});
    CHECK(driven.desk.survey.breakers.contains("MAIN:3"));
    CHECK(driven.desk.notes.plan.changes.empty());
    driven.act(Undo{});
    CHECK(driven.desk.survey.breakers.contains("MAIN:1"));
}

TEST_CASE("desk: unlocked, a move is made at once") {
    Driven driven = opened();
    driven.act(Apply{*move_to(driven.desk.survey, "MAIN", {1, ' '}, {3, ' '})});
    CHECK(driven.desk.survey.breakers.contains("MAIN:3"));
    CHECK(driven.desk.notes.plan.changes.empty());
}

TEST_CASE("desk: the survey as it was before the first round is kept whole beside it") {
    Driven driven = opened();
    Round round;
    round.off = {"MAIN:1"};
    driven.type(3, "20 Kitchen");
    driven.act(Apply{Edit{{"a round", {}}, [round](Survey survey) -> Outcome<Survey> {
                              survey.rounds = Table<Round>({round});
                              return survey;
                          }}});
    REQUIRE(driven.desk.notes.snapshot);
    CHECK(driven.desk.notes.snapshot->find("Kitchen") != std::string::npos);
    CHECK(driven.desk.notes.snapshot->find("[[round]]") == std::string::npos);
}

TEST_CASE("desk: a new survey has a panel to type on and no file yet") {
    Driven driven;
    driven.act(BeginNew{{System::split_120_240, 24, 200.0}, usual_book()});
    CHECK(driven.desk.is_open);
    CHECK(driven.desk.spot.panel == "MAIN");
    CHECK(keeping_of(driven.desk).pattern == "all changes kept, no file yet");
    driven.act(SaveAs{"new.survey.toml"});
    REQUIRE(driven.last<SaveFile>() != nullptr);
    CHECK(driven.last<SaveFile>()->is_new);
}
