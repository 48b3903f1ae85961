/* SPDX-License-Identifier: MIT
   Loaded before the C library, it breaks one system call of a program, found by its number. The program knows nothing
   of it. What it is told in the environment:

   BREAK_AT=n      the n-th call, from 1; 0 or none: no call
   BREAK_HOW=...   how: the number of an error for this one call;
                   "kill": the program is killed before it; "dead": this call and all after it fail, as a disk that is
                   pulled out; "full": from this call on nothing more has room, a write being cut in half first;
                   "append", "rename": nothing fails, but another program saves BREAK_FILE with one line more before the
                   call, into the file as it is or as a new one in its place
   BREAK_ALWAYS=name=error,...   every call of that name fails, as on a file system that does not know it
   BREAK_LOG=file  each counted call, or where one is broken that one alone, as "name path"

   Of one open file's reads the first two are counted: the others are alike. */
#define _GNU_SOURCE
#include <dirent.h>
#include <dlfcn.h>
#include <errno.h>
#include <fcntl.h>
#include <signal.h>
#include <stdarg.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>
#include <sys/syscall.h>
#include <sys/types.h>
#include <sys/uio.h>
#include <sys/xattr.h>
#include <unistd.h>

enum { most_files = 1024 };
static long counted, broken_at;
static const char *how, *always, *edited;
static int log_file = -1, reads[most_files];

static long raw_open(const char* path, int flags) { return syscall(SYS_openat, AT_FDCWD, path, flags, 0644); }

__attribute__((constructor)) static void begin(void) {
  const char* at = getenv("BREAK_AT");
  const char* log = getenv("BREAK_LOG");
  broken_at = at ? atol(at) : 0;
  how = getenv("BREAK_HOW");
  always = getenv("BREAK_ALWAYS");
  edited = getenv("BREAK_FILE");
  if (log) log_file = (int)raw_open(log, O_WRONLY | O_CREAT | O_APPEND | O_CLOEXEC);
  alarm(60); /* a program that hangs is killed, which is seen */
}

static int is_how(const char* word) { return how && strcmp(how, word) == 0; }

static void note(const char* name, const char* path) {
  char line[4200];
  const int length = snprintf(line, sizeof line, "%s %s\n", name, path ? path : "");
  if (log_file >= 0 && length > 0) syscall(SYS_write, log_file, line, (size_t)length);
}

/* Another program saves the file, with a line more. */
static void edit(int as_new) {
  static char text[1 << 20];
  const char line[] = "# edited\n";
  char other[4200];
  const int from = (int)raw_open(edited, O_RDONLY);
  if (from < 0) return;
  const long size = syscall(SYS_read, from, text, sizeof text - sizeof line);
  syscall(SYS_close, from);
  snprintf(other, sizeof other, "%s~", edited);
  const int to = (int)raw_open(as_new ? other : edited, as_new ? O_WRONLY | O_CREAT | O_TRUNC : O_WRONLY | O_APPEND);
  if (as_new) syscall(SYS_write, to, text, size);
  syscall(SYS_write, to, line, sizeof line - 1);
  syscall(SYS_close, to);
  if (as_new) syscall(SYS_rename, other, edited);
}

static int always_fails(const char* name) {
  const size_t length = strlen(name);
  for (const char* at = always; at && *at; at = strchr(at, ',') ? strchr(at, ',') + 1 : NULL)
    if (strncmp(at, name, length) == 0 && at[length] == '=') return atoi(at + length + 1);
  return 0;
}

/* Counts a call. The error that it is to end with; 0: none. `grows`: it needs room on the disk. */
static int broken(const char* name, const char* path, int grows) {
  const int error = always_fails(name);
  ++counted;
  if (broken_at == 0 || counted == broken_at) note(name, path);
  if (error) return error;
  if (broken_at == 0 || counted < broken_at || !how) return 0;
  if (is_how("dead")) return EIO;
  if (is_how("full")) return grows ? ENOSPC : 0;
  if (counted > broken_at) return 0;
  if (is_how("kill")) syscall(SYS_kill, getpid(), SIGKILL);
  if (is_how("append") || is_how("rename")) edit(is_how("rename"));
  return atoi(how); /* of a word: 0 */
}

