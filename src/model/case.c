/* case.c - see case.h. */
#include "model/case.h"

#include <stdlib.h>
#include <string.h>

void case_begin(struct bench_case *c, const struct knowledge *k)
{
  *c = (struct bench_case){.machine_class = -1};
  c->features = mem_array(k->feature_count, sizeof *c->features);
  c->off = mem_array(k->cover_count, sizeof *c->off);
  c->mended = mem_array(k->fault_count, sizeof *c->mended);
}

void case_free(struct bench_case *c)
{
  free(c->features);
  free(c->complaints);
  free(c->said);
  free(c->results);
  free(c->cards);
  free(c->off);
  free(c->mended);
  *c = (struct bench_case){.machine_class = -1};
}

static void displace_group(signed char *state, const struct knowledge *k, int feature)
{
  const struct feature *f = &k->features[feature];

  for (size_t i = 0; f->one_of && i < k->feature_count; i++)
    if ((int)i != feature && strcmp(k->features[i].group, f->group) == 0) state[i] = TRI_LACKS;
}

/* A feature that is there brings some and bars others, and so on until nothing changes;
 * what was told (told[i] != 0) is never overruled. */
static void spread(signed char *state, const signed char *told, const struct knowledge *k, int feature)
{
  int *todo = mem_array(k->feature_count + 1, sizeof *todo);
  size_t count = 0;

  todo[count++] = feature;
  while (count > 0) {
    const struct feature *f = &k->features[todo[--count]];

    displace_group(state, k, (int)(f - k->features));
    for (size_t i = 0; i < f->bars.count; i++)
      if (!told[f->bars.at[i]]) state[f->bars.at[i]] = TRI_LACKS;
    for (size_t i = 0; i < f->brings.count; i++) {
      int b = f->brings.at[i];

      if (told[b] || state[b] == TRI_HAS) continue;
      state[b] = TRI_HAS;
      if (count < k->feature_count) todo[count++] = b;
    }
  }
  free(todo);
}

static int refuse_pair(const struct knowledge *k, const signed char *told, struct err *e)
{
  for (size_t i = 0; i < k->feature_count; i++)
    for (size_t j = 0; told[i] == TRI_HAS && k->features[i].one_of && j < i; j++)
      if (told[j] == TRI_HAS && strcmp(k->features[i].group, k->features[j].group) == 0)
        return err_set(e, EX_DATAERR, NULL, 0,
                       "the machine cannot have both \"%s\" and \"%s\". Leave one out.",
                       k->features[j].id, k->features[i].id);
  return 0;
}

int case_set_machine(struct bench_case *c, const struct knowledge *k, int machine_class,
                     const int *has, size_t has_count, const int *lacks, size_t lacks_count,
                     struct err *e)
{
  signed char *told = mem_array(k->feature_count, sizeof *told);
  const struct machine_class *m = machine_class >= 0 ? &k->classes[machine_class] : NULL;
  int status = 0;

  for (size_t i = 0; i < has_count; i++) told[has[i]] = TRI_HAS;
  for (size_t i = 0; i < lacks_count && status == 0; i++) {
    if (told[lacks[i]] == TRI_HAS)
      status = err_set(e, EX_DATAERR, NULL, 0, "\"%s\" is given as had and as lacking.", k->features[lacks[i]].id);
    told[lacks[i]] = TRI_LACKS;
  }
  if (status == 0) status = refuse_pair(k, told, e);
  if (status == 0) {
    c->machine_class = machine_class;
    for (size_t i = 0; i < k->feature_count; i++) c->features[i] = m ? TRI_LACKS : TRI_UNKNOWN;
    for (size_t i = 0; m && i < m->may.count; i++) c->features[m->may.at[i]] = TRI_UNKNOWN;
    for (size_t i = 0; m && i < m->has.count; i++) c->features[m->has.at[i]] = TRI_HAS;
    for (size_t i = 0; i < k->feature_count; i++)
      if (told[i]) c->features[i] = told[i];
    for (size_t i = 0; i < k->feature_count; i++)
      if (told[i] == TRI_HAS) spread(c->features, told, k, (int)i);
    for (size_t i = 0; i < k->feature_count; i++)
      if (c->features[i] == TRI_HAS && !told[i]) spread(c->features, told, k, (int)i);
  }
  free(told);
  return status;
}

