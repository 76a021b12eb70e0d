/* answer_words.c - how the owner's words were taken; see answer.h. */
#include "report/answer.h"

#include "base/text.h"

static void names(struct buf *out, const struct knowledge *k, const int *at, size_t count, const char *last)
{
  for (size_t i = 0; i < count; i++)
    buf_addf(out, "%s%s (%s)", i == 0 ? "" : i + 1 < count ? ", " : last, k->complaints[at[i]].name,
             k->complaints[at[i]].id);
}

void answer_words(struct buf *out, const struct knowledge *k, const struct bench_case *c, int width)
{
  for (size_t i = 0; i < c->said_count; i++) {
    const struct case_said *s = &c->said[i];
    struct buf b = {0};

    buf_addf(&b, "\"%s\" taken (%s) for: ", s->text, s->sure);
    names(&b, k, s->took, s->took_count, " and ");
    buf_add(&b, ".");
    if (s->instead_count) {
      buf_add(&b, " If that is not it: ");
      names(&b, k, s->instead, s->instead_count, " or ");
      buf_add(&b, "; or another of \"pullcord list complaints\".");
    }
    text_wrap(out, buf_text(&b), width, "", "  ");
    buf_add(out, "\n");
    buf_free(&b);
  }
  if (c->said_count) buf_add(out, "\n");
}

static struct json *ids(const struct knowledge *k, const int *at, size_t count)
{
  struct json *list = json_list();

  for (size_t i = 0; i < count; i++) json_push_text(list, k->complaints[at[i]].id);
  return list;
}

struct json *answer_words_json(const struct knowledge *k, const struct bench_case *c)
{
  struct json *list = json_list();

  for (size_t i = 0; i < c->said_count; i++) {
    const struct case_said *s = &c->said[i];
    struct json *o = json_object();

    json_put_text(o, "text", s->text);
    json_put(o, "taken_for", ids(k, s->took, s->took_count));
    json_put_text(o, "sure", s->sure);
    json_put(o, "or_else", ids(k, s->instead, s->instead_count));
    json_push(list, o);
  }
  return list;
}
