// SPDX-License-Identifier: MIT
#include "base/message.hpp"

#include <utility>

namespace doorcard {

Message verbatim(std::string text) {
    if (text.empty()) return {};
    return {"{0}", {std::move(text)}};
}

Message and_list(std::vector<Message::Part> items) {
    if (items.empty()) return {};
    Message list{"{0}", {std::move(items.front())}};
    for (std::size_t i = 1; i < items.size(); ++i) {
        const char* joint = i + 1 == items.size() ? tr("{0} and {1}") : tr("{0}, {1}");
        list = Message{joint, {std::move(list), std::move(items[i])}};
    }
    return list;
}

}  // namespace doorcard
