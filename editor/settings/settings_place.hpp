// The Settings page's values: how the desk is set, what it can be set to, and whether that could be
// kept. Each change takes effect and is kept at once.
#pragma once

#include <filesystem>
#include <string>
#include <vector>

#include "content/common/result.hpp"
#include "editor/settings/desk_settings.hpp"
#include "editor/settings/sound_devices.hpp"

namespace wrenlet::desk {

/// What the settings come from and go to.
struct SettingsHome {
    std::filesystem::path file = {};  // empty: they are not kept
    SoundDevices* devices = nullptr;  // null: there is no choice of sound
    std::filesystem::path own = {};   // the program's own folder, which the page shows
};

class SettingsPlace {
  public:
    explicit SettingsPlace(SettingsHome home);

    const DeskSettings& now() const { return now_; }
    void set(const DeskSettings& settings);
    /// What could not be read or kept.
    const std::vector<Problem>& problems() const { return problems_; }
    const SettingsHome& home() const { return home_; }

    /// Those plugged in when last looked, at most 12; where the chosen one is not there it stands
    /// last. Empty without a choice.
    const std::vector<std::string>& names(SoundWay way) const {
        return way == SoundWay::in ? in_ : out_;
    }
    const std::string& chosen(SoundWay way) const {
        return way == SoundWay::in ? now_.microphone : now_.loudspeaker;
    }
    bool isHere(SoundWay way, const std::string& name) const;
    void choose(SoundWay way, const std::string& name);
    void lookAgain();

  private:
    void list(SoundWay way, std::vector<std::string>& names, std::vector<std::string>& here);

    SettingsHome home_;
    DeskSettings now_;
    std::vector<Problem> problems_;
    std::vector<std::string> in_, out_, in_here_, out_here_;
};

}  // namespace wrenlet::desk
