; What to do when the machine is sound and it is how it was used or set.
; Add a repair as a whole fact; check with: pullcord vet

(deffacts use-repairs "use: setting right and showing"
  (repair (id set-right-and-show) (name "set it right and show the owner") (minutes 10)
    (tools "the owner's book, or a card to write on")
    (steps "Set switch, lever, choke, tap, bar or load as it should be."
      "Start it yourself once, saying what you do."
      "Have the owner do it, twice, without help. Write it down for him."
      "Look why it could go wrong: stiff lever, lost mark, switch knocked in transport.")
    (cautions moving-parts stand-clear-tool crank-kickback carbon-monoxide interlock-never-bypass)
    (basis common-practice))
  (repair (id switch-to-run-and-show) (name "switch to run and show the owner") (minutes 5)
    (steps "Switch or key to run; work it to and fro a few times."
      "Start it yourself once, then have the owner do it, switching off and on between."
      "Look why it stood off: knocked in transport, lost mark, loose lever.")
    (cautions moving-parts stand-clear-tool crank-kickback carbon-monoxide)
    (basis common-practice))
  (repair (id make-interlock-and-show) (name "make the interlock and show the owner") (minutes 8)
    (tools "the owner's book, or a card to write on")
    (steps "Bar held home, or seat, brake and drive as the book says."
      "Start it yourself once, saying what you do; then the owner, twice, without help."
      "Let go, or rise from the seat: it must stop. If it starts only with force on bar or seat, the switch is next.")
    (cautions interlock-never-bypass moving-parts stand-clear-tool crank-kickback carbon-monoxide)
    (basis common-practice))
  (repair (id clear-flood-and-show) (name "clear the wet engine and show the owner") (minutes 20)
    (parts-cost 4) (parts "plug, if it will not dry or spark") (consumables "clean rag")
    (tools "plug socket" "rag")
    (steps "Tap shut if there is one; plug out, lead grounded well away from the hole."
      "Choke and throttle open, ten pulls with a rag by the hole; let it air ten minutes."
      "Dry or renew the plug; start without choke, throttle open."
      "Oil that smells of petrol is changed before it runs."
      "Have the owner start it by the book, cold and warm.") (off plug-boot plug)
    (cautions no-spark-near-fuel fuel-vapour spark-test-grounded crank-kickback hot-parts
      moving-parts carbon-monoxide plug-lead-off) (reuse "A wet plug that is otherwise good is dried and goes back.")
    (basis common-practice))
  (repair (id fill-oil-and-look-for-loss) (name "fill the oil and find where it went") (minutes 15)
    (parts-cost 6) (parts "engine oil of the maker's grade") (tools "funnel" "clean rag")
    (steps "On level ground, fill to the mark, not above."
      "Look for leaks below; ask when it was last filled; look at the smoke."
      "Start: if it still has no spark with the oil right, test the switch."
      "If it ran without oil, listen for a knock before the load goes on.")
    (cautions used-oil hot-parts carbon-monoxide moving-parts) (basis common-practice))
  (repair (id set-level-and-show) (name "stand it level and show the owner") (minutes 10)
    (steps "Stand it level on firm ground; oil at its mark." "Start, run under load."
      "Tell the owner the steepest slope in the book; block up the frame of a pump or generator.")
    (cautions lifting-tipping hot-parts carbon-monoxide) (basis common-practice))
  (repair (id match-load-and-show) (name "fit the work to the machine and show the owner")
    (minutes 15)
    (steps "Make sure tool, belt, filter and speed are right first."
      "Show the work in smaller bites: higher cut, two passes, shallower, slower feed."
      "Say what size of machine that work would want.")
    (cautions stand-clear-tool moving-parts noise-hearing eye-protection) (basis common-practice))
  (repair (id explain-altitude) (name "set it for high ground or explain the loss") (minutes 20)
    (parts-cost 8) (parts "high-ground jet, where the maker has one")
    (tools "screwdriver" "tachometer")
    (steps "Expect to lose about 3 to 3.5 % of the power for each 300 m of height."
      "Fit the maker's high-ground jet if there is one, and note on the machine that it is in."
      "Back on low ground the old jet goes in again, or it runs lean.")
    (cautions emission-sealed-screws two-stroke-lean-seizure carbon-monoxide fuel-vapour)
    (basis common-practice))
  (repair (id show-figures) (name "show the figures to the owner") (minutes 15)
    (tools "tachometer, gauge or meter as the machine wants")
    (steps "Measure speed, and pressure, voltage or cut, with the owner present."
      "Set the figures beside the book, and write them on the ticket."
      "Say plainly what it can and cannot do; no parts are fitted.")
    (cautions moving-parts carbon-monoxide noise-hearing) (basis common-practice))
)
