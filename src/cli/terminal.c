/* terminal.c - see terminal.h. */
#include "cli/terminal.h"

#include <ctype.h>
#include <editline/readline.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/ioctl.h>
#include <unistd.h>

#include "base/buf.h"
#include "base/mem.h"
#include "base/text.h"

enum { LONGEST_LINE = 1000, HISTORY_KEPT = 300 };

/* The line editor calls back without a context, so this one file has state of its own. */
static struct {
  bool editing, ended;
  char *history;
  const char *const *words;
  size_t word_count;
} state;

static bool is_dumb(void)
{
  const char *term = getenv("TERM");

  return !term || !*term || strcmp(term, "dumb") == 0;
}

static char *next_word(const char *start, int again)
{
  static size_t at;
  size_t n = strlen(start);

  if (!again) at = 0;
  while (at < state.word_count) {
    const char *w = state.words[at++];

    if (strncmp(w, start, n) == 0) {
      char *copy = malloc(strlen(w) + 1); /* the editor frees it */

      return copy ? strcpy(copy, w) : NULL;
    }
  }
  return NULL;
}

static char **complete(const char *text, int start, int end)
{
  (void)start;
  (void)end;
  rl_attempted_completion_over = 1; /* no file names */
  return rl_completion_matches(text, next_word);
}

void terminal_begin(const char *history_path)
{
  state.editing = isatty(STDIN_FILENO) && isatty(STDOUT_FILENO) && !is_dumb();
  if (!state.editing) return;
  rl_readline_name = "pullcord";
  rl_attempted_completion_function = complete;
  using_history();
  stifle_history(HISTORY_KEPT);
  if (history_path) {
    state.history = mem_new(strlen(history_path) + 1);
    strcpy(state.history, history_path);
    read_history(state.history); /* none yet: nothing to read */
  }
}

void terminal_words(const char *const *words, size_t count)
{
  state.words = words;
  state.word_count = count;
}

/* A line from anywhere: cut, and freed of what is not text. */
static char *clean(const char *line, size_t len)
{
  char *copy, *out;

  if (len > LONGEST_LINE) len = LONGEST_LINE;
  while (len > 0 && isspace((unsigned char)line[len - 1])) len--;
  while (len > 0 && isspace((unsigned char)*line)) {
    line++;
    len--;
  }
  copy = out = mem_new(len + 1);
  while (len > 0) {
    size_t good = text_bad_byte(line, len);

    for (size_t i = 0; i < good; i++)
      if ((unsigned char)line[i] >= ' ' && line[i] != 127) *out++ = line[i];
    if (good == len) break;
    line += good + 1;
    len -= good + 1;
  }
  *out = '\0';
  return copy;
}

static char *plain_line(const char *prompt)
{
  char *line = NULL, *copy;
  size_t room = 0;
  ssize_t n;

  fputs(prompt, stdout);
  fflush(stdout);
  n = getline(&line, &room, stdin);
  copy = n < 0 ? NULL : clean(line, (size_t)n);
  free(line);
  if (copy && !isatty(STDIN_FILENO)) printf("%s\n", copy); /* so that a record reads well */
  return copy;
}

static char *edited_line(const char *prompt)
{
  char *line, *copy;

  fflush(stdout);
  line = readline(prompt);
  if (!line) return NULL;
  copy = clean(line, strlen(line));
  free(line);
  if (*copy) add_history(copy);
  return copy;
}

char *terminal_line(const char *prompt)
{
  char *line = state.ended ? NULL : state.editing ? edited_line(prompt) : plain_line(prompt);

  if (line && (strcmp(line, "quit") == 0 || strcmp(line, "exit") == 0)) {
    free(line);
    line = NULL;
  }
  if (!line) state.ended = true;
  return line;
}

static bool heavy_allowed(void)
{
  const char *no = getenv("NO_COLOR");

  return isatty(STDOUT_FILENO) && !is_dumb() && !(no && *no);
}

const char *terminal_heavy(void) { return heavy_allowed() ? "\033[1m" : ""; }
const char *terminal_plain(void) { return heavy_allowed() ? "\033[0m" : ""; }

int terminal_width(void)
{
  struct winsize w;

  if (ioctl(STDOUT_FILENO, TIOCGWINSZ, &w) != 0 || w.ws_col == 0) return 78;
  return w.ws_col < 41 ? 40 : w.ws_col > 100 ? 100 : w.ws_col - 1;
}

void terminal_end(void)
{
  if (state.editing && state.history) write_history(state.history);
  free(state.history);
  state.history = NULL;
}
