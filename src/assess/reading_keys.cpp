// SPDX-License-Identifier: MIT
#include "assess/reading_keys.hpp"

#include <algorithm>
#include <array>

namespace doorcard {
namespace {

template <auto Member>
std::optional<double> number_of(const Reading& reading) {
    const auto& value = reading.*Member;
    if (!value) return std::nullopt;
    if constexpr (requires { value->value; })
        return value->value;
    else
        return *value;
}

constexpr std::array keys = {
    ReadingKey{"amps", "A", number_of<&Reading::amps>},
    ReadingKey{"amps_min", "A", number_of<&Reading::amps_min>},
    ReadingKey{"amps_max", "A", number_of<&Reading::amps_max>},
    ReadingKey{"amps_crest", "A", number_of<&Reading::amps_crest>},
    ReadingKey{"inrush_a", "A", number_of<&Reading::inrush_a>},
    ReadingKey{"volts", "V", number_of<&Reading::volts>},
    ReadingKey{"volts_ground", "V", number_of<&Reading::volts_ground>},
    ReadingKey{"volts_neutral_ground", "V", number_of<&Reading::volts_neutral_ground>},
    ReadingKey{"volts_unloaded", "V", number_of<&Reading::volts_unloaded>},
    ReadingKey{"test_load_a", "A", number_of<&Reading::test_load_a>},
    ReadingKey{"watts", "W", number_of<&Reading::watts>},
    ReadingKey{"power_factor", "", number_of<&Reading::power_factor>},
    ReadingKey{"third_harmonic", "", number_of<&Reading::third_harmonic>},
    ReadingKey{"leakage_ma", "mA", number_of<&Reading::leakage_ma>},
    ReadingKey{"noise_db", "dB", number_of<&Reading::noise_db>},
    ReadingKey{"neutral_to_ground_ohm", "ohm", number_of<&Reading::neutral_to_ground_ohm>},
    ReadingKey{"temp_c", "°C", number_of<&Reading::temp_c>},
    ReadingKey{"ambient_c", "°C", number_of<&Reading::ambient_c>},
    ReadingKey{"hours", "h", number_of<&Reading::hours>},
};

}  // namespace

std::span<const ReadingKey> reading_number_keys() { return keys; }

const ReadingKey* reading_key(std::string_view name) {
    const auto at = std::ranges::find(keys, name, &ReadingKey::name);
    return at == keys.end() ? nullptr : &*at;
}

}  // namespace doorcard
