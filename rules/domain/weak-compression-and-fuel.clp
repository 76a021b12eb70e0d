; When a compression, flow or oil reading counts for less, or for nothing, because of how things
; stood when it was taken.
; The text after the bracketed basis is shown to the person when the rule speaks. To add a rule,
; copy one, name it anew, and put one firing and one quiet sample into
; tests/rules/weak-compression-and-fuel.json. Check with: pullcord vet

(defrule weak-gauge-with-release
  "[common-practice] A release or decompression button lets the gauge down on purpose; go by
   leak-down or the figure of the maker."
  (logical
    (has (feature decompression))
    (finding (check compression) (result weak|very-low) (sure ?s2&:(> ?s2 0.6)))
    (not (card (check compression)))
    (not (finding (check decompression-works))))
  =>
  (assert (weakens (check compression) (by 0.4))))

(defrule weak-feel-with-release
  "[common-practice] With a release on the camshaft, or the button in, a sound engine feels soft
   on a slow pull."
  (logical
    (has (feature decompression))
    (finding (check compression-feel) (result soft) (sure ?s2&:(> ?s2 0.4)))
    (not (finding (check decompression-works))))
  =>
  (assert (weakens (check compression-feel) (by 0.5))))

(defrule weak-gauge-dry-cylinder
  "[common-practice] After long standing the cylinder is dry and the rings do not seal at once; a
   little oil, turn it over, measure again."
  (logical
    (finding (check when-last-ran) (result months-ago) (sure ?s1&:(> ?s1 0.4)))
    (finding (check compression) (result weak) (sure ?s2&:(> ?s2 0.6)))
    (not (finding (check compression-wet))))
  =>
  (assert (weakens (check compression) (by 0.4))))

(defrule weak-feel-dry-cylinder
  "[common-practice] After long standing the rings are dry, and a soft feel is not yet worn
   rings."
  (logical
    (finding (check when-last-ran) (result months-ago) (sure ?s1&:(> ?s1 0.4)))
    (finding (check compression-feel) (result soft) (sure ?s2&:(> ?s2 0.4)))
    (not (has (feature decompression))))
  =>
  (assert (weakens (check compression-feel) (by 0.35))))

(defrule weak-gauge-washed-cylinder
  "[common-practice] Fuel has washed the oil off the bore; turn it over with the plug out, oil it
   a little and measure again."
  (logical
    (finding (check plug-look) (result fuel-wet) (sure ?s1&:(> ?s1 0.4)))
    (finding (check compression) (result weak) (sure ?s2&:(> ?s2 0.6)))
    (not (finding (check compression-wet))))
  =>
  (assert (weakens (check compression) (by 0.4))))

(defrule weak-gauge-throttle-shut
  "[published tm-1-1500-204-23-1 p. 70] With the throttle shut little air gets in and the gauge
   stays low; it is to be held open."
  (logical
    (finding (check throttle-setting) (result wrong) (sure ?s1&:(> ?s1 0.4)))
    (finding (check compression) (result weak|very-low) (sure ?s2&:(> ?s2 0.6))))
  =>
  (assert (weakens (check compression) (by 0.5))))

(defrule weak-gauge-plate-stuck
  "[common-practice] The throttle plate does not open, so the cylinder did not fill for the
   gauge."
  (logical
    (finding (check throttle-plate-travel) (result does-not-open) (sure ?s1&:(> ?s1 0.4)))
    (finding (check compression) (result weak|very-low) (sure ?s2&:(> ?s2 0.6))))
  =>
  (assert (weakens (check compression) (by 0.5))))

(defrule weak-gauge-choke-shut
  "[common-practice] The choke is shut, so the cylinder did not fill for the gauge."
  (logical
    (finding (check choke-moves) (result does-not-open) (sure ?s1&:(> ?s1 0.4)))
    (finding (check compression) (result weak|very-low) (sure ?s2&:(> ?s2 0.6))))
  =>
  (assert (weakens (check compression) (by 0.4))))

(defrule weak-gauge-filter-packed
  "[common-practice] Measured through a choked filter or one soaked with oil the cylinder fills
   badly; take it off and measure again."
  (logical
    (finding (check air-filter-look) (result oil-or-fuel-soaked) (sure ?s1&:(> ?s1 0.4)))
    (finding (check compression) (result weak) (sure ?s2&:(> ?s2 0.6))))
  =>
  (assert (weakens (check compression) (by 0.3))))

(defrule weak-gauge-slow-crank
  "[published tm-5-4210-230-14p-1 p. 883] The gauge needs several brisk strokes; turned slowly it
   never gets to its top."
  (logical
    (finding (check cranking-speed) (result slow) (sure ?s1&:(> ?s1 0.4)))
    (finding (check compression) (result weak|very-low) (sure ?s2&:(> ?s2 0.6))))
  =>
  (assert (weakens (check compression) (by 0.5))))

