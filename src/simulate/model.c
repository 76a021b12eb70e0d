/* model.c - one class of machine with one complaint; see book.h. */
#include <stdlib.h>

#include "simulate/book.h"

double sim_cover_minutes(const struct sim_model *m, uint64_t covers, uint64_t off)
{
  double sum = 0;

  for (covers &= ~off; covers; covers &= covers - 1) sum += m->cover_minutes[__builtin_ctzll(covers)];
  return sum;
}

static size_t book_fault(const struct sim_book *b, int fault)
{
  return fault >= 0 ? (size_t)fault : b->fault_count - 1;
}

/* Base rates with what rules conclude from the complaint itself: an engine that smokes runs, so
 * what stops it is seldom there. What speaks for or against a fault, and implied sound results,
 * bear on each fault by itself; implied unsound ones are left out. */
static double *base_rates(struct casenet *n, struct arena *arena)
{
  struct net net = casenet_view(n, n->evidence_count);
  double *rate = arena_array(arena, n->count, sizeof *rate);

  for (size_t p = 0; p < n->count; p++) rate[p] = net.prior[p] * net.bias[p] / (1 - net.prior[p]);
  for (size_t i = 1; i < net.finding_count; i++) { /* after the complaint */
    const struct net_finding *f = &net.findings[i];
    double sure = f->soft_sound > 0 ? f->soft_sound : f->seen[0] >= 1;

    for (size_t l = 0; l < f->link_count; l++)
      rate[f->links[l].fault] *= 1 - sure * (1 - f->links[l].chance[0]);
  }
  for (size_t p = 0; p < n->count; p++) rate[p] /= 1 + rate[p];
  return rate;
}

/* How the complaint comes about: the chances to draw machines by that have it. One fault after
 * the other is asked whether it leads to it; see draw.c. */
static void add_drawing(struct sim_model *m, struct casenet *n, struct arena *arena)
{
  const struct net_finding *f = &n->findings[0];
  const double *rate = base_rates(n, arena);
  double rest = f->leak[0], before = f->leak[0];

  for (size_t p = 0; p < n->count; p++) m->idle[book_fault(m->book, n->fault_of[p])] = rate[p];
  for (size_t l = 0; l < f->link_count; l++) {
    size_t fault = book_fault(m->book, n->fault_of[f->links[l].fault]);
    double there = rate[f->links[l].fault], leads = f->links[l].chance[1];

    before *= 1 - n->prior[f->links[l].fault] * leads;
    m->active[fault] = there * leads;
    m->idle[fault] = there * (1 - leads) / (1 - there * leads);
  }
  for (size_t i = m->book->fault_count; i-- > 0;) {
    rest *= 1 - m->active[i];
    m->later[i] = 1 - rest;
  }
  m->chance = 1 - before;
  m->none = f->leak[1] * rest / f->leak[0] / (1 - rest);
}

static void add_weights(struct sim_model *m, const struct assessment *a)
{
  m->sound = a->sound;
  for (size_t i = 0; i < a->ranking_count; i++) {
    const struct ranked *r = &a->ranking[i];
    size_t f = book_fault(m->book, r->fault);

    m->weight[f] = r->blame;
    m->beside[f] = r->blame < 1 && r->belief > r->blame ? (r->belief - r->blame) / (1 - r->blame) : 0;
  }
}

/* The same that the planner leaves out. */
static void add_checks(struct sim_model *m, const struct bench_case *c, const struct conclusions *drawn)
{
  const struct knowledge *k = m->book->k;
  size_t open;

  for (size_t i = 0; i < k->check_count; i++)
    m->allowed[i] = !k->checks[i].out_of_reach && conclusion_find(drawn, RULES_OUT_CHECK, (int)i, 0) < 0 &&
                    case_needs(c, &k->checks[i].needs, &open) != TRI_LACKS &&
                    conclusion_find(drawn, UNSAFE, (int)i, 0) < 0 &&
                    conclusion_find(drawn, POINTLESS, (int)i, 0) < 0;
  for (size_t i = 0; i < k->cover_count; i++)
    if (case_needs(c, &k->covers[i].needs, &open) != TRI_LACKS)
      m->cover_minutes[i] = k->covers[i].minutes_off + k->covers[i].minutes_on;
}

static void add_model(struct simulator *s, const struct bench_case *c, struct assessment *a)
{
  struct arena *arena = &s->arena;
  size_t faults = s->book.fault_count;
  struct sim_model *m;

  mem_grow((void **)&s->models, &s->model_room, s->model_count + 1, sizeof *s->models);
  m = &s->models[s->model_count];
  *m = (struct sim_model){.book = &s->book, .machine_class = c->machine_class, .complaint = c->complaints[0],
                          .number = (int)s->model_count};
  m->weight = arena_array(arena, faults, sizeof *m->weight);
  m->beside = arena_array(arena, faults, sizeof *m->beside);
  m->active = arena_array(arena, faults, sizeof *m->active);
  m->later = arena_array(arena, faults, sizeof *m->later);
  m->idle = arena_array(arena, faults, sizeof *m->idle);
  m->allowed = arena_array(arena, s->book.check_count, sizeof *m->allowed);
  m->cover_minutes = arena_array(arena, SIM_MOST_COVERS, sizeof *m->cover_minutes);
  add_drawing(m, &a->net, arena);
  add_weights(m, a);
  add_checks(m, c, &a->drawn);
  s->model_count++;
}

/* Nothing is simulated of a complaint that this machine cannot have, or that is handed over
 * before anything was looked at. */
static int try_complaint(struct simulator *s, struct assessor *assessor, int machine_class, int complaint,
                         struct err *e)
{
  struct bench_case c;
  struct assessment a;
  size_t open;
  int status;

  case_begin(&c, s->book.k);
  status = case_set_machine(&c, s->book.k, machine_class, NULL, 0, NULL, 0, e);
  case_add_complaint(&c, complaint);
  if (status == 0 && case_needs(&c, &s->book.k->complaints[complaint].needs, &open) != TRI_LACKS) {
    status = assess_case(assessor, &c, &a, e);
    if (status == 0) {
      if (a.disposition != DISPOSITION_HAND_OVER && !a.bounded &&
          conclusion_find(&a.drawn, RULES_OUT_COMPLAINT, complaint, 0) < 0)
        add_model(s, &c, &a);
      assessment_free(&a);
    }
  }
  case_free(&c);
  return status;
}

int sim_open(struct simulator *s, const struct knowledge *k, struct err *e)
{
  struct assessor *assessor = NULL;
  int status;

  *s = (struct simulator){0};
  status = sim_book_fill(&s->book, k, e);
  if (status == 0) status = assessor_open(k, &assessor, e);
  s->first = mem_array(k->class_count + 1, sizeof *s->first);
  for (size_t c = 0; status == 0 && c < k->class_count; c++) {
    s->first[c] = s->model_count;
    for (size_t x = 0; status == 0 && x < k->complaint_count; x++)
      status = try_complaint(s, assessor, (int)c, (int)x, e);
  }
  if (status == 0) s->first[k->class_count] = s->model_count;
  assessor_close(assessor);
  return status;
}

void sim_close(struct simulator *s)
{
  free(s->models);
  free(s->first);
  sim_book_free(&s->book);
  arena_free(&s->arena);
  *s = (struct simulator){0};
}
