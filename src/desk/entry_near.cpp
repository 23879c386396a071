// SPDX-License-Identifier: MIT
#include "desk/entry_near.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "desk/entry_keys.hpp"
#include "desk/form_order.hpp"

namespace doorcard {
namespace {

using Found = std::optional<std::string>;

bool has(const Ids& ids, std::string_view id) { return std::ranges::find(ids, id) != ids.end(); }

/// Walks from one thing of a survey to entries that belong to it.
class Near {
public:
    Near(const Survey& survey, const Address& of) : survey_(survey), of_(of) {}

    Found entry(std::string_view table, std::string_view key) const {
        if (table == "survey" || table == "grounding") return std::string(table) + ":";
        if (table == "dwelling") return dwelling();
        if (table == "breaker") return breaker();
        if (table == "circuit") return circuit();
        if (table == "panel") return panel();
        if (table == "source") return source();
        if (table == "outlet") return outlet();
        if (table == "load") return load(key);
        return numbered(table, key);
    }

private:
    Found named(std::string_view table, const std::string& id) const {
        return id.empty() ? std::nullopt : Found(std::string(table) + ":" + id);
    }

    /// The circuits of the thing.
    std::vector<const Circuit*> circuits() const {
        std::vector<const Circuit*> found;
        for (const Circuit& one : survey_.circuits) {
            const bool is_it = (of_.kind == ThingKind::circuit || of_.kind == ThingKind::ground) && one.id == of_.id;
            const bool names = of_.kind == ThingKind::neutral && one.neutral == of_.id;
            const bool is_on = of_.kind == ThingKind::breaker && has(one.breakers, of_.id);
            if (is_it || names || is_on || feeds_outlet(one)) found.push_back(&one);
        }
        return found;
    }
    bool feeds_outlet(const Circuit& circuit) const {
        const Outlet* outlet = of_.kind == ThingKind::outlet ? survey_.outlets.find(of_.id) : nullptr;
        return outlet && has(outlet->circuits, circuit.id);
    }

    Found circuit() const {
        const auto found = circuits();
        return found.empty() ? std::nullopt : named("circuit", found.front()->id);
    }
    std::string breaker_id() const {
        if (of_.kind == ThingKind::breaker) return of_.id;
        for (const Circuit* one : circuits())
            if (!one->breakers.empty()) return one->breakers.front();
        return {};
    }
    Found breaker() const { return named("breaker", breaker_id()); }

    Found panel() const {
        if (of_.kind == ThingKind::panel) return named("panel", of_.id);
        const Breaker* breaker = survey_.breakers.find(breaker_id());
        return breaker ? named("panel", breaker->panel) : std::nullopt;
    }
    Found source() const {
        if (of_.kind == ThingKind::source) return named("source", of_.id);
        for (const Source& one : survey_.sources)
            if (one.through && *one.through == breaker_id()) return named("source", one.id);
        const Panel* panel = of_.kind == ThingKind::panel ? survey_.panels.find(of_.id) : nullptr;
        for (const Source& one : survey_.sources)
            if (panel && has(panel->fed_by, one.id) && one.kind != "utility") return named("source", one.id);
        return std::nullopt;
    }
    Found dwelling() const {
        for (const Dwelling& one : survey_.dwellings)
            if (of_.kind != ThingKind::panel || !one.panels || has(*one.panels, of_.id))
                return named("dwelling", one.id);
        return std::nullopt;
    }

    Found outlet() const {
        if (of_.kind == ThingKind::outlet) return named("outlet", of_.id);
        for (const Circuit* circuit : circuits())
            for (const Outlet& one : survey_.outlets)
                if (has(one.circuits, circuit->id)) return named("outlet", one.id);
        return std::nullopt;
    }

    bool hangs_here(const Load& load) const {
        if (of_.kind == ThingKind::load) return load.id == of_.id;
        if (of_.kind == ThingKind::outlet) return load.outlet == of_.id;
        if (of_.kind == ThingKind::panel && load.panel == of_.id) return true;
        const Outlet* outlet = load.outlet ? survey_.outlets.find(*load.outlet) : nullptr;
        return std::ranges::any_of(circuits(), [&](const Circuit* one) {
            return load.circuit == one->id || (outlet && has(outlet->circuits, one->id));
        });
    }
    Found load(std::string_view key) const {
        Found first;
        for (const Load& one : survey_.loads) {
            if (!hangs_here(one)) continue;
            if (is_wanted(one, key)) return named("load", one.id);
            if (!first) first = named("load", one.id);
        }
        return first;
    }
    static bool is_wanted(const Load& load, std::string_view key) {
        if (key == "watts") return !load.va && !load.watts && !load.amps && !load.hp;
        if (key == "legs") return !load.legs;
        if (key == "continuous") return load.continuous == false;
        if (key == "max_device_a") return load.max_device_a.has_value();
        if (key == "min_circuit_a") return load.min_circuit_a.has_value();
        return key != "leakage_ma" || load.leakage_ma.has_value();
    }

    /// An entry without an id that is of the thing; the first that has the key.
    Found numbered(std::string_view table, std::string_view key) const {
        const KeyTable& of = table_named(table);
        for (std::size_t row = 0; row < of.count(survey_); ++row) {
            const EntryKeys entry{of.keys, of.thing(survey_, row)};
            const auto said = parse_address(value_read(entry, "of"));
            const bool is_it = said && said->kind == of_.kind && said->id == of_.id;
            const bool is_any = of_.kind == ThingKind::survey;
            if ((is_it || is_any) && (key.empty() || value_held(entry, key)))
                return fmt::format("{}:{}", table, row + 1);
        }
        return std::nullopt;
    }

    const Survey& survey_;
    const Address& of_;
};

}  // namespace

std::optional<std::string> entry_near(const Survey& survey, const Address& of, std::string_view table,
                                      std::string_view key) {
    if (!find_table(table)) return Near(survey, of).entry("circuit", key);
    return Near(survey, of).entry(table, key);
}

}  // namespace doorcard
