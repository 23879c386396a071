// SPDX-License-Identifier: MIT
// Makes edits of all kinds in the survey FILE, one after another, as a person does, and says how long each takes to be
// made and until it is known what follows from it, in milliseconds; then how long its text takes for the journal. The
// screen is to be painted at most 33 ms after an edit.
#include <fmt/format.h>
#include <malloc.h>

#include <algorithm>
#include <chrono>
#include <cstdio>

#include "assess/reassess.hpp"
#include "file/read_survey.hpp"
#include "file/read_text.hpp"
#include "file/rewrite_survey.hpp"
#include "survey/edits/breaker_edits.hpp"
#include "survey/edits/circuit_edits.hpp"
#include "survey/edits/entry_edits.hpp"
#include "survey/edits/load_edits.hpp"
#include "survey/edits/outlet_edits.hpp"
#include "survey/history.hpp"

using namespace doorcard;

namespace {

template <class T>
const T& some(const Table<T>& table, std::size_t number) {
    return table[number * 4801 % table.size()];
}

template <class T>
T with_id(T thing, std::string id) {
    thing.id = std::move(id);
    return thing;
}

/// The n-th round of edits. One breaker goes, another moves into its place, one comes where that was.
class RoundOfEdits {
public:
    RoundOfEdits(const Survey& survey, std::size_t n) : survey_(survey), n_(n), gone_(branch_breaker()) {}

    std::vector<std::pair<const char*, Edit>> edits() const {
        const Breaker& other = *survey_.breakers.find(beside(gone_));
        const std::string load = some(survey_.loads, n_).id, outlet = some(survey_.outlets, n_).id;
        const std::string circuit = some(survey_.circuits, n_).id;
        Outlet box = with_id(some(survey_.outlets, n_ + 1), fmt::format("new-outlet-{}", n_));
        Load lamp = with_id(some(survey_.loads, n_ + 1), fmt::format("new-load-{}", n_));
        lamp.outlet = box.id;
        Circuit wired = some(survey_.circuits, n_ + 2);
        wired.wire.emplace().size = "10";
        Load heavier = some(survey_.loads, n_ + 2);
        heavier.va = VoltAmperes(100 + static_cast<double>(n_));
        Reading reading = some(survey_.readings, n_);
        reading.amps = Amperes(5);
        return {{"rate a breaker", rate_breaker(other.id, Amperes(n_ % 2 ? 15 : 25))},
                {"swap two breakers", swap_breakers(gone_.id, beside(gone_))},
                {"take out a breaker", remove_breaker(gone_.id, Mentions::take_along)},
                {"move a breaker", move_breaker(other.id, place_of(gone_))},
                {"add a breaker", add_breaker(other)},
                {"name a circuit", name_circuit(circuit, fmt::format("Stall {}", n_))},
                {"change a circuit", change_circuit(wired)},
                {"add a circuit", add_circuit(with_id(Circuit(wired), fmt::format("new-circuit-{}", n_)))},
                {"take out a circuit", remove_circuit(some(survey_.circuits, n_ + 3).id, Mentions::take_along)},
                {"add an outlet", add_outlet(box)},
                {"assign an outlet", assign_outlet(outlet, {circuit})},
                {"take out an outlet", remove_outlet(some(survey_.outlets, n_ + 5).id, Mentions::take_along)},
                {"add a load", add_load(lamp)},
                {"change a load", change_load(heavier)},
                {"take out a load", remove_load(load, Mentions::take_along)},
                {"add a reading", add_reading(reading)},
                {"change a reading", change_reading(n_ * 619 % survey_.readings.size(), reading)},
                {"take out a reading", remove_reading(n_ * 421 % survey_.readings.size())}};
    }

private:
    /// In the middle of some panel, so that the space below is there.
    const Breaker& branch_breaker() const {
        for (std::size_t at = n_ * 479;; ++at)
            if (const Breaker& it = survey_.breakers[at % survey_.breakers.size()];
                it.panel.starts_with("P") && it.spaces.front() < 40 && survey_.breakers.contains(beside(it)))
                return it;
    }
    static std::string beside(const Breaker& breaker) {
        return fmt::format("{}:{}", breaker.panel, breaker.spaces.front() + 2);
    }

