// SPDX-License-Identifier: MIT
#include "desk/update.hpp"

#include <algorithm>

#include "desk/as_planned.hpp"
#include "desk/plan.hpp"
#include "file/read_survey.hpp"
#include "file/rewrite_survey.hpp"

namespace doorcard {
namespace {

bool names_other_rules(const Survey& a, const Survey& b) {
    return a.heading.rules != b.heading.rules || a.heading.local_rules != b.heading.local_rules;
}

/// One action on a desk; what is to be done outside is collected on the way.
class Turn {
public:
    explicit Turn(Desk desk) : desk_(std::move(desk)) {}

    void take(Action action) {
        std::visit([this](auto&& one) { (*this)(std::move(one)); }, std::move(action));
    }
    std::pair<Desk, Effects> done() && { return {std::move(desk_), std::move(effects_)}; }

private:
    void operator()(BeginNew action) {
        const std::string text = new_survey(action.known);
        begin({}, text, read_survey({"", text})->survey, std::move(action.book));
    }
    void operator()(Opened action) {
        begin(action.path, std::move(action.text), std::move(action.survey), std::move(action.book));
        desk_.left = std::move(action.left);
        desk_.notes = std::move(action.notes);
        if (!action.path.empty()) effects_.push_back(Remember{std::move(action.path)});
    }
    void operator()(NotOpened action) {
        desk_.said = Said{Said::Kind::refused, {tr("{0} was not opened"), {action.path}}, std::move(action.complaints)};
    }

    void operator()(Apply action) {
        Outcome<Survey> after = action.edit.apply(desk_.survey);
        if (!after) return (*this)(Refuse{std::move(after.error())});
        desk_.said.reset();
        if (desk_.notes.plan.as_found_locked && !plan_instead(*after)) return;
        if (desk_.notes.plan.as_found_locked && *after == desk_.survey) return;
        keep_snapshot(*after);
        desk_.history.add(std::move(action.edit.name), desk_.survey);
        become(*std::move(after));
    }
    void operator()(LockAsFound action) {
        desk_.notes.plan.as_found_locked = action.locked;
        keep_notes();
    }
    void operator()(SetPlan action) {
        desk_.said.reset();
        desk_.notes.plan = std::move(action.plan);
        keep_notes();
    }
    void operator()(CarryOutPlan) {
        auto edit = carry_out(desk_.survey, desk_.notes.plan);
        if (!edit) return (*this)(Refuse{std::move(edit.error())});
        auto after = edit->apply(desk_.survey);
        if (!after) return (*this)(Refuse{std::move(after.error())});
        desk_.notes.plan.changes.clear();
        desk_.history.add(std::move(edit->name), desk_.survey);
        become(*std::move(after));
        keep_notes();
    }
    void operator()(DropPlan) {
        desk_.notes.plan.changes.clear();
        keep_notes();
    }
    void operator()(Refuse action) { desk_.said = Said{Said::Kind::refused, {}, std::move(action.complaints)}; }
    void operator()(Undo) {
        if (desk_.history.undo_name()) become(desk_.history.undo(desk_.survey));
    }
    void operator()(Redo) {
        if (desk_.history.redo_name()) become(desk_.history.redo(desk_.survey));
    }

    void operator()(ShowPanel action) {
        if (action.id == desk_.spot.panel || !desk_.survey.panels.contains(action.id)) return;
        desk_.spot.panel = std::move(action.id);
        desk_.spot.row.reset();
        desk_.spot.slip.clear();
    }
    void operator()(ChooseRow action) {
        desk_.spot.row = action.row;
        desk_.spot.field.clear();
    }
    void operator()(ShowPage action) {
        desk_.spot.page = action.page;
        desk_.spot.slip.clear();
        desk_.spot.field.clear();
    }
    void operator()(OpenSlip action) {
        desk_.came_from.push_back(desk_.spot);
        desk_.spot.slip = std::move(action.address);
        desk_.spot.field = std::move(action.field);
    }
    void operator()(GoTo action) {
        const Spot before = desk_.spot;
        (*this)(OpenSlip{action.address, action.field});
        desk_.came_from.back() = before;
        show_home_of(action.address);
    }
    void operator()(GoBack) {
        if (desk_.came_from.empty()) return desk_.spot.slip.clear();
        desk_.spot = std::move(desk_.came_from.back());
        desk_.came_from.pop_back();
        keep_spot();
    }

