/* test_work.c - calculations by name: every example, what people type, and what is refused. */
#include "sums.h"

#include "arith/work.h"
#include "base/random.h"

enum { WORDS = 24 };

/* Parts a command line at its spaces into *words (pointing into room); returns how many. */
static int part(const char *line, char *room, size_t size, const char **words)
{
  int n = 0;

  snprintf(room, size, "%s", line);
  for (char *p = strtok(room, " "); p && n < WORDS; p = strtok(NULL, " ")) words[n++] = p;
  return n;
}

static int ask(const char *line, struct work_request *q, struct work_answer *a, struct err *e)
{
  const char *words[WORDS];
  char room[256];
  int n = part(line, room, sizeof room, words), status;

  *e = (struct err){0};
  status = work_read(words, n, q, e);
  return status ? status : work_run(q, a, e);
}

static void answer(const char *line, struct work_answer *a)
{
  struct work_request q;
  struct err e;

  if (ask(line, &q, a, &e) != 0) fail_msg("%s: %s", line, e.text);
}

/* The number of the line of that name, in that unit. */
static double line_of(const struct work_answer *a, const char *name, const char *unit)
{
  const struct unit *u = work_unit(unit);

  assert_non_null(u);
  for (int i = 0; i < a->count; i++)
    if (strcmp(a->lines[i].name, name) == 0) return (a->lines[i].si - u->offset) / u->factor;
  fail_msg("no line \"%s\"", name);
  return 0;
}

static void check_line(const struct work *w, const struct work_line *line)
{
  assert_true(*line->name);
  assert_true(*work_basis_name(line->basis));
  if (!line->shown[0]) {
    assert_true(*line->said);
    assert_true(strlen(line->said) < WORK_SAID - 1); /* not cut */
    return;
  }
  if (!isfinite(line->si)) fail_msg("%s: %s is not a number", w->name, line->name);
}

/* Every one: its example goes, with an answer in full; a value less is said to be missing. */
static void test_examples(void **state)
{
  size_t count;
  const struct work *all = work_all(&count);

  (void)state;
  assert_true(count >= 25);
  for (size_t i = 0; i < count; i++) {
    struct work_request q;
    struct work_answer a;
    struct err e;
    char line[128];

    snprintf(line, sizeof line, "%s %s", all[i].name, all[i].example);
    answer(line, &a);
    assert_true(a.count > 0 && a.count <= WORK_LINES);
    for (int j = 0; j < a.count; j++) {
      check_line(&all[i], &a.lines[j]);
      for (int k = 0; k < j; k++) assert_string_not_equal(a.lines[j].name, a.lines[k].name);
    }
    assert_true(strlen(all[i].recipe->leaves_out) > 20);
    assert_true(strlen(all[i].recipe->source) > 10);
    for (size_t j = 0; j < i; j++) assert_string_not_equal(all[i].name, all[j].name);
    assert_int_equal(ask(all[i].name, &q, &a, &e), EX_USAGE);
    assert_non_null(strstr(e.text, "is missing"));
    assert_non_null(strstr(e.text, all[i].example));
  }
}

/* Answers by name against figures of the tables named in the tests of the sums. */
static void test_answers(void **state)
{
  struct work_answer a;

  (void)state;
  answer("premix 50:1 5 L", &a);
  NEAR(line_of(&a, "oil", "mL"), 100, 1e-9);
  answer("compression 8.5:1", &a);
  NEAR(line_of(&a, "with the exponent", "psi"), 222.7, 0.06);
  answer("torque 1 ft-lb", &a); /* NIST SP 811 (2008) B.8 prints 1.355 818 and 1.129 848 E-01 */
  NEAR(line_of(&a, "torque", "N.m"), 1.355818, 5e-7);
  answer("torque 1 in-lb", &a);
  NEAR(line_of(&a, "torque", "N.m"), 0.1129848, 5e-8);
  answer("torque 180 in-lb", &a);
  NEAR(line_of(&a, "torque", "N.m"), 20.34, 0.005);
  answer("frequency 3750", &a);
  NEAR(line_of(&a, "frequency", "Hz"), 62.5, 1e-9);
  answer("blade-tip 25 in 3200 rpm", &a);
  NEAR(line_of(&a, "tip speed", "ft/min"), 20944, 0.6);
  answer("nozzle-size 8 L/min 150 bar", &a);
  NEAR(line_of(&a, "power in the water", "kW"), 2, 1e-9);           /* L/min times bar over 600 */
  NEAR(line_of(&a, "power in the water", "hp"), 2 / 0.7457, 0.001); /* NIST SP 811 prints 7.456 999 E+02 W */
  answer("air 0 m", &a);
  NEAR(line_of(&a, "density", "lb/ft3"), 0.0765, 0.00005); /* US Standard Atmosphere, from memory */
  answer("jet 1 mm 1 kPa 20 %", &a);
  NEAR(line_of(&a, "lambda where it was 1", "1"), 1.25, 1e-9);
  answer("pump-flow 10 L 30 s 40 L/min", &a);
  NEAR(line_of(&a, "of the plate", "%"), 50, 1e-9);
}

