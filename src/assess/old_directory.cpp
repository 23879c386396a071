// SPDX-License-Identifier: MIT
#include <algorithm>

#include "assess/labels.hpp"
#include "base/words.hpp"

namespace doorcard {
namespace {

void add(std::set<std::string>& words, const std::optional<std::string>& text) {
    if (text) words.merge(telling_words(*text));
}

// All that tells what hangs on a breaker: its text, and rooms, labels and equipment of its outlets.
std::set<std::string> words_about(const Network& network, const DirectoryRow& row) {
    const Survey& survey = network.survey();
    std::set<std::string> words = telling_words(Words::in("en").say(row.text));
    words.merge(telling_words(Words::in("en").say(row.under)));
    for (const std::size_t circuit : row.circuits) {
        for (const std::size_t index : network.outlets_on(circuit)) {
            const Outlet& outlet = survey.outlets[index];
            add(words, outlet.room);
            add(words, outlet.label);
            add(words, outlet.place);
            if (const Room* room = outlet.room ? survey.rooms.find(*outlet.room) : nullptr) {
                add(words, room->title);
                add(words, room->floor);
            }
        }
        for (const std::size_t load : network.loads_on(circuit)) add(words, survey.loads[load].title);
    }
    return words;
}

bool proved(const Network& network, const DirectoryRow& row) {
    if (row.circuits.empty()) return row.breaker && !network.panels_fed_by(*row.breaker).empty();
    return !row.claimed;
}

// A label that says nothing is not wrong; one that says 'spare' of a circuit in use is.
bool names_something_else(const Network& network, const DirectoryRow& row, const std::string& label) {
    if (row.kind == RowKind::spare) return !calls_it_spare(label) && !says_nothing(label);
    if (!proved(network, row)) return false;
    if (calls_it_spare(label)) return true;
    const std::set<std::string> said = telling_words(label);
    if (said.empty()) return false;
    const std::set<std::string> found = words_about(network, row);
    return !found.empty() &&
           std::none_of(said.begin(), said.end(), [&](const std::string& word) { return found.contains(word); });
}

}  // namespace

OldDirectories::OldDirectories(const Network& network) : network_(network) {
    const auto& outlets = network.survey().outlets;
    for (std::size_t outlet = 0; outlet < outlets.size(); ++outlet)
        if (outlets[outlet].old_breakers)
            for (const std::string& breaker : *outlets[outlet].old_breakers) outlets_put_on_[breaker].push_back(outlet);
}

// An outlet that the old directory puts on this breaker, and tracing has proved to hang on another.
bool OldDirectories::puts_outlet_elsewhere(const DirectoryRow& row) const {
    const Survey& survey = network_.survey();
    const auto put = outlets_put_on_.find(survey.breakers[*row.breaker].id);
    if (put == outlets_put_on_.end()) return false;
    return std::any_of(put->second.begin(), put->second.end(), [&](std::size_t outlet) {
        bool here = false;
        bool known = false;
        for (const std::size_t circuit : network_.circuits_at(outlet)) {
            const auto& traced = survey.circuits[circuit].traced;
            const auto& breakers = network_.breakers_of(circuit);
            known = known || (traced && traced->proves() && !breakers.empty());
            here = here || std::find(breakers.begin(), breakers.end(), *row.breaker) != breakers.end();
        }
        return known && !here;
    });
}

OldDirectory OldDirectories::of(const PanelDirectory& directory) const {
    OldDirectory old;
    for (const DirectoryRow& row : directory.rows) {
        if (!row.breaker) continue;
        const auto& label = network_.survey().breakers[*row.breaker].old_label;
        const bool elsewhere = puts_outlet_elsewhere(row);
        if (label || elsewhere) ++old.rows;
        if (elsewhere || (label && names_something_else(network_, row, *label))) ++old.wrong;
    }
    return old;
}

}  // namespace doorcard
