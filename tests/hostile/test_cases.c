/* test_cases.c - cases from strangers through the program itself: `pullcord assess` says in
 * plain words what is wrong, ends with the right status, and soon. Usage: test_cases PROGRAM */
#include <fcntl.h>
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/wait.h>
#include <unistd.h>

#include <cmocka.h>

#include "base/buf.h"
#include "base/file.h"
#include "sample.h"

#define COUNT(a) (sizeof(a) / sizeof(a)[0])

enum { SECONDS = 30 }; /* wide, for a slow machine under an instrument; the usual is 10 ms */

static const char *program;
static struct sample s;
static char case_path[100], out_path[100], err_path[100];

/* What one run gave. */
static struct {
  int status;
  char *out, *err;
} ran;

static void forget(void)
{
  free(ran.out);
  free(ran.err);
  ran.out = ran.err = NULL;
}

static int begin(void **state)
{
  (void)state;
  sample_begin(&s);
  snprintf(case_path, sizeof case_path, "%s/case.json", s.folder);
  snprintf(out_path, sizeof out_path, "%s/out", s.folder);
  snprintf(err_path, sizeof err_path, "%s/err", s.folder);
  setenv("PULLCORD_KNOWLEDGE", s.shipped, 1);
  setenv("XDG_DATA_HOME", s.own, 1);
  return 0;
}

static int end(void **state)
{
  (void)state;
  forget();
  sample_end(&s);
  return 0;
}

static void onto(int fd, const char *path, int flags)
{
  int file = open(path, flags, 0600);

  if (file < 0 || dup2(file, fd) < 0) _exit(126);
}

/* Runs the program with these words (NULL at the end) and standard input and output. */
static void run(const char *const *words, const char *input, const char *output)
{
  double start = seconds_now();
  struct err e;
  size_t len;
  int status;
  pid_t child = fork();

  assert_true(child >= 0);
  if (child == 0) {
    char *argv[8] = {NULL};

    for (int i = 0; words[i]; i++) argv[i + 1] = strdup(words[i]);
    argv[0] = strdup(program);
    onto(0, input ? input : "/dev/null", O_RDONLY);
    onto(1, output ? output : out_path, O_WRONLY | O_CREAT | O_TRUNC);
    onto(2, err_path, O_WRONLY | O_CREAT | O_TRUNC);
    alarm(SECONDS);
    execv(program, argv);
    _exit(127);
  }
  assert_int_equal(waitpid(child, &status, 0), child);
  if (!WIFEXITED(status))
    fail_msg("ended by signal %d after %.1f s", WTERMSIG(status), seconds_now() - start);
  ran.status = WEXITSTATUS(status);
  forget();
  if (!output) assert_int_equal(file_read(out_path, 1 << 24, &ran.out, &len, &e), 0);
  assert_int_equal(file_read(err_path, 1 << 24, &ran.err, &len, &e), 0);
}

static void assess_file(const char *path)
{
  const char *const words[] = {"assess", path, NULL};

  run(words, NULL, NULL);
}

static void write_case(const char *text, size_t len)
{
  struct err e;

  assert_int_equal(file_replace(case_path, text, len, &e), 0);
}

/* It must fail with this status, in one line that says this, with nothing on the output. */
static void must_say(int status, const char *says, const char *about)
{
  size_t n = strlen(ran.err);

  if (ran.status != status)
    fail_msg("status %d instead of %d for %.200s: %s", ran.status, status, about, ran.err);
  if (!strstr(ran.err, says)) fail_msg("\"%s\" does not say \"%s\" for %.200s", ran.err, says, about);
  assert_memory_equal(ran.err, "pullcord: ", 10);
  assert_int_equal(strlen(ran.out), 0);
  assert_true(n > 20 && n < 1500 && ran.err[n - 1] == '\n');
  for (const char *c = ran.err; *c; c++)
    if (((unsigned char)*c < 0x20 && *c != '\n') || *c == 0x7f)
      fail_msg("a control character in: %s", ran.err);
}

#define HEAD "{\"pullcord\": \"case-1\", \"machine\": {\"class\": \"saw\"}"
#define RESULT(text) HEAD ", \"results\": [" text "]}"
#define SPEC(text) HEAD ", \"spec\": [" text "]}"
#define GAUGE "{\"check\": \"squeeze\", \"reading\": "
#define PLUG "{\"check\": \"plug-look\", \"result\": "

