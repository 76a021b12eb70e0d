/* oil.c - see oil.h. */
#include "arith/oil.h"

#include <ctype.h>
#include <math.h>
#include <stdio.h>
#include <string.h>
#include <strings.h>

#include "arith/range.h"

#define ML 1e-6

int oil_refill(double book, double behind, struct oil_plan *out, struct err *e)
{
  double whole = book < 200 * ML ? 5 * ML : 10 * ML;
  int status = arith_within("book", book, 20 * ML, 20e-3, "mL", e);

  if (status == 0) status = arith_within("behind", behind, 0, 0.3, "%", e);
  if (status) return status;
  out->behind = book * behind;
  out->needed = book - out->behind;
  out->start = floor((out->needed - book * fmax(behind, 0.05)) / whole + 1e-9) * whole;
  out->step = fmax(floor(book / 20 / whole + 0.5) * whole, 5 * ML);
  out->likely = (int)ceil((out->needed - out->start) / out->step - 1e-9);
  out->most = (int)floor((book - out->start) / out->step + 1e-9);
  return 0;
}

/* One row of the standard; temperatures in degC, 0 where there is no limit. */
struct grade_row {
  const char *name;
  double crank_at, crank_most, pump_at, warm_least, warm_under, shear_least;
  bool recalled;
};

#define PUMP_MOST 60000.0 /* mPa.s, the same for every W grade */

static const struct grade_row winter[] = {
    {"0w", -35, 6200, -40, 3.8, 0, 0, true},   {"5w", -30, 6600, -35, 3.8, 0, 0, true},
    {"10w", -25, 7000, -30, 4.1, 0, 0, false}, {"15w", -20, 7000, -25, 5.6, 0, 0, true},
    {"20w", -15, 9500, -20, 5.6, 0, 0, true},  {"25w", -10, 13000, -15, 9.3, 0, 0, true}};

/* 40 needs 3.5 with 0W, 5W and 10W, otherwise 3.7; the lower is kept here, see below. */
static const struct grade_row warm[] = {{"20", 0, 0, 0, 6.9, 9.3, 2.6, true},
                                        {"30", 0, 0, 0, 9.3, 12.5, 2.9, false},
                                        {"40", 0, 0, 0, 12.5, 16.3, 3.5, true},
                                        {"50", 0, 0, 0, 16.3, 21.9, 3.7, true},
                                        {"60", 0, 0, 0, 21.9, 26.1, 3.7, true}};

static const struct grade_row *row_named(const struct grade_row *rows, size_t count, const char *name)
{
  for (size_t i = 0; i < count; i++)
    if (strcmp(rows[i].name, name) == 0) return &rows[i];
  return NULL;
}

/* Parts "SAE 10W-30" into "10w" and "30", either of which may be empty. False when it is neither. */
static bool part_grade(const char *text, char cold[4], char hot[4])
{
  char plain[12] = "";
  size_t len = 0, w;

  if (strncasecmp(text, "sae", 3) == 0) text += 3;
  for (; *text; text++) {
    if (*text == ' ' || *text == '-') continue;
    if (len + 1 >= sizeof plain) return false;
    plain[len++] = (char)tolower((unsigned char)*text);
  }
  plain[len] = '\0';
  w = strcspn(plain, "w");
  w = plain[w] ? w + 1 : 0;
  if (w > 3 || len - w > 2) return false;
  snprintf(cold, 4, "%.*s", (int)w, plain);
  snprintf(hot, 4, "%.2s", plain + w);
  return len > 0;
}

int oil_grade(const char *text, struct oil_grade *out, struct err *e)
{
  char cold[4], hot[4];
  const struct grade_row *c = NULL, *h = NULL;
  bool known = part_grade(text, cold, hot);

  if (known) {
    c = row_named(winter, sizeof winter / sizeof winter[0], cold);
    h = row_named(warm, sizeof warm / sizeof warm[0], hot);
  }
  if (!known || (*cold && !c) || (*hot && !h))
    return err_set(
        e, EX_DATAERR, NULL, 0,
        "grade: \"%.20s\" is no engine oil grade here. Write it like 10W-30 or SAE 30; known are 0W, "
        "5W, 10W, 15W, 20W, 25W and 20, 30, 40, 50, 60.",
        text);
  *out = (struct oil_grade){(double)NAN, (double)NAN, (double)NAN, (double)NAN,
                            (double)NAN, (double)NAN, (double)NAN, false};
  if (c) {
    out->crank_at = c->crank_at + 273.15;
    out->crank_most = c->crank_most;
    out->pump_at = c->pump_at + 273.15;
    out->pump_most = PUMP_MOST;
    out->warm_least = c->warm_least;
    out->recalled = c->recalled;
  }
  if (h) {
    out->warm_least = fmax(h->warm_least, c ? c->warm_least : 0);
    out->warm_under = h->warm_under;
    out->shear_least = h->shear_least;
    out->recalled = out->recalled || h->recalled;
    if (h->shear_least == 3.5 && (!c || c->crank_at > -25)) out->shear_least = 3.7;
  }
  return 0;
}
