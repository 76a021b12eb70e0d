/* test_card.c - what a card is told, and the small parts that every format rests on. */
#include <math.h>
#include <setjmp.h>
#include <stdarg.h>
#include <stdint.h>
#include <stdlib.h>
#include <string.h>

#include <cmocka.h>

#include "base/file.h"
#include "base/text.h"
#include "knowledge/load.h"
#include "model/service.h"
#include "report/card_parts.h"
#include "report/svg_chart.h"
#include "shop/casefile.h"

static struct knowledge k;
static struct assessor *assessor;

static int begin_all(void **state)
{
  struct err e;

  (void)state;
  return load_knowledge(&k, &e) || assessor_open(&k, &assessor, &e);
}

static int end_all(void **state)
{
  (void)state;
  assessor_close(assessor);
  knowledge_free(&k);
  return 0;
}

struct bench {
  struct bench_case c;
  struct assessment a;
  struct card card;
  struct doc doc;
};

static void begin(struct bench *b, const char *text)
{
  struct json *j;
  struct err e;

  assert_int_equal(json_read("test", text, strlen(text), &j, &e), 0);
  assert_int_equal(casefile_read(&k, "test", j, &b->c, &e), 0);
  json_free(j);
  assert_int_equal(assess_case(assessor, &b->c, &b->a, &e), 0);
  card_from_case(&b->card, &k, &b->c, &b->a);
  b->doc = (struct doc){.arena = &b->card.arena};
}

static void end(struct bench *b)
{
  doc_free(&b->doc);
  card_free(&b->card);
  assessment_free(&b->a);
  case_free(&b->c);
}

#define TILLER "{\"pullcord\": \"case-1\", \"machine\": {\"class\": \"tiller\"}, \"complaint\": \"hunts\"}"

static void bad_letters_become_marks(void **state)
{
  struct bench b;

  (void)state;
  begin(&b, TILLER);
  card_set(&b.card, CARD_WORDS, "a\x1B[2J\tb\r\nc\x7F\xC2\x85\xE2\x80\xAE\xFF\xC3");
  assert_string_equal(b.card.texts[CARD_WORDS], "a?[2J b\nc?????");
  card_set(&b.card, CARD_WORDS, "Gr\xC3\xBC\xC3\x9F \xE8\x8A\x9D \xF0\x9F\x94\xA7");
  assert_string_equal(b.card.texts[CARD_WORDS], "Gr\xC3\xBC\xC3\x9F \xE8\x8A\x9D \xF0\x9F\x94\xA7");
  card_set(&b.card, CARD_WORDS, NULL);
  assert_string_equal(b.card.texts[CARD_WORDS], "");
  end(&b);
}

static void a_name_is_cut_between_letters(void **state)
{
  struct bench b;
  char long_name[400] = "";

  (void)state;
  for (int i = 0; i < 100; i++) strcat(long_name, "\xC3\xBC");
  begin(&b, TILLER);
  card_add_note(&b.card, long_name, "to\nday", long_name);
  assert_int_equal(strlen(b.card.notes[0].text), 200);
  assert_string_equal(b.card.notes[0].when, "to day");
  assert_int_equal(text_columns(b.card.notes[0].who), 60);
  assert_int_equal(text_bad_byte(b.card.notes[0].who, strlen(b.card.notes[0].who)),
                   strlen(b.card.notes[0].who));
  end(&b);
}

static void a_repair_told_again_is_replaced(void **state)
{
  const char *parts[] = {"jet", "gasket"};
  struct bench b;
  int fault = knowledge_find(&k, ENTRY_FAULT, "main-jet-blocked");

  (void)state;
  begin(&b, "{\"pullcord\": \"case-1\", \"machine\": {\"class\": \"tiller\"}, \"complaint\": \"hunts\", "
            "\"repaired\": [\"main-jet-blocked\"]}");
  assert_int_equal(b.card.repair_count, 1);
  assert_true(b.card.repairs[0].minutes < 0);
  card_add_repair(&b.card, fault, 25, parts, 2, "today", NULL);
  assert_int_equal(b.card.repair_count, 1);
  assert_int_equal(b.card.repairs[0].parts.count, 2);
  assert_string_equal(b.card.repairs[0].parts.items[1], "gasket");
  assert_string_equal(b.card.repairs[0].who, "");
  end(&b);
}

static void words_of_the_command_line(void **state)
{
  enum card_format f;
  enum card_reader r;

  (void)state;
  assert_true(card_format_by_name("md", &f) && f == CARD_MARKDOWN);
  assert_true(card_format_by_name("pdf", &f) && f == CARD_PDF);
  assert_false(card_format_by_name("PDF", &f) || card_format_by_name("", &f));
  assert_true(card_reader_by_name("bench", &r) && r == CARD_BENCH);
  assert_false(card_reader_by_name("owners", &r));
}

