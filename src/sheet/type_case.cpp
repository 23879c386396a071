// SPDX-License-Identifier: MIT
#include "sheet/type_case.hpp"

#include <fontconfig/fontconfig.h>
#include <pango/pangocairo.h>
#include <pango/pangofc-fontmap.h>

#include <cstring>
#include <filesystem>
#include <stdexcept>
#include <unordered_map>

#include "sheet/pango_type.hpp"

#ifndef DOORCARD_FONTS
#define DOORCARD_FONTS "/usr/share/fonts/truetype/dejavu"
#endif

namespace doorcard {
namespace {

template <auto free>
struct Freed {
    template <class T>
    void operator()(T* thing) const {
        free(thing);
    }
};
using OwnedMap = std::unique_ptr<PangoFontMap, Freed<g_object_unref>>;
using OwnedContext = std::unique_ptr<PangoContext, Freed<g_object_unref>>;
using OwnedOptions = std::unique_ptr<cairo_font_options_t, Freed<cairo_font_options_destroy>>;
using OwnedFont = std::unique_ptr<PangoFontDescription, Freed<pango_font_description_free>>;

constexpr const char* faces[] = {"DejaVuSans.ttf",          "DejaVuSans-Bold.ttf",
                                 "DejaVuSans-Oblique.ttf",  "DejaVuSans-BoldOblique.ttf",
                                 "DejaVuSansCondensed.ttf", "DejaVuSansCondensed-Bold.ttf"};

// A private configuration: the same fonts whatever else is installed.
FcConfig* own_fonts() {
    FcConfig* config = FcConfigCreate();
    bool found = false;
    for (const char* face : faces) {
        const std::string path = std::filesystem::path(DOORCARD_FONTS) / face;
        if (!std::filesystem::exists(path)) continue;
        found = FcConfigAppFontAddFile(config, reinterpret_cast<const FcChar8*>(path.c_str())) == FcTrue || found;
    }
    if (found) return config;
    FcConfigDestroy(config);
    throw std::runtime_error("the fonts DejaVu Sans are not installed (package fonts-dejavu)");
}

// Fonts opened once in a thread and never changed, and the lines set and measured with them: a cache, not a state.
struct TypeCase {
    OwnedMap map;
    OwnedContext context;
    mutable std::unordered_map<std::string, double> widths;        // by style and text
    mutable std::unordered_map<std::string, OwnedLayout> layouts;  // likewise