/* Each pair is the same thing said twice. */
static void test_ways_to_say(void **state)
{
  static const char *const same[][2] = {
      {"premix 50:1 5 L", "premix 50:1 5L"},
      {"premix 50:1 5 L", "premix petrol=5 L ratio=50:1"},
      {"premix 50:1 5 L", "premix petrol= 5 L 50 to 1"},
      {"premix 50:1 5 L", "premix 50:1 5000 cc"},
      {"water-in-fuel E10 5 L", "water-in-fuel 10 % 5 L"},
      {"water-in-fuel e10 5 L", "water-in-fuel 10 5 litres"},
      {"plug-torque M14", "plug-torque 14 mm gasket aluminium"},
      {"plug-torque 14 mm taper", "plug-torque 14 mm seat=TAPER aluminum"},
      {"plug-torque 14 mm iron", "plug-torque head=iron 14"},
      {"compression 8:1 5000 ft 68 degF", "compression 8 1524 m 20 degC exponent=1.3"},
      {"compression 8:1 1.25", "compression 8:1 exponent=1.25 altitude=0m"},
      {"compression 8:1 20 C", "compression 8:1 0 ft 293.15 K"},
      {"air -100 m", "air altitude=-100m"},
      {"oil-grade 10W-30", "oil-grade 10w30"},
      {"oil-grade SAE 30", "oil-grade 30"},
      {"belt 3600 1 1/2 in 3 in", "belt 3600 rpm 38.1 mm 76.2 mm"},
      {"belt-length 2-7/8 in 5 in 14 in", "belt-length 2 7/8 in 5 in 14 in"},
      {"sea-level 4 in H2O 1000 ft", "sea-level 4 inH2O 1000ft"},
      {"governed-speed 60 poles=4", "governed-speed 60 Hz 4"},
      {"voltage-drop 11,9 V 11,2 V", "voltage-drop 11.9 11.2"},
      {"nozzle-size 2.1 US gpm 2200 psi 0.8", "nozzle-size 2.1 US gal/min 2200 psi coefficient=.8"}};

  (void)state;
  for (size_t i = 0; i < COUNT(same); i++) {
    struct work_answer one, two;

    answer(same[i][0], &one);
    answer(same[i][1], &two);
    assert_int_equal(one.count, two.count);
    for (int j = 0; j < one.count; j++) {
      if (fabs(one.lines[j].si - two.lines[j].si) > 1e-9 * fabs(one.lines[j].si))
        fail_msg("%s and %s differ in %s", same[i][0], same[i][1], one.lines[j].name);
      assert_string_equal(one.lines[j].said, two.lines[j].said);
    }
  }
}

static void test_refused(void **state)
{
  static const struct {
    const char *line;
    int status;
    const char *part;
  } bad[] = {
      {"", EX_USAGE, "name of a calculation"},
      {"premx 50:1 5 L", EX_USAGE, "did you mean \"premix\""},
      {"premix 50:1", EX_USAGE, "petrol is missing"},
      {"premix 50:1 5 L 6 L", EX_USAGE, "\"6 L\" is one value too many"},
      {"premix 1 2 3 4 5 6 7 8 9 10 11 12", EX_USAGE, "one value too many"},
      {"premix ratoi=50:1 5 L", EX_USAGE, "did you mean \"ratio\""},
      {"premix ratio=50:1 ratio=40:1 5 L", EX_USAGE, "given twice"},
      {"premix 50:1 5", EX_DATAERR, "petrol: \"5\" has no unit"},
      {"premix 50:1 5 psi", EX_DATAERR, "petrol: 5 psi is a pressure"},
      {"premix 50:1 5 gal", EX_DATAERR, "US gal or UK gal"},
      {"premix 2 % 5 L", EX_DATAERR, "ratio"},
      {"premix 50:1 5 litters", EX_DATAERR, "Did you mean"},
      {"premix fifty 5 L", EX_DATAERR, "does not begin with a number"},
      {"premix 5e1:1 5 L", EX_DATAERR, "power of ten"},
      {"premix 50:1 5 L of the good stuff from the corner shop by the bridge and the mill and the church",
       EX_DATAERR, "too long"},
      {"compression 8:1 1500", EX_DATAERR, "such as 1500 m or 5000 ft"},
      {"compression 8:1 1500 psi", EX_DATAERR, "1500 psi is a pressure"},
      {"compression 8:1 20000 ft", EX_DATAERR, "altitude: 6096 m is outside"},
      {"compression 8:1 9000 degC", EX_DATAERR, "temperature"},
      {"compression 40:1", EX_DATAERR, "ratio: 40:1 is outside"},
      {"plug-torque 14 mm seat=cone", EX_DATAERR, "none of: gasket taper"},
      {"plug-torque 13 mm", EX_DATAERR, "Known are 10, 12, 14, 18 mm"},
      {"oil-grade 75W-90", EX_DATAERR, "10W-30 or SAE 30"},
      {"oil-refill -5 mL", EX_DATAERR, "book"},
      {"battery 11 V 12 V", EX_DATAERR, "cannot raise"},
      {"torque 0 ft-lb", EX_DATAERR, "more than nothing"},
      {"pump-flow 10 L 30 s 0 L/min", EX_DATAERR, "plate"},
      {"water-in-fuel E85 5 L", EX_DATAERR, "0 % to 15 %"}};

  (void)state;
  for (size_t i = 0; i < COUNT(bad); i++) {
    struct work_request q;
    struct work_answer a;
    struct err e;
    int status = ask(bad[i].line, &q, &a, &e);

    if (status != bad[i].status || e.status != status || !strstr(e.text, bad[i].part))
      fail_msg("%s: %d \"%s\", not %d \"%s\"", bad[i].line, status, e.text, bad[i].status, bad[i].part);
  }
}

