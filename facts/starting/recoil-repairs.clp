; Starting: recoil repairs.
; To add one: a (repair ...) with steps, minutes, parts by kind and cautions.
; Check with: pullcord vet

(deffacts starting-recoil-repairs "starting: recoil repairs"
  (repair (id renew-starter-rope)
    (name "renew the starter rope") (minutes 25) (parts-cost 5)
    (parts "rope of the same thickness and length")
    (tools "knife"
      "flame to seal ends"
      "clamp or wire to hold the pulley")
    (steps "Starter off. Let the spring down under control, or hold the pulley if it is wound."
      "Old rope out, note length and knot."
      "New ends sealed in a flame away from the machine and its fuel; knot tight and trimmed."
      "Preload about one to two turns so that the handle sits home."
      "At full pull the spring must not be bound."
      "Look why: rough eyelet, hard engine, pull angle.")
    (off recoil-starter)
    (cautions recoil-spring eye-protection plug-lead-off no-spark-near-fuel)
    (reuse "Shorter old rope may serve only if it keeps full pull.")
    (basis published) (source tm-10-4320-309-14) (place "Table 4-1, items 1 and 2"))
  (repair (id renew-recoil-spring)
    (name "renew the recoil spring") (minutes 40) (parts-cost 12)
    (parts "spring, best in its cup")
    (consumables "light grease")
    (tools "gloves"
      "screwdriver")
    (steps "Let the tension off under control. Face shield or glasses, gloves."
      "Lift the pulley straight; a loose spring flies out."
      "New spring in its retainer, hook seated, thin grease; wind and preload."
      "Frost and slow only: wash off the thick grease.")
    (off recoil-starter)
    (cautions recoil-spring eye-protection plug-lead-off)
    (reuse "A broken spring is renewed; an end annealed and bent anew is for one no longer sold.")
    (basis published) (source tm-10-4320-309-14) (place "Table 4-1, item 2"))
  (repair (id renew-recoil-pawls)
    (name "renew or free the pawls") (minutes 30) (parts-cost 10)
    (parts "pawls, springs, clip; cup if rounded")
    (consumables "light grease")
    (tools "screwdriver"
      "socket set")
    (steps "Starter off, spring let down before the centre screw is touched."
      "Clean; renew pawls in sets with springs; thin grease on pivots only."
      "Look at the cup: rounded edges eat new pawls."
      "Centre screw to torque with lock; try by hand; refit centred.")
    (off recoil-starter)
    (cautions recoil-spring eye-protection plug-lead-off)
    (basis published) (source tm-10-4320-309-14) (place "Table 4-1, item 3"))
  (repair (id free-recoil)
    (name "strip, clean and centre the recoil starter") (minutes 35) (parts-cost 4)
    (parts "rope or spring as found")
    (consumables "light grease")
    (tools "screwdriver"
      "gloves")
    (steps "Starter off; spring let down."
      "Clean, straighten or renew the bent housing; rope back on its pulley."
      "Thin grease on the post. Wind and preload."
      "Refit loose, pull the handle to centre it, hold, tighten the screws.")
    (off recoil-starter)
    (cautions recoil-spring eye-protection plug-lead-off)
    (basis published) (source tm-10-4320-309-14) (place "Table 4-1, item 1"))
  (repair (id free-flywheel-brake)
    (name "free and set the flywheel brake") (minutes 30) (parts-cost 15)
    (parts "cable or brake pad as found")
    (tools "socket set"
      "feeler gauges")
    (steps "Housing off. Free the pivot; renew cable if stretched or kinked."
      "Bar held: pad clear all round, stop contact open. Bar loose: pad hard on."
      "Blade stop time within three seconds: time it.")
    (off blower-housing)
    (cautions plug-lead-off blade-brake blade-edges spring-tension-governor carbon-monoxide
      moving-parts stand-clear-tool)
    (reuse "Worn pad: renew, do not shim.")
    (basis common-practice))
  (repair (id renew-flywheel-brake)
    (name "renew the brake pad and set the cable") (minutes 35) (parts-cost 18)
    (parts "brake pad or bracket with pad" "spring" "cable if stretched")
    (tools "socket set" "brake cleaner" "stop watch")
    (steps "Lead off, housing off. Pad and bracket off; find where any oil comes from first."
      "Wipe the flywheel rim clean and dry; new pad, spring hooked as it was."
      "Cable: bar held, pad just clear all round and stop contact open; bar loose, pad hard on."
      "Housing on, outdoors: time the blade from full speed. Over 3.0 s it does not go back.")
    (off blower-housing)
    (cautions plug-lead-off blade-brake blade-edges gloves-solvent carbon-monoxide
      eye-protection moving-parts stand-clear-tool)
    (reuse "A worn or oily pad is not shimmed, cleaned or turned round.")
    (basis common-practice))
)
