#include "tests/ear/human.hpp"

#include <sstream>

#include "editor/voice/audio_file.hpp"
#include "tests/ear/commands.hpp"

namespace wrenlet::ear {
namespace {

constexpr const char* kPlace = "/usr/share/asterisk/sounds/en_US_f_Allison/";

/// File and word, in turn.
constexpr const char* kPrompts =
    "digits/0 zero digits/1 one digits/2 two digits/3 three digits/4 four digits/5 five digits/6 "
    "six "
    "digits/7 seven digits/8 eight digits/9 nine digits/10 ten digits/11 eleven digits/12 twelve "
    "digits/13 thirteen digits/14 fourteen digits/15 fifteen digits/16 sixteen digits/17 seventeen "
    "digits/18 eighteen digits/19 nineteen digits/20 twenty digits/30 thirty digits/40 forty "
    "digits/50 fifty digits/60 sixty digits/70 seventy digits/80 eighty digits/90 ninety "
    "digits/h-1 first digits/h-2 second digits/h-3 third digits/h-5 fifth digits/h-8 eighth "
    "digits/h-9 ninth digits/h-10 tenth digits/h-12 twelfth digits/day-0 sunday digits/day-1 "
    "monday "
    "digits/day-2 tuesday digits/day-3 wednesday digits/day-4 thursday digits/day-5 friday "
    "digits/day-6 saturday digits/mon-0 january digits/mon-1 february digits/mon-2 march "
    "digits/mon-3 april digits/mon-4 may digits/mon-5 june digits/mon-6 july digits/mon-7 august "
    "digits/mon-8 september digits/mon-9 october digits/mon-10 november digits/mon-11 december "
    "digits/billion billion digits/dollars dollars digits/hundred hundred digits/million million "
    "digits/minus minus digits/pound pound digits/star star digits/thousand thousand digits/today "
    "today digits/tomorrow tomorrow digits/yesterday yesterday letters/asterisk asterisk "
    "letters/dash dash letters/dollar dollar letters/dot dot letters/equals equals letters/plus "
    "plus "
    "letters/slash slash letters/space space phonetic/a_p alpha phonetic/b_p bravo phonetic/c_p "
    "charlie phonetic/d_p delta phonetic/e_p echo phonetic/f_p foxtrot phonetic/g_p golf "
    "phonetic/h_p hotel phonetic/i_p india phonetic/j_p juliet phonetic/k_p kilo phonetic/l_p lima "
    "phonetic/m_p mike phonetic/o_p oscar phonetic/p_p papa phonetic/q_p quebec phonetic/r_p romeo "
    "phonetic/s_p sierra phonetic/t_p tango phonetic/u_p uniform phonetic/v_p victor phonetic/w_p "
    "whiskey phonetic/y_p yankee phonetic/z_p zulu";

}  // namespace

std::vector<Word> humanWords(const speech::Lexicon& lexicon, const std::filesystem::path& scratch) {
    std::vector<Word> out;
    if (!hasProgram("ffmpeg")) return out;
    std::istringstream in(kPrompts);
    for (std::string file, text; in >> file >> text;) {
        const std::filesystem::path from = kPlace + file + ".g722", to = scratch / "prompt.wav";
        const auto said = lexicon.lookUp(text);
        std::error_code error;
        if (said.empty() || !std::filesystem::exists(from, error)) continue;
        outputOf("ffmpeg -nostdin -loglevel error -y -f g722 -i '" + from.string() + "' '" +
                 to.string() + "' 2>&1");
        auto sound = desk::readTake(to);
        std::filesystem::remove(to, error);
        if (sound.ok()) out.push_back({{}, text, said.front(), std::move(sound.value())});
    }
    return out;
}

}  // namespace wrenlet::ear
