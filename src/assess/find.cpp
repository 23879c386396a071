// SPDX-License-Identifier: MIT
#include "assess/find.hpp"

#include <algorithm>
#include <cmath>
#include <tuple>

#include "assess/find_places.hpp"
#include "assess/find_words.hpp"

namespace doorcard {
namespace {

/// How a place answers the question.
struct Answer {
    double score = 0;
    std::size_t thing = 0;  ///< the one whose words fit best
    std::vector<Slip> slips;
    bool claimed = false;  ///< some word stands in an old label alone
};

/// The best hit of one word on a place.
struct Hit {
    double score = 0;
    std::size_t thing = 0;
    bool of_panel = false;
    std::string taken;  ///< of a near miss
    bool claimed = false;
};

Hit hit_among(const FindPlace& place, const std::string& wanted, bool near, bool claimed) {
    constexpr double near_fit = 0.4;
    Hit best;
    for (const Telling& telling : place.tellings)
        for (const std::string& word : telling.words) {
            if (telling.claimed != claimed) continue;
            double fit = fit_of_words(wanted, word);
            const bool slip = fit == 0 && near && is_near_miss(wanted, word);
            if (slip) fit = near_fit;
            if (fit * telling.weight <= best.score) continue;
            best = {fit * telling.weight, telling.thing, telling.of_panel, slip ? word : std::string(), claimed};
        }
    return best;
}

/// What somebody looked at goes before what the old directory says.
Hit hit_of(const FindPlace& place, const std::string& wanted, bool near) {
    const Hit seen = hit_among(place, wanted, near, false);
    return seen.score > 0 && !seen.of_panel
               ? seen
               : std::ranges::max(seen, hit_among(place, wanted, near, true), {}, &Hit::score);
}

/// Nullopt where some word fits nowhere, or all of them say only the panel.
std::optional<Answer> answer_of(const FindPlace& place, const std::vector<std::string>& wanted, bool near) {
    Answer answer;
    double most = 0;
    bool beyond_panel = false;
    for (const std::string& word : wanted) {
        const Hit hit = hit_of(place, word, near);
        if (hit.score == 0) return std::nullopt;
        beyond_panel = beyond_panel || !hit.of_panel;
        if (!hit.taken.empty()) answer.slips.push_back({word, hit.taken});
        if (hit.score > most && !hit.of_panel) answer.thing = hit.thing;
        if (!hit.of_panel) most = std::max(most, hit.score);
        answer.score += hit.score;
        answer.claimed = answer.claimed || hit.claimed;
    }
    return beyond_panel ? std::optional(std::move(answer)) : std::nullopt;
}

Match match_of(FindPlace& place, const Answer& answer) {
    Match match = std::move(place.match);
    const bool by_handle = place.things[answer.thing].of.kind == ThingKind::breaker && !answer.claimed;
    const NamedThing& thing = place.things[by_handle ? 0 : answer.thing];
    match.of = thing.of;
    match.text = thing.text;
    if (&thing != &place.things.front() && match.circuit) match.on = place.things.front().text;
    if (answer.claimed) {
        match.sure = match.proved
                         ? Message{tr("not proved: tracing found something else than the old directory says"), {}}
                         : sureness(Traced{"old-directory", {}, {}});
        match.traced = "old-directory";
        match.proved = false;
    }
    return match;
}

bool before(const std::pair<Answer, Match>& a, const std::pair<Answer, Match>& b) {
    constexpr double alike = 1e-9;
    if (std::abs(a.first.score - b.first.score) > alike) return a.first.score > b.first.score;
    if (a.second.proved != b.second.proved) return a.second.proved;
    return std::tie(a.second.panel, a.second.positions) < std::tie(b.second.panel, b.second.positions);
}

FindResult found(std::vector<FindPlace>& places, const std::vector<std::string>& wanted, bool near) {
    std::vector<std::pair<Answer, Match>> answers;
    for (FindPlace& place : places)
        if (auto answer = answer_of(place, wanted, near)) answers.emplace_back(*answer, match_of(place, *answer));
    std::ranges::stable_sort(answers, before);
    FindResult result;
    for (auto& [answer, match] : answers) {
        for (const Slip& slip : answer.slips)
            if (std::ranges::find(result.slips, slip) == result.slips.end()) result.slips.push_back(slip);
        result.matches.push_back(std::move(match));
    }
    return result;
}

}  // namespace

FindResult find_in(const Network& network, std::string_view question) {
    const std::vector<std::string> wanted = wanted_words(question);
    if (wanted.empty()) return {};
    std::vector<FindPlace> places = find_places(network);
    FindResult exact = found(places, wanted, false);
    return exact.matches.empty() ? found(places, wanted, true) : exact;
}

}  // namespace doorcard
