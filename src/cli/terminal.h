/* terminal.h - lines in from the person; the only file that knows the line editor. */
#ifndef CLI_TERMINAL_H
#define CLI_TERMINAL_H

#include <stdbool.h>
#include <stddef.h>

/* Sets up editing, history (kept in history_path, may be NULL) and completion when both
 * standard input and output are a terminal that can move its cursor; plain lines
 * otherwise. */
void terminal_begin(const char *history_path);

/* Words offered on the tab key; the list stays the caller's and must outlive its use. */
void terminal_words(const char *const *words, size_t count);

/* Shows the prompt and reads one line, without its end and without blanks around it, at
 * most 1,000 bytes of printable UTF-8 (anything else is dropped). NULL at the end of the
 * input, and from then on whenever the line was quit or exit, so that these work at every
 * question. The caller frees. */
char *terminal_line(const char *prompt);

/* Starts and ends heavy print, where the terminal has it, the output is one, and NO_COLOR
 * is unset or empty; "" otherwise. Never the only sign of anything. */
const char *terminal_heavy(void);
const char *terminal_plain(void);

/* Prints now, or holds it back between terminal_hold() and terminal_release() or terminal_drop().
 * All that the conversations print goes through here, so that it can be fitted to the screen. A
 * question (terminal_line) lets go of what is held first. */
void terminal_put(const char *text);
void terminal_putf(const char *format, ...) __attribute__((format(printf, 1, 2)));
void terminal_hold(void);
void terminal_release(void);
void terminal_drop(void);
size_t terminal_held(void); /* rows held so far */

/* Releases what is held a screenful at a time for a person, all at once for a pipe. q between two
 * screens goes to the last `tail` rows, which also stay together; anything else that is typed there
 * is the next line that terminal_line gives. */
void terminal_release_pages(size_t tail);

/* The line is given by the next terminal_line, as if it were typed there. */
void terminal_line_again(const char *line);

/* Rows of the screen with a person before it; 0 when there is none, and nothing to be fitted. */
size_t terminal_rows(void);

/* Columns to print in: the terminal's, between 40 and 100; 78 when there is none. */
int terminal_width(void);

void terminal_end(void);

#endif
