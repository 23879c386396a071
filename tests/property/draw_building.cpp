// SPDX-License-Identifier: MIT
#include "property/draw_building.hpp"

#include <algorithm>

using namespace doorcard;

namespace {

const std::vector<std::string> words = {"Kitchen",   "Hall",        "Bath",  "Misc",    "Lights",     "Rec",
                                        "Sump pump", "John's room", "Bench", "Freezer", "Dishwasher", "Shop"};

std::string numbered(const char* name, std::size_t number) { return name + std::to_string(number); }

/// One thing of each kind, as it might be entered.
class Entered {
public:
    explicit Entered(Draw& draw) : draw_(draw) {}

    Breaker breaker(const std::string& id, const std::string& panel, int first_space, int poles) {
        Breaker breaker;
        breaker.id = id;
        breaker.panel = panel;
        for (int pole = 0; pole < poles; ++pole) breaker.spaces.push_back(first_space + 2 * pole);
        breaker.amps = Amperes(draw_.of(std::vector<double>{15, 20, 20, 30, 50}));
        if (draw_.one_in(3)) breaker.guards = Guards::value_type{};
        if (draw_.one_in(6)) breaker.guards = Guards::value_type{Guard::ground};
        if (draw_.one_in(4)) breaker.old_label = draw_.of(words);
        if (draw_.one_in(8)) breaker.conductors = 2;
        if (draw_.one_in(10)) breaker.signs = Ids{"hot"};
        if (draw_.one_in(4)) breaker.interrupting_ka = draw_.of(std::vector<double>{5, 10, 22});
        if (draw_.one_in(6)) breaker.hold_down = false;
        return breaker;
    }

    Circuit circuit(const std::string& id, const std::string& breaker, const std::string& neutral) {
        Circuit circuit;
        circuit.id = id;
        circuit.breakers = {breaker};
        if (draw_.one_in(2)) circuit.purpose = draw_.of(words);
        if (draw_.one_in(3)) circuit.neutral = neutral;
        if (draw_.one_in(2)) circuit.wire = wire();
        if (draw_.one_in(3)) circuit.ground = GroundWire{draw_.one_in(2) ? "14" : "10", "wire", {}};
        if (draw_.one_in(2)) circuit.traced = Traced{draw_.one_in(3) ? "told" : "switching", {}, {}};
        return circuit;
    }

    Wire wire() {
        Wire wire;
        wire.size = draw_.of(std::vector<std::string>{"14", "12", "10", "6"});
        wire.metal = draw_.one_in(5) ? Metal::aluminum : Metal::copper;
        if (draw_.one_in(2)) wire.insulation = "NM-B";
        if (draw_.one_in(2)) wire.length = Length{static_cast<double>(draw_.number(5, 300)), false};
        return wire;
    }

    Outlet outlet(const std::string& id) {
        Outlet outlet;
        outlet.id = id;
        outlet.kind = draw_.one_in(3) ? OutletKind::lighting : OutletKind::receptacle;
        outlet.room = draw_.of(words);
        if (draw_.one_in(3)) outlet.label = draw_.of(words);
        if (draw_.one_in(2)) outlet.run = Length{static_cast<double>(draw_.number(1, 60)), false};
        if (draw_.one_in(6)) outlet.strap = numbered("S", static_cast<std::size_t>(draw_.number(1, 9)));
        if (draw_.one_in(8)) outlet.box = numbered("BX", static_cast<std::size_t>(draw_.number(1, 9)));
        if (draw_.one_in(4)) outlet.place = draw_.of(std::vector<std::string>{"kitchen", "bath", "garage"});
        if (draw_.one_in(8)) outlet.wired = "reversed";
        if (draw_.one_in(6)) outlet.guards = Guards::value_type{Guard::ground};
        if (draw_.one_in(4)) outlet.config = draw_.of(std::vector<std::string>{"5-15R", "5-20R", "14-30R"});
        return outlet;
    }

    Load load(const std::string& id) {
        Load load;
        load.id = id;
        load.title = draw_.of(words);
        if (!draw_.one_in(5)) load.va = VoltAmperes(draw_.number(40, 2500));
        if (draw_.one_in(6)) load.duty = draw_.of(std::vector<Duty>{Duty::heating, Duty::motor, Duty::lighting});
        if (draw_.one_in(6)) load.continuous = true;
        if (draw_.one_in(4)) load.leakage_ma = Milliamperes(draw_.number(1, 30) / 10.0);
        if (draw_.one_in(6)) load.max_device_a = Amperes(draw_.number(15, 40));
        if (draw_.one_in(8)) load.min_circuit_a = Amperes(draw_.number(10, 40));
        if (draw_.one_in(5)) load.power_factor = draw_.number(60, 100) / 100.0;
        return load;
    }

