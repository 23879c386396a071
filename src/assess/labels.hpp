// SPDX-License-Identifier: MIT
#pragma once
#include <string_view>
#include <unordered_map>

#include "assess/directory.hpp"
#include "assess/finding.hpp"
#include "assess/label_words.hpp"

namespace doorcard {

/// The label rules after 408.4(A), judged on the card as it would print: label-missing, label-vague, label-duplicate,
/// label-transient, label-spare-unmarked, label-abbreviation, and one line for the old directory of a panel
/// (label-old-directory). All are notices. By panel and space.
std::vector<Finding> label_findings(const Network&, const RuleBook&);

/// Abbreviations that the rows of a directory use and doorcard knows: the card prints them with their meaning.
std::vector<Abbreviation> explained_abbreviations(const Network&, const PanelDirectory&);

/// What the old directory of a panel said of its breakers, where tracing has proved what they feed.
struct OldDirectory {
    int wrong = 0;  ///< it names something else, or puts an outlet elsewhere
    int rows = 0;   ///< breakers that it says something of
};

/// Holds old directories against what was traced; made once for a network.
class OldDirectories {
public:
    explicit OldDirectories(const Network&);
    OldDirectory of(const PanelDirectory&) const;

private:
    bool puts_outlet_elsewhere(const DirectoryRow&) const;

    const Network& network_;
    std::unordered_map<std::string_view, std::vector<std::size_t>> outlets_put_on_;  // by breaker id
};

}  // namespace doorcard
