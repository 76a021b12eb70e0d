/* test_file.c - reading and replacing whole files, making folders. Every test works in a
 * folder of its own, which is taken away again. */
#include <dirent.h>
#include <setjmp.h>
#include <signal.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/resource.h>
#include <sys/stat.h>
#include <sys/wait.h>
#include <unistd.h>

#include <cmocka.h>

#include "base/file.h"
#include "base/mem.h"

static char folder[64];

static int begin(void **state)
{
  (void)state;
  strcpy(folder, "/tmp/pullcord-file-XXXXXX");
  return mkdtemp(folder) ? 0 : -1;
}

static int end(void **state)
{
  char command[128];

  (void)state;
  snprintf(command, sizeof command, "rm -rf '%s'", folder);
  return system(command);
}

static size_t files_in_folder(void)
{
  DIR *d = opendir(folder);
  size_t n = 0;

  assert_non_null(d);
  for (struct dirent *f; (f = readdir(d));) n += f->d_name[0] != '.';
  closedir(d);
  return n;
}

static void test_join(void **state)
{
  static const char *const rows[][3] = {
      {"a", "b", "a/b"}, {"a/", "b", "a/b"}, {"/", "b", "/b"}, {"a", "", "a/"}, {"", "b", "/b"}};

  (void)state;
  for (size_t i = 0; i < 5; i++) {
    char *p = file_join(rows[i][0], rows[i][1]);

    assert_string_equal(p, rows[i][2]);
    free(p);
  }
}

static void test_written_is_read(void **state)
{
  char *path = file_join(folder, "job.json"), *back, *big = mem_new(200000);
  struct err e = {0};
  struct stat st;
  size_t len;

  (void)state;
  assert_int_equal(file_replace(path, "one", 3, &e), 0);
  assert_int_equal(file_read(path, 3, &back, &len, &e), 0);
  assert_int_equal(len, 3);
  assert_string_equal(back, "one");
  free(back);
  memset(big, 'q', 200000);
  big[7] = '\0'; /* bytes, not text */
  assert_int_equal(file_replace(path, big, 200000, &e), 0);
  assert_int_equal(file_read(path, 1000000, &back, &len, &e), 0);
  assert_int_equal(len, 200000);
  assert_memory_equal(back, big, 200000);
  assert_int_equal(back[len], '\0');
  free(back);
  assert_int_equal(file_replace(path, "", 0, &e), 0);
  assert_int_equal(file_read(path, 0, &back, &len, &e), 0);
  assert_int_equal(len, 0);
  assert_string_equal(back, "");
  free(back);
  assert_int_equal(stat(path, &st), 0);
  assert_int_equal(st.st_mode & 0777, 0600);
  assert_int_equal(files_in_folder(), 1); /* no temporary file is left */
  free(big);
  free(path);
}

static void test_too_large(void **state)
{
  char *path = file_join(folder, "big"), *back = NULL;
  struct err e = {0};
  size_t len;

  (void)state;
  assert_int_equal(file_replace(path, "123456", 6, &e), 0);
  assert_int_equal(file_read(path, 6, &back, &len, &e), 0);
  free(back);
  back = NULL;
  assert_int_equal(file_read(path, 5, &back, &len, &e), EX_DATAERR);
  assert_null(back);
  assert_string_equal(e.file, path);
  assert_non_null(strstr(e.text, "larger than 5 bytes"));
  free(path);
}

/* A file without an end is given up at the limit. */
static void test_endless(void **state)
{
  struct err e = {0};
  char *back = NULL;
  size_t len;

  (void)state;
  assert_int_equal(file_read("/dev/zero", 1 << 20, &back, &len, &e), EX_DATAERR);
  assert_null(back);
}

static void test_missing_and_folder(void **state)
{
  char *path = file_join(folder, "nothing-here"), *back = NULL, *below;
  struct err e = {0};
  size_t len;

  (void)state;
  assert_int_equal(file_read(path, 100, &back, &len, &e), EX_NOINPUT);
  assert_string_equal(e.file, path);
  assert_int_equal(file_read(folder, 100, &back, &len, &e), EX_NOINPUT);
  assert_int_equal(file_replace(folder, "x", 1, &e), EX_IOERR); /* a folder is not replaced */
  below = file_join(path, "x");
  assert_int_equal(file_replace(below, "x", 1, &e), EX_CANTCREAT);
  assert_int_equal(files_in_folder(), 0);
  assert_null(back);
  free(below);
  free(path);
}