    Reading reading(const Address& of) {
        Reading reading;
        reading.of = of;
        reading.amps = Amperes(draw_.number(1, 260) / 10.0);
        if (draw_.one_in(3)) reading.together = numbered("R", static_cast<std::size_t>(draw_.number(1, 6)));
        if (draw_.one_in(3)) reading.volts = Volts(draw_.number(900, 1300) / 10.0);
        if (draw_.one_in(2)) reading.volts_unloaded = Volts(draw_.number(1180, 1250) / 10.0);
        if (draw_.one_in(3)) reading.temp_c = Celsius(draw_.number(20, 70));
        if (draw_.one_in(4)) reading.leakage_ma = Milliamperes(draw_.number(0, 60) / 10.0);
        if (draw_.one_in(3)) reading.hours = draw_.number(1, 6);
        return reading;
    }

    Limit limit(const Address& of) {
        Limit limit;
        limit.of = of;
        limit.key = draw_.one_in(2) ? "amps" : "temp_c";
        limit.above = draw_.number(1, 40);
        return limit;
    }

private:
    Draw& draw_;
};

template <class T, class Change>
void change_one(Table<T>& table, Draw& draw, Change change) {
    if (table.empty()) return;
    const auto at = static_cast<std::size_t>(draw.number(0, static_cast<int>(table.size()) - 1));
    T row = table[at];
    change(row);
    std::vector<T> rows = table.rows();
    rows[at] = row;
    table = draw.one_in(2) ? table.with_row(at, std::move(row)) : Table<T>(std::move(rows));
}

template <class T>
void add_one(Table<T>& table, Draw& draw, T thing) {
    std::vector<T> rows = table.rows();
    const int at = draw.one_in(2) ? static_cast<int>(rows.size()) : draw.number(0, static_cast<int>(rows.size()));
    rows.insert(rows.begin() + at, std::move(thing));
    table = Table<T>(std::move(rows));
}

template <class T>
void take_one(Table<T>& table, Draw& draw) {
    std::vector<T> rows = table.rows();
    if (rows.empty()) return;
    rows.erase(rows.begin() + draw.number(0, static_cast<int>(rows.size()) - 1));
    table = Table<T>(std::move(rows));
}

/// An id that no thing has.
template <class T>
std::string fresh(const Table<T>& table, const char* name) {
    std::size_t number = table.size();
    while (table.contains(numbered(name, number))) ++number;
    return numbered(name, number);
}

Address any_address(const Survey& survey, Draw& draw) {
    if (draw.one_in(3)) return {ThingKind::breaker, draw.of(survey.breakers.rows()).id, ""};
    if (draw.one_in(3)) return {ThingKind::panel, draw.of(survey.panels.rows()).id, draw.one_in(2) ? "A" : ""};
    if (draw.one_in(4)) return {ThingKind::outlet, draw.of(survey.outlets.rows()).id, ""};
    return {ThingKind::circuit, draw.of(survey.circuits.rows()).id, ""};
}

class Building {
public:
    explicit Building(Draw& draw) : draw_(draw), thing_(draw) {}

    Survey make() {
        Source utility;
        utility.id = "utility";
        utility.system = draw_.one_in(2) ? System::split_120_240 : System::wye_208;
        survey_.sources = Table<Source>({utility});
        survey_.heading.built = draw_.number(1970, 2023);
        if (draw_.one_in(3)) survey_.occupancies = Table<Occupancy>({Occupancy{}});
        add_panels();
        add_dwellings();
        survey_.panels = Table<Panel>(panels_);
        survey_.breakers = Table<Breaker>(breakers_);
        add_second_sources(utility);
        survey_.circuits = Table<Circuit>(circuits_);
        add_outlets();
        add_loads();
        add_remarks();
        return survey_;
    }

private:
    void add_second_sources(Source utility) {
        utility.fault_ka = 12;
        std::vector<Source> sources = {utility};
        for (const char* id : {"roof", "cellar"}) {
            Source source;
            source.id = id;
            source.kind = draw_.one_in(3) ? "generator" : "pv";
            source.through = draw_.of(breakers_).id;
            source.output_a = Amperes(draw_.number(8, 60));
            if (draw_.one_in(10)) source.labelled = false;
            if (draw_.one_in(6)) source.interlock = "none";
            if (draw_.one_in(2)) sources.push_back(source);
        }
        survey_.sources = Table<Source>(sources);
        survey_.grounding.emplace().gec_size = "8";
    }

