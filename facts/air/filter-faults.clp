; Faults of air filter and breather tube (signs: filter-signs.clp).
; To add a line: copy a fact, give it a new id, keep results weaker before stronger.
; check with: pullcord vet

(deffacts air-filter-faults "filter and breather tube"
  (fault (id air-filter-clogged) (name "air filter clogged") (system air) (sort dirt)
    (base-rate 0.07)
    (is "Dirt shuts the filter: too little air, mixture goes rich.")
    (comes-about "Dusty work, never cleaned, grass on the grille.")
    (shows "Weak, black smoke, sooty plug, runs better with the filter off.")
    (looks-like choke-stuck-shut choke-moves worked-at-altitude altitude-and-weather
      emulsion-tube-blocked filter-off-run muffler-blocked muffler-look)
    (repair renew-air-filter)
    (proof "Filter in: full load five minutes, no black smoke, same speed as without it.")
    (basis common-practice))
  (fault (id air-filter-oil-soaked) (name "air filter soaked with oil") (system air) (sort dirt)
    (base-rate 0.025)
    (is "The element is full of oil and passes hardly any air.")
    (comes-about "Tipped carburettor down, overfilled, breather trouble, foam over-oiled.")
    (shows "No start or weak with black or white smoke after tipping or an oil change.")
    (looks-like air-filter-clogged air-filter-look choke-stuck-shut choke-moves
      main-jet-blocked filter-off-run)
    (repair renew-air-filter)
    (proof "New element: full load five minutes; after that the element is still dry.")
    (basis common-practice))
  (fault (id air-filter-missing) (name "filter missing, torn or not sealing") (system air)
    (sort assembly) (base-rate 0.015)
    (is "Air gets past the filter: no element, torn, wrong size, cover not shut.")
    (comes-about "Run without it, wrong element squeezed in, seal rim lost.")
    (shows "Dust in the throat; bore and rings wear; weak, uses oil, hard to start in the end.")
    (looks-like air-filter-clogged air-filter-look intake-gasket-leak intake-spray rings-worn
      compression)
    (repair fit-filter-and-check-wear)
    (proof
      "Clean side wiped white after an hour of work stays white; compression noted for next time.")
    (basis common-practice))
  (fault (id breather-tube-off) (name "breather tube off or blocked") (system air) (sort assembly)
    (needs breather-tube) (base-rate 0.01)
    (is "The tube from crankcase breather to intake is off, split or shut.")
    (comes-about "Left off or kinked at a repair; hardened; ice or oil sludge in it.")
    (shows
      "Off: oil mist outside, dust drawn in, may hunt. Shut: oil pushed out at seals and filter.")
    (looks-like carburettor-o-ring-lost breather-tube-look rings-worn compression
      air-filter-oil-soaked breather-tube-look)
    (repair refit-breather-tube)
    (proof "Run 15 minutes: slight vacuum in the crankcase, outside dry, no hunting.")
    (basis common-practice)))
