/* test_own_folder.c - the person's own folder: a file of the same name replaces, others add;
 * and what else may lie in a folder of knowledge. */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cmocka.h>

#include "base/file.h"
#include "sample.h"

static struct sample s;

static int begin(void **state)
{
  (void)state;
  sample_begin(&s);
  return 0;
}

static int end(void **state)
{
  (void)state;
  sample_end(&s);
  return 0;
}

static void write_text(const char *root, const char *name, const char *text)
{
  sample_write(root, name, text, strlen(text));
}

static void write_setting(const char *root, const char *name, const char *id, const char *value)
{
  char text[200];

  snprintf(text, sizeof text, "(deffacts own (setting (id %s) (value %s) (why \"w\") (basis estimate)))\n",
           id, value);
  write_text(root, name, text);
}

static void load_clean(struct loaded *l)
{
  sample_load(&s, l);
  if (l->status || l->p.count) loaded_print(l);
  assert_int_equal(l->status, 0);
  assert_int_equal(l->p.count, 0);
}

static void test_other_name_adds(void **state)
{
  struct loaded l;

  (void)state;
  write_setting(s.own, "facts/mine.clp", "mine", "7");
  write_text(s.own, "rules/mine.clp",
             "(defrule own-rule \"[memory] mine\" (logical (has (feature plug))) => (assert (advise (about "
             "plug))))\n");
  load_clean(&l);
  assert_true(knowledge_setting(&l.k, "mine", 0) > 6.9);
  assert_true(knowledge_setting(&l.k, "show-belief", 0) > 0); /* the shipped one is there still */
  assert_true(knowledge_find(&l.k, ENTRY_RULE, "own-rule") >= 0);
  assert_true(knowledge_find(&l.k, ENTRY_RULE, "weak-squeeze-speaks") >= 0);
  loaded_free(&l);
}

static void test_same_name_replaces(void **state)
{
  struct knowledge_files files;
  struct loaded l;
  struct err e;
  size_t replaced = 0;

  (void)state;
  write_setting(s.shipped, "facts/deep/extra.clp", "extra", "1");
  write_setting(s.own, "facts/deep/extra.clp", "extra", "2");
  write_text(s.own, "rules/small.clp", "; nothing but this line\n");
  load_clean(&l);
  assert_true(knowledge_setting(&l.k, "extra", 0) > 1.9); /* not a twin: it took its place */
  assert_int_equal(l.k.rule_count, 0);
  loaded_free(&l);
  assert_int_equal(find_files(s.shipped, s.own, &files, &e), 0);
  for (size_t i = 0; i < files.count; i++) {
    assert_true(files.items[i].replaces == files.items[i].own);
    assert_true(files.items[i].own == (strncmp(files.items[i].path, s.own, strlen(s.own)) == 0));
    replaced += files.items[i].replaces;
    if (i > 0) assert_true(strcmp(files.items[i - 1].name, files.items[i].name) < 0);
  }
  assert_int_equal(replaced, 2);
  find_free(&files);
}

/* What is wrong in an own file is reported with its folder, so that it can be found. */
static void test_own_mistakes_carry_the_path(void **state)
{
  char *path = file_join(s.own, "facts/mine.clp");
  struct loaded l;

  (void)state;
  write_setting(s.own, "facts/mine.clp", "show-belief", "7");
  sample_load(&s, &l);
  assert_true(loaded_says(&l, "duplicate-id", path, 1, "already at facts/small.clp"));
  assert_int_equal(l.p.count, 1);
  loaded_free(&l);
  free(path);
}

/* An own file may take the place of the templates; what no longer fits them is reported. */
static void test_own_templates(void **state)
{
  struct loaded l;

  (void)state;
  write_text(s.own, "rules/templates/knowledge.clp", "(deftemplate fault (slot id))\n");
  sample_load(&s, &l);
  assert_int_equal(l.status, 0);
  assert_true(l.p.serious > 10);
  assert_true(loaded_says(&l, "template", "facts/small.clp", 4, "\"source\" is not a kind of fact"));
  loaded_free(&l);
}

static void test_order_of_writing_does_not_matter(void **state)
{
  static const char *const names[] = {"facts/a.clp", "facts/b/c.clp", "facts/z.clp", "facts/m.clp"};
  static const char *const ids[] = {"a", "c", "z", "m"};
  unsigned long long first = 0;

  (void)state;
  for (int round = 0; round < 2; round++) {
    struct loaded l;

    for (int i = 0; i < 4; i++) {
      int at = round ? 3 - i : i;

      write_setting(s.own, names[at], ids[at], "1");
    }
    load_clean(&l);
    if (round == 0) first = l.k.fingerprint;
    else assert_true(l.k.fingerprint == first);
    assert_string_equal(l.k.settings[1].id, "a"); /* the first is the shipped one */
    loaded_free(&l);
    if (round == 0)
      for (int i = 0; i < 4; i++) {
        char *path = file_join(s.own, names[i]);

        assert_int_equal(unlink(path), 0);
        free(path);
      }
  }
  write_setting(s.own, names[0], ids[0], "2");
  {
    struct loaded l;

    load_clean(&l);
    assert_false(l.k.fingerprint == first); /* another value is another knowledge */
    loaded_free(&l);
  }
}

