/* agree.c - see agree.h. */
#include "agree.h"

#include <stdio.h>
#include <stdlib.h>

#include "base/random.h"

void draw_by_seed(const struct simulator *s, uint64_t seed, struct sim_machine *out)
{
  size_t classes = s->book.k->class_count;
  const struct sim_model *m = sim_pick_model(s, (int)(seed % classes), random_fixed(seed, "complaint"));

  sim_draw(out, m, seed);
}

bool believe(const struct simulator *s, struct sim_machine *x)
{
  for (size_t i = s->first[x->drawn->machine_class]; i < s->first[x->drawn->machine_class + 1]; i++) {
    if (s->models[i].complaint != x->drawn->complaint) continue;
    x->model = &s->models[i];
    return true;
  }
  return false;
}

static void assess(struct assessor *assessor, const struct bench_case *c, struct assessment *out)
{
  struct err e;

  if (assess_case(assessor, c, out, &e) == 0) return;
  fprintf(stderr, "%s\n", e.text);
  exit(1);
}

static bool wants_check(const struct assessment *a)
{
  return a->disposition == DISPOSITION_KEEP_LOOKING && a->plan.count > 0;
}

/* The quick choice after the same results; -1: it stops. */
static int quick_choice(struct sim_bench *x)
{
  if (sim_is_sound(&x->belief) || sim_found(&x->belief)) return -1;
  return sim_choose(x->ahead, &x->belief, SIM_LOOK_AHEAD).check;
}

static void compare_step(struct sim_bench *x, const struct assessment *a, struct agreement *out)
{
  int quick = quick_choice(x), full = wants_check(a) ? a->plan.steps[0].check : -1;

  out->steps++;
  out->same_step += quick == full;
  if (quick < 0 || full < 0) return;
  out->both_check++;
  out->same_check += quick == full;
  for (size_t i = 0; i < 3 && i < a->plan.count; i++) out->among_three += a->plan.steps[i].check == quick;
}

/* First place of the full path, as the quick one puts it; -1: nothing behind it. */
static int first_place(const struct simulator *s, const struct assessment *a)
{
  if (a->disposition == DISPOSITION_NOTHING_BROKEN) return -1;
  return a->ranking[0].fault >= 0 ? a->ranking[0].fault : (int)s->book.fault_count - 1;
}

static bool is_behind(const struct sim_machine *m, int fault)
{
  for (size_t i = 0; i < m->behind_count; i++)
    if (m->behind[i] == fault) return true;
  return fault < 0 && m->behind_count == 0;
}

static int follow_full(const struct simulator *s, struct assessor *assessor, struct sim_bench *x,
                       const struct sim_machine *machine, struct agreement *out)
{
  const struct knowledge *k = s->book.k;
  struct bench_case c;
  struct assessment a;
  struct err e;
  int first;

  case_begin(&c, k);
  case_set_machine(&c, k, machine->model->machine_class, NULL, 0, NULL, 0, &e);
  case_add_complaint(&c, machine->model->complaint);
  sim_start(&x->belief, machine->model);
  for (size_t steps = 0;; steps++) {
    int check, result;

    assess(assessor, &c, &a);
    compare_step(x, &a, out);
    if (!wants_check(&a) || steps == AGREE_MOST_CHECKS) break;
    check = a.plan.steps[0].check;
    result = sim_result(machine, check);
    out->full_minutes += a.plan.steps[0].minutes;
    out->full_steps++;
    case_set_result(&c, (struct case_result){check, result, 0, 1});
    case_take_off(&c, k, &k->checks[check].off);
    sim_see(&x->belief, check, result);
    assessment_free(&a);
  }
  first = first_place(s, &a);
  assessment_free(&a);
  case_free(&c);
  return first;
}

void agree_on(const struct simulator *s, struct assessor *assessor, size_t jobs, uint64_t seed,
              struct agreement *out)
{
  struct sim_machine machine;
  struct sim_search search;
  struct sim_bench x;

  *out = (struct agreement){.jobs = jobs};
  sim_machine_room(&machine, &s->book);
  sim_bench_open(&x, &s->book, NULL);
  for (size_t i = 0; i < jobs; i++) {
    int full, quick;

    draw_by_seed(s, seed + i, &machine);
    full = follow_full(s, assessor, &x, &machine, out);
    sim_search(&x, &machine, SIM_LOOK_AHEAD, AGREE_MOST_CHECKS, &search);
    quick = search.end == SIM_END_SOUND ? -1 : search.leading;
    out->same_first += full == quick;
    out->full_right += is_behind(&machine, full);
    out->quick_right += is_behind(&machine, quick);
    out->quick_minutes += search.minutes;
    out->quick_steps += (double)search.steps;
  }
  sim_bench_close(&x);
  sim_machine_free(&machine);
}
