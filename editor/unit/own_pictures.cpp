#include "editor/unit/own_pictures.hpp"

#include <algorithm>
#include <array>
#include <cctype>
#include <mutex>
#include <system_error>

#include "content/common/files.hpp"
#include "editor/unit/own_picture.hpp"

namespace wrenlet::desk {
namespace {

std::string lowered(std::string text) {
    for (char& c : text) c = static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
    return text;
}

/// "own-duck-2": the first that the folder has no picture of.
std::string freeName(const std::filesystem::path& folder, const std::string& word) {
    std::string letters;
    for (const char c : lowered(word))
        if ((c >= 'a' && c <= 'z') || (c >= '0' && c <= '9')) letters += c;
    for (int number = 1;; ++number) {
        std::string name = "own-" + letters.substr(0, 30) + "-" + std::to_string(number);
        std::error_code error;
        const bool taken = std::filesystem::exists(folder / (name + ".png"), error) ||
                           std::filesystem::exists(folder / (name + ".svg"), error);
        if (!taken) return name;
    }
}

/// The name under which the picture now lies in `folder`.
Result<std::string> kept(const std::filesystem::path& file, const std::filesystem::path& folder,
                         const std::string& word, const DrawSvg& draw_svg) {
    const Result<std::string> bytes = readWhole(file, kMostPhotoBytes);
    if (!bytes.ok()) return bytes.problems();
    const Result<std::string> png =
        tidiedPicture(bytes.value(), file.filename().string(), draw_svg);
    if (!png.ok()) return png.problems();
    std::error_code error;
    std::filesystem::create_directories(folder, error);
    const std::string name = freeName(folder, word);
    const Result<Done> written = writeWhole(folder / (name + ".png"), png.value());
    if (!written.ok()) return written.problems();
    return name;
}

}  // namespace

bool isMeantAsPicture(const std::filesystem::path& file) {
    constexpr std::array<std::string_view, 10> kEndings = {
        ".png", ".jpg", ".jpeg", ".svg", ".gif", ".webp", ".heic", ".bmp", ".tiff", ".avif"};
    const std::string ending = lowered(file.extension().string());
    return std::find(kEndings.begin(), kEndings.end(), ending) != kEndings.end();
}

struct OwnPictures::Shared {
    struct Read {
        std::string word, picture;  // no picture: it could not be kept
        std::vector<Problem> problems;
    };
    std::mutex mutex;
    std::vector<Read> read;
    std::size_t waiting = 0;
};

OwnPictures::OwnPictures(OpenUnit& unit) : unit_(unit), shared_(std::make_shared<Shared>()) {}

void OwnPictures::take(const std::filesystem::path& file, const std::string& in_hand) {
    std::string id = in_hand, text;
    const std::string named = lowered(file.stem().string());
    for (const pack::UnitWord& word : unit_.unit().words)
        if (lowered(word.text) == named) id = pack::wordId(word);
    if (const pack::UnitWord* word = unit_.work().word(id)) text = word->text;
    const auto refuse = [&](const char* what, const char* way_out) {
        const std::lock_guard lock(shared_->mutex);
        shared_->read.push_back({"", "", {{file.filename().string(), what, way_out}}});
    };
    if (!unit_.canChange())
        return refuse("This unit may only be looked at here.", "Close it where it is open.");
    if (text.empty())
        return refuse("No word is chosen for this picture.",
                      "Choose a word first, or name the file after one.");
    {
        const std::lock_guard lock(shared_->mutex);
        ++shared_->waiting;
    }
    const Workbench& bench = unit_.bench();
    bench.looking.run([shared = shared_, file, folder = unit_.folder().pictures(), id, text,
                       draw_svg = bench.draw_svg, wake = bench.wake] {
        Result<std::string> name = kept(file, folder, text, draw_svg);
        {
            const std::lock_guard lock(shared->mutex);
            --shared->waiting;
            shared->read.push_back({id, name.ok() ? name.value() : "", name.problems()});
        }
        if (wake) wake();
    });
}

bool OwnPictures::isBusy() const {
    const std::lock_guard lock(shared_->mutex);
    return shared_->waiting > 0;
}

std::vector<Problem> OwnPictures::step() {
    std::vector<Shared::Read> read;
    {
        const std::lock_guard lock(shared_->mutex);
        read.swap(shared_->read);
    }
    std::vector<Problem> problems;
    for (const Shared::Read& one : read) {
        problems.insert(problems.end(), one.problems.begin(), one.problems.end());
        if (!one.picture.empty())
            unit_.change([&](UnitAtWork& work) { work.choosePicture(one.word, one.picture); });
    }
    return problems;
}

}  // namespace wrenlet::desk