/* Pipes, folders named like files, hidden and foreign files, folders that hold themselves. */
static void test_what_else_lies_there(void **state)
{
  char path[200];
  struct loaded l;
  double start = seconds_now();

  (void)state;
  write_setting(s.own, "facts/folder.clp/inside.clp", "inside", "1");
  write_text(s.own, "facts/.hidden.clp", "(garbage");
  write_text(s.own, "facts/notes.txt", "(garbage");
  write_text(s.own, "facts/backup.clp~", "(garbage");
  write_text(s.own, "loose.clp", "(garbage");
  snprintf(path, sizeof path, "%s/facts/pipe.clp", s.own);
  assert_int_equal(mkfifo(path, 0600), 0); /* reading it would wait for ever */
  snprintf(path, sizeof path, "%s/facts/loop", s.own);
  assert_int_equal(symlink(".", path), 0);
  snprintf(path, sizeof path, "%s/facts/dangling.clp", s.own);
  assert_int_equal(symlink("/nowhere/at/all.clp", path), 0);
  sample_load(&s, &l);
  assert_int_equal(l.status, 0);
  assert_true(knowledge_find(&l.k, ENTRY_SETTING, "inside") >= 0);
  assert_true(seconds_now() - start < 5);
  for (size_t i = 0; i < l.p.count; i++)
    assert_string_equal(l.p.items[i].kind, "duplicate-id"); /* through the loop */
  loaded_free(&l);
}

static void test_folder_that_is_none(void **state)
{
  struct loaded l;

  (void)state;
  write_text(s.own, "facts", "a file where a folder should be");
  sample_load(&s, &l);
  assert_int_equal(l.status, EX_CONFIG); /* not passed over in silence */
  assert_non_null(strstr(l.e.text, "cannot be read as a folder"));
  loaded_free(&l);
}

static void test_too_many_files(void **state)
{
  char path[200];
  struct loaded l;

  (void)state;
  write_text(s.own, "facts/x0.clp", "");
  for (int i = 1; i < 2000; i++) {
    FILE *f;

    snprintf(path, sizeof path, "%s/facts/x%d.clp", s.own, i);
    f = fopen(path, "w");
    assert_non_null(f);
    fclose(f);
  }
  sample_load(&s, &l);
  assert_int_equal(l.status, EX_CONFIG);
  assert_non_null(strstr(l.e.text, "2000 files"));
  loaded_free(&l);
}

/* ---- by the environment ------------------------------------------------------------------ */

static void test_environment(void **state)
{
  struct knowledge k;
  struct err e;
  char *own, own_folder[100];

  (void)state;
  setenv("HOME", "/home/of/someone", 1);
  unsetenv("XDG_DATA_HOME");
  own = find_own();
  assert_string_equal(own, "/home/of/someone/.local/share/pullcord");
  free(own);
  setenv("XDG_DATA_HOME", "relative/is/not/taken", 1);
  own = find_own();
  assert_string_equal(own, "/home/of/someone/.local/share/pullcord");
  free(own);
  snprintf(own_folder, sizeof own_folder, "%s/pullcord", s.own);
  setenv("XDG_DATA_HOME", s.own, 1);
  own = find_own();
  assert_string_equal(own, own_folder);
  free(own);

  setenv("PULLCORD_KNOWLEDGE", "/nowhere/at/all", 1);
  assert_int_equal(load_knowledge(&k, &e), EX_CONFIG);
  assert_non_null(strstr(e.text, "PULLCORD_KNOWLEDGE"));
  setenv("PULLCORD_KNOWLEDGE", s.own, 1); /* a folder, but no knowledge in it */
  assert_int_equal(load_knowledge(&k, &e), EX_CONFIG);
  assert_non_null(strstr(e.text, "holds no knowledge"));

  setenv("PULLCORD_KNOWLEDGE", s.shipped, 1);
  write_setting(own_folder, "facts/mine.clp", "mine", "3");
  assert_int_equal(load_knowledge(&k, &e), 0);
  assert_true(knowledge_setting(&k, "mine", 0) > 2.9);
  knowledge_free(&k);

  write_setting(own_folder, "facts/mine.clp", "show-belief", "3"); /* one mistake in it */
  assert_int_equal(load_knowledge(&k, &e), EX_CONFIG);
  assert_non_null(strstr(e.file, "pullcord/facts/mine.clp"));
  assert_int_equal(e.line, 1);
  assert_null(strstr(e.text, "more"));
  write_text(own_folder, "facts/second.clp", "(deffacts x\n(nonsense)\n(worse))");
  assert_int_equal(load_knowledge(&k, &e), EX_CONFIG);
  assert_non_null(strstr(e.text, "(and 2 more;"));
}

int main(void)
{
  const struct CMUnitTest tests[] = {
      cmocka_unit_test_setup_teardown(test_other_name_adds, begin, end),
      cmocka_unit_test_setup_teardown(test_same_name_replaces, begin, end),
      cmocka_unit_test_setup_teardown(test_own_mistakes_carry_the_path, begin, end),
      cmocka_unit_test_setup_teardown(test_own_templates, begin, end),
      cmocka_unit_test_setup_teardown(test_order_of_writing_does_not_matter, begin, end),
      cmocka_unit_test_setup_teardown(test_what_else_lies_there, begin, end),
      cmocka_unit_test_setup_teardown(test_folder_that_is_none, begin, end),
      cmocka_unit_test_setup_teardown(test_too_many_files, begin, end),
      cmocka_unit_test_setup_teardown(test_environment, begin, end),
  };

  return cmocka_run_group_tests(tests, NULL, NULL);
}