    void add_panels() {
        const int count = draw_.number(2, 9);
        for (int p = 0; p < count; ++p) {
            Panel panel;
            panel.id = numbered("P", static_cast<std::size_t>(p));
            panel.fed_by = {p == 0 ? "utility"
                                   : feeder_in(panels_[static_cast<std::size_t>(draw_.number(0, (p - 1) / 2))])};
            panel.spaces = 84;
            if (draw_.one_in(3)) panel.bus_a = Amperes(draw_.of(std::vector<double>{60, 100, 200}));
            if (draw_.one_in(2)) panel.feeder = thing_.wire();
            if (draw_.one_in(2)) panel.main_at = "top";
            if (draw_.one_in(2)) panel.main_a = Amperes(100);
            if (draw_.one_in(4)) panel.fault_ka = 8;
            if (draw_.one_in(8)) panel.transformer = Transformer{};
            panels_.push_back(panel);
            for (int c = draw_.number(1, 8); c > 0; --c) add_circuit(panel);
        }
    }

    /// Units that must have their circuits, looked for once all of theirs are traced.
    void add_dwellings() {
        if (!draw_.one_in(3)) return;
        for (Circuit& circuit : circuits_) circuit.traced = Traced{"switching", {}, {}};
        Dwelling dwelling;
        dwelling.panels = Ids{panels_.back().id, draw_.of(panels_).id};
        dwelling.small_appliance_circuits = draw_.number(1, 3);
        survey_.dwellings = Table<Dwelling>({dwelling});
    }

    std::string feeder_in(const Panel& panel) {
        const std::string id = numbered("f", breakers_.size());
        breakers_.push_back(thing_.breaker(id, panel.id, next_space_ += 8, draw_.one_in(3) ? 3 : 2));
        return id;
    }

    void add_circuit(const Panel& panel) {
        const std::string id = numbered("b", breakers_.size());
        breakers_.push_back(thing_.breaker(id, panel.id, next_space_ += 2, draw_.one_in(4) ? 2 : 1));
        if (next_space_ > 70) next_space_ = 1;
        if (draw_.one_in(5) && !breakers_.empty()) breakers_.back().tied_with = Ids{draw_.of(breakers_).id};
        if (breakers_.back().tied_with == Ids{id}) breakers_.back().tied_with.reset();
        const std::string neutral =
            (draw_.one_in(20) ? "shared" : panel.id) + numbered("-N", static_cast<std::size_t>(draw_.number(1, 2)));
        if (!draw_.one_in(8)) circuits_.push_back(thing_.circuit(numbered("c", circuits_.size()), id, neutral));
        if (circuits_.empty()) circuits_.push_back(thing_.circuit("c0", id, neutral));
    }

    void add_outlets() {
        std::vector<Outlet> outlets;
        for (int count = draw_.number(3, 50); count > 0; --count) {
            Outlet outlet = thing_.outlet(numbered("o", outlets.size()));
            if (!outlets.empty() && draw_.one_in(2))
                outlet.upstream = draw_.of(outlets).id;
            else if (!draw_.one_in(6))
                outlet.circuits = {draw_.of(circuits_).id};
            if (!outlet.upstream && draw_.one_in(2)) outlet.upstream = "home-run";
            if (draw_.one_in(12)) outlet.old_breakers = Ids{draw_.of(breakers_).id};
            outlets.push_back(outlet);
        }
        survey_.outlets = Table<Outlet>(outlets);
    }

    void add_loads() {
        std::vector<Load> loads;
        for (int count = draw_.number(3, 50); count > 0; --count) {
            loads.push_back(thing_.load(numbered("l", loads.size())));
            if (draw_.one_in(4))
                loads.back().circuit = draw_.of(circuits_).id;
            else
                loads.back().outlet = draw_.of(survey_.outlets.rows()).id;
        }
        survey_.loads = Table<Load>(loads);
    }

