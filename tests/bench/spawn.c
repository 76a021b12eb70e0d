/* spawn.c - programs started, timed and measured by a process that is itself small.
 *
 * What a program's memory is said to have been at most begins with that of the process that
 * started it, so a bench full of knowledge cannot measure it. */
#include <fcntl.h>
#include <spawn.h>
#include <stdlib.h>
#include <string.h>
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

#include "bench.h"

enum { MOST_BYTES = 8192, MOST_ARGS = 16 };

static int to_helper = -1, from_helper = -1;

static bool whole(ssize_t (*move)(int, void *, size_t), int fd, void *data, size_t len)
{
  for (char *p = data; len > 0;) {
    ssize_t n = move(fd, p, len);

    if (n <= 0) return false;
    p += n;
    len -= (size_t)n;
  }
  return true;
}

static ssize_t put(int fd, void *data, size_t len) { return write(fd, data, len); }

/* args[0] is the program; its answer is thrown away. */
static struct bench_spawned spawn_once(char *const *args)
{
  extern char **environ;
  struct bench_spawned out = {0};
  posix_spawn_file_actions_t actions;
  struct rusage used;
  double start;
  pid_t pid;
  int status, bad;

  posix_spawn_file_actions_init(&actions);
  posix_spawn_file_actions_addopen(&actions, STDOUT_FILENO, "/dev/null", O_WRONLY, 0);
  start = bench_now();
  bad = posix_spawn(&pid, args[0], &actions, NULL, args, environ);
  if (!bad && wait4(pid, &status, 0, &used) == pid) {
    out.ms = bench_now() - start;
    out.good = WIFEXITED(status) && WEXITSTATUS(status) == 0;
    out.worked = (double)(used.ru_utime.tv_sec + used.ru_stime.tv_sec) * 1e3 +
                 (double)(used.ru_utime.tv_usec + used.ru_stime.tv_usec) / 1e3;
    out.mib = (double)used.ru_maxrss / 1024;
  }
  posix_spawn_file_actions_destroy(&actions);
  return out;
}

/* A request: length, then the folder of knowledge and the words of the command, each ended. */
static void help(int in, int back)
{
  char text[MOST_BYTES], *args[MOST_ARGS + 1];
  size_t len;

  while (whole(read, in, &len, sizeof len) && len <= sizeof text && whole(read, in, text, len)) {
    struct bench_spawned out;
    size_t count = 0;

    for (char *p = text + strlen(text) + 1; p < text + len && count < MOST_ARGS; p += strlen(p) + 1)
      args[count++] = p;
    args[count] = NULL;
    setenv("PULLCORD_KNOWLEDGE", text, 1);
    out = spawn_once(args);
    if (!whole(put, back, &out, sizeof out)) break;
  }
  _exit(0);
}

bool bench_spawner(void)
{
  int down[2], up[2];
  pid_t pid;

  if (pipe(down) != 0 || pipe(up) != 0 || (pid = fork()) < 0) return false;
  if (pid == 0) {
    close(down[1]);
    close(up[0]);
    help(down[0], up[1]);
  }
  close(down[0]);
  close(up[1]);
  fcntl(down[1], F_SETFD, FD_CLOEXEC);
  fcntl(up[0], F_SETFD, FD_CLOEXEC);
  to_helper = down[1];
  from_helper = up[0];
  return true;
}

struct bench_spawned bench_spawn(const char *knowledge, const char *const *args)
{
  struct bench_spawned out = {0};
  char text[MOST_BYTES];
  size_t len = strlen(knowledge) + 1;

  if (len > sizeof text) return out;
  memcpy(text, knowledge, len);
  for (; *args; args++) {
    size_t n = strlen(*args) + 1;

    if (len + n > sizeof text) return out;
    memcpy(text + len, *args, n);
    len += n;
  }
  if (!whole(put, to_helper, &len, sizeof len) || !whole(put, to_helper, text, len) ||
      !whole(read, from_helper, &out, sizeof out))
    out.good = false;
  return out;
}
