// SPDX-License-Identifier: MIT
// Makes edits of several kinds in the survey FILE, one after another, and says how long it took each time to know what
// follows from it, and to draw its panels: milliseconds, one line a kind. A frame of a screen is 16 ms.
#include <fmt/format.h>

#include <chrono>
#include <cstdio>

#include "assess/reassess.hpp"
#include "desk/face_picture.hpp"
#include "desk/feed_line.hpp"
#include "file/read_survey.hpp"
#include "file/read_text.hpp"

using namespace doorcard;

namespace {

template <class T, class Change>
Table<T> with_one_changed(const Table<T>& table, std::size_t at, Change change) {
    T row = table[at % table.size()];
    change(row);
    return table.with_row(at % table.size(), std::move(row));
}

struct Kind {
    const char* name;
    void (*edit)(Survey&, std::size_t number);
};

const Kind kinds[] = {
    {"a breaker's rating",
     [](Survey& survey, std::size_t n) {
         survey.breakers = with_one_changed(survey.breakers, n * 977,
                                            [&](Breaker& b) { b.amps = Amperes(15 + static_cast<double>(n % 3) * 5); });
     }},
    {"a circuit's text",
     [](Survey& survey, std::size_t n) {
         survey.circuits =
             with_one_changed(survey.circuits, n * 839, [&](Circuit& c) { c.purpose = fmt::format("Stall {}", n); });
     }},
    {"a circuit's wire",
     [](Survey& survey, std::size_t n) {
         survey.circuits = with_one_changed(survey.circuits, n * 757, [](Circuit& c) { c.wire.emplace().size = "14"; });
     }},
    {"an outlet on another circuit",
     [](Survey& survey, std::size_t n) {
         survey.outlets = with_one_changed(survey.outlets, n * 4999, [&](Outlet& o) {
             o.circuits = {survey.circuits[n * 613 % survey.circuits.size()].id};
         });
     }},
    {"a load's nameplate",
     [](Survey& survey, std::size_t n) {
         survey.loads = with_one_changed(survey.loads, n * 4801,
                                         [&](Load& l) { l.va = VoltAmperes(100 + static_cast<double>(n)); });
     }},
    {"a reading more",
     [](Survey& survey, std::size_t n) {
         std::vector<Reading> rows = survey.readings.rows();
         Reading reading;
         reading.of = {ThingKind::circuit, survey.circuits[n * 571 % survey.circuits.size()].id, ""};
         reading.amps = Amperes(5);
         rows.push_back(reading);
         survey.readings = Table<Reading>(std::move(rows));
     }},
};

double milliseconds(std::chrono::steady_clock::time_point since) {
    return std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - since).count();
}

void measure(Assessed assessed, const RuleBook& book) {
    constexpr std::size_t edits = 15;
    std::vector<Survey> past;  // undo keeps them
    for (const Kind& kind : kinds) {
        std::vector<double> times;
        std::size_t panels = 0;
        for (std::size_t n = 1; n <= edits; ++n) {
            past.push_back(assessed.survey);
            Survey after = assessed.survey;
            kind.edit(after, n);
            const auto began = std::chrono::steady_clock::now();
            assessed = reassess(std::move(assessed), after, book);
            times.push_back(milliseconds(began));
            panels = std::max(panels, assessed.panels_anew);
        }
        std::sort(times.begin(), times.end());
        fmt::print("  {:<30} middle {:6.1f} ms   longest {:6.1f} ms   at most {} panels\n", kind.name, times[edits / 2],
                   times.back(), panels);
    }
}

template <class Make>
void measure_making(const char* what, std::size_t panels, Make make) {
    constexpr std::size_t times_made = 15;
    std::vector<double> times;
    for (std::size_t n = 1; n <= times_made; ++n) {
        const auto began = std::chrono::steady_clock::now();
        make(n * 13 % panels);
        times.push_back(milliseconds(began));
    }
    std::sort(times.begin(), times.end());
    fmt::print("  {:<30} middle {:6.1f} ms   longest {:6.1f} ms\n", what, times[times_made / 2], times.back());
}

void measure_face(const Assessed& assessed) {
    const Words words = Words::in("en");
    const std::size_t panels = assessed.survey.panels.size();
    std::vector<FaceFacts> facts;
    measure_making("what a panel's face is made of", panels,
                   [&](std::size_t panel) { facts.push_back(face_facts(assessed, panel)); });
    measure_making("the face as a picture", facts.size(), [&](std::size_t at) { face_picture(facts[at], {}, words); });
    measure_making("the feed line", panels, [&](std::size_t panel) { feed_line(assessed.survey, panel, 240, words); });
}

}  // namespace

int main(int count, char** arguments) {
    if (count != 2) return std::fputs("usage: reassess_edits FILE\n", stderr), 2;
    auto text = read_text(arguments[1]);
    auto read = text ? read_survey(std::move(*text)) : tl::unexpected(text.error());
    if (!read) return std::fputs("no such survey\n", stderr), 1;
    const RuleBook book = built_in_book("NEC-2023").value();
    const auto began = std::chrono::steady_clock::now();
    Assessed assessed = assess_all(read->survey, book);
    fmt::print("  {:<30} {:13.1f} ms\n", "the whole, looked at once", milliseconds(began));
    measure_face(assessed);
    measure(std::move(assessed), book);
}
