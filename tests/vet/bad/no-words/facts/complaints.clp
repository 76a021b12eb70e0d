(deffacts complaints "what owners say"
  (complaint (id no-start) (name "") ; advice: no-words
    (ask "Will it not start?") (says "dead")
    (runs no) (basis estimate))
  (complaint (id weak) (name "weak") (ask "Is it weak when it works?") (says "no power")
    (runs yes) (basis estimate)))
