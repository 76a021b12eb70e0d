(deffacts cautions "warnings"
  (caution (id fuel-vapour) (text "No flame and no spark near open fuel.") ; serious: no-place
    (defer-to "the fire service") (basis published) (source board-leaflet))
  (caution (id hot-parts) (text "Let it cool before you touch it.")
    (defer-to "the maker's manual") (basis memory) (source old-handbook)))
