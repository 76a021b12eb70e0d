/* benchfile.c - see benchfile.h. */
#include "shop/benchfile.h"

#include <errno.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <unistd.h>

#include "base/file.h"
#include "json/json.h"
#include "shop/casefile.h"

static const char version[] = "bench-1";

int bench_folder(char **out, struct err *e)
{
  const char *state = getenv("XDG_STATE_HOME"), *home = getenv("HOME");
  char *base;
  int status;

  if (state && state[0] == '/') base = file_join(state, "");
  else if (home && home[0] == '/') base = file_join(home, ".local/state");
  else
    return err_set(e, EX_CONFIG, NULL, 0,
                   "neither XDG_STATE_HOME nor HOME is set, so the job cannot be kept. Set one of them.");
  *out = file_join(base, "pullcord");
  free(base);
  status = file_make_folder(*out, e);
  if (status) free(*out);
  return status;
}

int bench_keep(const char *folder, const struct knowledge *k, const struct bench_case *c,
               const char *words, struct err *e)
{
  struct json *j = json_object();
  char *path = file_join(folder, "bench.json"), *text;
  int status;

  json_put_text(j, "pullcord", version);
  json_put_text(j, "words", words ? words : "");
  json_put(j, "case", casefile_write(k, c));
  text = json_print(j);
  status = file_replace(path, text, strlen(text), e);
  free(text);
  free(path);
  json_free(j);
  return status;
}

int bench_resume(const char *folder, const struct knowledge *k, struct bench_case *c, char **words,
                 struct err *e)
{
  char *path = file_join(folder, "bench.json"), *text = NULL;
  struct json *j = NULL;
  size_t len;
  int status = file_read(path, JSON_MAX_BYTES, &text, &len, e);

  if (status == 0) status = json_read(path, text, len, &j, e);
  if (status == 0 && strcmp(json_text(json_member(j, "pullcord")), version) != 0)
    status = err_set(e, EX_DATAERR, path, 0, "is not a job that this program kept.");
  if (status == 0 && !json_member(j, "case"))
    status = err_set(e, EX_DATAERR, path, 0, "holds no case.");
  if (status == 0) status = casefile_read(k, path, json_member(j, "case"), c, e);
  if (status == 0) {
    const char *said = json_text(json_member(j, "words"));

    *words = mem_new(strlen(said) + 1);
    strcpy(*words, said);
  }
  json_free(j);
  free(text);
  free(path);
  return status;
}

int bench_set_aside(const char *folder, char *where, size_t size, struct err *e)
{
  char *from = file_join(folder, "bench.json");
  int status = 0;

  if (access(from, F_OK) != 0) {
    snprintf(where, size, "%s", "");
    free(from);
    return 0;
  }
  for (int i = 1; i < 100000; i++) {
    char name[40], *to;

    snprintf(name, sizeof name, "aside-%d.json", i);
    to = file_join(folder, name);
    if (access(to, F_OK) != 0) {
      if (rename(from, to) != 0)
        status = err_set(e, EX_CANTCREAT, to, 0, "cannot be made: %s.", strerror(errno));
      snprintf(where, size, "%s", to);
      free(to);
      break;
    }
    free(to);
  }
  free(from);
  return status;
}