#define REAL(type, name, parameters)         \
  static type(*real) parameters;             \
  if (!real) *(void**)&real = dlsym(RTLD_NEXT, #name)

#define CALL(type, failed, name, parameters, arguments, path, grows) \
  type name parameters {                                             \
    REAL(type, name, parameters);                                    \
    const int error = broken(#name, path, grows);                    \
    if (error) {                                                     \
      errno = error;                                                 \
      return failed;                                                 \
    }                                                                \
    return real arguments;                                           \
  }

static int opened(int file) {
  if (file >= 0 && file < most_files) reads[file] = 0;
  return file;
}

static int makes(int folder, const char* path, int flags) {
  struct stat there;
  return (flags & O_CREAT) && syscall(SYS_newfstatat, folder, path, &there, AT_SYMLINK_NOFOLLOW) != 0;
}

int openat(int folder, const char* path, int flags, ...) {
  REAL(int, openat, (int, const char*, int, ...));
  va_list more;
  va_start(more, flags);
  const int mode = (flags & O_CREAT) ? va_arg(more, int) : 0;
  va_end(more);
  const int error = broken("openat", path, makes(folder, path, flags));
  if (error) {
    errno = error;
    return -1;
  }
  return opened(real(folder, path, flags, mode));
}

int open(const char* path, int flags, ...) {
  REAL(int, open, (const char*, int, ...));
  va_list more;
  va_start(more, flags);
  const int mode = (flags & O_CREAT) ? va_arg(more, int) : 0;
  va_end(more);
  const int error = broken("open", path, makes(AT_FDCWD, path, flags));
  if (error) {
    errno = error;
    return -1;
  }
  return opened(real(path, flags, mode));
}

static FILE* opened_stream(FILE* file) {
  if (file) opened(fileno(file));
  return file;
}

FILE* fopen(const char* path, const char* mode) {
  REAL(FILE*, fopen, (const char*, const char*));
  errno = broken("fopen", path, 0);
  return errno ? NULL : opened_stream(real(path, mode));
}

FILE* fopen64(const char* path, const char* mode) {
  REAL(FILE*, fopen64, (const char*, const char*));
  errno = broken("fopen64", path, 0);
  return errno ? NULL : opened_stream(real(path, mode));
}

ssize_t read(int file, void* bytes, size_t size) {
  REAL(ssize_t, read, (int, void*, size_t));
  const int known = file >= 0 && file < most_files;
  if (known && reads[file] >= 2 && !(is_how("dead") && broken_at && counted >= broken_at))
    return real(file, bytes, size);
  if (known) ++reads[file];
  const int error = broken("read", NULL, 0);
  if (error) {
    errno = error;
    return -1;
  }
  return real(file, bytes, size);
}

/* On a disk that is full, what stands may be written over. */
static size_t room(int file, size_t size, off_t at, int error) {
  struct stat now;
  if (error != ENOSPC || !is_how("full") || fstat(file, &now) != 0) return error ? 0 : size;
  if (counted == broken_at && size > 1) return size / 2;
  return at + (off_t)size <= now.st_size ? size : now.st_size > at ? (size_t)(now.st_size - at) : 0;
}

ssize_t write(int file, const void* bytes, size_t size) {
  REAL(ssize_t, write, (int, const void*, size_t));
  const int error = broken("write", NULL, 1);
  const size_t part = room(file, size, lseek(file, 0, SEEK_CUR), error);
  errno = error;
  return part == 0 && size > 0 ? -1 : real(file, bytes, part);
}

ssize_t pwrite(int file, const void* bytes, size_t size, off_t at) {
  REAL(ssize_t, pwrite, (int, const void*, size_t, off_t));
  const int error = broken("pwrite", NULL, 1);
  const size_t part = room(file, size, at, error);
  errno = error;
  return part == 0 && size > 0 ? -1 : real(file, bytes, part, at);
}

int close(int file) { /* the file is closed, whatever it ends with */
  REAL(int, close, (int));
  const int error = broken("close", NULL, 0);
  const int done = real(file);
  if (error) errno = error;
  return error ? -1 : done;
}

struct dirent* readdir(DIR* folder) {
  REAL(struct dirent*, readdir, (DIR*));
  const int error = broken("readdir", NULL, 0);
  if (error) errno = error;
  return error ? NULL : real(folder);
}

CALL(ssize_t, -1, pread, (int file, void* bytes, size_t size, off_t at), (file, bytes, size, at), NULL, 0)
CALL(int, -1, stat, (const char* path, struct stat* out), (path, out), path, 0)
CALL(int, -1, lstat, (const char* path, struct stat* out), (path, out), path, 0)
CALL(DIR*, NULL, fdopendir, (int file), (file), NULL, 0)
CALL(ssize_t, -1, readlink, (const char* path, char* out, size_t size), (path, out, size), path, 0)
CALL(int, -1, mkdir, (const char* path, mode_t mode), (path, mode), path, 1)
CALL(int, -1, rmdir, (const char* path), (path), path, 0)
CALL(int, -1, remove, (const char* path), (path), path, 0)
CALL(int, -1, unlink, (const char* path), (path), path, 0)
CALL(int, -1, unlinkat, (int folder, const char* path, int flags), (folder, path, flags), path, 0)
CALL(int, -1, link, (const char* from, const char* to), (from, to), to, 1)
CALL(int, -1, linkat, (int a, const char* from, int b, const char* to, int flags), (a, from, b, to, flags), to, 1)
CALL(int, -1, rename, (const char* from, const char* to), (from, to), to, 0)
CALL(int, -1, renameat, (int a, const char* from, int b, const char* to), (a, from, b, to), to, 0)
CALL(int, -1, renameat2, (int a, const char* from, int b, const char* to, unsigned flags), (a, from, b, to, flags), to, 0)
CALL(int, -1, flock, (int file, int way), (file, way), NULL, 0)
CALL(int, -1, fsync, (int file), (file), NULL, 1)
CALL(int, -1, fdatasync, (int file), (file), NULL, 1)
CALL(int, -1, ftruncate, (int file, off_t size), (file, size), NULL, 0)
CALL(int, -1, fchmod, (int file, mode_t mode), (file, mode), NULL, 0)
CALL(int, -1, fchown, (int file, uid_t user, gid_t group), (file, user, group), NULL, 0)
CALL(ssize_t, -1, flistxattr, (int file, char* out, size_t size), (file, out, size), NULL, 0)
CALL(ssize_t, -1, fgetxattr, (int file, const char* name, void* out, size_t size), (file, name, out, size), name, 0)
CALL(int, -1, fsetxattr, (int file, const char* name, const void* value, size_t size, int flags),
     (file, name, value, size, flags), name, 1)
CALL(int, -1, fremovexattr, (int file, const char* name), (file, name), name, 0)
