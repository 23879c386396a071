// SPDX-License-Identifier: MIT
#include "desk/feed_way.hpp"

#include <algorithm>

namespace doorcard {
namespace {

FeedStep step_of(const Survey& survey, const Panel& panel) {
    FeedStep step{&panel, nullptr, nullptr, {}};
    for (const std::string& feed : panel.fed_by) {
        const Source* source = survey.sources.find(feed);
        const Breaker* breaker = survey.breakers.find(feed);
        if (!source && !breaker) continue;
        if (step.source || step.breaker) {
            step.beside.push_back({source, source ? nullptr : breaker});
            continue;
        }
        step.source = source;
        step.breaker = source ? nullptr : breaker;
    }
    for (const Source& source : survey.sources)
        if (const Breaker* through = source.through ? survey.breakers.find(*source.through) : nullptr)
            if (through->panel == panel.id) step.beside.push_back({&source, through});
    return step;
}

}  // namespace

std::vector<FeedStep> feed_way(const Survey& survey, const Panel& shown) {
    std::vector<FeedStep> way;
    for (const Panel* panel = &shown; panel;) {
        const bool is_known = std::ranges::any_of(way, [&](const FeedStep& step) { return step.panel == panel; });
        if (is_known) break;
        way.push_back(step_of(survey, *panel));
        panel = way.back().breaker ? survey.panels.find(way.back().breaker->panel) : nullptr;
    }
    std::ranges::reverse(way);
    return way;
}

std::vector<FeedStep> fed_by(const Survey& survey, const Panel& above) {
    std::vector<FeedStep> steps;
    for (const Panel& panel : survey.panels)
        for (const std::string& feed : panel.fed_by)
            if (const Breaker* breaker = survey.breakers.find(feed); breaker && breaker->panel == above.id) {
                steps.push_back({&panel, nullptr, breaker, {}});
                break;
            }
    return steps;
}

}  // namespace doorcard