    void operator()(Save) {
        if (!desk_.file.path.empty())
            effects_.push_back(
                SaveFile{desk_.file.path, desk_.file.text, false, desk_.file.text, desk_.file.survey, desk_.survey});
    }
    void operator()(SaveAs action) {
        effects_.push_back(
            SaveFile{std::move(action.path), {}, true, desk_.file.text, desk_.file.survey, desk_.survey});
    }
    void operator()(Saved action) {
        if (action.path != desk_.file.path) effects_.push_back(DropJournal{desk_.file.path});
        desk_.file = {std::move(action.path), std::move(action.text), std::move(action.survey)};
        desk_.said = Said{Said::Kind::done, {tr("Saved as {0}"), {desk_.file.path}}, {}};
        if (!desk_.notes.empty()) effects_.push_back(KeepNotes{desk_.file.path, desk_.notes});
        desk_.theirs.reset();
        effects_.push_back(DropJournal{desk_.file.path});
        effects_.push_back(Remember{desk_.file.path});
        keep();
    }
    void operator()(SaveFailed action) {
        desk_.said = Said{Said::Kind::refused, std::move(action.why), {}};
        keep();
    }

    void operator()(FileChanged action) {
        if (action.text == desk_.file.text) return desk_.theirs.reset();
        desk_.theirs = std::move(action.text);
    }
    void operator()(TakeTheirs) {
        if (!desk_.theirs) return;
        auto read = read_survey({desk_.file.path, *desk_.theirs});
        if (!read) return (*this)(Refuse{std::move(read.error())});
        desk_.history.add({tr("take the file as it is now"), {}}, desk_.survey);
        desk_.file.text = *std::move(desk_.theirs);
        desk_.theirs.reset();
        desk_.file.survey = read->survey;
        become(std::move(read->survey));
    }
    void operator()(KeepMine) {
        if (!desk_.theirs) return;
        auto read = read_survey({desk_.file.path, *desk_.theirs});
        desk_.file.text = *std::move(desk_.theirs);
        desk_.theirs.reset();
        if (read) desk_.file.survey = std::move(read->survey);
        keep();
    }
    void operator()(TakeJournal) {
        if (!desk_.left) return;
        auto read = read_survey({desk_.file.path, desk_.left->text});
        desk_.left.reset();
        if (!read) return (*this)(Refuse{std::move(read.error())});
        desk_.history.add({tr("take what was kept"), {}}, desk_.survey);
        become(std::move(read->survey));
    }
    void operator()(DropLeft) {
        desk_.left.reset();
        effects_.push_back(DropJournal{desk_.file.path});
    }
    void operator()(RulesRead action) {
        desk_.book = std::move(action.book);
        desk_.assessed = assess_all(desk_.survey, *desk_.book);
        ++desk_.edits;
    }
    void operator()(Tell action) {
        desk_.said = Said{action.kind, std::move(action.what), std::move(action.complaints)};
    }
    void operator()(LeftFound action) { desk_.left = std::move(action.left); }
    void operator()(Hush) { desk_.said.reset(); }

    void begin(std::string path, std::string text, Survey survey, std::shared_ptr<const RuleBook> book) {
        desk_ = Desk{};
        desk_.file = {std::move(path), std::move(text), survey};
        desk_.book = std::move(book);
        desk_.assessed = assess_all(survey, *desk_.book);
        desk_.survey = std::move(survey);
        desk_.is_open = true;
        keep_spot();
    }

    /// On a survey that is locked as found: what the edit would do to handles goes to the plan, and `after` keeps the
    /// rest. False where it cannot be planned; then it was said.
    bool plan_instead(Survey& after) {
        HeldBack held = held_back(desk_.survey, std::move(after));
        Plan plan = desk_.notes.plan;
        for (const Planned& one : held.planned) {
            auto more = with_change(desk_.survey, std::move(plan), one);
            if (!more) return (*this)(Refuse{std::move(more.error())}), false;
            plan = *std::move(more);
        }
        after = std::move(held.after);
        if (held.planned.empty()) return true;
        desk_.notes.plan = std::move(plan);
        keep_notes();
        return true;
    }

