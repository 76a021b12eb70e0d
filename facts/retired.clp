; Ids that were used once and are not to be used again, with what took their place. Never take a
; line out. To add one: id, replaced-by (an id, or nothing), why. Check with: pullcord vet

(deffacts retired-ids "ids no longer used"
  (retired (id plug-wet-flooded) (replaced-by engine-flooded)
    (why "One trouble under two names: the wet plug is the flooded engine seen at the plug."))
  (retired (id clear-flooded-cylinder) (replaced-by clear-flooding)
    (why "The same work written twice."))
)
