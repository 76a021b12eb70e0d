(deffacts words "a phrase of which little words leave only one"
  (same-words (id little) (sort little) (words "the" "it") (basis common-practice))
  (same-words (id stops) (words "kills it") (basis common-practice))) ; advice: no-effect
