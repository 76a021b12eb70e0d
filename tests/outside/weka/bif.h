/* bif.h - a small network of weigh/net.h as an XML-BIF file, which other programs read.
 *
 * Every fault becomes a node of two states, every finding a node of its grades whose table
 * is filled by going through every set of its causes (tests/weigh/brute.c), with nothing
 * from net.c. What was seen becomes evidence: on the finding itself when it is plain, else
 * on a child of it that carries the chances; likewise a bias on a fault. */
#ifndef TESTS_BIF_H
#define TESTS_BIF_H

#include <stdio.h>

#include "weigh/net.h"

enum { BIF_MAX_FAULTS = 14 };

/* Writes the network; names[] are the faults'. The evidence, as "node=state,node=state" or
 * "-", goes into evidence (size bytes). False when it does not fit or cannot be written. */
bool bif_write(FILE *f, const struct net *net, const char *const *names, char *evidence, size_t size);

#endif
