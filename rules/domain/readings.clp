; What a reading means on this engine beyond its bands: height above the sea, heat and cold, the
; make of the set, and figures so far out that they point at the instrument.
; The text after the bracketed basis is shown to the person when the rule speaks. To add a rule,
; copy one, name it anew, and put one firing and one quiet sample into
; tests/rules/readings.json. Check with: pullcord vet

(defrule reading-compression-high-ground
  "[common-practice] High up there is less air to press: the gauge reads about a tenth lower for
   each thousand metres. Add that before it is called weak."
  (logical
    (not (given (what altitude)))
    (finding (check altitude-and-weather) (result high-ground) (sure ?s1&:(> ?s1 0.4)))
    (finding (check compression) (result weak) (sure ?s2&:(> ?s2 0.6))))
  =>
  (assert (weakens (check compression) (by 0.5))))

(defrule reading-black-plug-high-ground
  "[common-practice] High up a jet for low ground runs rich; a black plug there is the height,
   not a fault in the carburettor."
  (logical
    (finding (check altitude-and-weather) (result high-ground) (sure ?s1&:(> ?s1 0.4)))
    (finding (check plug-look) (result black-dry) (sure ?s2&:(> ?s2 0.4)))
    (has (feature fixed-jet)))
  =>
  (assert (weakens (check plug-look) (by 0.5))))

(defrule reading-black-smoke-high-ground
  "[common-practice] High up a fixed jet smokes a little black at full load."
  (logical
    (finding (check altitude-and-weather) (result high-ground) (sure ?s1&:(> ?s1 0.4)))
    (finding (check exhaust-smoke) (result black) (sure ?s2&:(> ?s2 0.4)))
    (has (feature fixed-jet)))
  =>
  (assert (weakens (check exhaust-smoke) (by 0.4))))