    void add_remarks() {
        for (int count = draw_.number(0, 6); count > 0; --count)
            add_one(survey_.limits, draw_, thing_.limit(any_address(survey_, draw_)));
        for (int count = draw_.number(0, 40); count > 0; --count)
            add_one(survey_.readings, draw_, thing_.reading(any_address(survey_, draw_)));
        if (draw_.one_in(2)) {
            Round round;
            round.odd = Ids{draw_.of(survey_.outlets.rows()).id};
            survey_.rounds = Table<Round>({round});
        }
        for (const char* rule : {"claim-only", "neutral-imbalance", "label-vague", "voltage-drop"}) {
            Accepted accepted;
            accepted.rule = rule;
            accepted.of = any_address(survey_, draw_).text();
            if (draw_.one_in(2)) add_one(survey_.accepted, draw_, accepted);
        }
    }

    Draw& draw_;
    Entered thing_;
    Survey survey_;
    std::vector<Panel> panels_;
    std::vector<Breaker> breakers_;
    std::vector<Circuit> circuits_;
    int next_space_ = 1;
};

}  // namespace

Survey random_building(Draw& draw) { return Building(draw).make(); }

Survey edited(const Survey& before, Draw& draw) {
    Survey survey = before;
    Entered thing(draw);
    const auto any_circuit = [&] { return draw.of(before.circuits.rows()).id; };
    const auto any_breaker = [&] { return draw.of(before.breakers.rows()).id; };
    switch (draw.number(1, 20)) {
        case 1:
            change_one(survey.breakers, draw, [&](Breaker& b) { b.amps = Amperes(draw.number(10, 60)); });
            break;
        case 2:
            change_one(survey.breakers, draw, [&](Breaker& b) { b.spaces.front() = draw.number(1, 84); });
            break;
        case 3:  // a feeder stays in its panel: a circle of feeds is no survey
            change_one(survey.breakers, draw, [&](Breaker& b) {
                if (b.id.front() != 'f') b.panel = draw.of(before.panels.rows()).id;
            });
            break;
        case 4:
            change_one(survey.circuits, draw, [&](Circuit& c) { c.breakers = {any_breaker()}; });
            break;
        case 5:
            change_one(survey.circuits, draw, [&](Circuit& c) { c.purpose = draw.of(words); });
            break;
        case 6:
            change_one(survey.circuits, draw, [&](Circuit& c) { c.neutral = "P1-N1"; });
            break;
        case 7:
            change_one(survey.circuits, draw, [&](Circuit& c) { c.wire = thing.wire(); });
            break;
        case 8:
            change_one(survey.circuits, draw, [&](Circuit& c) { c.breakers.clear(); });
            break;
        case 9:
            change_one(survey.outlets, draw, [&](Outlet& o) { o.circuits = {any_circuit()}; });
            break;
        case 10:
            change_one(survey.outlets, draw, [&](Outlet& o) {
                o = [&] {
                    Outlet n = thing.outlet(o.id);
                    n.circuits = o.circuits;
                    return n;
                }();
            });
            break;
        case 11:
            change_one(survey.loads, draw, [&](Load& l) { l.va = VoltAmperes(draw.number(10, 3000)); });
            break;
        case 12: {
            Load load = thing.load(fresh(survey.loads, "l"));
            load.outlet = draw.of(before.outlets.rows()).id;
            add_one(survey.loads, draw, load);
            break;
        }
        case 13:
            take_one(survey.loads, draw);
            break;
        case 14:
            add_one(survey.readings, draw, thing.reading(any_address(survey, draw)));
            break;
        case 15:
            take_one(survey.readings, draw);
            break;
        case 16: {
            add_one(survey.circuits, draw, thing.circuit(fresh(survey.circuits, "c"), any_breaker(), "P0-N1"));
            break;
        }
        case 17:
            change_one(survey.panels, draw, [&](Panel& p) { p.feeder = thing.wire(); });
            break;
        case 19:
            add_one(survey.limits, draw, thing.limit(any_address(survey, draw)));
            break;
        case 20:
            take_one(survey.limits, draw);
            break;
        case 18: {
            Accepted accepted;
            accepted.rule = "label-vague";
            accepted.of = any_address(survey, draw).text();
            add_one(survey.accepted, draw, accepted);
            break;
        }
    }
    return survey;
}