void case_add_complaint(struct bench_case *c, int complaint)
{
  void *items = c->complaints;

  for (size_t i = 0; i < c->complaint_count; i++)
    if (c->complaints[i] == complaint) return;
  mem_grow(&items, &c->complaint_room, c->complaint_count + 1, sizeof *c->complaints);
  c->complaints = items;
  c->complaints[c->complaint_count++] = complaint;
}

void case_add_said(struct bench_case *c, const struct case_said *said)
{
  void *all = c->said;

  for (size_t i = 0; i < said->took_count; i++) case_add_complaint(c, said->took[i]);
  mem_grow(&all, &c->said_room, c->said_count + 1, sizeof *c->said);
  c->said = all;
  c->said[c->said_count++] = *said;
}

void case_set_result(struct bench_case *c, struct case_result r)
{
  void *items = c->results;

  for (size_t i = 0; i < c->result_count; i++)
    if (c->results[i].check == r.check) {
      c->results[i] = r;
      return;
    }
  mem_grow(&items, &c->result_room, c->result_count + 1, sizeof *c->results);
  c->results = items;
  c->results[c->result_count++] = r;
}

bool case_drop_result(struct bench_case *c, int check)
{
  for (size_t i = 0; i < c->result_count; i++)
    if (c->results[i].check == check) {
      memmove(&c->results[i], &c->results[i + 1], (c->result_count - i - 1) * sizeof *c->results);
      c->result_count--;
      return true;
    }
  return false;
}

const struct case_result *case_result_of(const struct bench_case *c, int check)
{
  for (size_t i = 0; i < c->result_count; i++)
    if (c->results[i].check == check) return &c->results[i];
  return NULL;
}

void case_set_card(struct bench_case *c, struct case_card card)
{
  void *items = c->cards;

  for (size_t i = 0; i < c->card_count; i++)
    if (c->cards[i].check == card.check) {
      c->cards[i] = card;
      return;
    }
  mem_grow(&items, &c->card_room, c->card_count + 1, sizeof *c->cards);
  c->cards = items;
  c->cards[c->card_count++] = card;
}

const struct case_card *case_card_of(const struct bench_case *c, int check)
{
  for (size_t i = 0; i < c->card_count; i++)
    if (c->cards[i].check == check) return &c->cards[i];
  return NULL;
}

bool case_drop_card(struct bench_case *c, int check)
{
  for (size_t i = 0; i < c->card_count; i++)
    if (c->cards[i].check == check) {
      memmove(&c->cards[i], &c->cards[i + 1], (c->card_count - i - 1) * sizeof *c->cards);
      c->card_count--;
      return true;
    }
  return false;
}

size_t case_take_off(struct bench_case *c, const struct knowledge *k, const struct refs *covers)
{
  size_t count = 0, open;

  for (size_t i = 0; i < covers->count; i++)
    for (int x = covers->at[i]; x >= 0; x = k->covers[x].under)
      if (!c->off[x] && case_needs(c, &k->covers[x].needs, &open) != TRI_LACKS) {
        c->off[x] = true;
        count++;
      }
  return count;
}

enum tri case_needs(const struct bench_case *c, const struct refs *needs, size_t *unknown)
{
  enum tri worst = TRI_HAS;

  *unknown = 0;
  for (size_t i = 0; i < needs->count; i++) {
    int state = c->features[needs->at[i]];

    if (state == TRI_LACKS) return TRI_LACKS;
    if (state == TRI_UNKNOWN) {
      worst = TRI_UNKNOWN;
      (*unknown)++;
    }
  }
  return worst;
}
