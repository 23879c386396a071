// SPDX-License-Identifier: MIT
#include "ui/errands.hpp"

#include <doctest/doctest.h>

#include "disk.hpp"
#include "file/journal.hpp"
#include "file/read_survey.hpp"
#include "survey/edits/circuit_edits.hpp"

using namespace doorcard;

namespace {

Survey survey_of(const std::string& text) { return read_survey({"", text})->survey; }

/// The cellar's survey with another word for its bench.
Survey bench_named(const std::string& words) { return *name_circuit("bench", words).apply(survey_of(cellar)); }

/// Errands of one folder, and what came back of them.
struct Run {
    explicit Run(const std::string& name)
        : folder(own_folder(name)),
          path(folder + "/cellar.survey.toml"),
          errands(folder + "/state/unnamed-1.survey.toml",
                  [this](Action action) { back.push_back(std::move(action)); }) {
        put(path, cellar);
    }
    void done(Effect effect) {
        errands.add(std::move(effect));
        errands.finish();
    }
    std::string folder, path;
    std::vector<Action> back;
    Errands errands;
};

SaveFile save_of(const std::string& path, const Survey& now) {
    return {path, cellar, false, cellar, survey_of(cellar), now};
}

}  // namespace

TEST_CASE("errands: what is edited is kept beside the file, which stays as it is") {
    Run run("keep");
    run.done(KeepJournal{run.path, cellar, survey_of(cellar), bench_named("Lathe")});
    CHECK(bytes_of(run.path) == cellar);
    const auto left = left_journal(run.path, cellar);
    REQUIRE(left);
    CHECK(left->is_based_on_file);
    CHECK(survey_of(left->text) == bench_named("Lathe"));
    CHECK(run.back.empty());
}

TEST_CASE("errands: of several states the last is kept") {
    Run run("several");
    for (const char* words : {"Lathe", "Drill", "Saw"})
        run.errands.add(KeepJournal{run.path, cellar, survey_of(cellar), bench_named(words)});
    run.errands.finish();
    CHECK(survey_of(left_journal(run.path, cellar)->text) == bench_named("Saw"));
}

TEST_CASE("errands: a survey without a file is kept whole in the state folder, which is made for it") {
    Run run("unnamed-kept");
    run.done(KeepJournal{"", cellar, survey_of(cellar), bench_named("Lathe")});
    const auto left = left_journal(run.folder + "/state/unnamed-1.survey.toml", "");
    REQUIRE(left);
    CHECK(survey_of(left->text) == bench_named("Lathe"));
    run.done(DropJournal{""});
    CHECK_FALSE(left_journal(run.folder + "/state/unnamed-1.survey.toml", ""));
}

TEST_CASE("errands: where nothing can be kept it is said, and editing goes on") {
    Run run("closed");
    run.done(KeepJournal{"/nowhere/at-all.survey.toml", cellar, survey_of(cellar), bench_named("Lathe")});
    REQUIRE(run.back.size() == 1);
    CHECK(std::get<SaveFailed>(run.back[0]).why.pattern.starts_with("Nothing is kept"));
}

TEST_CASE("errands: a save writes what was edited and tells what the file now says") {
    Run run("save");
    run.done(save_of(run.path, bench_named("Lathe")));
    REQUIRE(run.back.size() == 1);
    const auto* saved = std::get_if<Saved>(run.back.data());
    REQUIRE(saved);
    CHECK(saved->text == bytes_of(run.path));
    CHECK(survey_of(saved->text) == bench_named("Lathe"));
    CHECK(saved->survey == bench_named("Lathe"));
}

TEST_CASE("errands: a file that somebody else wrote meanwhile is not written over") {
    Run run("theirs");
    put(run.path, cellar + "# theirs\n");
    run.done(save_of(run.path, bench_named("Lathe")));
    REQUIRE(run.back.size() == 1);
    CHECK(std::holds_alternative<SaveFailed>(run.back[0]));
    CHECK(bytes_of(run.path) == cellar + "# theirs\n");
}

TEST_CASE("errands: a folder that is not there is said, and the survey stays unsaved") {
    Run run("no-folder");
    SaveFile wanted = save_of(run.folder + "/gone/cellar.survey.toml", bench_named("Lathe"));
    wanted.is_new = true;
    run.done(wanted);
    REQUIRE(run.back.size() == 1);
    CHECK(std::get<SaveFailed>(run.back[0]).why.pattern.starts_with("Not saved"));
}

TEST_CASE("errands: a new name is a new file, and what was there before stays") {
    Run run("new-name");
    SaveFile wanted = save_of(run.folder + "/copy.survey.toml", bench_named("Lathe"));
    wanted.is_new = true;
    run.done(wanted);
    CHECK(survey_of(bytes_of(wanted.path)) == bench_named("Lathe"));
    CHECK(bytes_of(run.path) == cellar);
}

TEST_CASE("errands: what waits when the window closes is done before it is gone") {
    std::string path;
    {
        Run run("closing");
        path = run.path;
        run.errands.add(save_of(path, bench_named("Lathe")));
    }
    CHECK(survey_of(bytes_of(path)) == bench_named("Lathe"));
}