/* ---- what is taken -------------------------------------------------------------------- */

static const char *const good[] = {
    HEAD "}",
    HEAD ", \"complaint\": \"no-start\"}",
    HEAD ", \"complaint\": \"wont start\", \"note\": \"tab\\tline\\n\\u00e9\"}",
    "\t\r\n " HEAD "} \n",
    RESULT(PLUG "\"wet\"}"),
    RESULT(PLUG "\"wet with fuel\", \"sure\": \"fairly\"}, " GAUGE "\"62 psi\", \"sure\": 0.5}"),
    RESULT(PLUG "\"dont-know\"}"),
    RESULT(GAUGE "\"4,3 bar\"}"),
    SPEC("{\"check\": \"squeeze\", \"low\": \"80 psi\", \"high\": \"7 bar\", \"from\": \"card\"}"),
    "{\"pullcord\": \"case-1\", \"machine\": {}}",
    "{\"pullcord\": \"case-1\", \"machine\": {\"class\": \"saw\", \"has\": [\"four-stroke\"], \"lacks\": "
    "[\"plug\"]}}",
};

static void test_good_cases(void **state)
{
  (void)state;
  for (size_t i = 0; i < COUNT(good); i++)
    for (int json = 0; json < 2; json++) {
      const char *const words[] = {"assess", case_path, json ? "--json" : NULL, NULL};

      write_case(good[i], strlen(good[i]));
      run(words, NULL, NULL);
      if (ran.status) fail_msg("status %d for %s: %s", ran.status, good[i], ran.err);
      assert_int_equal(strlen(ran.err), 0);
      assert_true(strlen(ran.out) > 100);
    }
}

/* ---- what is refused -------------------------------------------------------------------- */

