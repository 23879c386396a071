// SPDX-License-Identifier: MIT
#include "assess/labels.hpp"

#include <algorithm>
#include <map>

#include "assess/circuit_text.hpp"
#include "base/words.hpp"

namespace doorcard {
namespace {

using Parts = std::vector<Message::Part>;

// One circuit as its row prints it.
struct Label {
    std::size_t circuit = 0;
    std::string place;  // "MAIN 5"
    std::string text;   // in English; empty: nothing to print
};

class LabelRules {
public:
    LabelRules(const Network& network, const Citation& source, const OldDirectories& old, std::size_t panel)
        : network_(network),
          survey_(network.survey()),
          source_(source),
          old_(old),
          directory_(directory_of(network, panel)),
          panel_(survey_.panels[panel]) {
        for (const Panel& other : survey_.panels) names_.insert(other.id);
        for (const Source& source : survey_.sources) names_.insert(source.id);
    }

    std::vector<Finding> findings() {
        find_labels();
        for (const DirectoryRow& row : directory_.rows) judge_row(row);
        judge_duplicates();
        judge_old_directory();
        return std::move(found_);
    }

private:
    std::string place_of(const DirectoryRow& row) const { return panel_.id + " " + name_of(row.positions); }

    // Each circuit of the panel once, with the text that sets it apart on the card.
    void find_labels() {
        std::set<std::size_t> seen;
        for (const DirectoryRow& row : directory_.rows)
            for (std::size_t i = 0; i < row.circuits.size(); ++i)
                if (seen.insert(row.circuits[i]).second)
                    labels_.push_back({row.circuits[i], place_of(row), Words::in("en").say(row.circuit_texts[i])});
    }

    const Label& label_of(std::size_t circuit) const {
        return *std::find_if(labels_.begin(), labels_.end(),
                             [&](const Label& label) { return label.circuit == circuit; });
    }

    void judge_row(const DirectoryRow& row) {
        if (row.kind == RowKind::spare) return;
        if (row.circuits.empty()) return judge_untraced(row);
        for (const std::size_t circuit : row.circuits)
            if (judged_.insert(circuit).second) judge_circuit(row, label_of(circuit));
    }

    void judge_untraced(const DirectoryRow& row) {
        if (!row.breaker) return;
        const Breaker& breaker = survey_.breakers[*row.breaker];
        const bool untraced =
            network_.panels_fed_by(*row.breaker).empty() && row.kind != RowKind::source && row.kind != RowKind::main;
        if (!untraced) return;
        const Address of{ThingKind::breaker, breaker.id, ""};
        if (breaker.old_label && calls_it_spare(*breaker.old_label)) return add_spare_unmarked(of, place_of(row));
        add("label-missing", of, {tr("{0}: not traced, so the card cannot say what it feeds"), {place_of(row)}},
            {tr("Trace it and describe what it feeds; until then treat it as live."), {}});
    }

    void judge_circuit(const DirectoryRow& row, const Label& label) {
        if (calls_it_spare(label.text)) return add_spare_unmarked(address(label), label.place);
        if (row.kind == RowKind::feeder || row.kind == RowKind::source || row.kind == RowKind::main) return;
        if (label.text.empty()) return add_undescribed(row, label);
        if (says_nothing(label.text))
            add("label-vague", address(label),
                {tr("{0} reads '{1}': it does not say which or where"), {label.place, label.text}},
                {tr("Say what it feeds and where."), {}});
        if (const auto word = transient_word(label.text))
            add("label-transient", address(label),
                {tr("{0} reads '{1}': '{2}' changes with who is there"), {label.place, label.text, *word}},
                {tr("Name the room or the thing, not who uses it or what for at present."), {}});
        judge_abbreviations(label);
    }

    void add_undescribed(const DirectoryRow& row, const Label& label) {
        const auto& traced = survey_.circuits[label.circuit].traced;
        if (row.kind == RowKind::not_described || row.kind == RowKind::circuits || row.kind == RowKind::off)
            add("label-missing", address(label), {tr("{0}: the card does not say what it feeds"), {label.place}},
                {traced && traced->proves()
                     ? tr("Describe what it feeds; where nothing hangs on it, record it as spare.")
                     : tr("Trace it and describe what it feeds; until then treat it as live."),
                 {}});
    }

