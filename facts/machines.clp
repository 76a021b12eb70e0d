; Kinds of machine and what is usual on them. has: taken as true until told otherwise; may: on
; some, so it stays open until told. A feature in neither list is taken as lacking. worth: shop
; minutes that a sound used one is worth (an estimate: your own prices come first).

(deffacts machine-classes "kinds of machine"
  (machine-class (id walk-behind-mower) (name "walk-behind mower")
    (also-called "lawn mower" "push mower" "rotary mower" "self-propelled mower")
    (has four-stroke ohv float-bowl fixed-jet primer governor-flyweight gravity-feed
      solid-state splash-oil recoil vented-cap breather-tube foam-filter plastic-tank
      blade-on-crankshaft mowing-deck interlock-bar flywheel-brake)
    (may side-valve ohc steel-tank fuel-tap inline-filter pickup-filter bowl-drain
      carburettor-o-ring paper-filter decompression resistor-plug spark-arrester
      mixture-screws governor-air-vane suction-lift tank-on-carburettor manual-choke
      auto-choke-heat auto-choke-air-vane belt-drive electric-start battery breaker-points
      two-stroke)
    (worth 240) (basis estimate))
  (machine-class (id ride-on-mower) (name "ride-on mower")
    (also-called "riding mower" "lawn tractor" "garden tractor")
    (has four-stroke ohv float-bowl fixed-jet manual-choke governor-flyweight pulse-pump
      solid-state pressure-oil electric-start battery charging vented-cap breather-tube
      paper-filter plastic-tank inline-filter interlock-seat interlock-drive belt-drive
      afterfire-solenoid cutting-head mowing-deck)
    (may side-valve ohc steel-tank fuel-tap pickup-filter bowl-drain carburettor-o-ring
      foam-filter decompression resistor-plug spark-arrester mixture-screws splash-oil
      gravity-feed tank-vent-valve auto-choke-heat recoil hydraulic-end battery-ignition
      gearbox)
    (worth 900) (basis estimate))
  (machine-class (id tiller) (name "tiller")
    (also-called "rotavator" "cultivator" "rototiller")
    (has four-stroke ohv float-bowl fixed-jet manual-choke governor-flyweight gravity-feed
      solid-state splash-oil recoil vented-cap breather-tube paper-filter tines belt-drive
      gearbox fuel-tap)
    (may side-valve steel-tank plastic-tank inline-filter pickup-filter bowl-drain
      carburettor-o-ring foam-filter decompression resistor-plug spark-arrester
      mixture-screws oil-cutout breaker-points interlock-bar two-stroke diaphragm)
    (worth 300) (basis estimate))
  (machine-class (id pressure-washer) (name "pressure washer")
    (also-called "power washer" "jet washer")
    (has four-stroke ohv float-bowl fixed-jet manual-choke governor-flyweight gravity-feed
      solid-state splash-oil recoil vented-cap breather-tube paper-filter pressure-pump-end
      fuel-tap plastic-tank oil-cutout)
    (may side-valve ohc steel-tank inline-filter pickup-filter bowl-drain carburettor-o-ring
      foam-filter decompression resistor-plug spark-arrester mixture-screws shielded-boot
      primer electric-start battery)
    (worth 240) (basis estimate))
  (machine-class (id portable-generator) (name "portable generator")
    (also-called "generator" "genset" "inverter")
    (has four-stroke ohv float-bowl fixed-jet manual-choke governor-flyweight gravity-feed
      solid-state splash-oil recoil vented-cap breather-tube paper-filter generator-end
      fuel-tap steel-tank oil-cutout resistor-plug)
    (may side-valve ohc plastic-tank inline-filter pickup-filter bowl-drain carburettor-o-ring
      foam-filter decompression spark-arrester mixture-screws shielded-boot electric-start
      battery charging inverter-generator auto-choke-heat afterfire-solenoid tank-vent-valve
      pulse-pump gas-fuel)
    (worth 480) (basis estimate))
  (machine-class (id water-pump) (name "water pump")
    (also-called "trash pump" "irrigation pump")
    (has four-stroke ohv float-bowl fixed-jet manual-choke governor-flyweight gravity-feed
      solid-state splash-oil recoil vented-cap breather-tube paper-filter water-pump-end
      fuel-tap oil-cutout)
    (may side-valve steel-tank plastic-tank inline-filter pickup-filter bowl-drain
      carburettor-o-ring foam-filter decompression resistor-plug spark-arrester
      mixture-screws shielded-boot two-stroke diaphragm breaker-points)
    (worth 300) (basis estimate))
  (machine-class (id snow-thrower) (name "snow thrower")
    (also-called "snow blower" "snowblower")
    (has four-stroke ohv float-bowl fixed-jet manual-choke governor-flyweight gravity-feed
      solid-state splash-oil recoil vented-cap breather-tube auger impeller-fan belt-drive
      fuel-tap electric-start gearbox)
    (may side-valve steel-tank plastic-tank inline-filter pickup-filter bowl-drain
      carburettor-o-ring foam-filter decompression resistor-plug spark-arrester
      mixture-screws two-stroke interlock-bar shielded-boot)
    (worth 480) (basis estimate))
  (machine-class (id log-splitter) (name "log splitter")
    (also-called "wood splitter")
    (has four-stroke ohv float-bowl fixed-jet manual-choke governor-flyweight gravity-feed
      solid-state splash-oil recoil vented-cap breather-tube paper-filter hydraulic-end
      fuel-tap)
    (may side-valve steel-tank plastic-tank inline-filter pickup-filter bowl-drain
      carburettor-o-ring foam-filter decompression resistor-plug spark-arrester
      mixture-screws oil-cutout)
    (worth 480) (basis estimate))
  (machine-class (id chipper) (name "chipper")
    (also-called "shredder" "chipper shredder")
    (has four-stroke ohv float-bowl fixed-jet manual-choke governor-flyweight gravity-feed
      solid-state splash-oil recoil vented-cap breather-tube paper-filter chipping-disc
      fuel-tap oil-cutout belt-drive)
    (may side-valve steel-tank plastic-tank inline-filter pickup-filter bowl-drain
      carburettor-o-ring foam-filter decompression resistor-plug spark-arrester
      mixture-screws electric-start battery centrifugal-clutch interlock-drive impeller-fan)
    (worth 480) (basis estimate))
  (machine-class (id chainsaw) (name "chainsaw")
    (also-called "chain saw" "saw")
    (has two-stroke ported diaphragm mixture-screws manual-choke no-governor pulse-pump
      solid-state premix recoil pickup-filter tank-vent-valve plastic-tank purge-bulb
      foam-filter centrifugal-clutch spark-arrester rubber-intake cutting-chain)
    (may fixed-jet reed-valve decompression paper-filter primer governor-air-vane)
    (worth 240) (basis estimate))
  (machine-class (id string-trimmer) (name "string trimmer or brushcutter")
    (also-called "strimmer" "brushcutter" "weed whacker" "line trimmer")
    (has two-stroke ported diaphragm mixture-screws manual-choke no-governor pulse-pump
      solid-state premix recoil pickup-filter tank-vent-valve plastic-tank purge-bulb
      foam-filter centrifugal-clutch spark-arrester rubber-intake cutting-head)
    (may fixed-jet reed-valve decompression paper-filter primer four-stroke ohv float-bowl
      gearbox vented-cap)
    (worth 150) (basis estimate))
  (machine-class (id blower) (name "leaf blower")
    (also-called "leaf blower" "backpack blower")
    (has two-stroke ported diaphragm mixture-screws manual-choke no-governor pulse-pump
      solid-state premix recoil pickup-filter tank-vent-valve plastic-tank purge-bulb
      foam-filter spark-arrester rubber-intake impeller-fan)
    (may fixed-jet reed-valve decompression paper-filter primer four-stroke ohv vented-cap)
    (worth 180) (basis estimate))
  (machine-class (id hedge-trimmer) (name "hedge trimmer")
    (also-called "hedge cutter")
    (has two-stroke ported diaphragm mixture-screws manual-choke no-governor pulse-pump
      solid-state premix recoil pickup-filter tank-vent-valve plastic-tank purge-bulb
      foam-filter centrifugal-clutch spark-arrester rubber-intake cutting-head gearbox)
    (may fixed-jet reed-valve decompression paper-filter primer vented-cap)
    (worth 180) (basis estimate))
  (machine-class (id cut-off-saw) (name "cut-off saw")
    (also-called "disc cutter" "concrete saw" "stone saw")
    (has two-stroke ported diaphragm mixture-screws manual-choke no-governor pulse-pump
      solid-state premix recoil pickup-filter tank-vent-valve plastic-tank purge-bulb
      foam-filter centrifugal-clutch spark-arrester rubber-intake cutting-head belt-drive
      paper-filter decompression)
    (may fixed-jet reed-valve primer shielded-boot)
    (worth 420) (basis estimate))
)
