#include "editor/voice/letter_to_sound.hpp"

extern "C" {
#include <flite/flite.h>
cst_lexicon* cmu_lex_init(void);
}

#include <optional>
#include <string>

#include "content/speech/lexicon_file.hpp"

namespace wrenlet::desk {

namespace {

using speech::Phoneme;
using speech::Sound;
using speech::Stress;

/// "ae1", "ax", "t": a phone as flite's lexicon names it.
std::optional<Sound> soundOf(std::string phone) {
    Stress stress = Stress::none;
    if (!phone.empty() && phone.back() >= '0' && phone.back() <= '9') {
        if (phone.back() != '0') stress = Stress::primary;
        phone.pop_back();
    }
    for (char& letter : phone)
        if (letter >= 'a' && letter <= 'z') letter = static_cast<char>(letter - 'a' + 'A');
    const auto phoneme = speech::fromArpabet(phone);
    if (!phoneme) return std::nullopt;
    const bool is_schwa = *phoneme == Phoneme::ah && stress == Stress::none;
    return Sound{is_schwa ? Phoneme::ax : *phoneme, stress};
}

/// One vowel at least carries the main stress, and a lone schwa that does is the vowel of "cup".
void stressed(speech::Pronunciation& sounds) {
    Sound* first = nullptr;
    for (Sound& sound : sounds) {
        if (sound.stress == Stress::primary) return;
        if (first == nullptr && speech::isVowel(sound.phoneme)) first = &sound;
    }
    if (first == nullptr) return;
    if (first->phoneme == Phoneme::ax) first->phoneme = Phoneme::ah;
    first->stress = Stress::primary;
}

struct DeleteValue {
    void operator()(cst_val* value) const { delete_val(value); }
};

}  // namespace

struct FliteRules::Engine {
    Engine() : lexicon((flite_init(), cmu_lex_init())) {}
    cst_lexicon* lexicon;  // the library's own; it lives as long as the program
};

FliteRules::FliteRules() : engine_(std::make_unique<Engine>()) {}
FliteRules::~FliteRules() = default;

speech::Pronunciation FliteRules::guess(std::string_view word) const {
    std::string letters;
    for (const char letter : word)
        if (letter >= 'a' && letter <= 'z') letters += letter;
    if (letters.empty() || letters.size() > speech::kMostWordLetters) return {};
    const std::unique_ptr<cst_val, DeleteValue> phones(
        lex_lookup(engine_->lexicon, letters.c_str(), nullptr, nullptr));
    speech::Pronunciation sounds;
    for (const cst_val* at = phones.get(); at != nullptr; at = val_cdr(at)) {
        const auto sound = soundOf(val_string(val_car(at)));
        if (!sound) return {};
        sounds.push_back(*sound);
    }
    stressed(sounds);
    return sounds;
}

}  // namespace wrenlet::desk
