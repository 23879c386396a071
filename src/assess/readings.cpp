// SPDX-License-Identifier: MIT
#include "assess/readings.hpp"

#include <algorithm>
#include <map>
#include <numeric>

namespace doorcard {
namespace {

std::string key_of(ThingKind kind, const std::string& id) { return Address{kind, id, ""}.text(); }

}  // namespace

Readings::Readings(const Survey& survey) {
    const std::size_t count = survey.readings.size();
    std::vector<std::size_t> group(count);
    std::iota(group.begin(), group.end(), std::size_t{0});
    const auto root = [&](std::size_t i) {
        while (group[i] != i) i = group[i] = group[group[i]];
        return i;
    };
    std::map<std::string, std::size_t> by_name;
    std::map<Moment, std::size_t> by_time;
    for (std::size_t i = 0; i < count; ++i) {
        const Reading& reading = survey.readings[i];
        by_thing_[key_of(reading.of.kind, reading.of.id)].push_back(&reading);
        const auto join = [&](auto& known, const auto& key) {
            if (const auto [at, is_new] = known.emplace(key, i); !is_new) group[root(i)] = root(at->second);
        };
        if (reading.together) join(by_name, *reading.together);
        if (reading.at) join(by_time, *reading.at);
    }
    std::map<std::size_t, std::size_t> places;
    for (std::size_t i = 0; i < count; ++i) {
        const auto [at, is_new] = places.emplace(root(i), moments_.size());
        if (is_new) moments_.emplace_back();
        moments_[at->second].push_back(&survey.readings[i]);
        moment_of_[&survey.readings[i]] = at->second;
    }
}

const std::vector<const Reading*>& Readings::of(ThingKind kind, const std::string& id) const {
    const auto found = by_thing_.find(key_of(kind, id));
    return found == by_thing_.end() ? none_ : found->second;
}

std::vector<std::size_t> Readings::moments_with(const std::vector<const Reading*>& readings) const {
    std::vector<std::size_t> found;
    found.reserve(readings.size());
    for (const Reading* reading : readings) found.push_back(moment_of_.at(reading));
    std::sort(found.begin(), found.end());
    found.erase(std::unique(found.begin(), found.end()), found.end());
    return found;
}

bool is_of_hots(const Reading& reading) { return reading.of.legs != "N"; }

std::optional<Amperes> highest_amps(const Reading& reading) {
    if (!reading.amps) return reading.amps_max;
    if (!reading.amps_max) return reading.amps;
    return std::max(*reading.amps, *reading.amps_max);
}

void Measured::take(const Reading& reading, double continuous_hours) {
    Measured one;
    one.highest = highest_amps(reading);
    if (reading.hours && *reading.hours >= continuous_hours - 1e-9) {
        if (reading.amps_min)
            one.sustained = reading.amps_min;
        else if (reading.amps && !reading.amps_max) {
            one.sustained = reading.amps;
            one.sustained_from_amps = true;
        }
    }
    take(one);
}

void Measured::take(const Measured& other) {
    if (other.highest && (!highest || *other.highest > *highest)) highest = other.highest;
    if (other.sustained && (!sustained || *other.sustained > *sustained)) {
        sustained = other.sustained;
        sustained_from_amps = other.sustained_from_amps;
    }
}

}  // namespace doorcard
