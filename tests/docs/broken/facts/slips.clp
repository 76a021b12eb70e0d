; Facts with mistakes on purpose, for the check of what vet prints. One per line.
(deffacts slips "what goes wrong"
  (sign (fault fuel-stale) (check spark-test) (result nothing) (chance often) (basis estimate))
  (sign (fault fuel-stael) (check plug-look) (result worn) (chance often) (basis estimate))
  (sign (fault fuel-stale) (check plug-gap) (result wide) (chance mostly) (basis estimate))
  (sign (fault fuel-stale) (check plug-tightness) (chance even) (basis estimate))
  (sign (fault fuel-stale) (check spark-test) (result jumps) (chance even) (basis estimate))
  (remedy (id stir-it)))