static const struct {
  const char *text, *says;
} bad[] = {
    /* --- not JSON --- */
    {"", "is empty"},
    {" ", "is not JSON"},
    {"{", "is not JSON"},
    {"not json", "is not JSON"},
    {HEAD, "is not JSON"},
    {HEAD "}}", "is not JSON"},
    {HEAD "} x", "is not JSON"},
    {HEAD "}" HEAD "}", "is not JSON"},
    {HEAD ",}", "is not JSON"},
    {HEAD ", \"note\": \"open}", "is not JSON"},
    {HEAD ", \"note\": 'x'}", "is not JSON"},
    {HEAD ", // why\n\"note\": \"x\"}", "is not JSON"},
    {HEAD ", \"note\": \"\\q\"}", "is not JSON"},
    {HEAD ", \"note\": \"\\ud800\"}", "is not JSON"},
    {HEAD ", \"note\": \"\\u12\"}", "is not JSON"},
    {HEAD ",\n\n\"note\": nope}", ":3: is not JSON"},
    {HEAD ", \"note\": \"a\nb\"}", "control character"},
    {HEAD ", \"note\": \"a\x1b[2Jb\"}", "control character"},
    {HEAD ", \"note\": \"\\u0000\"}", "zero character"},
    {"{\"a\\u0000b\": 1}", "zero character"},
    {HEAD ", \"note\": \"\xff\"}", "not UTF-8"},
    {HEAD ",\n\"note\": \"\xc0\x80\"}", ":2: holds bytes that are not UTF-8"},
    {HEAD ", \"note\": \"\xed\xa0\x80\"}", "not UTF-8"},
    /* --- the wrong shape --- */
    {"[]", "must be an object, not a list"},
    {"null", "must be an object, not null"},
    {"3", "must be an object, not a number"},
    {"\"case-1\"", "must be an object, not a text"},
    {"{}", "version is missing"},
    {"{\"pullcord\": \"case-9\"}", "give \"pullcord\": \"case-1\""},
    {"{\"pullcord\": 1}", "version is missing or unknown"},
    {"{\"pullcord\": \"case-1\"}", "machine is missing"},
    {"{\"pullcord\": \"case-1\", \"pullcord\": \"case-1\"}", "\"pullcord\" is given twice"},
    {HEAD ", \"results\": [], \"results\": []}", "\"results\" is given twice"},
    {RESULT("{\"check\": \"squeeze\", \"check\": \"plug-look\", \"result\": \"wet\"}"),
     "\"check\" is given twice"},
    {HEAD ", \"resuls\": []}", "did you mean \"results\"?"},
    {HEAD ", \"a\\u001b]0;x\\u0007\": 1}", "has no member"},
    {HEAD ", \"results\": {}}", "\"results\" must be a list, not an object"},
    {HEAD ", \"results\": [[]]}", "must be an object, not a list"},
    {HEAD ", \"results\": [null]}", "must be an object, not null"},
    {HEAD ", \"complaints\": \"no-start\"}", "\"complaints\" must be a list, not a text"},
    {HEAD ", \"complaint\": 3}", "\"complaint\" must be a text, not a number"},
    {HEAD ", \"complaints\": [true]}", "must be a text, not true or false"},
    {"{\"pullcord\": \"case-1\", \"machine\": \"saw\"}", "\"machine\" must be an object, not a text"},
    {"{\"pullcord\": \"case-1\", \"machine\": {\"class\": 5}}", "\"class\" must be a text, not a number"},
    {"{\"pullcord\": \"case-1\", \"machine\": {\"has\": \"plug\"}}", "\"has\" must be a list, not a text"},
    {"{\"pullcord\": \"case-1\", \"machine\": {\"has\": [1]}}", "\"has\" must be a text, not a number"},
    /* --- ids that are not there --- */
    {"{\"pullcord\": \"case-1\", \"machine\": {\"class\": \"swa\"}}", "did you mean \"saw\"?"},
    {"{\"pullcord\": \"case-1\", \"machine\": {\"clas\": \"saw\"}}", "did you mean \"class\"?"},
    {"{\"pullcord\": \"case-1\", \"machine\": {\"has\": [\"two-strok\"]}}", "did you mean \"two-stroke\"?"},
    {"{\"pullcord\": \"case-1\", \"machine\": {\"lacks\": [\"plg\"]}}", "did you mean \"plug\"?"},
    {RESULT("{\"check\": \"squeze\", \"reading\": \"62 psi\"}"), "did you mean \"squeeze\"?"},
    {RESULT("{\"check\": \"plug-loko\", \"result\": \"wet\"}"), "did you mean \"plug-look\"?"},
    {RESULT("{\"check\": \"nothing-like-it\", \"result\": \"wet\"}"),
     "there is no check \"nothing-like-it\"."},
    {RESULT(PLUG "\"sootd\"}"), "did you mean \"sooted\"?"},
    {RESULT(PLUG "\"burning\"}"), "It is one of: dry, wet, sooted; or dont-know"},
    {SPEC("{\"check\": \"squeez\", \"low\": \"1 psi\", \"high\": \"2 psi\"}"), "did you mean \"squeeze\"?"},
    {HEAD ", \"complaint\": \"purple monkey\"}", "matches no known complaint"},
    {HEAD ", \"complaint\": \"\"}", "matches no known complaint"},
    {"{\"pullcord\": \"case-1\", \"machine\": {\"has\": [\"two-stroke\", \"four-stroke\"]}}",
     "cannot have both"},
    {"{\"pullcord\": \"case-1\", \"machine\": {\"has\": [\"plug\"], \"lacks\": [\"plug\"]}}",
     "as had and as lacking"},
    /* --- results --- */
    {RESULT(PLUG "\"wet\"}, " PLUG "\"wet\"}"), "check plug-look is given twice"},
    {RESULT(GAUGE "\"62 psi\"}, " GAUGE "\"90 psi\"}"), "check squeeze is given twice"},
    {RESULT("{\"result\": \"wet\"}"), "must name its check"},
    {RESULT("{\"check\": 7, \"result\": \"wet\"}"), "must name its check"},
    {RESULT("{\"check\": \"plug-look\"}"), "either a \"result\" or a \"reading\""},
    {RESULT("{\"check\": \"squeeze\", \"result\": \"weak\", \"reading\": \"62 psi\"}"),
     "either a \"result\" or a \"reading\""},
    {RESULT(GAUGE "62}"), "wants to be a text with its unit"},
    {RESULT("{\"check\": \"plug-look\", \"result\": 2}"), "\"result\" must be a text, not a number"},
    {RESULT("{\"check\": \"plug-look\", \"reading\": \"62 psi\"}"), "is not measured"},
    {RESULT(PLUG "\"wet\", \"shure\": 1}"), "did you mean \"sure\"?"},
    {RESULT(PLUG "\"wet\", \"sure\": 1.01}"), "number from 0 to 1"},
    {RESULT(PLUG "\"wet\", \"sure\": -0.01}"), "number from 0 to 1"},
    {RESULT(PLUG "\"wet\", \"sure\": 1e999}"), "number from 0 to 1"},
    {RESULT(PLUG "\"wet\", \"sure\": \"perhaps\"}"), "sure, fairly, unsure"},
    {RESULT(PLUG "\"wet\", \"sure\": null}"), "number from 0 to 1"},
    /* --- readings --- */
    {RESULT(GAUGE "\"\"}"), "is not a result of squeeze"},
    {RESULT(GAUGE "\"psi\"}"), "is not a result of squeeze"},
    {RESULT(GAUGE "\"62 mm\"}"), "62 mm is a length; a pressure is expected"},
    {RESULT(GAUGE "\"20 C\"}"), "a pressure is expected"},
    {RESULT(GAUGE "\"62 furlongs\"}"), "furlongs"},
    {RESULT(GAUGE "\"999999999 psi\"}"), "cannot be right"},
    {RESULT(GAUGE "\"-90 psi\"}"), "cannot be right"},
    {RESULT(GAUGE "\"1e400 psi\"}"), "without a power of ten"},
    {RESULT(GAUGE "\"nan psi\"}"), "is not a result of squeeze"},
    {RESULT(GAUGE "\"inf\"}"), "is not a result of squeeze"},
    {RESULT(GAUGE "\"6 2 psi\"}"), "6 2 psi"},
    {RESULT(GAUGE "\"62 psi\\u001b[2J\"}"), "62 psi"},
    /* --- the spec card --- */
    {SPEC("{\"check\": \"squeeze\", \"low\": \"90 psi\", \"high\": \"80 psi\"}"), "\"low\" above \"high\""},
    {SPEC("{\"check\": \"squeeze\", \"low\": \"90 psi\"}"), "wants \"low\" and \"high\""},
    {SPEC("{\"check\": \"squeeze\", \"low\": 90, \"high\": 100}"), "wants \"low\" and \"high\" as texts"},
    {SPEC("{\"check\": \"squeeze\", \"low\": \"1 mm\", \"high\": \"2 mm\"}"), "a pressure is expected"},
    {SPEC("{\"check\": \"plug-look\", \"low\": \"1 psi\", \"high\": \"2 psi\"}"), "is not measured"},
    {SPEC("{\"check\": \"squeeze\", \"low\": \"1 psi\", \"high\": \"2 psi\"}, {\"check\": \"squeeze\", "
          "\"low\": \"1 psi\", \"high\": "
          "\"3 psi\"}"),
     "given twice"},
    {SPEC("{\"low\": \"1 psi\", \"high\": \"2 psi\"}"), "must name its check"},
};