    /// The survey as it was before the first switching round is kept, whole, beside it.
    void keep_snapshot(const Survey& after) {
        if (desk_.notes.snapshot || !desk_.survey.rounds.empty() || after.rounds.empty()) return;
        desk_.notes.snapshot = spliced(desk_.file.text, desk_.file.survey, desk_.survey);
        keep_notes();
    }

    void keep_notes() {
        ++desk_.edits;  // views are behind
        effects_.push_back(KeepNotes{desk_.file.path, desk_.notes});
    }

    /// Another survey on the same desk, with all that follows from it.
    void become(Survey after) {
        const bool other_rules = names_other_rules(desk_.survey, after);
        desk_.assessed = reassess(std::move(desk_.assessed), after, *desk_.book);
        if (!desk_.notes.plan.changes.empty())
            desk_.notes.plan = followed(std::move(desk_.notes.plan), desk_.survey, after);
        desk_.survey = std::move(after);
        ++desk_.edits;
        keep_spot();
        keep();
        if (other_rules)
            effects_.push_back(ReadRules{desk_.file.path, desk_.survey.heading.rules.value_or("NEC-2023"),
                                         desk_.survey.heading.local_rules.value_or("")});
    }

    void keep() {
        desk_.is_changed = !(desk_.survey == desk_.file.survey);
        if (desk_.is_changed)
            effects_.push_back(KeepJournal{desk_.file.path, desk_.file.text, desk_.file.survey, desk_.survey});
        else
            effects_.push_back(DropJournal{desk_.file.path});
    }

    /// The panel shown is one that is there: the first, where the one before is gone.
    void keep_spot() {
        if (!desk_.survey.panels.contains(desk_.spot.panel)) {
            desk_.spot.panel = desk_.survey.panels.empty() ? "" : desk_.survey.panels[0].id;
            desk_.spot.row.reset();
        }
    }

    /// The panel and row of a breaker, or of the first one that feeds a circuit, outlet or load.
    void show_home_of(const std::string& address) {
        const auto of = parse_address(address);
        if (!of) return;
        if (of->kind == ThingKind::panel) return (*this)(ShowPanel{of->id}), void(desk_.spot.slip = address);
        if (const Breaker* breaker = desk_.survey.breakers.find(breaker_of(*of))) {
            desk_.spot.panel = breaker->panel;
            desk_.spot.row = positions_of(*breaker).front();
        }
    }

    std::string breaker_of(const Address& of) const {
        switch (of.kind) {
            case ThingKind::breaker:
                return of.id;
            case ThingKind::ground:
            case ThingKind::circuit:
                return breaker_of_circuit(of.id);
            case ThingKind::neutral:
                return breaker_of_neutral(of.id);
            case ThingKind::outlet:
                return breaker_of_outlet(of.id);
            case ThingKind::load:
                return breaker_of_load(of.id);
            default:
                return {};
        }
    }
    std::string breaker_of_circuit(const std::string& id) const {
        const Circuit* circuit = desk_.survey.circuits.find(id);
        return circuit && !circuit->breakers.empty() ? circuit->breakers.front() : std::string();
    }
    std::string breaker_of_neutral(const std::string& id) const {
        const auto found = std::ranges::find_if(
            desk_.survey.circuits, [&](const Circuit& one) { return one.neutral == id && !one.breakers.empty(); });
        return found == desk_.survey.circuits.end() ? std::string() : found->breakers.front();
    }
    std::string breaker_of_outlet(const std::string& id) const {
        const Outlet* outlet = desk_.survey.outlets.find(id);
        while (outlet && outlet->circuits.empty() && outlet->upstream)
            outlet = desk_.survey.outlets.find(*outlet->upstream);
        return outlet && !outlet->circuits.empty() ? breaker_of_circuit(outlet->circuits.front()) : std::string();
    }
    std::string breaker_of_load(const std::string& id) const {
        const Load* load = desk_.survey.loads.find(id);
        if (load && load->circuit) return breaker_of_circuit(*load->circuit);
        return load && load->outlet ? breaker_of_outlet(*load->outlet) : std::string();
    }

    Desk desk_;
    Effects effects_;
};

}  // namespace

std::pair<Desk, Effects> update(Desk desk, Action action) {
    Turn turn(std::move(desk));
    turn.take(std::move(action));
    return std::move(turn).done();
}

}  // namespace doorcard
