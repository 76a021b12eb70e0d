(deffacts cautions "warnings"
  (caution (id fuel-vapour) (text "No flame and no spark near open fuel.")
    (defer-to "the fire service") (basis published) (source board-leaflet) (place "p. 2"))
  (caution (id hot-parts) (text "Let it cool before you touch it.") ; serious: missing-basis
    (defer-to "the maker's manual") (basis published) (source old-handbook) (place "p. 3")))