(defrule weak-gauge-lazy-rope
  "[common-practice] With a rope that drags, few pulls reach the speed the gauge needs."
  (logical
    (finding (check rope-and-spring-look) (result frayed-or-slow) (sure ?s1&:(> ?s1 0.4)))
    (finding (check compression) (result weak) (sure ?s2&:(> ?s2 0.6))))
  =>
  (assert (weakens (check compression) (by 0.4))))

(defrule weak-gauge-oil-in-cylinder
  "[common-practice] Oil in the cylinder seals worn rings and fills the head space; a good
   reading over an oily plug proves little."
  (logical
    (finding (check plug-look) (result oil-wet) (sure ?s1&:(> ?s1 0.4)))
    (finding (check compression) (result good) (sure ?s2&:(> ?s2 0.6))))
  =>
  (assert (weakens (check compression) (by 0.45))))

(defrule weak-feel-rope-free
  "[common-practice] The rope did not turn the engine; there was nothing to feel."
  (logical
    (finding (check rope-pull-feel) (result free) (sure ?s1&:(> ?s1 0.4)))
    (finding (check compression-feel) (result soft|none) (sure ?s2&:(> ?s2 0.4)))
    (not (finding (check starter-sound) (result turns-engine)))
    (not (finding (check crank-turn-by-hand))))
  =>
  (assert (weakens (check compression-feel) (by 0.9))))

