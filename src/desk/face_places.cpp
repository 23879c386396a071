// SPDX-License-Identifier: MIT
#include "desk/face_places.hpp"

#include <algorithm>
#include <map>

#include "network/legs.hpp"

namespace doorcard {
namespace {

/// A panel's spaces as they hang.
class Hung {
public:
    Hung(const Survey& survey, std::string_view panel)
        : survey_(survey), panel_(survey.panels.find(panel)), geometry_(panel_ ? *panel_ : Panel{}, highest(panel)) {}

    std::vector<FacePlaceRun> side(bool left) const {
        std::vector<FacePlaceRun> runs;
        if (!panel_) return runs;
        for (const int space : spaces(left)) add(space, runs);
        return runs;
    }

    /// From the top.
    std::vector<int> spaces(bool left) const {
        std::vector<int> found;
        for (int space = 1; space <= geometry_.spaces(); ++space)
            if (geometry_.on_left(space) == left) found.push_back(space);
        std::ranges::sort(found, {}, [this](int space) { return geometry_.row(space); });
        return found;
    }
    bool on_left(int space) const { return geometry_.on_left(space); }
    int row(int space) const { return geometry_.row(space); }
    bool is_there() const { return panel_ != nullptr; }

private:
    int highest(std::string_view panel) {
        int most = 0;
        for (const Breaker& breaker : survey_.breakers) {
            if (breaker.panel != panel) continue;
            for (const Position one : positions_of(breaker)) {
                taken_[one] = &breaker;
                most = std::max(most, one.space);
            }
        }
        return most;
    }

    void add(int space, std::vector<FacePlaceRun>& runs) const {
        const bool halved = taken_.contains({space, 'a'}) || taken_.contains({space, 'b'});
        if (!halved) return add(Position{space, ' '}, runs);
        const bool over = panel_->turned_over.value_or(false);
        add(Position{space, over ? 'b' : 'a'}, runs);
        add(Position{space, over ? 'a' : 'b'}, runs);
    }

    void add(Position position, std::vector<FacePlaceRun>& runs) const {
        const auto here = taken_.find(position);
        const bool goes_on = here != taken_.end() && !runs.empty() && taken_.contains(runs.back().back()) &&
                             taken_.at(runs.back().back()) == here->second;
        goes_on ? runs.back().push_back(position) : runs.push_back({position});
    }

    const Survey& survey_;
    const Panel* panel_;
    std::map<Position, const Breaker*> taken_;
    SpaceGeometry geometry_;
};

/// All runs in the order of a walk: down the left, then down the right; and where in it a position lies.
struct Walk {
    std::vector<FacePlaceRun> runs;
    std::size_t at = 0;

    Walk(const Survey& survey, std::string_view panel, Position position) : runs(face_side(survey, panel, true)) {
        for (FacePlaceRun& run : face_side(survey, panel, false)) runs.push_back(std::move(run));
        while (at < runs.size() && std::ranges::find(runs[at], position) == runs[at].end()) ++at;
    }
};

}  // namespace

std::vector<FacePlaceRun> face_side(const Survey& survey, std::string_view panel, bool left) {
    return Hung(survey, panel).side(left);
}

const Breaker* breaker_at(const Survey& survey, std::string_view panel, Position position) {
    for (const Breaker& breaker : survey.breakers) {
        if (breaker.panel != panel) continue;
        const auto positions = positions_of(breaker);
        if (std::ranges::find(positions, position) != positions.end()) return &breaker;
    }
    return nullptr;
}

std::optional<Position> below(const Survey& survey, std::string_view panel, Position position) {
    const Walk walk(survey, panel, position);
    return walk.at + 1 < walk.runs.size() ? std::optional(walk.runs[walk.at + 1].front()) : std::nullopt;
}

std::optional<Position> above(const Survey& survey, std::string_view panel, Position position) {
    const Walk walk(survey, panel, position);
    return walk.at > 0 && walk.at < walk.runs.size() ? std::optional(walk.runs[walk.at - 1].front()) : std::nullopt;
}

std::optional<Position> across(const Survey& survey, std::string_view panel, Position position) {
    const Hung hung(survey, panel);
    const auto other = hung.side(!hung.on_left(position.space));
    std::optional<Position> best;
    for (const FacePlaceRun& run : other)
        for (const Position one : run)
            if (hung.row(one.space) <= hung.row(position.space)) best = run.front();
    if (!best && !other.empty()) best = other.front().front();
    return best;
}

std::optional<std::vector<int>> spaces_down(const Survey& survey, std::string_view panel, int space, int poles) {
    const Hung hung(survey, panel);
    if (!hung.is_there()) return std::nullopt;
    const std::vector<int> side = hung.spaces(hung.on_left(space));
    const auto at = std::ranges::find(side, space);
    if (side.end() - at < poles) return std::nullopt;
    std::vector<int> found(at, at + poles);
    std::ranges::sort(found);
    return found;
}

}  // namespace doorcard
