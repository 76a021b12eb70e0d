/* stem.c - see stem.h. */
#include "base/stem.h"

#include <stdbool.h>
#include <string.h>

static bool ends(const char *word, size_t len, const char *ending)
{
  size_t n = strlen(ending);

  return len > n && memcmp(word + len - n, ending, n) == 0;
}

static bool has_vowel(const char *word, size_t len)
{
  for (size_t i = 0; i < len; i++)
    if (strchr("aeiouy", word[i])) return true;
  return false;
}

static size_t without_s(const char *w, size_t n)
{
  if (n < 4 || !ends(w, n, "s") || ends(w, n, "ss") || ends(w, n, "us") || ends(w, n, "is")) return n;
  if (n > 4 && ends(w, n, "ies")) return n - 2; /* batteries: batteri, as battery becomes */
  if (ends(w, n, "xes") || ends(w, n, "ches") || ends(w, n, "shes") || ends(w, n, "sses")) return n - 2;
  return n - 1;
}

/* -ing and -ed, when a word with a vowel is left. */
static size_t without_ending(const char *w, size_t n)
{
  size_t left = ends(w, n, "ing") ? n - 3 : ends(w, n, "ed") && !ends(w, n, "eed") ? n - 2 : n;

  if (left == n || left < 3 || !has_vowel(w, left)) return n;
  if (w[left - 1] == w[left - 2] && !strchr("aeioulsfz", w[left - 1])) left--;
  return left;
}

void text_stem(char *word)
{
  size_t n = strlen(word);

  n = without_s(word, n);
  n = without_ending(word, n);
  if (n > 4 && ends(word, n, "ly")) n -= 2;
  if (n > 7 && (ends(word, n, "sion") || ends(word, n, "tion"))) n -= 3;
  if (n > 3 && ends(word, n, "e")) n--;
  if (n > 3 && ends(word, n, "y") && !strchr("aeiou", word[n - 2])) word[n - 1] = 'i';
  word[n] = '\0';
}
