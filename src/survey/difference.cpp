// SPDX-License-Identifier: MIT
#include "survey/difference.hpp"

#include <algorithm>
#include <map>
#include <unordered_map>

#include "survey/alignment.hpp"
#include "survey/each_table.hpp"

namespace doorcard {
namespace {

// What an entry without an id is of, in a few words: two that agree in it may be one that was changed.
std::string subject(const Occupancy& it) { return it.kind.value_or("") + '\n' + it.panel.value_or(""); }
std::string subject(const Reading& it) { return it.of.text(); }
std::string subject(const Recording& it) { return it.file; }
std::string subject(const Waveform& it) { return it.file; }
std::string subject(const Demand& it) { return it.of.text(); }
std::string subject(const Limit& it) { return it.of.text() + '\n' + it.key.value_or(""); }
std::string subject(const Round& it) {
    std::string all;
    for (const std::string& id : it.off) all += id + '\n';
    return all;
}
std::string subject(const Trip& it) { return it.of.text(); }
std::string subject(const Hunt& it) { return it.circuit.value_or("") + '\n' + it.breaker.value_or(""); }
std::string subject(const Trial& it) { return it.circuit + '\n' + it.kind; }
std::string subject(const Accepted& it) { return it.rule.value_or("") + '\n' + it.of.value_or(""); }
std::string subject(const Photo& it) { return it.file; }

using Was = std::vector<std::optional<std::size_t>>;

/// Matches entries without an id: first the longest common run, then what is alike elsewhere (it was moved), then what
/// was changed between two matches of the run.
template <class T>
class RowMatcher {
public:
    RowMatcher(const Table<T>& before, const Table<T>& after, Was& was)
        : before_(before), after_(after), was_(was), taken_(before.size()) {}

    void match() {
        const auto same = [&](std::size_t b, std::size_t a) { return before_[b] == after_[a]; };
        const Was run = was_ = alignment(before_.size(), after_.size(), same);
        for (const auto& at : run)
            if (at) taken_[*at] = true;
        match_moved();
        std::size_t before_begin = 0, after_begin = 0;
        for (std::size_t i = 0; i <= after_.size(); ++i) {
            if (i < after_.size() && !run[i]) continue;
            const std::size_t before_end = i < after_.size() ? *run[i] : before_.size();
            match_gap(left_before(before_begin, before_end), left_after(after_begin, i));
            before_begin = before_end + 1;
            after_begin = i + 1;
        }
    }

private:
    using Places = std::vector<std::size_t>;

    void match_moved() {
        std::unordered_multimap<std::string, std::size_t> left;
        for (std::size_t b = 0; b < taken_.size(); ++b)
            if (!taken_[b]) left.emplace(subject(before_[b]), b);
        for (std::size_t a = 0; a < was_.size(); ++a) {
            if (was_[a]) continue;
            auto [at, end] = left.equal_range(subject(after_[a]));
            while (at != end && !(before_[at->second] == after_[a])) ++at;
            if (at == end) continue;
            take(at->second, a);
            left.erase(at);
        }
    }

    Places left_before(std::size_t begin, std::size_t end) const {
        Places left;
        for (; begin < end; ++begin)
            if (!taken_[begin]) left.push_back(begin);
        return left;
    }
    Places left_after(std::size_t begin, std::size_t end) const {
        Places left;
        for (; begin < end; ++begin)
            if (!was_[begin]) left.push_back(begin);
        return left;
    }

    /// In a gap of as many before as after each is the one in its place; else those of one subject, in order.
    void match_gap(const Places& earlier, const Places& later) {
        const bool even = earlier.size() == later.size();
        std::size_t next = 0;
        for (const std::size_t a : later) {
            std::size_t found = next;
            while (!even && found < earlier.size() && subject(before_[earlier[found]]) != subject(after_[a])) ++found;
            if (found >= earlier.size()) continue;
            take(earlier[found], a);
            next = found + 1;
        }
    }

    void take(std::size_t b, std::size_t a) {
        taken_[b] = true;
        was_[a] = b;
    }

