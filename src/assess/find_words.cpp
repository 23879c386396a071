// SPDX-License-Identifier: MIT
#include "assess/find_words.hpp"

#include <algorithm>
#include <map>
#include <set>

#include "assess/label_words.hpp"
#include "base/nearest_word.hpp"

namespace doorcard {
namespace {

// What a house has, in English and Spanish, and what else people call it; folded, singular. Common practice, no source.
constexpr std::string_view alike[] = {
    "freezer congelador",
    "fridge refrigerator refrigerador nevera refri",
    "kitchen cocina",
    "counter encimera mostrador barra",
    "bath bathroom bano lavabo",
    "bedroom bed bedrm br dormitorio recamara cuarto habitacion",
    "living sala estar",
    "dining comedor",
    "hall hallway pasillo",
    "basement cellar sotano",
    "attic atico desvan",
    "garage garaje cochera",
    "laundry lavanderia lavadero",
    "outdoor outside exterior afuera",
    "porch portico porche",
    "yard patio jardin",
    "office oficina despacho",
    "closet armario ropero",
    "stair escalera",
    "shop workshop taller",
    "store tienda",
    "light lighting lamp luz luce lampara alumbrado iluminacion",
    "receptacle outlet plug recept socket tomacorriente enchufe toma",
    "switch interruptor apagador",
    "range stove estufa cocina",
    "oven horno range stove estufa",
    "cooktop parrilla",
    "dryer secadora",
    "washer lavadora",
    "dishwasher lavaplato lavavajilla",
    "disposal disposer triturador",
    "microwave microonda",
    "heater calentador calefactor",
    "heat heating calefaccion",
    "furnace caldera horno",
    "ac a/c cooling conditioner conditioning aire acondicionado",
    "water agua",
    "pump bomba",
    "well pozo",
    "sump sumidero",
    "fan ventilador",
    "smoke humo",
    "alarm alarma",
    "doorbell bell timbre",
    "door puerta",
    "vehicle car ev vehiculo carro coche",
    "charger charging cargador carga",
    "computer computadora ordenador",
    "television tv televisor tele",
    "pool alberca piscina",
    "elevator lift ascensor elevador",
    "compressor compresor",
    "motor engine",
    "saw sierra",
    "sign letrero anuncio",
    "window ventana",
    "feeder alimentador",
    "panel subpanel tablero",
    "main principal",
    "spare reserva",
    "north norte",
    "south sur",
    "east este",
    "west oeste",
    "left izquierda izquierdo",
    "right derecha derecho",
    "upstairs arriba",
    "downstairs abajo",
};

std::string_view singular(std::string_view word) {
    constexpr std::size_t shortest = 4;
    return word.size() >= shortest && word.ends_with('s') && !word.ends_with("ss") ? word.substr(0, word.size() - 1)
                                                                                   : word;
}

const std::multimap<std::string_view, std::size_t>& groups() {
    static const auto map = [] {
        std::multimap<std::string_view, std::size_t> all;
        for (std::size_t group = 0; group < std::size(alike); ++group)
            for (std::size_t from = 0; from <= alike[group].size();) {
                const std::size_t blank = std::min(alike[group].find(' ', from), alike[group].size());
                all.emplace(singular(alike[group].substr(from, blank - from)), group);
                from = blank + 1;
            }
        return all;
    }();
    return map;
}

bool mean_the_same(std::string_view a, std::string_view b) {
    const auto of_a = groups().equal_range(singular(a));
    const auto of_b = groups().equal_range(singular(b));
    return std::any_of(of_a.first, of_a.second, [&](const auto& one) {
        return std::any_of(of_b.first, of_b.second, [&](const auto& other) { return one.second == other.second; });
    });
}

bool has_digit(std::string_view word) {
    return std::ranges::any_of(word, [](unsigned char c) { return c >= '0' && c <= '9'; });
}

}  // namespace

double fit_of_words(std::string_view wanted, std::string_view written) {
    constexpr double plural = 0.98, other_word = 0.95, beginning = 0.8, part = 0.6;
    constexpr std::size_t shortest_beginning = 3, shortest_part = 4;
    if (wanted == written) return 1;
    if (has_digit(wanted)) return 0;
    if (singular(wanted) == singular(written)) return plural;
    if (mean_the_same(wanted, written)) return other_word;
    if (wanted.size() >= shortest_beginning && written.starts_with(singular(wanted))) return beginning;
    if (wanted.size() >= shortest_part && written.find(singular(wanted)) != std::string_view::npos) return part;
    return 0;
}

bool is_near_miss(std::string_view wanted, std::string_view written) {
    constexpr std::size_t shortest = 4;  // of a word that a slip leaves recognisable
    if (wanted.size() < shortest || has_digit(wanted)) return false;
    NearestWord search(wanted);
    search.offer(written);
    return search.meant().has_value();
}

std::vector<std::string> wanted_words(std::string_view question) {
    static const std::set<std::string_view> idle = {"the", "a",   "an", "of",    "in", "on",  "at",  "for",
                                                    "and", "to",  "is", "where", "el", "la",  "los", "las",
                                                    "de",  "del", "en", "y",     "un", "una", "al",  "donde"};
    std::vector<std::string> all, telling;
    for (const LabelWord& word : words_of(question)) {
        if (std::ranges::find(all, word.folded) != all.end()) continue;
        all.push_back(word.folded);
        if (!idle.contains(word.folded)) telling.push_back(word.folded);
    }
    return telling.empty() ? all : telling;
}

}  // namespace doorcard
