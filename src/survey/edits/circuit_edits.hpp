// SPDX-License-Identifier: MIT
#pragma once
#include "survey/edits/edit.hpp"

namespace doorcard {

Edit add_circuit(const Circuit&);
/// Everything of it may be changed but its id.
Edit change_circuit(const Circuit&);
Edit remove_circuit(std::string id, Mentions = Mentions::refuse);
/// Its text in the directory; empty: composed from its outlets.
Edit name_circuit(std::string id, const std::string& purpose);
/// What feeds it; empty: not known.
Edit feed_circuit(std::string id, const Ids& breakers);
Edit wire_circuit(std::string id, const std::optional<Wire>&);
/// The neutral it shares with others of that name; "own": traced, not shared; nullopt: not traced.
Edit share_neutral(std::string id, const std::optional<std::string>& neutral);
/// How it is known what feeds it.
Edit trace_circuit(std::string id, const Ids& breakers, const Traced&);

}  // namespace doorcard