    const Table<T>& before_;
    const Table<T>& after_;
    Was& was_;
    std::vector<bool> taken_;
};

template <HasId T>
void match_ids(const Table<T>& before, const Table<T>& after, Was& was) {
    for (std::size_t i = 0; i < after.size(); ++i)
        if (const std::size_t at = before.position(after[i].id); at < before.size()) was[i] = at;
}

/// What each breaker feeds: the first circuit or panel that names it.
std::map<std::string_view, std::string> fed_by_breakers(const Survey& survey) {
    std::map<std::string_view, std::string> feeds;
    for (const Circuit& circuit : survey.circuits)
        for (const std::string& id : circuit.breakers) feeds.emplace(id, "circuit:" + circuit.id);
    for (const Panel& panel : survey.panels)
        for (const std::string& id : panel.fed_by) feeds.emplace(id, "panel:" + panel.id);
    return feeds;
}

/// All of a breaker but its place.
Breaker without_place(Breaker breaker) {
    breaker.id.clear();
    breaker.panel.clear();
    breaker.spaces.assign(breaker.spaces.size(), 0);
    return breaker;
}

/// Breakers that have a new default id because they moved.
class MovedBreakers {
public:
    MovedBreakers(const Survey& before, const Survey& after, Was& was)
        : before_(before), after_(after), was_(was), taken_(before.breakers.size()) {
        for (const auto& at : was)
            if (at) taken_[*at] = true;
    }

    void match() {
        const auto fed_before = fed_by_breakers(before_), fed_after = fed_by_breakers(after_);
        const auto feeds = [](const auto& fed, const Breaker& breaker) {
            const auto found = fed.find(breaker.id);
            return found == fed.end() ? std::string() : found->second;
        };
        pair_up([&](const Breaker& b, const Breaker& a) {
            const std::string fed = feeds(fed_after, a);
            return !fed.empty() && fed == feeds(fed_before, b);
        });
        pair_up([](const Breaker& b, const Breaker& a) { return without_place(b) == without_place(a); });
    }

private:
    template <class Same>
    void pair_up(Same same) {
        for (std::size_t i = 0; i < was_.size(); ++i) {
            if (was_[i] || after_.breakers[i].id_given) continue;
            for (std::size_t b = 0; b < taken_.size() && !was_[i]; ++b)
                if (!taken_[b] && !before_.breakers[b].id_given && same(before_.breakers[b], after_.breakers[i]))
                    taken_[*(was_[i] = b)] = true;
        }
    }

    const Survey& before_;
    const Survey& after_;
    Was& was_;
    std::vector<bool> taken_;
};

template <class T>
TableDifference table_difference(std::string_view name, const Survey& before, const Survey& after,
                                 const Table<T>& rows_before, const Table<T>& rows_after) {
    TableDifference found{name, Was(rows_after.size()), {}, {}};
    if constexpr (HasId<T>)
        match_ids(rows_before, rows_after, found.was);
    else
        RowMatcher<T>(rows_before, rows_after, found.was).match();
    if constexpr (std::is_same_v<T, Breaker>) MovedBreakers(before, after, found.was).match();
    std::vector<bool> kept(rows_before.size());
    for (std::size_t i = 0; i < rows_after.size(); ++i) {
        if (!found.was[i]) continue;
        kept[*found.was[i]] = true;
        if (!(rows_before[*found.was[i]] == rows_after[i])) found.changed.push_back(i);
    }
    for (std::size_t b = 0; b < kept.size(); ++b)
        if (!kept[b]) found.removed.push_back(b);
    return found;
}

}  // namespace

const TableDifference* Difference::of(std::string_view table) const {
    const auto found = std::ranges::find(tables, table, &TableDifference::table);
    return found == tables.end() ? nullptr : &*found;
}

Difference difference(const Survey& before, const Survey& after) {
    Difference all;
    all.heading = !(before.heading == after.heading);
    all.grounding = before.grounding != after.grounding;
    all.mapping = before.mapping != after.mapping;
    each_table([&](std::string_view name, auto table) {
        if (!(before.*table == after.*table))
            all.tables.push_back(table_difference(name, before, after, before.*table, after.*table));
    });
    return all;
}

}  // namespace doorcard
