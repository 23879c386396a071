// SPDX-License-Identifier: MIT
#include "ui/looks.hpp"

#include <fmt/format.h>
#include <gtk/gtk.h>

#include <algorithm>

namespace doorcard {
namespace {

const Colours by_day{{0xfb, 0xfa, 0xf6}, {0xff, 0xff, 0xff}, {0x16, 0x20, 0x2a}, {0x41, 0x4c, 0x56},
                     {0xb9, 0xb6, 0xac}, {0x7a, 0x4b, 0x12}, {0xb5, 0x12, 0x1b}};
const Colours by_night{{0x11, 0x1a, 0x24}, {0x18, 0x24, 0x31}, {0xe8, 0xe4, 0xda}, {0xb4, 0xb8, 0xba},
                       {0x3c, 0x4a, 0x58}, {0xd9, 0xa4, 0x5b}, {0xff, 0x8a, 0x80}};
const Colours high_contrast{{0, 0, 0},          {0, 0, 0},          {0xff, 0xff, 0xff}, {0xff, 0xff, 0xff},
                            {0xff, 0xff, 0xff}, {0xff, 0xe0, 0x00}, {0xff, 0x80, 0x80}};

std::string css(const wxColour& colour) { return std::string(colour.GetAsString(wxC2S_HTML_SYNTAX).utf8_str()); }

// Whether the desktop asks for a dark theme, asked of the toolkit and not of our own style sheet.
bool system_is_dark() {
    GtkSettings* settings = gtk_settings_get_default();
    gboolean prefers = FALSE;
    gchar* name = nullptr;
    g_object_get(settings, "gtk-application-prefer-dark-theme", &prefers, "gtk-theme-name", &name, nullptr);
    const char* forced = g_getenv("GTK_THEME");
    const std::string theme = fmt::format("{} {}", name ? name : "", forced ? forced : "");
    g_free(name);
    return prefers || theme.find("dark") != std::string::npos || theme.find("Dark") != std::string::npos;
}

bool system_is_high_contrast() {
    gchar* name = nullptr;
    g_object_get(gtk_settings_get_default(), "gtk-theme-name", &name, nullptr);
    const std::string theme = name ? name : "";
    g_free(name);
    return theme.find("HighContrast") != std::string::npos;
}

// The hand of the printed sheets for the toolkit's controls: square corners, hairlines, one accent, and room for a
// gloved finger. {ground} ... are colours, {p44} is 44 pixels at the scale.
constexpr const char* sheet = R"(
* {{ font-size: {font}px; font-feature-settings: "tnum"; -gtk-icon-shadow: none; text-shadow: none; }}
window, .background, scrolledwindow, viewport, notebook, notebook > stack, box, popover {{ background-color: {ground}; color: {ink}; }}
menubar, menu, .menu {{ background-color: {ground}; color: {ink}; border-radius: 0; }}
menubar {{ border-bottom: 1px solid {rule}; box-shadow: none; }}
menubar > menuitem {{ padding: {p5}px {p9}px; color: {ink}; }}
menu menuitem {{ min-height: {p28}px; padding: {p3}px {p9}px; color: {ink}; }}
menuitem:hover, menubar > menuitem:hover {{ background-color: {ink}; color: {ground}; box-shadow: none; border: none; }}
menuitem:disabled, menuitem:disabled label {{ color: {rule}; }}
label {{ color: {ink}; }}
label.caption {{ color: {caption}; }}
label.refusal {{ color: {danger}; }}
button {{ border-radius: 0; background: {ground}; color: {ink}; border: 1px solid {caption}; box-shadow: none;
         min-height: {p34}px; padding: {p4}px {p12}px; outline-offset: -4px; }}
button label {{ color: inherit; }}
button:hover {{ background: {field}; border-color: {ink}; }}
button:active, button:checked {{ background: {ink}; color: {ground}; border-color: {ink}; }}
button:disabled {{ color: {rule}; border-color: {rule}; }}
button.main {{ border: 2px solid {accent}; font-weight: bold; }}
button:focus, entry:focus, combobox button:focus, checkbutton:focus {{ outline: 2px solid {accent}; }}
entry, textview, textview text, spinbutton {{ border-radius: 0; background: {field}; color: {ink}; caret-color: {accent}; }}
entry {{ border: 1px solid {rule}; border-bottom-color: {caption}; box-shadow: none; min-height: {p34}px; padding: {p4}px {p8}px; }}
entry:focus {{ border-color: {accent}; box-shadow: inset 0 -2px {accent}; }}
entry selection, textview selection, label selection {{ background-color: {accent}; color: {ground}; }}
combobox button, combobox entry {{ border-color: {rule}; border-bottom-color: {caption}; }}
combobox arrow {{ color: {caption}; }}
checkbutton, radiobutton {{ min-height: {p44}px; }}
check, radio {{ border-radius: 0; border: 1px solid {ink}; background: {field}; color: {ink}; min-height: {p20}px; min-width: {p20}px; box-shadow: none; }}
check:checked {{ background: {ink}; color: {ground}; }}
notebook {{ border: none; }}
notebook > header {{ background: {ground}; border: none; border-bottom: 1px solid {ink}; box-shadow: none; padding: 0; }}
notebook > header tabs {{ margin: 0; }}
notebook > header tab {{ border: none; background: {ground}; box-shadow: none; min-height: {p34}px; padding: {p4}px {p14}px;
                        border-bottom: 3px solid transparent; }}
notebook > header tab label {{ color: {caption}; font-weight: normal; }}
notebook > header tab:hover {{ border-bottom-color: {rule}; box-shadow: none; background: {ground}; }}
notebook > header tab:checked {{ border-bottom-color: {accent}; box-shadow: none; background: {ground}; }}
notebook > header tab:checked label {{ color: {ink}; font-weight: bold; }}
treeview.view {{ background-color: {ground}; color: {ink}; border-color: {rule}; -GtkTreeView-grid-line-width: 1; }}
treeview.view:selected, treeview.view:selected:focus {{ background-color: {selected}; color: {ink}; }}
treeview.view header button, treeview.view header button:hover {{ border: none; border-bottom: 1px solid {ink}; background: {ground}; color: {caption};
    font-weight: normal; min-height: {p20}px; padding: {p2}px {p6}px; }}
label.danger {{ background: #c8102e; color: #ffffff; font-weight: bold; padding: {p4}px {p6}px; }}
label.warning {{ background: #ff8200; color: #000000; font-weight: bold; padding: {p4}px {p6}px; }}
label.caution {{ background: #ffd100; color: #000000; font-weight: bold; padding: {p4}px {p6}px; }}
label.notice {{ background: #0057b8; color: #ffffff; font-weight: bold; padding: {p4}px {p6}px; }}
scrollbar {{ background: {ground}; border: none; }}
scrollbar slider {{ background: {caption}; border-radius: 0; min-width: {p8}px; min-height: {p8}px; }}
separator, paned > separator {{ background: {rule}; }}
expander {{ color: {caption}; }}
tooltip, tooltip * {{ background: {ink}; color: {ground}; border-radius: 0; }}
)";

}  // namespace

Looks::Looks(Theme theme, double scale) : theme_(theme), scale_(std::clamp(scale, least_scale, most_scale)) {
    take_hold();
}

void Looks::set(Theme theme, double scale) {
    theme_ = theme;
    scale_ = std::clamp(scale, least_scale, most_scale);
    take_hold();
}

std::string Looks::style_sheet() const {
    const auto p = [&](double at_scale_1) { return pixels(at_scale_1); };
    const auto half = [](unsigned char a, unsigned char b) { return static_cast<unsigned char>((3 * a + b) / 4); };
    const wxColour &g = colours_.ground, &a = colours_.accent;
    const wxColour selected(half(g.Red(), a.Red()), half(g.Green(), a.Green()), half(g.Blue(), a.Blue()));
    return fmt::format(sheet, fmt::arg("ground", css(colours_.ground)), fmt::arg("field", css(colours_.field)),
                       fmt::arg("ink", css(colours_.ink)), fmt::arg("caption", css(colours_.caption)),
                       fmt::arg("rule", css(colours_.rule)), fmt::arg("accent", css(colours_.accent)),
                       fmt::arg("danger", css(colours_.danger)), fmt::arg("selected", css(selected)),
                       fmt::arg("font", p(14)), fmt::arg("p2", p(2)), fmt::arg("p3", p(3)), fmt::arg("p4", p(4)),
                       fmt::arg("p5", p(5)), fmt::arg("p6", p(6)), fmt::arg("p8", p(8)), fmt::arg("p9", p(9)),
                       fmt::arg("p12", p(12)), fmt::arg("p14", p(14)), fmt::arg("p20", p(20)), fmt::arg("p28", p(28)),
                       fmt::arg("p34", p(34)), fmt::arg("p44", p(44)));
}

void Looks::take_hold() {
    const bool contrast = theme_ == Theme::contrast || (theme_ == Theme::system && system_is_high_contrast());
    const bool dark = theme_ == Theme::dark || (theme_ == Theme::system && system_is_dark());
    ground_ = contrast ? Ground::contrast : dark ? Ground::night : Ground::day;
    colours_ = contrast ? high_contrast : dark ? by_night : by_day;
    if (!provider_) {
        provider_ = gtk_css_provider_new();
        gtk_style_context_add_provider_for_screen(gdk_screen_get_default(), GTK_STYLE_PROVIDER(provider_),
                                                  GTK_STYLE_PROVIDER_PRIORITY_APPLICATION);
    }
    const std::string text = style_sheet();
    gtk_css_provider_load_from_data(static_cast<GtkCssProvider*>(provider_), text.c_str(),
                                    static_cast<gssize>(text.size()), nullptr);
}

}  // namespace doorcard
