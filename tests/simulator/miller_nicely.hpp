// How often sixteen English consonants were taken for each other: Miller & Nicely, "An analysis of
// perceptual confusions among some English consonants", JASA 27 (1955), 338-352,
// doi:10.1121/1.1907526. Six flat-noise conditions (-18 to +12 dB) put together, as symmetric
// probabilities of confusion. The listeners were adults in noise; children who listen to clear
// speech confuse less, and these figures are used only for which sounds are alike.
//
// From mapclus.data in the second MDS package of AT&T Bell Laboratories (Netlib, mds/mapclus.shar),
// by way of the transcription in github.com/lenzo-ka/ipakit (MIT). Its notice:
//
//   The authors of this software are Phipps Arabie and J Douglas Carroll
//   Copyright (c) 1993 by AT&T.
//   Permission to use, copy, modify, and distribute this software for any purpose without fee is
//   hereby granted, provided that this entire notice is included in all copies of any software
//   which is or includes a copy or modification of this software and in all copies of the
//   supporting documentation for such software.
//   THIS SOFTWARE IS BEING PROVIDED "AS IS", WITHOUT ANY EXPRESS OR IMPLIED WARRANTY. IN
//   PARTICULAR, NEITHER THE AUTHORS NOR AT&T MAKE ANY REPRESENTATION OR WARRANTY OF ANY KIND
//   CONCERNING THE MERCHANTABILITY OF THIS SOFTWARE OR ITS FITNESS FOR ANY PARTICULAR PURPOSE.
//   This software comes from the SECOND MDS Package of AT&T Bell Laboratories
#pragma once

#include "content/speech/phoneme.hpp"

namespace wrenlet::simulator {

inline constexpr int kHeardConsonants = 16;

inline constexpr speech::Phoneme kHeard[kHeardConsonants] = {
    speech::Phoneme::p,  speech::Phoneme::t,  speech::Phoneme::k,  speech::Phoneme::f,
    speech::Phoneme::th, speech::Phoneme::s,  speech::Phoneme::sh, speech::Phoneme::b,
    speech::Phoneme::d,  speech::Phoneme::g,  speech::Phoneme::v,  speech::Phoneme::dh,
    speech::Phoneme::z,  speech::Phoneme::zh, speech::Phoneme::m,  speech::Phoneme::n};

/// The lower triangle, a row a consonant from /t/ on, in thousandths.
inline constexpr int kConfused[kHeardConsonants * (kHeardConsonants - 1) / 2] = {
    229,                                                                      // t
    432, 241,                                                                 // k
    101, 57,  77,                                                             // f
    124, 79,  84, 423,                                                        // θ
    52,  50,  63, 66,  157,                                                   // s
    38,  50,  47, 30,  48,  115,                                              // ʃ
    22,  13,  18, 46,  45,  24,  12,                                          // b
    25,  22,  20, 25,  41,  31,  33, 58,                                      // d
    13,  16,  30, 15,  39,  33,  21, 69,  342,                                // ɡ
    16,  22,  20, 35,  40,  23,  20, 210, 59,  54,                            // v
    28,  16,  18, 32,  31,  26,  18, 145, 94,  120, 338,                      // ð
    25,  23,  25, 18,  33,  35,  17, 55,  106, 139, 80,  161,                 // z
    19,  17,  19, 7,   17,  22,  12, 27,  89,  125, 29,  33,  136,            // ʒ
    25,  22,  21, 16,  19,  17,  12, 38,  24,  32,  30,  34,  21,  16,        // m
    17,  18,  20, 12,  18,  13,  11, 24,  32,  30,  22,  28,  16,  30, 151};  // n

}  // namespace wrenlet::simulator
