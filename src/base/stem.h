/* stem.h - English words without their endings. */
#ifndef BASE_STEM_H
#define BASE_STEM_H

/* Takes -s, -es, -ed, -ing, -ly, -ion and a last -e off a word in lower case, in place, and
 * undoes a doubled consonant (running: run; surges, surging: surg; easily, easy: easi). Words of
 * three letters or fewer stay. What is left need not be a word; two words are the same when it
 * is. Irregular words (dying, froze) belong into the same-words of the knowledge. */
void text_stem(char *word);

#endif
