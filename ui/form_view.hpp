// SPDX-License-Identifier: MIT
#pragma once
#include <wx/scrolwin.h>

#include <map>
#include <set>
#include <string>
#include <vector>

#include "ui/seat.hpp"

class wxStaticText;
class wxFlexGridSizer;
class wxSizer;

namespace doorcard {

/// A form that is filled in where it stands: what is typed into a field is done when the field is left, or by Enter.
/// What is refused stays as it was typed, with the reason below it.
class FormView final : public wxScrolledWindow {
public:
    FormView(wxWindow* parent, Seat&);
    /// The fields of now; controls are kept where the same fields are shown again. `field`, if it is among them, gets
    /// the focus once.
    void show(const std::vector<FormGroup>&, const std::string& field = {});
    /// The first field gets the focus.
    void focus_first();

private:
    struct Row {
        FormField field;
        wxWindow* control = nullptr;
        wxStaticText* below = nullptr;
        bool is_refused = false;
    };

    static std::string shape_of(const std::vector<FormGroup>&);
    void rebuild(const std::vector<FormGroup>&);
    void add_group(const FormGroup&, wxSizer*);
    void add_row(const FormField&, wxFlexGridSizer*);
    void show_field(std::size_t row);
    wxWindow* control_for(const FormField&);
    wxWindow* text_for(const FormField&);
    wxWindow* choice_for(const FormField&);
    void fill(std::size_t row);
    std::string typed_in(const Row&) const;
    void commit(std::size_t row);
    void say_below(Row&, const std::string&);
    void show_group(const std::string& title, bool open);

    Seat& seat_;
    std::string shape_;
    std::vector<Row> rows_;
    std::set<std::string> opened_;  ///< folded groups that were opened, by title
    std::vector<FormGroup> shown_;
};

}  // namespace doorcard