static void test_bad_cases(void **state)
{
  (void)state;
  for (size_t i = 0; i < COUNT(bad); i++) {
    write_case(bad[i].text, strlen(bad[i].text));
    assess_file(case_path);
    must_say(EX_DATAERR, bad[i].says, bad[i].text);
    assert_non_null(strstr(ran.err, "case.json"));
  }
}

static void test_zero_bytes(void **state)
{
  static const char text[] = HEAD ",\n\"note\": \"a\0b\"}";

  (void)state;
  write_case(text, sizeof text - 1);
  assess_file(case_path);
  must_say(EX_DATAERR, ":2: holds a zero byte", text);
  write_case("\0\0\0\0", 4);
  assess_file(case_path);
  must_say(EX_DATAERR, ":1: holds a zero byte", "four zeros");
}

/* ---- large and deep ----------------------------------------------------------------------- */

static void refuse_built(const struct buf *b, const char *says)
{
  double start = seconds_now();

  write_case(b->text, b->len);
  assess_file(case_path);
  must_say(EX_DATAERR, says, b->text);
  assert_true(seconds_now() - start < SECONDS);
}

static void test_deep(void **state)
{
  static const int depths[] = {65, 1000, 100000, 3000000};

  (void)state;
  for (size_t i = 0; i < COUNT(depths); i++)
    for (int object = 0; object < 2; object++) {
      struct buf b = {0};

      buf_add(&b, HEAD ", \"note\": ");
      for (int d = 0; d < depths[i] && b.len < 7000000; d++) buf_add(&b, object ? "{\"a\":" : "[");
      buf_add(&b, "1");
      for (int d = 0; d < depths[i] && b.len < 7000000; d++) buf_add(&b, object ? "}" : "]");
      buf_add(&b, "}");
      refuse_built(&b, "64 deep");
      buf_free(&b);
    }
}