static void outcomes(void **state)
{
  static const struct {
    enum card_ending ending;
    enum card_proof proof;
    bool repaired;
    const char *headline;
  } rows[] = {{CARD_OPEN, CARD_PROOF_NONE, false, "Still looking"},
              {CARD_OPEN, CARD_PROOF_NONE, true, "Repaired, proof run to come"},
              {CARD_OPEN, CARD_PROOF_PASSED, true, "Mended and proved"},
              {CARD_OPEN, CARD_PROOF_FAILED, true, "Not cured yet"},
              {CARD_MENDED, CARD_PROOF_PASSED, true, "Mended and proved"},
              {CARD_MENDED, CARD_PROOF_NONE, true, "Mended"},
              {CARD_NOTHING_BROKEN, CARD_PROOF_NONE, false, "Nothing was broken"},
              {CARD_HANDED_OVER, CARD_PROOF_NONE, false, "Handed over"},
              {CARD_NOT_MENDED, CARD_PROOF_FAILED, true, "Not mended"}};

  (void)state;
  for (size_t i = 0; i < sizeof rows / sizeof rows[0]; i++) {
    const char *more;
    struct bench b;

    begin(&b, TILLER);
    if (rows[i].repaired)
      card_add_repair(&b.card, knowledge_find(&k, ENTRY_FAULT, "main-jet-blocked"), -1, NULL, 0, NULL, NULL);
    card_set_ending(&b.card, rows[i].ending);
    card_set_proof(&b.card, rows[i].proof);
    card_set(&b.card, CARD_ENDING_WORDS, "As agreed.");
    assert_string_equal(card_outcome(&b.card, &b.doc, &more), rows[i].headline);
    assert_non_null(strstr(more, "As agreed."));
    end(&b);
  }
}

static bool has_caution(const struct bench *b, const char *id)
{
  int *ids = calloc(k.caution_count + 1, sizeof *ids);
  size_t count = card_owner_cautions(&b->card, ids);
  bool found = false;

  for (size_t i = 0; i < count; i++) {
    found = found || strcmp(k.cautions[ids[i]].id, id) == 0;
    for (size_t j = 0; j < i; j++) assert_int_not_equal(ids[i], ids[j]);
  }
  free(ids);
  return found;
}

static bool says(const struct bench *b, const char *words)
{
  const char *line;

  for (size_t i = 0; (line = card_storing(&b->card, i)); i++)
    if (strstr(line, words)) return true;
  return false;
}

static const char *service_of(const struct bench *b, const char *name, size_t *count)
{
  const struct service_item *x;
  const char *found = "";

  *count = 0;
  for (size_t i = 0; (x = service_item(&k, &b->c, i)); i++) {
    ++*count;
    if (strcmp(x->name, name) == 0) found = x->text;
  }
  return found;
}

static void the_machine_decides_what_is_said(void **state)
{
  struct bench tiller, saw, set;
  size_t count;

  (void)state;
  begin(&tiller, TILLER);
  begin(&saw, "{\"pullcord\": \"case-1\", \"machine\": {\"class\": \"chainsaw\"}}");
  begin(&set, "{\"pullcord\": \"case-1\", \"machine\": {\"class\": \"portable-generator\"}}");
  assert_true(has_caution(&tiller, "carbon-monoxide") && has_caution(&tiller, "plug-lead-off"));
  assert_false(has_caution(&tiller, "generator-back-feed") ||
               has_caution(&tiller, "two-stroke-lean-seizure"));
  assert_true(has_caution(&saw, "two-stroke-lean-seizure") && has_caution(&saw, "chain-edges"));
  assert_true(has_caution(&set, "generator-back-feed") && has_caution(&set, "generator-outdoors"));
  assert_true(says(&tiller, "Look at the oil") && !says(&tiller, "oil the chain") && !says(&tiller, "frost"));
  assert_true(says(&saw, "oil the chain") && !says(&saw, "Look at the oil"));
  assert_non_null(strstr(service_of(&saw, "Oil", &count), "mix ratio"));
  assert_int_equal(count, 7);
  assert_non_null(strstr(service_of(&tiller, "Oil", &count), "at the mark"));
  assert_int_equal(count, 7);
  end(&tiller);
  end(&saw);
  end(&set);
}