(defrule weak-wet-test-flooded
  "[common-practice] On a flooded cylinder the oil only does what the washed-off oil did before:
   a rise does not mean worn rings."
  (logical
    (finding (check plug-look) (result fuel-wet) (sure ?s1&:(> ?s1 0.4)))
    (finding (check compression-wet) (result rises) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (weakens (check compression-wet) (by 0.5))))

(defrule weak-wet-test-dry-cylinder
  "[common-practice] After months of standing a rise with oil may be dry rings and no more; run
   it ten minutes and measure again."
  (logical
    (finding (check when-last-ran) (result months-ago) (sure ?s1&:(> ?s1 0.4)))
    (finding (check compression-wet) (result rises) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (weakens (check compression-wet) (by 0.3))))

(defrule weak-valve-gap-hot
  "[common-practice] Clearances are for a cold engine; one that has just been run reads
   otherwise."
  (logical
    (finding (check head-temperature) (sure ?s1&:(> ?s1 0.4)))
    (finding (check valve-clearance-inlet) (result tight|wide) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (weakens (check valve-clearance-inlet) (by 0.5))))

(defrule weak-exhaust-valve-gap-hot
  "[common-practice] Clearances are for a cold engine; the exhaust valve grows most and reads
   tight when hot."
  (logical
    (finding (check head-temperature) (sure ?s1&:(> ?s1 0.4)))
    (finding (check valve-clearance-exhaust) (result tight|wide) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (weakens (check valve-clearance-exhaust) (by 0.5))))

(defrule weak-flow-tap-shut
  "[common-practice] Nothing runs through a shut tap; open it and look again."
  (logical
    (finding (check fuel-tap-position) (result shut))
    (finding (check fuel-flow-at-carburettor) (result slow|none) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (weakens (check fuel-flow-at-carburettor) (by 1))))

(defrule weak-measured-flow-tap-shut
  "[common-practice] The flow was measured with the tap shut."
  (logical
    (finding (check fuel-tap-position) (result shut))
    (finding (check fuel-flow-measured) (result slow|none) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (weakens (check fuel-flow-measured) (by 1))))

(defrule weak-drain-tap-shut
  "[common-practice] With the tap shut only what stood in the bowl comes out of the drain."
  (logical
    (finding (check fuel-tap-position) (result shut))
    (finding (check bowl-drain-flow) (result little|none) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (weakens (check bowl-drain-flow) (by 0.85))))

(defrule weak-flow-tank-empty
  "[common-practice] Nothing runs from an empty tank."
  (logical
    (finding (check fuel-level) (result empty))
    (finding (check fuel-flow-at-carburettor) (result slow|none) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (weakens (check fuel-flow-at-carburettor) (by 1))))

(defrule weak-flow-tank-low
  "[common-practice] With little in the tank there is little head to push it; fill up before a
   slow flow is held against line or filter."
  (logical
    (finding (check fuel-level) (result low) (sure ?s1&:(> ?s1 0.4)))
    (finding (check fuel-flow-at-carburettor) (result slow) (sure ?s2&:(> ?s2 0.4)))
    (has (feature gravity-feed)))
  =>
  (assert (weakens (check fuel-flow-at-carburettor) (by 0.5))))

(defrule weak-measured-flow-tank-low
  "[common-practice] Flow by gravity depends on how full the tank is; measured low on fuel it
   reads slow."
  (logical
    (finding (check fuel-level) (result low) (sure ?s1&:(> ?s1 0.4)))
    (finding (check fuel-flow-measured) (result slow) (sure ?s2&:(> ?s2 0.4)))
    (has (feature gravity-feed)))
  =>
  (assert (weakens (check fuel-flow-measured) (by 0.5))))

(defrule weak-drain-tank-empty
  "[common-practice] A dry bowl under an empty tank is nothing but an empty tank."
  (logical
    (finding (check fuel-level) (result empty))
    (finding (check bowl-drain-flow) (result little|none) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (weakens (check bowl-drain-flow) (by 1))))

(defrule weak-purge-tank-empty
  "[common-practice] The bulb cannot fill from an empty tank."
  (logical
    (finding (check fuel-level) (result empty))
    (finding (check purge-bulb-feel) (result stays-flat) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (weakens (check purge-bulb-feel) (by 1))))

(defrule weak-bubbles-tank-low
  "[common-practice] With the tank low the pickup draws air; bubbles then say nothing about the
   line."
  (logical
    (finding (check fuel-level) (result low|empty) (sure ?s1&:(> ?s1 0.4)))
    (finding (check air-in-line) (result bubbles) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (weakens (check air-in-line) (by 0.75))))

(defrule weak-pump-output-tank-empty
  "[common-practice] The pump had nothing to draw."
  (logical
    (finding (check fuel-level) (result empty))
    (finding (check pulse-pump-output) (result weak|none) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (weakens (check pulse-pump-output) (by 0.9))))

(defrule weak-line-off-on-pump-feed
  "[common-practice] Where a pulse pump feeds the carburettor, fuel need not run from the line at
   rest; watch it while it is cranked."
  (logical
    (has (feature pulse-pump))
    (finding (check fuel-flow-at-carburettor) (result slow|none) (sure ?s2&:(> ?s2 0.4)))
    (not (finding (check pulse-pump-output))))
  =>
  (assert (weakens (check fuel-flow-at-carburettor) (by 0.3))))

(defrule weak-overflow-tilted
  "[common-practice] Tilted, a sound float bowl runs over; set it level and look again."
  (logical
    (finding (check machine-level) (result tilted) (sure ?s1&:(> ?s1 0.4)))
    (finding (check overflow) (result seeps|runs-out) (sure ?s2&:(> ?s2 0.4)))
    (has (feature float-bowl)))
  =>
  (assert (weakens (check overflow) (by 0.7))))

(defrule weak-overflow-after-tipping
  "[common-practice] Just after it was laid over fuel stands where it should not; wipe it dry and
   look again with the tap open."
  (logical
    (finding (check tipped-over) (result yes) (sure ?s1&:(> ?s1 0.4)))
    (finding (check overflow) (result seeps) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (weakens (check overflow) (by 0.5))))

(defrule weak-fuel-nose-old-fuel
  "[common-practice] Fuel over a season old is past its best though it may still smell like
   petrol; the nose is not proof."
  (logical
    (finding (check fuel-age) (result over-season) (sure ?s1&:(> ?s1 0.4)))
    (finding (check fuel-look-and-smell) (result fresh) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (weakens (check fuel-look-and-smell) (by 0.4))))

(defrule weak-cap-test-too-short
  "[common-practice] A shut vent takes minutes to starve an engine; one that dies within seconds
   cannot show it."
  (logical
    (finding (check when-it-dies) (result within-seconds) (sure ?s1&:(> ?s1 0.4)))
    (finding (check cap-loosened) (result no-change) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (weakens (check cap-loosened) (by 0.7))))

(defrule weak-tilt-float-bowl
  "[common-practice] Any float bowl starves or floods when tilted far; dying on a steep slope is
   not by itself a fault."
  (logical
    (has (feature float-bowl))
    (finding (check position-dependence) (result dies-tilted) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (weakens (check position-dependence) (by 0.4))))

(defrule weak-smoke-after-tipping
  "[common-practice] Oil that ran into the cylinder burns off for some minutes; look at the smoke
   again after that."
  (logical
    (finding (check tipped-over) (result yes) (sure ?s1&:(> ?s1 0.4)))
    (finding (check exhaust-smoke) (result white|blue) (sure ?s2&:(> ?s2 0.4)))
    (has (feature four-stroke)))
  =>
  (assert (weakens (check exhaust-smoke) (by 0.7))))

(defrule weak-white-smoke-cold-damp
  "[common-practice] On a cold damp day a cold engine puffs white vapour; look again when it is
   hot."
  (logical
    (finding (check altitude-and-weather) (result cold-damp) (sure ?s1&:(> ?s1 0.4)))
    (finding (check exhaust-smoke) (result white) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (weakens (check exhaust-smoke) (by 0.6))))

(defrule weak-blue-smoke-two-stroke
  "[common-practice] A two-stroke smokes a little blue when it is cold; only smoke that stays
   when hot counts."
  (logical
    (has (feature two-stroke))
    (finding (check exhaust-smoke) (result blue) (sure ?s2&:(> ?s2 0.4)))
    (not (finding (check mix-ratio-asked) (result too-much-oil))))
  =>
  (assert (weakens (check exhaust-smoke) (by 0.4))))

(defrule weak-oil-level-tilted
  "[common-practice] The dipstick lies when the machine stands tilted."
  (logical
    (finding (check machine-level) (result tilted) (sure ?s1&:(> ?s1 0.4)))
    (finding (check oil-level) (result low|none|high) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (weakens (check oil-level) (by 0.8))))
