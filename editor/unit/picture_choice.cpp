#include "editor/unit/picture_choice.hpp"

#include <cctype>

#include "content/common/files.hpp"

namespace wrenlet::desk {

PictureChoice PictureChoice::of(const std::string& word, const OpenUnit& unit) {
    PictureChoice choice{word, {}, {}};
    if (const pack::UnitWord* found = unit.work().word(word)) choice.sought = found->text;
    for (const auto& [folder, ending] : {std::pair{unit.folder().pictures(), ".png"},
                                         {unit.folder().pictures(), ".svg"},
                                         {unit.bench().pictures, ".svg"}})
        for (const auto& file : listFiles(folder, ending))
            choice.names.push_back(file.stem().string());
    if (choice.offered(1).empty()) choice.sought.clear();
    return choice;
}

std::vector<std::string> PictureChoice::offered(std::size_t most) const {
    std::string wanted;
    for (const char c : sought)
        if (c != ' ') wanted += static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
    std::vector<std::string> first, then;
    for (const std::string& name : names) {
        const std::size_t at = name.find(wanted);
        if (at == std::string::npos) continue;
        const bool begins = at == 0 || name.compare(0, 4 + wanted.size(), "own-" + wanted) == 0;
        (begins ? first : then).push_back(name);
    }
    first.insert(first.end(), then.begin(), then.end());
    if (first.size() > most) first.resize(most);
    return first;
}

}  // namespace wrenlet::desk