    const Survey& survey_;
    std::size_t n_;
    const Breaker& gone_;
};

double milliseconds(std::chrono::steady_clock::time_point since) {
    return std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - since).count();
}

struct Times {
    std::vector<double> applied, followed, both;

    void add(double apply, double reassess) {
        applied.push_back(apply), followed.push_back(reassess), both.push_back(apply + reassess);
    }
    static double at(std::vector<double> times, double share) {
        std::ranges::sort(times);
        return times[static_cast<std::size_t>(share * static_cast<double>(times.size() - 1) + 0.5)];
    }
    void say(const char* what) const {
        fmt::print("  {:<26}", what);
        for (const auto& times : {applied, followed, both})
            fmt::print("  {:7.2f} {:7.2f}", at(times, 0.5), at(times, 0.99));
        fmt::print("\n");
    }
};

/// The desk as it is between edits.
struct Walk {
    Assessed assessed;
    History history;
    std::map<std::string, Times> of_kind;
    Times of_all;

    void make(const char* kind, const Edit& edit, const RuleBook& book) {
        const auto began = std::chrono::steady_clock::now();
        const Survey before = assessed.survey;
        auto after = edit.apply(before);
        const double applied = milliseconds(began);
        if (!after) throw std::runtime_error(std::string(kind) + ": " + after.error().front().wrong);
        history.add(edit.name, before);
        const auto known = std::chrono::steady_clock::now();
        assessed = reassess(std::move(assessed), *after, book);
        const double followed = milliseconds(known);
        of_kind[kind].add(applied, followed);
        of_all.add(applied, followed);
    }
};

double mebibytes_in_use() { return static_cast<double>(mallinfo2().uordblks + mallinfo2().hblkhd) / 1024 / 1024; }

/// What the steps behind 'Undo' hold beside the survey of now; they are gone after it.
void say_undo(History& history) {
    const std::size_t steps = history.past().size();
    const double with = mebibytes_in_use();
    history = {};
    fmt::print("  {:<26}  {:7.1f} MiB, {} steps\n", "kept for undo", with - mebibytes_in_use(), steps);
}

void say_journal(const std::string& text, const Walk& walk) {
    const Survey& first = walk.history.past().front().survey;
    for (const auto& [what, after] : {std::pair{"text after one edit", walk.history.past()[1].survey},
                                      std::pair{"text after all of them", walk.assessed.survey}}) {
        const auto began = std::chrono::steady_clock::now();
        const std::size_t bytes = spliced(text, first, after).size();
        fmt::print("  {:<26}  {:7.0f} ms, {} bytes\n", what, milliseconds(began), bytes);
    }
}

void measure(const std::string& text, const Survey& survey, const RuleBook& book) {
    const auto began = std::chrono::steady_clock::now();
    Walk walk{assess_all(survey, book), {}, {}, {}};
    fmt::print("  {:<26}  {:7.1f} ms\n", "the whole, looked at once", milliseconds(began));
    for (std::size_t n = 1; n <= 12; ++n)
        for (const auto& [kind, edit] : RoundOfEdits(Survey(walk.assessed.survey), n).edits())
            walk.make(kind, edit, book);
    fmt::print("  {:<26}  {:<15}  {:<15}  {}\n", "median, 99th of 100, ms", "made", "follows", "both");
    for (const auto& [kind, times] : walk.of_kind) times.say(kind.c_str());
    walk.of_all.say("all");
    say_journal(text, walk);
    say_undo(walk.history);
}

}  // namespace

int main(int count, char** arguments) {
    if (count != 2) return std::fputs("usage: reassess_edits FILE\n", stderr), 2;
    auto text = read_text(arguments[1]);
    if (!text) return std::fputs("no such survey\n", stderr), 1;
    const std::string bytes = text->bytes;
    auto read = read_survey(std::move(*text));
    if (!read) return std::fputs("no survey\n", stderr), 1;
    measure(bytes, read->survey, built_in_book("NEC-2023").value());
}