    void add_spare_unmarked(const Address& of, const std::string& place) {
        add("label-spare-unmarked", of, {tr("{0} is called spare, but not recorded as spare"), {place}},
            {tr("Prove that nothing hangs on it, then record it as spare; until then treat it as live."), {}});
    }

    void judge_abbreviations(const Label& label) {
        Parts unknown;
        for (const Abbreviation& abbreviation : abbreviations_in(label.text, names_))
            if (!abbreviation.meaning) unknown.emplace_back(abbreviation.written);
        if (unknown.empty()) return;
        add("label-abbreviation", address(label),
            {tr("{0} reads '{1}': the card does not explain {2}"),
             {label.place, label.text, and_list(std::move(unknown))}},
            {tr("Write it out."), {}});
    }

    void judge_duplicates() {
        std::map<std::string, std::vector<const Label*>> alike;
        for (const Label& label : labels_)
            if (!label.text.empty() && !calls_it_spare(label.text))
                alike[plain_form(verbatim(label.text))].push_back(&label);
        for (const Label& label : labels_) {
            const auto found = alike.find(plain_form(verbatim(label.text)));
            if (found == alike.end()) continue;
            Parts others;
            for (const Label* other : found->second)
                if (other->place != label.place) others.emplace_back(other->place);
            if (others.empty()) continue;
            add("label-duplicate", address(label),
                {tr("{0} reads '{1}', as does {2}"), {label.place, label.text, and_list(std::move(others))}},
                {tr("Say what sets them apart: room, wall or equipment."), {}});
        }
    }

    void judge_old_directory() {
        const OldDirectory old = old_.of(directory_);
        if (old.wrong == 0) return;
        add("label-old-directory", {ThingKind::panel, panel_.id, ""},
            {tr("{0}, old directory: {1:.0f} of {2:.0f} wrong"),
             {panel_.id, static_cast<double>(old.wrong), static_cast<double>(old.rows)}},
            {tr("Take the old directory down when the new card goes up."), {}});
    }

    static Address circuit_address(const std::string& id) { return {ThingKind::circuit, id, ""}; }
    Address address(const Label& label) const { return circuit_address(survey_.circuits[label.circuit].id); }

    void add(const char* rule, const Address& of, Message text, Message remedy) {
        Finding finding;
        finding.rule = rule;
        finding.of = of;
        finding.text = std::move(text);
        finding.sources = {source_};
        finding.remedy = std::move(remedy);
        found_.push_back(std::move(finding));
    }

    const Network& network_;
    const Survey& survey_;
    const Citation& source_;
    const OldDirectories& old_;
    const PanelDirectory directory_;
    const Panel& panel_;
    std::set<std::string> names_;
    std::vector<Label> labels_;
    std::set<std::size_t> judged_;
    std::vector<Finding> found_;
};

}  // namespace

std::vector<Finding> label_findings(const Network& network, const RuleBook& book) {
    const Citation& source = book.cite("nec-408-4-a");
    const OldDirectories old(network);
    std::vector<Finding> found;
    for (std::size_t panel = 0; panel < network.survey().panels.size(); ++panel) {
        std::vector<Finding> of_panel = LabelRules(network, source, old, panel).findings();
        found.insert(found.end(), std::make_move_iterator(of_panel.begin()), std::make_move_iterator(of_panel.end()));
    }
    return found;
}

std::vector<Abbreviation> explained_abbreviations(const Network& network, const PanelDirectory& directory) {
    std::set<std::string> names;
    for (const Panel& panel : network.survey().panels) names.insert(panel.id);
    std::vector<Abbreviation> found;
    for (const DirectoryRow& row : directory.rows)
        for (const Message* text : {&row.text, &row.under})
            for (Abbreviation& known : abbreviations_in(Words::in("en").say(*text), names))
                if (known.meaning && std::none_of(found.begin(), found.end(), [&](const Abbreviation& other) {
                        return folded(other.written) == folded(known.written);
                    }))
                    found.push_back(std::move(known));
    return found;
}

}  // namespace doorcard
