/* heap.h - the heap in large pages. */
#ifndef BASE_HEAP_H
#define BASE_HEAP_H

/* Call before anything is allocated: lets the heap grow in one piece and asks the system for large
 * pages in its first part. Every start reads the knowledge into some 8 MiB, and two thousand page
 * faults cost as much as reading it. Where there are no large pages nothing changes. */
void heap_begin(void);

#endif
