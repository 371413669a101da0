#include "editor/settings/settings_place.hpp"

#include <algorithm>

namespace wrenlet::desk {
namespace {

constexpr std::size_t kMostDevices = 12;

}  // namespace

SettingsPlace::SettingsPlace(SettingsHome home) : home_(std::move(home)) {
    const Result<DeskSettings> opened = openDeskSettings(home_.file);
    now_ = opened.value();
    problems_ = opened.problems();
    if (home_.devices == nullptr) return;
    home_.devices->use(SoundWay::in, now_.microphone);
    home_.devices->use(SoundWay::out, now_.loudspeaker);
}

void SettingsPlace::set(const DeskSettings& settings) {
    if (settings == now_) return;
    now_ = settings;
    problems_.clear();
    if (home_.file.empty()) return;
    if (const auto kept = keepDeskSettings(home_.file, now_); !kept.ok()) {
        problems_ = kept.problems();
        problems_.front().what += " The desk is set so for this time alone.";
    }
}

bool SettingsPlace::isHere(SoundWay way, const std::string& name) const {
    const auto& here = way == SoundWay::in ? in_here_ : out_here_;
    return std::count(here.begin(), here.end(), name) > 0;
}

void SettingsPlace::choose(SoundWay way, const std::string& name) {
    DeskSettings settings = now_;
    (way == SoundWay::in ? settings.microphone : settings.loudspeaker) = name;
    set(settings);
    if (home_.devices != nullptr) home_.devices->use(way, name);
}

void SettingsPlace::list(SoundWay way, std::vector<std::string>& names,
                         std::vector<std::string>& here) {
    here = home_.devices->names(way);
    if (here.size() > kMostDevices) here.resize(kMostDevices);
    names = here;
    if (!chosen(way).empty() && !isHere(way, chosen(way))) names.push_back(chosen(way));
}

void SettingsPlace::lookAgain() {
    if (home_.devices == nullptr) return;
    list(SoundWay::in, in_, in_here_);
    list(SoundWay::out, out_, out_here_);
}

}  // namespace wrenlet::desk
