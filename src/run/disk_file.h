// SPDX-License-Identifier: MIT
// System calls on one file, each of whose failures is one sentence.
#pragma once

#include <filesystem>
#include <ostream>
#include <string>

namespace dunnage {

/// An open file or folder, closed when it goes out of scope. Negative: none.
class Descriptor {
 public:
  explicit Descriptor(int number = -1) : number_(number) {}
  Descriptor(Descriptor&& other) noexcept;
  Descriptor& operator=(Descriptor&& other) noexcept;
  ~Descriptor() { close(); }
  int number() const { return number_; }
  bool open() const { return number_ >= 0; }
  /// False where the disk says only now that it could not write.
  bool close();

 private:
  int number_;
};

/// Throws a WorldError: `what`, the path, and the reason that the system gave last.
[[noreturn]] void fail(const std::string& what, const std::filesystem::path& path);

/// What stands under a name, a link being a link. Throws WorldError where the disk does not say.
std::filesystem::file_type standing(const std::filesystem::path& path);

/// From the first byte to the last. `name` is for the message.
std::string read_whole(const Descriptor& file, const std::filesystem::path& name);
/// Writes over the first bytes of a file, in one call where the system takes them at once.
void write_whole(const Descriptor& file, const std::string& bytes, const std::filesystem::path& name);
/// Returns when the disk has it. A file system that cannot say so is taken at its word.
void sync(const Descriptor& file, const std::filesystem::path& name, const std::string& failing = "cannot write");

/// Gives `to` the owner, rights and extended attributes of `from`. False where they cannot all be given, or where
/// `from` has further names, which would go on with the old bytes.
bool carry_over(const Descriptor& from, const Descriptor& to);

/// Changes the text of a file that must stay the very file it is, from `before` to `after`; a copy of `before` lies
/// beside it meanwhile, as NAME.before. Cut short between two calls, the file has one of the two texts, perhaps with
/// line ends more. Throws WorldError where it has not `before`, or the disk fails: it has `before` again then, else the
/// message names the copy. A copy that stands there already is named on `err` and stays.
void rewrite_in_place(const std::filesystem::path& path, const std::string& before, const std::string& after,
                      std::ostream& err);

/// Throws the WorldError that somebody else changed the file.
[[noreturn]] void changed_meanwhile(const std::filesystem::path& path);

}  // namespace dunnage
