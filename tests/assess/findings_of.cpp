// SPDX-License-Identifier: MIT
#include "assess/findings_of.hpp"

#include <doctest/doctest.h>
#include <fmt/format.h>

#include <algorithm>

#include "assess/rule_list.hpp"
#include "base/words.hpp"
#include "file/read_survey.hpp"
#include "network/network.hpp"
#include "rules/book.hpp"

using namespace doorcard;

namespace {

const RuleBook& book() {
    static const RuleBook nec = *built_in_book("NEC-2023");
    return nec;
}

const RuleEntry* entry_of(const std::string& rule) {
    const auto entries = rule_list();
    const auto at = std::ranges::find_if(entries, [&](const RuleEntry& entry) { return entry.name == rule; });
    return at == entries.end() ? nullptr : &*at;
}

void check_whole(const Finding& finding) {
    CAPTURE(finding.rule);
    CAPTURE(finding.of.text());
    const RuleEntry* entry = entry_of(finding.rule);
    REQUIRE(entry);
    CHECK(finding.severity >= entry->worst);
    CHECK(finding.of.legs.empty());
    CHECK_FALSE(said(finding.text).empty());
    CHECK_FALSE(said(finding.remedy).empty());
    REQUIRE_FALSE(finding.sources.empty());
    for (const Citation& source : finding.sources) CHECK_FALSE(source.text().empty());
    if (finding.value || finding.limit) CHECK_FALSE(finding.unit.empty());
}

std::string name_of_load() {
    static int count = 0;
    return "l" + std::to_string(++count);
}

std::string id_of_breaker(std::string spaces) {
    std::erase(spaces, ' ');
    std::ranges::replace(spaces, ',', '+');
    return "MAIN:" + spaces;
}

}  // namespace

Assessment assessment_of(const std::string& survey) {
    const auto read = read_survey({"s", survey});
    if (!read)
        for (const Complaint& complaint : read.error()) FAIL_CHECK(complaint_line("s", complaint));
    REQUIRE(read);
    const Network graph = network_of(read->survey);
    Assessment assessment = assess(graph, book());
    for (const Finding& finding : assessment.findings) check_whole(finding);
    return assessment;
}

std::string said(const Message& message) { return Words::in("en").say(message); }

std::string line_of(const Finding& finding) {
    std::string line = fmt::format("{} {} {}", finding.of.text(), name_of(finding.severity), name_of(finding.basis));
    if (finding.value) line += fmt::format(" {:.6g} {}", *finding.value, finding.unit);
    if (finding.limit) line += fmt::format(", limit {:.6g} {}", *finding.limit, finding.unit);
    return line;
}

Lines found(const std::string& survey, const std::string& rule) {
    REQUIRE(entry_of(rule));
    Lines lines;
    for (const Finding& finding : assessment_of(survey).findings)
        if (finding.rule == rule) lines.push_back(line_of(finding));
    return lines;
}

Lines at_least(const Assessment& assessment, Severity severity) {
    Lines lines;
    for (const Finding& finding : assessment.findings)
        if (finding.severity <= severity)
            lines.push_back(finding.rule + " " + line_of(finding) + ": " + said(finding.text));
    return lines;
}

Finding only(const std::string& survey, const std::string& rule) {
    std::vector<Finding> all = assessment_of(survey).findings;
    std::erase_if(all, [&](const Finding& finding) { return finding.rule != rule; });
    REQUIRE(all.size() == 1);
    return all.front();
}

std::string sources_of(const Finding& finding) {
    std::string all;
    for (const Citation& source : finding.sources) all += (all.empty() ? "" : "; ") + source.text();
    return all;
}

std::string breaker(const std::string& spaces, double amps, const std::string& keys) {
    return fmt::format("[[breaker]]\npanel = \"MAIN\"\nspaces = [{}]\namps = {:g}\n{}\n", spaces, amps, keys);
}

std::string circuit(const std::string& id, const std::string& breakers, const std::string& keys) {
    return fmt::format("[[circuit]]\nid = \"{}\"\nbreaker = {}\n{}\n", id, breakers, keys);
}

std::string branch(const std::string& id, const std::string& spaces, double amps, const std::string& keys,
                   const std::string& breaker_keys) {
    return breaker(spaces, amps, breaker_keys) + circuit(id, "\"" + id_of_breaker(spaces) + "\"", keys);
}

std::string load(const std::string& circuit, const std::string& keys) {
    return fmt::format("[[load]]\nid = \"{}\"\ncircuit = \"{}\"\n{}\n", name_of_load(), circuit, keys);
}

std::string cord(const std::string& circuit, const std::string& keys) {
    const std::string id = name_of_load();
    return outlet("at-" + id, circuit, "kind = \"receptacle\"") +
           fmt::format("[[load]]\nid = \"{0}\"\noutlet = \"at-{0}\"\n{1}\n", id, keys);
}

std::string outlet(const std::string& id, const std::string& circuit, const std::string& keys) {
    return fmt::format("[[outlet]]\nid = \"{}\"\ncircuit = \"{}\"\n{}\n", id, circuit, keys);
}

std::string reading(const std::string& of, const std::string& keys) {
    return fmt::format("[[reading]]\nof = \"{}\"\n{}\n", of, keys);
}

std::string wire(const std::string& size, const std::string& keys) {
    return fmt::format("wire = {{ size = \"{}\", metal = \"cu\", {} }}\n", size, keys);
}
