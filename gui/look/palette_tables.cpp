// SPDX-License-Identifier: Apache-2.0
#include "gui/look/palette.h"

namespace walkdown::gui {
namespace {

// Okabe and Ito, 2008.
constexpr QRgb kOrange = 0xFFE69F00;
constexpr QRgb kSky = 0xFF56B4E9;
constexpr QRgb kYellow = 0xFFF0E442;
constexpr QRgb kBlue = 0xFF0072B2;
constexpr QRgb kVermilion = 0xFFD55E00;
constexpr QRgb kPurple = 0xFFCC79A7;
constexpr QRgb kBlack = 0xFF000000;

constexpr QRgb kWhite = 0xFFFFFFFF;
constexpr QRgb kGrey = 0xFF6B6B6B;
constexpr QRgb kNightText = 0xFFF00000;

Mark mark(QRgb fill, QRgb ink, QRgb edge) { return {QColor(fill), QColor(ink), QColor(edge)}; }

// Darker shades of the same hues where words must be read on white.
const Palette kDay{Light::day,
                   {QColor(kWhite), QColor(0xFFF1F1EC), QColor(0xFFE6E6DF), QColor(0xFF111111),
                    QColor(0xFF4D4D4D), QColor(0xFFCFCFC8), QColor(kGrey), QColor(kBlack),
                    QColor(kBlue), QColor(kWhite), QColor(0xFF00578A), QColor(0xFF7A4B00),
                    QColor(0xFF9C3F00), QColor(0xFFA63F00), QColor(kWhite)},
                   {mark(kBlue, kWhite, kBlue), mark(kPurple, kBlack, 0xFFA8527F),
                    mark(kVermilion, kBlack, 0xFFB04E00), mark(kVermilion, kBlack, 0xFFB04E00),
                    mark(kBlack, kWhite, kBlack), mark(kBlack, kWhite, kBlack),
                    mark(kPurple, kBlack, 0xFFA8527F), mark(kBlack, kWhite, kBlack),
                    mark(kWhite, 0xFF4D4D4D, kGrey), mark(kWhite, 0xFF4D4D4D, kGrey)}};

const Palette kDusk{
    Light::dusk,
    {QColor(0xFF0E1216), QColor(0xFF181E24), QColor(0xFF2A323A), QColor(0xFFE8E8E2),
     QColor(0xFFB4B9BD), QColor(0xFF353E47), QColor(0xFF8A949C), QColor(kYellow), QColor(kSky),
     QColor(kBlack), QColor(kSky), QColor(kOrange), QColor(0xFFF08A3C), QColor(kVermilion),
     QColor(kBlack)},
    {mark(kSky, kBlack, kSky), mark(kPurple, kBlack, kPurple), mark(kOrange, kBlack, kOrange),
     mark(kOrange, kBlack, kOrange), mark(kYellow, kBlack, kYellow), mark(kYellow, kBlack, kYellow),
     mark(kPurple, kBlack, kPurple), mark(kYellow, kBlack, kYellow),
     mark(0xFF0E1216, 0xFFB4B9BD, 0xFF8A949C), mark(0xFF0E1216, 0xFFB4B9BD, 0xFF8A949C)}};

// One hue: shapes, letters and words carry every meaning here.
const Palette kNight{Light::night,
                     {QColor(kBlack), QColor(kBlack), QColor(0xFF0A0000), QColor(kNightText),
                      QColor(0xFFEC0000), QColor(0xFF5A0000), QColor(0xFFC80000),
                      QColor(kNightText), QColor(0xFFEC0000), QColor(kBlack), QColor(0xFFEC0000),
                      QColor(0xFFEC0000), QColor(kNightText), QColor(kNightText), QColor(kBlack)},
                     {mark(kBlack, 0xFFEC0000, 0xFFC80000), mark(kBlack, 0xFFEC0000, 0xFFEC0000),
                      mark(kNightText, kBlack, kNightText), mark(kNightText, kBlack, kNightText),
                      mark(kNightText, kBlack, kNightText), mark(kNightText, kBlack, kNightText),
                      mark(kNightText, kBlack, kNightText), mark(kNightText, kBlack, kNightText),
                      mark(kBlack, 0xFFEC0000, 0xFFC80000), mark(kBlack, 0xFFEC0000, 0xFFC80000)}};

}  // namespace

const Palette& palette(Light light) {
  switch (light) {
    case Light::day:
      return kDay;
    case Light::dusk:
      return kDusk;
    case Light::night:
      break;
  }
  return kNight;
}

}  // namespace walkdown::gui