    TypeCase() : map(pango_cairo_font_map_new_for_font_type(CAIRO_FONT_TYPE_FT)) {
        FcConfig* config = own_fonts();
        pango_fc_font_map_set_config(PANGO_FC_FONT_MAP(map.get()), config);
        FcConfigDestroy(config);
        pango_cairo_font_map_set_resolution(PANGO_CAIRO_FONT_MAP(map.get()), 72);
        context.reset(pango_font_map_create_context(map.get()));
        const OwnedOptions options(cairo_font_options_create());
        cairo_font_options_set_hint_style(options.get(), CAIRO_HINT_STYLE_NONE);
        cairo_font_options_set_hint_metrics(options.get(), CAIRO_HINT_METRICS_OFF);
        cairo_font_options_set_antialias(options.get(), CAIRO_ANTIALIAS_GRAY);
        pango_cairo_context_set_font_options(context.get(), options.get());
        pango_context_set_round_glyph_positions(context.get(), FALSE);
        pango_context_set_language(context.get(), pango_language_from_string("en"));
    }
};

const TypeCase& type_case() {
    thread_local const TypeCase fonts;
    return fonts;
}

PangoContext* context() { return type_case().context.get(); }

// What tells one measured text from another.
std::string measured_key(const std::string& text, const TypeStyle& style) {
    std::string key(sizeof style.points, '\0');
    std::memcpy(key.data(), &style.points, sizeof style.points);
    key += static_cast<char>(style.bold + 2 * style.italic + 4 * style.condensed);
    return key + text;
}

double mm(int pango_units) { return pango_units / static_cast<double>(PANGO_SCALE) * mm_per_point; }

std::size_t character_end(const std::string& text, std::size_t begin) {
    std::size_t end = begin + 1;
    while (end < text.size() && (static_cast<unsigned char>(text[end]) & 0xc0) == 0x80) ++end;
    return end;
}

// The most characters of a word that fit, at least one.
std::size_t fitting_part(const std::string& word, const TypeStyle& style, double width) {
    std::size_t end = character_end(word, 0);
    while (end < word.size()) {
        const std::size_t next = character_end(word, end);
        if (text_width(word.substr(0, next), style) > width) break;
        end = next;
    }
    return end;
}

std::string shortened(std::string text, const TypeStyle& style, double width) {
    while (!text.empty() && text_width(text + "…", style) > width) {
        while (text.size() > 1 && (static_cast<unsigned char>(text.back()) & 0xc0) == 0x80) text.pop_back();
        text.pop_back();  // the byte that its character begins with
    }
    while (!text.empty() && (text.back() == ' ' || text.back() == ',')) text.pop_back();
    return text + "…";
}

}  // namespace

void LayoutFreed::operator()(_PangoLayout* layout) const { g_object_unref(layout); }

namespace {

OwnedLayout newly_shaped(const std::string& text, const TypeStyle& style) {
    OwnedLayout layout(pango_layout_new(context()));
    const OwnedFont font(pango_font_description_from_string("DejaVu Sans"));
    pango_font_description_set_absolute_size(font.get(), style.points * PANGO_SCALE);
    pango_font_description_set_weight(font.get(), style.bold ? PANGO_WEIGHT_BOLD : PANGO_WEIGHT_NORMAL);
    pango_font_description_set_style(font.get(), style.italic ? PANGO_STYLE_OBLIQUE : PANGO_STYLE_NORMAL);
    pango_font_description_set_stretch(font.get(),
                                       style.condensed ? PANGO_STRETCH_SEMI_CONDENSED : PANGO_STRETCH_NORMAL);
    pango_layout_set_font_description(layout.get(), font.get());
    pango_layout_set_single_paragraph_mode(layout.get(), TRUE);
    pango_layout_set_text(layout.get(), text.c_str(), static_cast<int>(text.size()));
    return layout;
}

}  // namespace

// Lines are kept as long as a screen asks for them again and again.
OwnedLayout shaped(const std::string& text, const TypeStyle& style) {
    constexpr std::size_t most_kept = 4'000;
    auto& layouts = type_case().layouts;
    if (layouts.size() >= most_kept) layouts.clear();
    OwnedLayout& kept = layouts[measured_key(text, style)];
    if (!kept) kept = newly_shaped(text, style);
    return OwnedLayout(static_cast<PangoLayout*>(g_object_ref(kept.get())));
}

double text_width(const std::string& text, const TypeStyle& style) {
    constexpr std::size_t most_kept = 20'000;
    auto& widths = type_case().widths;
    std::string key = measured_key(text, style);
    if (const auto found = widths.find(key); found != widths.end()) return found->second;
    PangoRectangle logical;
    pango_layout_get_extents(newly_shaped(text, style).get(), nullptr, &logical);
    if (widths.size() >= most_kept) widths.clear();
    return widths.emplace(std::move(key), mm(logical.width)).first->second;
}

InkExtent ink_extent(const std::string& text, const TypeStyle& style) {
    const OwnedLayout layout = shaped(text, style);
    PangoRectangle ink;
    pango_layout_get_extents(layout.get(), &ink, nullptr);
    const int baseline = pango_layout_get_baseline(layout.get());
    return {mm(ink.x), mm(ink.x + ink.width), mm(ink.y - baseline), mm(ink.y + ink.height - baseline)};
}

int unknown_characters(const std::string& text, const TypeStyle& style) {
    return pango_layout_get_unknown_glyphs_count(shaped(text, style).get());
}

std::vector<std::string> broken_lines(const std::string& text, const TypeStyle& style, double width, std::size_t most) {
    std::vector<std::string> lines;
    std::string line;
    for (std::size_t at = 0; at < text.size();) {
        const std::size_t space = std::min(text.find(' ', at), text.size());
        std::string word = text.substr(at, space - at);
        at = space + 1;
        if (word.empty()) continue;
        const std::string longer = line.empty() ? word : line + " " + word;
        if (text_width(longer, style) <= width) {
            line = longer;
            continue;
        }
        if (!line.empty()) lines.push_back(std::exchange(line, ""));
        while (text_width(word, style) > width) {
            const std::size_t part = fitting_part(word, style, width);
            lines.push_back(word.substr(0, part));
            word.erase(0, part);
            if (word.empty()) break;
        }
        line = word;
    }
    if (!line.empty()) lines.push_back(line);
    if (lines.size() <= most) return lines;
    lines.resize(most);
    lines.back() = shortened(lines.back(), style, width);
    return lines;
}

std::vector<std::string> even_lines(const std::string& text, const TypeStyle& style, double width, std::size_t most) {
    std::vector<std::string> lines = broken_lines(text, style, width);
    if (lines.size() < 2 || lines.size() > most) return broken_lines(text, style, width, most);
    double low = width / 2, high = width;
    for (int step = 0; step < 7; ++step) {
        const double middle = (low + high) / 2;
        std::vector<std::string> tried = broken_lines(text, style, middle);
        (tried.size() == lines.size() ? high : low) = middle;
    }
    std::vector<std::string> even = broken_lines(text, style, high);
    return even.size() == lines.size() ? even : lines;
}

}  // namespace doorcard
