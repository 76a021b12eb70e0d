(deffacts words "near misses: phrases that share words, one list twice, a contrary"
  (same-words (id little) (sort little) (words "the" "it") (basis common-practice))
  (same-words (id stops) (words "stalls" "stall" "cuts out" "cut it off") (basis common-practice))
  (same-words (id goes-on) (opposite stops) (words "keeps going" "cuts in") (basis common-practice)))
