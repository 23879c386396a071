// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <algorithm>
#include <utility>

#include "file/checks.hpp"

namespace doorcard {
namespace {

/// 'Row `from` is fed by row `to`', as a key of the file says.
struct Link {
    std::size_t from;
    std::size_t to;
    Place key;
};

/// Which links close a circle when they are laid one by one in the order of the file. Linear while there is none: the
/// links that can be in no circle are taken away first, and only the rest is looked at one by one.
class Circles {
public:
    Circles(std::size_t rows, std::vector<Link> links) : links_(std::move(links)), ways_(rows), visited_(rows) {}

    std::vector<Link> closing() {
        take_away_open_ends();
        std::ranges::stable_sort(links_, {}, &Link::key);
        std::vector<Link> found;
        for (const Link& link : links_) {
            if (found.size() < Complaints::most && leads(link.to, link.from))
                found.push_back(link);
            else
                ways_[link.from].push_back(link.to);
        }
        return found;
    }

private:
    /// Drops every link from a row that nothing circular can lie behind or before.
    void take_away_open_ends() {
        std::vector<std::size_t> left(ways_.size());
        std::vector<std::vector<std::size_t>> into(ways_.size());
        for (const Link& link : links_) {
            ++left[link.from];
            into[link.to].push_back(link.from);
        }
        std::vector<std::size_t> ends;
        for (std::size_t row = 0; row < left.size(); ++row)
            if (left[row] == 0) ends.push_back(row);
        while (!ends.empty()) {
            const std::size_t end = ends.back();
            ends.pop_back();
            for (const std::size_t row : into[end])
                if (--left[row] == 0) ends.push_back(row);
        }
        std::erase_if(links_, [&](const Link& link) { return left[link.from] == 0 || left[link.to] == 0; });
    }

    bool leads(std::size_t start, std::size_t goal) {
        ++round_;
        std::vector<std::size_t> next{start};
        while (!next.empty()) {
            const std::size_t row = next.back();
            next.pop_back();
            if (row == goal) return true;
            if (std::exchange(visited_[row], round_) == round_ || ++steps_ > most_steps) continue;
            next.insert(next.end(), ways_[row].begin(), ways_[row].end());
        }
        return false;
    }

    static constexpr std::size_t most_steps = 20'000'000;  // a file of circles alone may not hold us up
    std::vector<Link> links_;
    std::vector<std::vector<std::size_t>> ways_;
    std::vector<std::size_t> visited_;
    std::size_t round_ = 0;
    std::size_t steps_ = 0;
};

void check_upstream(const Checked& checked) {
    const Table<Outlet>& outlets = checked.survey.outlets;
    std::vector<Link> links;
    for (const Mark& mark : checked.marks.of("outlet", "upstream"))
        if (const std::size_t to = outlets.position(mark.text); to < outlets.size())
            links.push_back({mark.row, to, mark.key});
    for (const Link& link : Circles(outlets.size(), std::move(links)).closing())
        checked.complaints.add(link.key,
                               fmt::format("outlet \"{}\" is fed through \"{}\", which is fed through it",
                                           outlets[link.from].id, outlets[link.to].id),
                               "break the circle: name what really feeds one of its outlets");
}

void check_fed_by(const Checked& checked) {
    const Table<Panel>& panels = checked.survey.panels;
    std::vector<Link> links;
    for (const Mark& mark : checked.marks.of("panel", "fed_by")) {
        const Breaker* breaker = checked.survey.breakers.find(mark.text);
        const std::size_t to = breaker ? panels.position(breaker->panel) : panels.size();
        if (to < panels.size()) links.push_back({mark.row, to, mark.key});
    }
    for (const Link& link : Circles(panels.size(), std::move(links)).closing())
        checked.complaints.add(link.key,
                               fmt::format("panel \"{}\" is fed from panel \"{}\", which is fed from it",
                                           panels[link.from].id, panels[link.to].id),
                               "break the circle: name what really feeds one of its panels");
}

}  // namespace

void check_cycles(const Checked& checked) {
    check_upstream(checked);
    check_fed_by(checked);
}

}  // namespace doorcard
