(deffacts words "one word in two lists; endings do not make it another"
  (same-words (id little) (sort little) (words "the" "it") (basis common-practice))
  (same-words (id stops) (words "stalls" "cuts out") (basis common-practice))
  (same-words (id dies) (words "stalled") (basis common-practice))) ; advice: repeated-name
