// Where the teacher stands with the tablets on her classroom's network: served or not, the code on
// the screen, each tablet in plain words, and the class as what they send makes it.
#pragma once

#include <cstdint>
#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "editor/document/opened_class.hpp"
#include "editor/serve/qr_code.hpp"
#include "editor/serve/serving.hpp"
#include "editor/unit/aside.hpp"

namespace wrenlet::desk {

class ServePlace {
  public:
    struct Parts {
        const Clock& clock;
        link::Entropy& entropy;
        Aside& aside;
        std::function<void()> wake;
        std::filesystem::path page;      // folder of the page's files
        std::filesystem::path own = {};  // certificate.pem and key.pem, where the school has them
        std::function<std::vector<std::string>()> addresses = {};
        std::function<OpenedClass(const std::filesystem::path&)> open_class = {};  // run aside
        ServerOptions server = {};
    };
    ServePlace(pack::Classroom classroom, Parts parts);
    ~ServePlace();

    bool open = false;  // the page is shown in place of the pack's

    /// Problems stand in problems(). A code is made with it.
    void start();
    void stop();
    bool isOn() const { return serving_ != nullptr; }

    void askCode();
    bool isMakingCode() const { return making_; }
    void remove(const std::string& tablet);
    void letBack();  // the one that was removed last

    /// Takes what came; what follows is as it was at the last step.
    void step(std::int64_t now_ms);
    std::optional<std::int64_t> due() const;

    std::string address() const;  // as it is typed
    bool isOnANetwork() const { return isOn() && serving_->isOnANetwork(); }
    bool isSecure() const { return isOn() && serving_->isSecure(); }
    const std::optional<ShownCode>& code() const { return code_; }
    const std::optional<QrCode>& qr() const { return qr_; }  // with the code, where there is one
    const std::vector<SeenTablet>& tablets() const { return tablets_; }
    const std::string& removed() const { return removed_; }  // last; empty: none
    std::uint64_t refusedCount() const { return refused_count_; }
    const std::optional<Refusal>& refusedLast() const { return refused_last_; }
    const std::vector<Problem>& problems() const { return problems_; }

    /// The class gathered anew, when tablets handed in since.
    std::optional<OpenedClass> takeClass();

    Serving* serving() { return serving_.get(); }

  private:
    struct Gathered {
        OpenedClass opened;
        std::int64_t took_ms = 0;
    };
    void look(std::int64_t now_ms);
    void gather(std::int64_t now_ms);

    pack::Classroom classroom_;
    Parts parts_;
    std::unique_ptr<Serving> serving_;
    Newest<std::shared_ptr<Gathered>> gathered_;
    Newest<std::vector<Problem>> made_code_;
    std::optional<OpenedClass> class_;
    bool making_ = false;
    std::optional<ShownCode> code_;
    std::string qr_of_;
    std::optional<QrCode> qr_;
    std::vector<SeenTablet> tablets_;
    std::string removed_;
    std::uint64_t refused_count_ = 0, handed_in_ = 0;
    std::optional<Refusal> refused_last_;
    std::vector<Problem> problems_;
    std::int64_t looked_ms_ = 0, gather_again_ms_ = 0;
};

/// "playing", "waiting", "not seen for 3 minutes", "has not come yet"
std::string stateInWords(const SeenTablet& tablet, std::int64_t now_ms);
/// "its clock is 3 hours ahead"; empty where it is right enough for a day's answers.
std::string clockInWords(const SeenTablet& tablet);

}  // namespace wrenlet::desk