/* head, piece again and again, tail: nearly as large as may be. */
static void build(struct buf *b, const char *head, const char *piece, const char *tail)
{
  *b = (struct buf){0};
  buf_add(b, head);
  for (int i = 0; b->len < 7900000; i++) buf_addf(b, piece, i);
  buf_add(b, tail);
}

static void test_large(void **state)
{
  struct buf b;

  (void)state;
  build(&b, HEAD ", \"complaints\": [\"wont start\"", ", \"wont start %d\"", "]}");
  refuse_built(&b, "more than 20 complaints");
  buf_free(&b);
  build(&b, HEAD, ", \"m%d\": 1", "}");
  refuse_built(&b, "more than 1000 members");
  buf_free(&b);
  build(&b, HEAD ", \"results\": [", "{\"check\": \"plug-look\", \"result\": \"wet\"}, ", "1]}");
  refuse_built(&b, "given twice");
  buf_free(&b);
  build(&b, HEAD ", \"complaint\": \"", "zqx%d ", "\"}");
  refuse_built(&b, "matches no known complaint");
  buf_free(&b);
  build(&b, "{\"pullcord\": \"case-1\", \"machine\": {\"class\": \"", "%d", "\"}}");
  refuse_built(&b, "there is no machine class");
  buf_free(&b);
  build(&b, RESULT(PLUG "\"wet\", \"sure\": 0."), "%d", "}]}");
  assert_true(b.len > 1000000);
  write_case(b.text, b.len);
  assess_file(case_path);
  assert_int_equal(ran.status, EX_DATAERR);
  buf_free(&b);
}

/* A hundred megabytes, of nothing and of something like a case: given up at 8 MiB. */
static void test_hundred_megabytes(void **state)
{
  double start = seconds_now();
  FILE *f = fopen(case_path, "w");

  (void)state;
  assert_non_null(f);
  fputs(HEAD ", \"note\": \"", f);
  assert_int_equal(fflush(f), 0);
  assert_int_equal(ftruncate(fileno(f), 100 * 1000 * 1000), 0);
  fclose(f);
  assess_file(case_path);
  must_say(EX_DATAERR, "larger than 8388608 bytes", "100 MB");
  assess_file("/dev/zero");
  must_say(EX_DATAERR, "larger than 8388608 bytes", "/dev/zero");
  assert_true(seconds_now() - start < 10);
}

/* ---- files and statuses --------------------------------------------------------------------- */

static void test_files(void **state)
{
  static const char *const from_input[] = {"assess", "-", NULL};
  static const char *const full[] = {"assess", case_path, NULL};

  (void)state;
  assess_file("/nowhere/at/all.json");
  must_say(EX_NOINPUT, "cannot be opened", "a missing file");
  assess_file(s.folder);
  must_say(EX_NOINPUT, "cannot be read", "a folder");
  write_case(good[0], strlen(good[0]));
  run(from_input, case_path, NULL);
  assert_int_equal(ran.status, 0);
  write_case("[", 1);
  run(from_input, case_path, NULL);
  must_say(EX_DATAERR, "standard input:1: is not JSON", "standard input");
  write_case(good[1], strlen(good[1]));
  run(full, NULL, "/dev/full");
  assert_int_equal(ran.status, EX_IOERR);
  assert_non_null(strstr(ran.err, "cannot be written in full"));
}

