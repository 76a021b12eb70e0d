/* cases.c - runs case files: what must come first, what must not, which cautions must show,
 * what is to be done; at the end how many of each expectation were met, of the files that could be
 * read. Usage: cases FILE-OR-FOLDER... (folders with all that is below them) */
#include <stdio.h>
#include <stdlib.h>

#include "expect.h"
#include "knowledge/load.h"
#include "report/parts.h"

static size_t passed, failed;
static struct expect_tally tally[EXPECT_MEMBERS];

static void run_file(const struct knowledge *k, const char *path)
{
  struct case_file f;
  struct assessor *assessor = NULL;
  struct assessment a;
  struct buf b = {0};
  struct err e = {0};
  char message[1200];

  if (case_file_read(k, path, &f, &e) == 0) {
    if (assessor_open(k, &assessor, &e) == 0 && assess_case(assessor, &f.c, &a, &e) == 0) {
      if (expects_next(&f)) assess_advise(&a, &f.c);
      expect_tallied(k, &f, &a, &b, tally);
      if (b.len)
        buf_addf(&b, " [first: %s %.2f, sound %.2f]", part_fault_id(k, a.ranking[0].fault),
                 a.ranking[0].blame, a.sound);
      assessment_free(&a);
    }
    assessor_close(assessor);
    case_file_free(&f);
  }
  if (e.status) {
    err_format(&e, message, sizeof message);
    buf_add(&b, message);
  }
  if (b.len) printf("FAILED %s: %s\n", path, b.text);
  if (b.len) failed++;
  else passed++;
  buf_free(&b);
}

int main(int argc, char **argv)
{
  struct knowledge k;
  struct err e;
  char message[1200];

  if (load_knowledge(&k, &e)) {
    err_format(&e, message, sizeof message);
    fprintf(stderr, "%s\n", message);
    return 1;
  }
  for (int i = 1; i < argc; i++) {
    size_t count;
    char **files = find_json(argv[i], &count);

    for (size_t f = 0; f < count; f++) {
      run_file(&k, files[f]);
      free(files[f]);
    }
    free(files);
  }
  for (size_t i = 0; i < EXPECT_MEMBERS; i++)
    if (tally[i].wanted)
      printf("%s: expected %zu, met %zu\n", expect_members[i], tally[i].wanted, tally[i].met);
  printf("%zu passed, %zu failed\n", passed, failed);
  knowledge_free(&k);
  return failed > 0 || passed == 0;
}
