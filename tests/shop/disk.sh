#!/usr/bin/env bash
# A disk that is full, and one that can only be read: both are said, and nothing that was kept
# is lost. On a small disk of its own where this user may have one, else with a limit on the
# size of files.
if [ "${1-}" != inside ]; then
  for way in "unshare --mount" "unshare --mount --map-root-user"; do
    $way true 2> /dev/null && exec $way -- bash "$0" inside
  done
fi
. "$(dirname "$0")/../cli/lib.sh"
disk=$work/disk
mkdir "$disk"
export XDG_STATE_HOME=$disk/state

by_limit() { # no disk of its own: files may not grow beyond what they are
  local blocks
  "$PULLCORD" job open tiller "starts then dies" > /dev/null || exit 1
  "$PULLCORD" job export --all > "$work/before"
  blocks=$(($(stat -c %s "$XDG_STATE_HOME/pullcord/jobs.db") / 1024))
  for _ in 1 2 3; do
    out=$( (trap '' XFSZ; ulimit -f "$blocks"; for i in $(seq 40); do
      "$PULLCORD" job add last note "$(head -c 3000 /dev/zero | tr '\0' x) $i" || exit; done) 2>&1)
    says "Nothing that was kept before is lost"
  done
  ends_with 0 "$PULLCORD" job export --all
  case $out in "$(head -c 300 "$work/before")"*) ;; *) bad=$((bad + 1)); echo "what was kept is not there" ;; esac
  finish
}

mount -t tmpfs -o size=700k tmpfs "$disk" 2> /dev/null || by_limit
trap 'umount "$disk"; rm -rf "$work"' EXIT
fill() { cat /dev/zero > "$disk/filler" 2> /dev/null; }

ends_with 0 "$PULLCORD" job open tiller "starts then dies" --owner blue
ends_with 0 "$PULLCORD" job add last spark-test jumps
"$PULLCORD" job export --all > "$work/before"

# full: said, with its status, and what was kept is as it was
fill
ends_with 74 "$PULLCORD" job add last note this has no room
says "Nothing that was kept before is lost"
printf '{"pullcord":"job-1","id":"0000000000000000000","opened":5,"entries":[]}\n' > "$work/other"
ends_with 74 "$PULLCORD" job import "$work/other"
rm "$disk/filler"
"$PULLCORD" job export --all > "$work/after"
cmp -s "$work/before" "$work/after" || { bad=$((bad + 1)); echo "a full disk changed the store"; }

# full in the middle of a conversation: it goes on, and keeps the entry when there is room again
mkfifo "$work/in"
"$PULLCORD" < "$work/in" > "$work/log" 2>&1 &
pid=$!
exec 3> "$work/in"
log_says() {
  for _ in $(seq 400); do grep -q -- "$1" "$work/log" && return; sleep 0.1; done
  bad=$((bad + 1)); echo "never said: $1"; cat "$work/log"
}
printf 'yes\n' >&3
log_says "bench>"
fill
printf 'compression 88 psi\n' >&3
log_says "NOT KEPT"
rm "$disk/filler"
printf 'note room again\nquit\n' >&3
exec 3>&-
wait "$pid" || { bad=$((bad + 1)); echo "the conversation ended with an error"; }
ends_with 0 "$PULLCORD" job show last
says "88 psi"
says "room again"

# full to the end: the status and the words say that the last entries are lost
printf 'yes\n' > "$work/lines"
fill
out=$( (cat "$work/lines"; sleep 0.3; printf 'plug-gap 0.7 mm\nquit\n') | "$PULLCORD" 2>&1) && {
  bad=$((bad + 1)); echo "entries were lost with status 0"; }
rm "$disk/filler"

# only to be read: lists and exports go on, writing is refused, nothing is lost
"$PULLCORD" job export --all > "$work/before"
mount -o remount,ro "$disk"
ends_with 77 "$PULLCORD" job add last note nothing can be written
says "can only be read"
ends_with 77 "$PULLCORD" < /dev/null
ends_with 0 "$PULLCORD" job list
says "tiller"
ends_with 0 "$PULLCORD" job backup "$work/copy.db"
ends_with 0 "$PULLCORD" job export --all --to "$work/after"
mount -o remount,rw "$disk"
cmp -s "$work/before" "$work/after" || { bad=$((bad + 1)); echo "a disk that can only be read shows something else"; }
finish
