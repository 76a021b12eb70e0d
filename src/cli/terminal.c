/* terminal.c - see terminal.h. */
#include "cli/terminal.h"

#include <ctype.h>
#include <editline/readline.h>
#include <signal.h>
#include <stdarg.h>
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
  bool holding;
  struct buf held;
  char *again; /* the next line, typed already */
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

/* Ctrl-C: whatever was entered is on disk already. The editor has put the terminal back by now. */
static void stopped(int sig)
{
  static const char said[] = "\nStopped. What was entered is kept.\n";
  ssize_t n = write(STDOUT_FILENO, said, sizeof said - 1);

  (void)n;
  raise(sig); /* which ends the program: the handler holds once only */
}

void terminal_begin(const char *history_path)
{
  struct sigaction once = {.sa_handler = stopped, .sa_flags = (int)SA_RESETHAND};

  if (isatty(STDIN_FILENO)) sigaction(SIGINT, &once, NULL);
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

/* A line without an end would fill the memory: what is beyond the longest one is read and let go. */
static char *plain_line(const char *prompt)
{
  char line[LONGEST_LINE * 2], *copy;
  size_t n = 0;
  int c;

  fputs(prompt, stdout);
  fflush(stdout);
  while ((c = getchar_unlocked()) != EOF && c != '\n')
    if (n < sizeof line) line[n++] = (char)c;
  copy = c == EOF && n == 0 ? NULL : clean(line, n);
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

static char *read_line(const char *prompt)
{
  char *line = state.again;

  if (!line) return state.editing ? edited_line(prompt) : plain_line(prompt);
  state.again = NULL;
  printf("%s%s\n", prompt, line);
  return line;
}

char *terminal_line(const char *prompt)
{
  char *line;

  terminal_release();
  line = state.ended ? NULL : read_line(prompt);

  if (line && (strcmp(line, "quit") == 0 || strcmp(line, "exit") == 0)) {
    free(line);
    line = NULL;
  }
  if (!line) state.ended = true;
  return line;
}

void terminal_line_again(const char *line)
{
  free(state.again);
  state.again = strcpy(mem_new(strlen(line) + 1), line);
}

/* ---- out ---------------------------------------------------------------------------------- */

void terminal_put(const char *text)
{
  if (state.holding) buf_add(&state.held, text);
  else fputs(text, stdout);
}

void terminal_putf(const char *format, ...)
{
  struct buf text = {0};
  va_list args;

  va_start(args, format);
  buf_addv(&text, format, args);
  va_end(args);
  terminal_put(buf_text(&text));
  buf_free(&text);
}

void terminal_hold(void) { state.holding = true; }

void terminal_drop(void)
{
  state.holding = false;
  buf_free(&state.held);
}

void terminal_release(void)
{
  fputs(buf_text(&state.held), stdout);
  terminal_drop();
}

size_t terminal_held(void)
{
  size_t rows = 0;

  for (const char *at = buf_text(&state.held); *at; at++) rows += *at == '\n';
  return rows;
}

/* Between two screens: PAGE_NEXT, PAGE_TAIL (the rest is not wanted) or PAGE_END (nor the tail). */
static enum page { PAGE_NEXT, PAGE_TAIL, PAGE_END } goes_on(void)
{
  char *line = terminal_line("[enter goes on, q stops] ");
  enum page next = !line ? PAGE_END : *line ? PAGE_TAIL : PAGE_NEXT;

  if (line && *line && strcmp(line, "q") != 0) {
    terminal_line_again(line);
    next = PAGE_END;
  }
  free(line);
  return next;
}

void terminal_release_pages(size_t tail)
{
  size_t screen = terminal_rows(), rows = terminal_held(), body = rows > tail ? rows - tail : 0, on_page = 0;
  enum page next = PAGE_NEXT;
  struct buf all = state.held;
  const char *at = buf_text(&all);

  state.held = (struct buf){0};
  state.holding = false;
  for (size_t row = 0; *at && next != PAGE_END; row++) {
    size_t len = strcspn(at, "\n");
    bool full = on_page == screen - 1 || (row == body && on_page + tail > screen - 1);

    if (screen && full && on_page && next == PAGE_NEXT) {
      next = goes_on();
      on_page = 0;
    }
    if (next == PAGE_NEXT || (next == PAGE_TAIL && row >= body)) {
      fwrite(at, 1, len + (at[len] == '\n'), stdout);
      on_page++;
    }
    at += len + (at[len] == '\n');
  }
  buf_free(&all);
}

size_t terminal_rows(void)
{
  struct winsize w;

  if (!isatty(STDIN_FILENO) || ioctl(STDOUT_FILENO, TIOCGWINSZ, &w) != 0 || w.ws_row == 0) return 0;
  return w.ws_row < 10 ? 10 : w.ws_row;
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
  free(state.again);
  state.history = state.again = NULL;
}