static void test_may_not_be_read(void **state)
{
  char *path = file_join(folder, "locked"), *back = NULL;
  struct err e = {0};
  size_t len;

  (void)state;
  if (geteuid() == 0) { /* root may read everything */
    free(path);
    skip();
  }
  assert_int_equal(file_replace(path, "x", 1, &e), 0);
  assert_int_equal(chmod(path, 0), 0);
  assert_int_equal(file_read(path, 100, &back, &len, &e), EX_NOPERM);
  free(path);
}

/* A failed write leaves the old content and no litter: the child may write files of at most
 * 10 bytes, as on a disk that is nearly full. */
static void test_old_content_survives(void **state)
{
  char *path = file_join(folder, "kept"), *back;
  struct err e = {0};
  size_t len;
  int status;
  pid_t child;

  (void)state;
  assert_int_equal(file_replace(path, "old text", 8, &e), 0);
  child = fork();
  assert_true(child >= 0);
  if (child == 0) {
    struct rlimit ten = {10, 10};

    signal(SIGXFSZ, SIG_IGN);
    if (setrlimit(RLIMIT_FSIZE, &ten) != 0) _exit(2);
    status = file_replace(path, "new and longer text", 19, &e);
    free(path);
    _exit(status == EX_IOERR && strstr(e.text, "as it was") ? 0 : 1);
  }
  assert_int_equal(waitpid(child, &status, 0), child);
  assert_true(WIFEXITED(status));
  assert_int_equal(WEXITSTATUS(status), 0);
  assert_int_equal(file_read(path, 100, &back, &len, &e), 0);
  assert_string_equal(back, "old text");
  assert_int_equal(files_in_folder(), 1);
  free(back);
  free(path);
}

/* Whoever reads while it is being replaced finds the old or the new, never a part. */
static void test_never_half_written(void **state)
{
  enum { SIZE = 300000 };
  char *path = file_join(folder, "busy"), *text = mem_new(SIZE + 1), *back;
  struct err e = {0};
  size_t len;
  int status;
  pid_t child;

  (void)state;
  memset(text, 'a', SIZE);
  assert_int_equal(file_replace(path, text, SIZE, &e), 0);
  child = fork();
  assert_true(child >= 0);
  if (child == 0) {
    for (int i = 0; i < 60; i++) {
      memset(text, i % 2 ? 'a' : 'b', SIZE);
      if (file_replace(path, text, SIZE, &e) != 0) _exit(1);
    }
    free(text);
    free(path);
    _exit(0);
  }
  while (waitpid(child, &status, WNOHANG) == 0) {
    assert_int_equal(file_read(path, SIZE, &back, &len, &e), 0);
    assert_int_equal(len, SIZE);
    for (size_t i = 1; i < len; i++)
      if (back[i] != back[0]) fail_msg("half of each at byte %zu", i);
    free(back);
  }
  assert_true(WIFEXITED(status) && WEXITSTATUS(status) == 0);
  assert_int_equal(files_in_folder(), 1);
  free(text);
  free(path);
}

static void test_folders(void **state)
{
  char *deep = file_join(folder, "a/b/c"), *again = file_join(deep, ""), *file = file_join(folder, "a/file"),
       *under = file_join(file, "x");
  struct err e = {0};
  struct stat st;

  (void)state;
  assert_int_equal(file_make_folder(deep, &e), 0);
  assert_int_equal(stat(deep, &st), 0);
  assert_true(S_ISDIR(st.st_mode));
  assert_int_equal(st.st_mode & 0777, 0700);
  assert_int_equal(file_make_folder(deep, &e), 0);
  assert_int_equal(file_make_folder(again, &e), 0);
  assert_int_equal(file_replace(file, "x", 1, &e), 0);
  assert_int_equal(file_make_folder(file, &e), EX_CANTCREAT); /* a file is in the way */
  assert_int_equal(file_make_folder(under, &e), EX_CANTCREAT);
  assert_string_equal(e.file, file);
  free(deep);
  free(again);
  free(file);
  free(under);
}

int main(void)
{
  const struct CMUnitTest tests[] = {
      cmocka_unit_test(test_join),
      cmocka_unit_test_setup_teardown(test_written_is_read, begin, end),
      cmocka_unit_test_setup_teardown(test_too_large, begin, end),
      cmocka_unit_test(test_endless),
      cmocka_unit_test_setup_teardown(test_missing_and_folder, begin, end),
      cmocka_unit_test_setup_teardown(test_may_not_be_read, begin, end),
      cmocka_unit_test_setup_teardown(test_old_content_survives, begin, end),
      cmocka_unit_test_setup_teardown(test_never_half_written, begin, end),
      cmocka_unit_test_setup_teardown(test_folders, begin, end),
  };

  return cmocka_run_group_tests(tests, NULL, NULL);
}
