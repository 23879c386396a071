// SPDX-License-Identifier: MIT
#include "sheet/finding_words.hpp"

#include <algorithm>

#include "assess/directory.hpp"
#include "assess/rule_list.hpp"

namespace doorcard {
namespace {

std::string title_of(const std::string& rule) {
    for (const RuleEntry& entry : rule_list())
        if (entry.name == rule) return entry.title;
    return rule;
}

/// Breakers and circuits by their spaces, as a person looks for them; the rest by what they are called.
std::string name_of_thing(const Network& network, const Address& of) {
    const Survey& survey = network.survey();
    if (of.kind == ThingKind::breaker && survey.breakers.contains(of.id))
        return name_of(positions_of(*survey.breakers.find(of.id)));
    if (of.kind == ThingKind::circuit && survey.circuits.contains(of.id)) {
        const auto& breakers = network.breakers_of(survey.circuits.position(of.id));
        if (!breakers.empty()) return name_of(positions_of(survey.breakers[breakers.front()]));
    }
    if (const Load* load = of.kind == ThingKind::load ? survey.loads.find(of.id) : nullptr)
        return load->title.value_or(load->id);
    return of.id;
}

std::string names_of(const Network& network, const NoticeGroup& group, std::size_t shown, const Words& words) {
    std::vector<std::string> all;
    for (const Finding* finding : group.findings)
        if (const std::string name = name_of_thing(network, finding->of); std::ranges::find(all, name) == all.end())
            all.push_back(name);
    std::string names;
    for (std::size_t i = 0; i < all.size() && i < shown; ++i) names += (i ? ", " : "") + all[i];
    if (all.size() <= shown) return names;
    return words.say({tr("{0} and {1} more"), {names, std::to_string(all.size() - shown)}});
}

}  // namespace

std::string signal_word(Severity severity, const Words& words) {
    switch (severity) {
        case Severity::danger:
            return words(tr("DANGER"));
        case Severity::warning:
            return words(tr("WARNING"));
        case Severity::caution:
            return words(tr("CAUTION"));
        case Severity::notice:
            return words(tr("NOTICE"));
    }
    return "";
}

std::string short_sources(const std::vector<Citation>& sources, const Words& words) {
    std::string text, standard;
    for (const Citation& source : sources) {
        const bool again = !source.practice && source.standard == standard;
        standard = source.practice ? "" : source.standard;
        text += text.empty() ? "" : again ? ", " : "; ";
        text += again ? source.place : words.say(source.message());
    }
    return text;
}

std::vector<NoticeGroup> notice_groups(const std::vector<Finding>& findings) {
    std::vector<NoticeGroup> groups;
    std::map<std::pair<std::string, std::size_t>, std::size_t> place;
    for (const Finding& finding : findings) {
        if (finding.severity != Severity::notice) continue;
        const std::size_t panel = finding.standing.panel;
        const auto [at, is_new] = place.emplace(std::pair(finding.rule, panel), groups.size());
        if (is_new) groups.push_back({panel, {}});
        groups[at->second].findings.push_back(&finding);
    }
    return groups;
}

std::vector<std::string> notice_lines(const Network& network, const NoticeGroup& group, std::size_t shown,
                                      const Words& words) {
    const Finding& first = *group.findings.front();
    std::vector<std::string> lines;
    if (group.findings.size() == 1 || first.of.kind == ThingKind::survey) {  // the survey has no name to list
        for (const Finding* finding : group.findings) lines.push_back(words.say(finding->text));
        return lines;
    }
    return {words(title_of(first.rule)) + ": " + names_of(network, group, shown, words)};
}

}  // namespace doorcard
