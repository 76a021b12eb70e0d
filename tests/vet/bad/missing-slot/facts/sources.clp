(deffacts sources "what statements rest on"
  (source (id board-leaflet) (title "Leaflet of a safety board") (kind regulator) (status read))
  (source (id old-handbook) (title "A handbook") (kind handbook) (status memory)))

(deffacts numbers "numbers and ids that are gone"
  (setting (id repair-at) (why "Belief from which it is repaired.") (basis estimate)) ; serious: missing-slot
  (retired (id tap-stuck) (replaced-by tap-shut) (why "Merged.")))