/* The course is the odds of assess_odds, step by step; the last is the belief. */
static void the_course_ends_in_the_belief(void **state)
{
  struct course course;
  struct bench b;

  (void)state;
  begin(&b, "{\"pullcord\": \"case-1\", \"machine\": {\"class\": \"tiller\"}, \"complaint\": \"hunts\", "
            "\"results\": "
            "[{\"check\": \"fuel-age\", \"result\": \"fresh\"}, {\"check\": \"plug-look\", \"result\": "
            "\"dont-know\"}]}");
  assert_true(card_course(&b.card, &b.doc, &course));
  assert_int_equal(course.steps[0].kind, COURSE_START);
  assert_int_equal(course.steps[1].kind, COURSE_COMPLAINT);
  assert_int_equal(card_step(&course, COURSE_RESULT, knowledge_find(&k, ENTRY_CHECK, "fuel-age")), 2);
  assert_int_equal(card_step(&course, COURSE_RESULT, knowledge_find(&k, ENTRY_CHECK, "plug-look")), 0);
  assert_true(course.cause_count >= 1 && course.cause_count <= COURSE_MOST);
  for (size_t i = 0; i < course.cause_count; i++) {
    double odds = course.odds[(course.step_count - 1) * course.cause_count + i];
    int fault = course.causes[i];
    size_t p = fault < 0 ? b.a.net.count - 1 : (size_t)b.a.net.place_of[fault];

    assert_true(fabs(card_chance_of(odds) - b.a.belief[p]) < 1e-9);
  }
  assert_int_equal(course.causes[0], b.a.ranking[0].fault);
  end(&b);
  begin(&b, "{\"pullcord\": \"case-1\", \"machine\": {\"class\": \"tiller\"}}");
  assert_false(card_course(&b.card, &b.doc, &course));
  end(&b);
}

static void chances_in_words(void **state)
{
  char out[16];

  (void)state;
  assert_true(fabs(card_chance_of(0) - 0.5) < 1e-12);
  assert_true(fabs(card_chance_of(10) - 10.0 / 11) < 1e-12);
  assert_string_equal(card_percent(out, 0.994), "99 %");
  assert_string_equal(card_percent(out, 0.9951), "over 99 %");
  assert_string_equal(card_percent(out, 0.001), "under 1 %");
}

static void drawings_are_escaped_and_wrapped(void **state)
{
  struct arena arena = {0};
  struct drawing *d = drawing_begin(&arena, "x", 100);
  struct buf out = {0};

  (void)state;
  d->title = "<a & \"b\">";
  drawing_text(d, 1, 2, 10, ALIGN_LEFT, false, INK_BLACK, "<script>");
  drawing_svg(d, &out);
  assert_non_null(strstr(out.text, "<title id=\"x-title\">&lt;a &amp; &quot;b&quot;&gt;</title>"));
  assert_non_null(strstr(out.text, ">&lt;script&gt;</text>"));
  /* Helvetica: a = 556, space = 278 thousandths (the standard metrics, from memory) */
  assert_true(fabs(drawing_text_width("a a", 10, false) - 13.9) < 1e-9);
  assert_int_equal(drawing_words(NULL, 0, 0, 14, 10, ALIGN_LEFT, false, INK_BLACK, "a a a a"), 2);
  assert_int_equal(drawing_words(NULL, 0, 0, 14, 10, ALIGN_LEFT, false, INK_BLACK, "aaaaa"), 3);
  assert_int_equal(drawing_words(NULL, 0, 0, 1, 10, ALIGN_LEFT, false, INK_BLACK, "\xC3\xBC\xC3\xBC"), 2);
  assert_int_equal(drawing_words(NULL, 0, 0, 14, 10, ALIGN_LEFT, false, INK_BLACK, ""), 0);
  buf_free(&out);
  drawing_free(d);
  arena_free(&arena);
}

static void long_words_are_broken(void **state)
{
  struct buf out = {0};

  (void)state;
  doc_break_words(&out, "ab \xC3\xBC\xC3\xBC\xC3\xBC\xC3\xBC\xC3\xBC abc", 3);
  assert_string_equal(out.text, "ab \xC3\xBC\xC3\xBC\xC3\xBC \xC3\xBC\xC3\xBC abc");
  buf_free(&out);
}

int main(void)
{
  const struct CMUnitTest tests[] = {cmocka_unit_test(bad_letters_become_marks),
                                     cmocka_unit_test(a_name_is_cut_between_letters),
                                     cmocka_unit_test(a_repair_told_again_is_replaced),
                                     cmocka_unit_test(words_of_the_command_line),
                                     cmocka_unit_test(outcomes),
                                     cmocka_unit_test(the_machine_decides_what_is_said),
                                     cmocka_unit_test(the_course_ends_in_the_belief),
                                     cmocka_unit_test(chances_in_words),
                                     cmocka_unit_test(drawings_are_escaped_and_wrapped),
                                     cmocka_unit_test(long_words_are_broken)};

  return cmocka_run_group_tests(tests, begin_all, end_all);
}
