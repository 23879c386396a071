// SPDX-License-Identifier: MIT
#include "ui/accessible.hpp"

#include <gtk/gtk.h>
#include <wx/window.h>

#include <string_view>

namespace doorcard {
namespace {

// A control that scrolls stands in a frame of the toolkit's: its name belongs to what has the focus.
GtkWidget* inner(wxWindow* window) {
    GtkWidget* widget = window->m_wxwindow ? window->m_wxwindow : window->GetHandle();
    if (GTK_IS_SCROLLED_WINDOW(widget))
        if (GtkWidget* child = gtk_bin_get_child(GTK_BIN(widget))) return child;
    return widget;
}

// Weight and size of a label: set on it, because a style sheet takes hold only after its size was asked for.
void set_type(GtkLabel* label, std::string_view style) {
    const double scale = style == "title" ? 1.55 : style == "group" ? 1.08 : style == "caption" ? 0.87 : 1;
    PangoAttrList* attributes = pango_attr_list_new();
    pango_attr_list_insert(attributes, pango_attr_scale_new(scale));
    if (style != "caption" && style != "refusal")
        pango_attr_list_insert(attributes, pango_attr_weight_new(PANGO_WEIGHT_BOLD));
    gtk_label_set_attributes(label, attributes);
    pango_attr_list_unref(attributes);
}

void name_widget(GtkWidget* widget, const std::string& name, const std::string& description) {
    AtkObject* object = gtk_widget_get_accessible(widget);
    atk_object_set_name(object, name.c_str());
    if (!description.empty()) atk_object_set_description(object, description.c_str());
}

// Of a choice, the button inside it is what has the focus, and what a screen reader is told of.
void name_button_of_choice(GtkWidget* widget, gpointer name) {
    if (GTK_IS_TOGGLE_BUTTON(widget)) return name_widget(widget, *static_cast<const std::string*>(name), "");
    if (GTK_IS_CONTAINER(widget)) gtk_container_forall(GTK_CONTAINER(widget), &name_button_of_choice, name);
}

}  // namespace

void name_for_readers(wxWindow* window, const std::string& name, const std::string& description) {
    GtkWidget* widget = inner(window);
    name_widget(widget, name, description);
    std::string of_button = name;
    if (GTK_IS_COMBO_BOX(widget)) gtk_container_forall(GTK_CONTAINER(widget), &name_button_of_choice, &of_button);
}

void give_style(wxWindow* window, const char* style) {
    gtk_style_context_add_class(gtk_widget_get_style_context(window->GetHandle()), style);
    if (GTK_IS_LABEL(window->GetHandle())) set_type(GTK_LABEL(window->GetHandle()), style);
    window->InvalidateBestSize();
}
void take_style(wxWindow* window, const char* style) {
    gtk_style_context_remove_class(gtk_widget_get_style_context(window->GetHandle()), style);
}

void pad_rows(wxWindow* list, int pixels) {
    GtkWidget* tree = inner(list);
    if (!GTK_IS_TREE_VIEW(tree)) return;
    GList* columns = gtk_tree_view_get_columns(GTK_TREE_VIEW(tree));
    for (GList* column = columns; column; column = column->next) {
        GList* cells = gtk_cell_layout_get_cells(GTK_CELL_LAYOUT(column->data));
        for (GList* cell = cells; cell; cell = cell->next)
            gtk_cell_renderer_set_padding(GTK_CELL_RENDERER(cell->data), 4, pixels);
        g_list_free(cells);
    }
    g_list_free(columns);
}

void let_wrap(wxWindow* label) {
    GtkLabel* text = GTK_LABEL(label->GetHandle());
    gtk_label_set_line_wrap(text, TRUE);
    gtk_label_set_line_wrap_mode(text, PANGO_WRAP_WORD_CHAR);
    gtk_label_set_ellipsize(text, PANGO_ELLIPSIZE_NONE);
    gtk_label_set_xalign(text, 0);
    gtk_label_set_yalign(text, 0);
}

// wx asks for the size that a label has now: without that, or a label that was narrow once would stay high.
int wrapped_height(wxWindow* label, int width) {
    GtkWidget* widget = label->GetHandle();
    gint asked_width = 0, asked_height = 0, least = 0, natural = 0;
    gtk_widget_get_size_request(widget, &asked_width, &asked_height);
    gtk_widget_set_size_request(widget, -1, -1);
    gtk_widget_get_preferred_height_for_width(widget, width, &least, &natural);
    gtk_widget_set_size_request(widget, asked_width, asked_height);
    return natural;
}

}  // namespace doorcard
