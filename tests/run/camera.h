// SPDX-License-Identifier: MIT
// What a phone sees of a printed code: turned, a little out of focus, with a noisy sensor. Deterministic.
#pragma once

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <fstream>
#include <sstream>
#include <string>
#include <vector>

namespace dunnage {

/// Grey, 0 black to 255 white.
struct Picture {
  int width = 0, height = 0;
  std::vector<double> grey;
  double at(int x, int y) const {
    return x < 0 || y < 0 || x >= width || y >= height ? 255 : grey[static_cast<std::size_t>(y * width + x)];
  }
};

/// A PBM of 1-bit ink, as `pdftoppm -mono` writes it.
inline Picture read_pbm(const std::string& file) {
  std::ifstream in(file, std::ios::binary);
  std::string magic;
  Picture picture;
  in >> magic >> picture.width >> picture.height;
  in.get();
  const int row = (picture.width + 7) / 8;
  std::vector<char> bits(static_cast<std::size_t>(row * picture.height));
  in.read(bits.data(), static_cast<std::streamsize>(bits.size()));
  for (int y = 0; y < picture.height; ++y)
    for (int x = 0; x < picture.width; ++x)
      picture.grey.push_back((bits[static_cast<std::size_t>(y * row + x / 8)] >> (7 - x % 8)) & 1 ? 0 : 255);
  return picture;
}

inline void write_pgm(const Picture& picture, const std::string& file) {
  std::ofstream out(file, std::ios::binary);
  out << "P5\n" << picture.width << ' ' << picture.height << "\n255\n";
  for (const double grey : picture.grey)
    out.put(static_cast<char>(static_cast<std::uint8_t>(std::clamp(grey, 0.0, 255.0))));
}

/// A stretch of it; what lies outside is white paper.
inline Picture cut_out(const Picture& from, int left, int top, int width, int height) {
  Picture out{width, height, {}};
  for (int y = 0; y < height; ++y)
    for (int x = 0; x < width; ++x) out.grey.push_back(from.at(left + x, top + y));
  return out;
}

/// Mean over the square that one pixel of the camera covers, in steps of a quarter pixel.
inline Picture turned(const Picture& from, double degrees, double scale) {
  const double c = std::cos(degrees * 3.14159265358979 / 180), s = std::sin(degrees * 3.14159265358979 / 180);
  const double w = from.width * scale, h = from.height * scale;
  Picture out{static_cast<int>(w * c + h * s) + 8, static_cast<int>(w * s + h * c) + 8, {}};
  for (int y = 0; y < out.height; ++y)
    for (int x = 0; x < out.width; ++x) {
      double sum = 0;
      for (int k = 0; k < 16; ++k) {
        const double dx = x + (k % 4 + 0.5) / 4 - out.width / 2.0, dy = y + (k / 4 + 0.5) / 4 - out.height / 2.0;
        sum += from.at(static_cast<int>(std::floor((dx * c + dy * s) / scale + from.width / 2.0)),
                       static_cast<int>(std::floor((-dx * s + dy * c) / scale + from.height / 2.0)));
      }
      out.grey.push_back(sum / 16);
    }
  return out;
}

/// Gaussian blur of that many pixels (standard deviation).
inline Picture blurred(const Picture& from, double sigma) {
  constexpr int reach = 3;
  double weight[2 * reach + 1], all = 0;
  for (int i = -reach; i <= reach; ++i) all += weight[i + reach] = std::exp(-i * i / (2 * sigma * sigma));
  const auto pass = [&](const Picture& in, int dx, int dy) {
    Picture out{in.width, in.height, {}};
    for (int y = 0; y < in.height; ++y)
      for (int x = 0; x < in.width; ++x) {
        double sum = 0;
        for (int i = -reach; i <= reach; ++i) sum += weight[i + reach] * in.at(x + i * dx, y + i * dy);
        out.grey.push_back(sum / all);
      }
    return out;
  };
  return pass(pass(from, 1, 0), 0, 1);
}

/// Paper in poor light and a sensor's noise of that standard deviation: black 40, white 200.
inline Picture noisy(Picture picture, double deviation) {
  std::uint64_t state = 88172645463325252ULL;
  for (double& grey : picture.grey) {
    double noise = -2;
    for (int i = 0; i < 4; ++i) {  // the sum of four even draws: nearly normal, its deviation the square root of 1/3
      state = state * 6364136223846793005ULL + 1442695040888963407ULL;
      noise += static_cast<double>(state >> 32) / 4294967296.0;
    }
    grey = 40 + grey * 160 / 255 + noise * std::sqrt(3.0) * deviation;
  }
  return picture;
}

/// `dots` printer dots a module become so many pixels.
inline Picture through_camera(const Picture& printed, double dots, double pixels = 5) {
  return noisy(blurred(turned(printed, 7, pixels / dots), 0.8), 6);
}

}  // namespace dunnage
