// SPDX-License-Identifier: MIT
#include "cli/check_text.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <map>
#include <ostream>

#include "assess/directory.hpp"
#include "cli/check_json.hpp"
#include "cli/check_tables.hpp"
#include "cli/rules_used.hpp"
#include "sheet/finding_words.hpp"

namespace doorcard {
namespace {

class FindingWriter {
public:
    FindingWriter(std::ostream& out, const Network& network, const Words& words, const Terminal& terminal)
        : out_(out), network_(network), words_(words), terminal_(terminal) {
        for (const Severity severity : {Severity::danger, Severity::warning, Severity::caution, Severity::notice})
            indent_ = std::max(indent_, width_of(signal_word(severity, words)) + 2);
    }

    void write(const std::vector<Finding>& findings) {
        for (const Finding& finding : findings)
            if (finding.severity != Severity::notice) write_one(finding);
        write_notices(findings);
        if (!findings.empty()) out_ << '\n';
    }

private:
    std::string blanks() const { return std::string(static_cast<std::size_t>(indent_), ' '); }
    int room() const { return terminal_.columns - indent_; }

    void write_lines(Severity severity, const std::string& text) {
        const std::string word = signal_word(severity, words_);
        bool first = true;
        for (const std::string& line : wrapped(text, room())) {
            const std::string gap(static_cast<std::size_t>(std::max(1, indent_ - width_of(word))), ' ');
            out_ << (first ? colored(word, severity, terminal_) + gap : blanks()) << line << '\n';
            first = false;
        }
    }

    void write_one(const Finding& finding) {
        write_lines(finding.severity, words_.say(finding.text));
        std::vector<std::string> remedy = wrapped(words_.say(finding.remedy), room());
        std::vector<std::string> sources = source_lines(finding);
        const int beside = indent_ + width_of(remedy.back()) + 3 + width_of(sources.front());
        if (sources.size() == 1 && beside <= terminal_.columns) {  // on the remedy's last line
            remedy.back() += padded_left(sources.front(), room() - width_of(remedy.back()));
            sources.clear();
        }
        for (const std::string& line : remedy) out_ << blanks() << line << '\n';
        for (const std::string& line : sources) out_ << padded_left(line, terminal_.columns) << '\n';
    }

    /// Where the rule comes from, and what the finding is of, for the right edge.
    std::vector<std::string> source_lines(const Finding& finding) const {
        std::vector<std::string> lines = wrapped(short_sources(finding.sources, words_), room());
        const std::vector<std::string> last = flowed({lines.back(), finding.of.text()}, 3, room());
        lines.pop_back();
        lines.insert(lines.end(), last.begin(), last.end());
        return lines;
    }

    /// Gaps and other notices of one rule and panel stand in one line.
    void write_notices(const std::vector<Finding>& findings) {
        constexpr std::size_t shown = 3;
        const auto& panels = network_.survey().panels;
        for (const NoticeGroup& group : notice_groups(findings)) {
            const bool names_panel = panels.size() > 1 && group.panel < panels.size() && group.findings.size() > 1 &&
                                     group.findings.front()->of.kind != ThingKind::survey;
            for (const std::string& line : notice_lines(network_, group, shown, words_))
                write_lines(Severity::notice, names_panel ? panels[group.panel].id + ": " + line : line);
        }
    }

    std::ostream& out_;
    const Network& network_;
    const Words& words_;
    const Terminal& terminal_;
    int indent_ = 0;  // under the longest signal word
};

std::string date_text(const Heading& heading, const Words& words) {
    if (!heading.date) return words(tr("undated"));
    return fmt::format("{:04}-{:02}-{:02}", heading.date->year, heading.date->month, heading.date->day);
}

/// The panel that stands first: "MAIN  120/240 V  main 200 A".
std::string first_panel(const Network& network, const Words& words) {
    if (network.panels_from_the_top().empty()) return "";
    const std::size_t p = network.panels_from_the_top().front();
    const Panel& panel = network.survey().panels[p];
    std::string text = panel.id;
    if (const auto system = network.supply(p).system) {
        const std::string name(facts(*system).name);
        text += "  " + name.substr(0, name.find(' ')) + " V";
    }
    if (panel.main_a) text += "  " + fmt::format(fmt::runtime(words(tr("main {0:g} A"))), panel.main_a->value);
    return text;
}

/// What the cards say is traced, over all panels.
std::string traced_text(const Network& network, const Words& words) {
    int traced = 0, in_use = 0;
    for (std::size_t p = 0; p < network.survey().panels.size(); ++p) {
        const PanelDirectory directory = directory_of(network, p);
        traced += directory.traced;
        in_use += directory.in_use();
    }
    return fmt::format(fmt::runtime(words(tr("{0} of {1} traced"))), traced, in_use);
}

std::vector<std::string> head(const Network& network, const Words& words) {
    const Heading& heading = network.survey().heading;
    std::vector<std::string> pieces = {heading.title.value_or(words(tr("untitled"))), first_panel(network, words),
                                       date_text(heading, words), traced_text(network, words)};
    std::erase(pieces, "");
    return pieces;
}

void write_summary(std::ostream& out, const Assessment& assessment, const Words& words, const Terminal& terminal) {
    std::map<Severity, long> counts;
    for (const Finding& finding : assessment.findings) ++counts[finding.severity];
    std::string text;
    const auto add = [&](const Counted& one_or_many, long number) {
        if (number == 0) return;
        text += (text.empty() ? "" : ", ") + words.count(one_or_many, number);
    };
    add(trn("{0} danger", "{0} dangers"), counts[Severity::danger]);
    add(trn("{0} warning", "{0} warnings"), counts[Severity::warning]);
    add(trn("{0} caution", "{0} cautions"), counts[Severity::caution]);
    add(trn("{0} notice", "{0} notices"), counts[Severity::notice]);
    add(trn("{0} accepted", "{0} accepted"), static_cast<long>(assessment.accepted.size()));
    add(trn("{0} default used", "{0} defaults used"), static_cast<long>(assessment.assumed.size()));
    text = (text.empty() ? words(tr("Nothing found")) : text) + ".";
    const std::string off = words(tr("Off is not proof of dead: test before touch."));
    std::vector<std::string> pieces = wrapped(text, terminal.columns);
    pieces.push_back(off);
    for (const std::string& line : flowed(pieces, 2, terminal.columns)) out << line << '\n';
    const std::string work = words(
        tr("Work inside a panel is for qualified persons, de-energised and locked out. Local code and the authority "
           "having jurisdiction decide."));
    for (const std::string& line : wrapped(work, terminal.columns)) out << line << '\n';
}

}  // namespace

void write_check(std::ostream& out, const Network& network, const Assessment& assessment, const Words& words,
                 const Terminal& terminal) {
    for (const std::string& line : flowed(head(network, words), 3, terminal.columns)) out << line << '\n';
    out << '\n';
    FindingWriter(out, network, words, terminal).write(assessment.findings);
    write_circuit_tables(out, network, assessment, words, terminal);
    write_neutral_table(out, network, assessment, words, terminal);
    write_joint_table(out, assessment, words, terminal);
    write_panel_table(out, network, assessment, words, terminal);
    write_rules_used(out, assessment.rules, words, terminal);
    write_summary(out, assessment, words, terminal);
}

}  // namespace doorcard
