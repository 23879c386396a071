// SPDX-License-Identifier: MIT
#include "survey/edits/source_edits.hpp"

#include "survey/edits/thing_edits.hpp"

namespace doorcard {

Edit add_source(const Source& source) {
    return add_thing<Source>({tr("add source {0}"), {source.id}}, &Survey::sources, source);
}

Edit change_source(const Source& source) {
    std::string id = source.id;
    Message name{tr("change source {0}"), {id}};
    return change_thing<Source>(std::move(name), &Survey::sources, std::move(id), [=](Source& it) { it = source; });
}

Edit remove_source(std::string id, Mentions mentions) {
    return remove_thing<Source>({tr("take out source {0}"), {id}}, &Survey::sources, named_source, id, mentions);
}

}  // namespace doorcard
