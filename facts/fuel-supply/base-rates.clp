; Base rates of fuel-supply faults for machine classes that differ clearly from the fault's own
; rate. All estimates: your own records come before them. Check with: pullcord vet

(deffacts fuel-supply-base-rates "classes that differ"
  (base-rate (fault fuel-stale) (class portable-generator) (chance 0.12) (basis estimate))
  (base-rate (fault fuel-stale) (class snow-thrower) (chance 0.12) (basis estimate))
  (base-rate (fault float-needle-stuck-shut) (class portable-generator) (chance 0.04)
    (basis estimate))
  (base-rate (fault fuel-tap-shut) (class portable-generator) (chance 0.03) (basis estimate))
  (base-rate (fault fuel-tap-shut) (class pressure-washer) (chance 0.03) (basis estimate))
  (base-rate (fault pickup-filter-clogged) (class chainsaw) (chance 0.05) (basis estimate))
  (base-rate (fault pickup-filter-clogged) (class cut-off-saw) (chance 0.05) (basis estimate))
  (base-rate (fault tank-vent-valve-stuck) (class cut-off-saw) (chance 0.025) (basis estimate))
  (base-rate (fault pickup-hose-off) (class string-trimmer) (chance 0.025) (basis estimate))
  (base-rate (fault purge-bulb-cracked) (class string-trimmer) (chance 0.035) (basis estimate))
  (base-rate (fault straight-petrol-in-two-stroke) (class chainsaw) (chance 0.015)
    (basis estimate))
  (base-rate (fault straight-petrol-in-two-stroke) (class cut-off-saw) (chance 0.015)
    (basis estimate))
  (base-rate (fault fuel-in-oil) (class ride-on-mower) (chance 0.02) (basis estimate))
  (base-rate (fault water-in-fuel) (class water-pump) (chance 0.035) (basis estimate))
  (base-rate (fault engine-flooded) (class chainsaw) (chance 0.04) (basis estimate)))