(defrule reading-screws-high-ground
  "[common-practice] Screws turned in from the book on high ground are set for the height."
  (logical
    (finding (check altitude-and-weather) (result high-ground) (sure ?s1&:(> ?s1 0.4)))
    (finding (check mixture-screw-turns) (result far-off) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (weakens (check mixture-screw-turns) (by 0.5))))

(defrule reading-head-hot-day
  "[common-practice] On a very hot day the head of a sound engine reads higher; compare with the
   air, not with the book alone."
  (logical
    (finding (check altitude-and-weather) (result very-hot) (sure ?s1&:(> ?s1 0.4)))
    (finding (check head-temperature) (result hot) (sure ?s2&:(> ?s2 0.6))))
  =>
  (assert (weakens (check head-temperature) (by 0.4))))

(defrule reading-crank-slow-cold
  "[common-practice] In the cold thick oil slows any engine and any battery; warm it before speed
   or sag is held against starter or battery."
  (logical
    (finding (check altitude-and-weather) (result cold-damp) (sure ?s1&:(> ?s1 0.4)))
    (finding (check cranking-speed) (result slow) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (weakens (check cranking-speed) (by 0.4))))

(defrule reading-battery-sag-cold
  "[common-practice] A cold battery sags more under the starter than the same battery warm."
  (logical
    (finding (check altitude-and-weather) (result cold-damp) (sure ?s1&:(> ?s1 0.4)))
    (finding (check battery-crank-voltage) (result sags) (sure ?s2&:(> ?s2 0.6)))
    (not (finding (check battery-rest-voltage) (result flat))))
  =>
  (assert (weakens (check battery-crank-voltage) (by 0.4))))

(defrule reading-rope-hard-cold
  "[common-practice] In the cold thick oil alone makes a rope pull hard."
  (logical
    (finding (check altitude-and-weather) (result cold-damp) (sure ?s1&:(> ?s1 0.4)))
    (finding (check rope-pull-feel) (result hard) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (weakens (check rope-pull-feel) (by 0.4))))

(defrule reading-inverter-speed
  "[common-practice] An inverter set lowers its speed on purpose when little is drawn; switch the
   economy off before top speed is read."
  (logical
    (has (feature inverter-generator))
    (finding (check top-speed) (result low) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (weakens (check top-speed) (by 0.7))))

(defrule reading-inverter-hunting
  "[common-practice] An inverter set changes its speed with every load that comes and goes; hear
   it with a steady load on."
  (logical
    (has (feature inverter-generator))
    (finding (check speed-steady) (result hunts) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (weakens (check speed-steady) (by 0.5))))

(defrule reading-speed-right-hertz-decides
  "[published navedtra-14177 p. 3-14] The hertz meter is finer than the tachometer: where
   frequency is right, a top speed just off is the tachometer."
  (logical
    (finding (check output-frequency) (result right) (sure ?s1&:(> ?s1 0.6)))
    (finding (check top-speed) (result low|high) (sure ?s2&:(> ?s2 0.4)))
    (has (feature generator-end))
    (not (has (feature inverter-generator))))
  =>
  (assert (weakens (check top-speed) (by 0.5))))

(defrule reading-coil-ohms-not-proof
  "[common-practice] A meter moves a coil with a volt or so; right ohms do not clear a coil that
   gives no spark once everything else is off it."
  (logical
    (finding (check coil-secondary) (result right) (sure ?s1&:(> ?s1 0.4)))
    (finding (check spark-test) (result none) (sure ?s2&:(> ?s2 0.6)))
    (finding (check spark-with-kill-lead-off) (result no-change) (sure ?s3&:(> ?s3 0.4))))
  =>
  (assert (weakens (check coil-secondary) (by 0.5))))

(defrule reading-compression-zero
  "[common-practice] Next to nothing on the gauge is more often the gauge, a loose adaptor or a
   valve held open than worn rings; fit it again before anything is stripped."
  (logical
    (reading (check compression) (value ?v1&:(< ?v1 15)))
    (not (has (feature decompression)))
    (not (finding (check leak-down))))
  =>
  (assert (weakens (check compression) (by 0.3))))

(defrule reading-compression-too-good
  "[common-practice] More than such an engine can press: wrong gauge, oil or fuel lying in the
   cylinder, or thick carbon. Turn it over with the plug out and measure again."
  (logical
    (reading (check compression) (value ?v1&:(> ?v1 215)))
    (has (feature four-stroke)))
  =>
  (assert (weakens (check compression) (by 0.8))))

(defrule reading-leak-down-cold-wet
  "[common-practice] A cylinder washed with fuel leaks at its rings until it has run; oil it a
   little before the leak is believed."
  (logical
    (finding (check plug-look) (result fuel-wet) (sure ?s1&:(> ?s1 0.4)))
    (finding (check leak-down) (result leaks) (sure ?s2&:(> ?s2 0.4)))
    (finding (check leak-down-where) (result breather) (sure ?s3&:(> ?s3 0.4))))
  =>
  (assert (weakens (check leak-down) (by 0.4)))
  (assert (weakens (check leak-down-where) (by 0.4))))

(defrule reading-leak-down-dry-rings
  "[common-practice] After long standing dry or stuck rings leak at the breather; free oil and a
   short run often bring them back."
  (logical
    (finding (check when-last-ran) (result months-ago) (sure ?s1&:(> ?s1 0.4)))
    (finding (check leak-down) (result leaks) (sure ?s2&:(> ?s2 0.4)))
    (finding (check leak-down-where) (result breather) (sure ?s3&:(> ?s3 0.4))))
  =>
  (assert (weakens (check leak-down) (by 0.35))))

(defrule reading-vacuum-at-idle
  "[common-practice] At a low idle the breather hardly draws; crankcase vacuum is read at full
   speed."
  (logical
    (finding (check idle-speed) (result low) (sure ?s1&:(> ?s1 0.4)))
    (finding (check crankcase-vacuum) (result none-or-pressure) (sure ?s2&:(> ?s2 0.4)))
    (not (finding (check top-speed))))
  =>
  (assert (weakens (check crankcase-vacuum) (by 0.5))))

(defrule reading-vacuum-dipstick-out
  "[common-practice] With oil gone or the filler not tight there is no vacuum to read; fill,
   close and read again."
  (logical
    (finding (check crankcase-vacuum) (result none-or-pressure) (sure ?s1&:(> ?s1 0.4)))
    (finding (check oil-leak-where) (result drain-or-filler) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (weakens (check crankcase-vacuum) (by 0.5))))

(defrule reading-battery-surface-charge
  "[common-practice] A battery just off the charger or just out of a run shows a volt it does not
   have; the crank test tells."
  (logical
    (finding (check battery-rest-voltage) (result charged) (sure ?s1&:(> ?s1 0.6)))
    (finding (check battery-crank-voltage) (result sags) (sure ?s2&:(> ?s2 0.6)))
    (not (finding (check starter-cable-drop) (result high)))
    (not (finding (check crank-turn-by-hand) (result tight|locked))))
  =>
  (assert (weakens (check battery-rest-voltage) (by 0.6))))

(defrule reading-plug-gap-flat-gauge
  "[published navedtra-14273 p. 69] A worn electrode is hollow: a flat gauge bridges the hollow
   and reads the gap narrow. Use a wire gauge."
  (logical
    (finding (check plug-look) (result worn) (sure ?s1&:(> ?s1 0.4)))
    (finding (check plug-gap) (result right|narrow) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (weakens (check plug-gap) (by 0.5))))

(defrule reading-points-gap-pitted
  "[common-practice] On pitted points the gauge rides on the pip and the true gap is wider; dress
   or replace them, then set."
  (logical
    (finding (check points-look) (result pitted-or-oily) (sure ?s1&:(> ?s1 0.4)))
    (finding (check points-gap) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (weakens (check points-gap) (by 0.5))))

(defrule reading-float-level-heavy-float
  "[common-practice] A float that has taken fuel hangs low: its measured level means nothing
   until it is replaced."
  (logical
    (finding (check float-sinks) (result heavy-or-fuel-inside) (sure ?s1&:(> ?s1 0.4)))
    (finding (check float-level) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (weakens (check float-level) (by 0.7))))

(defrule reading-tester-passes-cracked-plug
  "[common-practice] The tester without the plug says nothing of a plug that breaks down under
   pressure; a cracked one passes every open test."
  (logical
    (finding (check spark-test) (result jumps) (sure ?s1&:(> ?s1 0.6)))
    (finding (check plug-look) (result bridged-or-cracked) (sure ?s2&:(> ?s2 0.4))))
  =>
  (assert (weakens (check spark-test) (by 0.3))))