static void test_inputs(void **state)
{
  size_t count;
  const struct work *all = work_all(&count);
  char text[200], small[8] = "?";

  (void)state;
  for (size_t i = 0; i < count; i++) {
    work_inputs(&all[i], text, sizeof text);
    assert_true(*text);
    if (strcmp(all[i].name, "compression") == 0)
      assert_string_equal(text, "RATIO [ALTITUDE] [TEMPERATURE] [EXPONENT]");
    work_inputs(&all[i], small, sizeof small);
    assert_true(strlen(small) < sizeof small);
  }
  assert_null(work_unit("furlong"));
}

/* An example with one or two words changed for others, or words thrown together. */
static int throw_words(struct random *r, const struct work *w, const char *const *pool, size_t count,
                       char *room, size_t size, const char **words)
{
  int n;

  words[0] = w->name;
  if (random_bits(r) % 2) {
    n = 1 + part(w->example, room, size, words + 1);
    for (int changes = (int)(random_bits(r) % 3); changes > 0; changes--)
      words[1 + random_bits(r) % (size_t)(n - 1)] = pool[random_bits(r) % count];
  } else {
    n = 1 + (int)(random_bits(r) % 8);
    for (int i = 1; i < n; i++) words[i] = pool[random_bits(r) % count];
  }
  return n;
}

/* Whatever comes, it ends in an answer of finite numbers or a reason. */
static void test_anything(void **state)
{
  static const char *const pool[] = {"50:1",
                                     "5",
                                     "L",
                                     "1/2",
                                     "-5",
                                     "in",
                                     "psi",
                                     "E10",
                                     "M14",
                                     "8.5:1",
                                     "1500",
                                     "m",
                                     "degC",
                                     "20",
                                     "to",
                                     "%",
                                     "rpm",
                                     "3600",
                                     "gasket",
                                     "ratio=",
                                     "V",
                                     "=",
                                     "",
                                     "SAE",
                                     "10W-",
                                     "30",
                                     "\xff\xc3",
                                     "V",
                                     "bar",
                                     "L/min",
                                     "mm",
                                     "0",
                                     "poles=4",
                                     "A",
                                     "weeks",
                                     "12.6",
                                     "kPa",
                                     "1 1/2 in",
                                     "99999999999999999999",
                                     "mL",
                                     "exponent=1.2",
                                     "s",
                                     "Hz",
                                     "0.0000001",
                                     "ft-lb",
                                     "iron"};
  struct random r = {5};
  size_t count, answered = 0, refused = 0;
  const struct work *all = work_all(&count);

  (void)state;
  for (int round = 0; round < 40000; round++) {
    const char *words[WORDS];
    struct work_request q;
    struct work_answer a;
    struct err e = {0};
    char room[128];
    int n, status;

    n = throw_words(&r, &all[random_bits(&r) % count], pool, COUNT(pool), room, sizeof room, words);
    status = work_read(words, n, &q, &e);
    if (status == 0) status = work_run(&q, &a, &e);
    if (status) {
      refused++;
      assert_true(status == EX_USAGE || status == EX_DATAERR);
      assert_int_equal(e.status, status);
      assert_true(*e.text);
      continue;
    }
    answered++;
    for (int i = 0; i < a.count; i++) check_line(q.work, &a.lines[i]);
  }
  assert_true(answered > 5000 && refused > 5000);
}

int main(void)
{
  const struct CMUnitTest tests[] = {cmocka_unit_test(test_examples),    cmocka_unit_test(test_answers),
                                     cmocka_unit_test(test_ways_to_say), cmocka_unit_test(test_refused),
                                     cmocka_unit_test(test_inputs),      cmocka_unit_test(test_anything)};

  return cmocka_run_group_tests(tests, NULL, NULL);
}