static void test_usage(void **state)
{
  static const char *const rows[][4] = {{"assess", NULL},
                                        {"assess", "a", "b", NULL},
                                        {"asess", "a", NULL},
                                        {"assess", "--jsn", "a", NULL},
                                        {"--frob", NULL}};
  static const char *const says[] = {"assess wants CASE.json", "one operand too many",
                                     "did you mean \"assess\"?", "did you mean \"--json\"?",
                                     "no option \"--frob\""};

  (void)state;
  for (size_t i = 0; i < COUNT(rows); i++) {
    run(rows[i], NULL, NULL);
    must_say(EX_USAGE, says[i], rows[i][0]);
  }
}

static void own(const char *name, const char *text)
{
  char *folder = file_join(s.own, "pullcord");

  sample_write(folder, name, text, strlen(text));
  free(folder);
}

/* Knowledge of one's own that is wrong, or that runs for ever. */
static void test_own_knowledge(void **state)
{
  static const char *const vet[] = {"vet", NULL};
  static const char *const vet_json[] = {"vet", "--json", NULL};

  (void)state;
  write_case(RESULT(PLUG "\"wet\"}"), strlen(RESULT(PLUG "\"wet\"}")));
  assess_file(case_path);
  assert_int_equal(ran.status, 0);

  own("rules/mine.clp",
      "(defrule mine \"[memory] x\"\n (logical (has (feature plug)))\n => (system \"touch canary\"))");
  assess_file(case_path);
  must_say(EX_CONFIG, "rules/mine.clp:3: a rule may not do \"system\"", "a rule that runs a program");
  run(vet, NULL, NULL);
  assert_int_equal(ran.status, EX_DATAERR);
  assert_non_null(strstr(ran.out, "rules/mine.clp:3: a rule may not do \"system\""));
  run(vet_json, NULL, NULL);
  assert_int_equal(ran.status, EX_DATAERR);
  assert_non_null(strstr(ran.out, "\"function\""));

  own("rules/mine.clp",
      "(defrule mine \"[memory] x\"\n (logical (has (feature plug)))\n => (assert (unsafe (check 5))))");
  run(vet_json, NULL, NULL); /* only the engine itself finds this */
  assert_int_equal(ran.status, EX_DATAERR);
  assert_non_null(strstr(ran.out, "\"engine\""));
  assess_file(case_path);
  assert_int_equal(ran.status, EX_CONFIG);

  own("rules/mine.clp", "(defrule seed \"[memory] x\" (logical (finding (check plug-look))) => (assert "
                        "(speaks (fault rings-worn) (decibans 9))))\n"
                        "(defrule on-and-on \"[memory] x\" (logical (speaks (fault rings-worn) (decibans "
                        "?d))) => (assert (speaks (fault "
                        "rings-worn) (decibans (* ?d 0.9999)))))\n");
  assess_file(case_path);
  must_say(EX_TEMPFAIL, "rules/mine.clp:2: the rule engine", "a rule without end");
  assert_non_null(strstr(ran.err, "Nothing recorded is lost"));
  assert_non_null(strstr(ran.err, "\"on-and-on\""));

  setenv("PULLCORD_KNOWLEDGE", "/nowhere/at/all", 1);
  assess_file(case_path);
  must_say(EX_CONFIG, "PULLCORD_KNOWLEDGE", "no knowledge");
}

int main(int argc, char **argv)
{
  const struct CMUnitTest tests[] = {
      cmocka_unit_test_setup_teardown(test_good_cases, begin, end),
      cmocka_unit_test_setup_teardown(test_bad_cases, begin, end),
      cmocka_unit_test_setup_teardown(test_zero_bytes, begin, end),
      cmocka_unit_test_setup_teardown(test_deep, begin, end),
      cmocka_unit_test_setup_teardown(test_large, begin, end),
      cmocka_unit_test_setup_teardown(test_hundred_megabytes, begin, end),
      cmocka_unit_test_setup_teardown(test_files, begin, end),
      cmocka_unit_test_setup_teardown(test_usage, begin, end),
      cmocka_unit_test_setup_teardown(test_own_knowledge, begin, end),
  };

  if (argc != 2) {
    fprintf(stderr, "usage: test_cases PROGRAM\n");
    return 2;
  }
  program = argv[1];
  return cmocka_run_group_tests(tests, NULL, NULL);
}
