# lib.sh - what the scripts of this folder share: a state folder of their own, and checks
# that say what was expected and what came.
set -u
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
export XDG_STATE_HOME="$work/state" XDG_DATA_HOME="$work/data" LC_ALL=C.UTF-8
unset NO_COLOR
bad=0

# bench LINE... - one conversation; its output goes to $out
bench() {
  out=$(printf '%s\n' "$@" | "$PULLCORD" 2>&1)
}

# says TEXT - the last output holds the text
says() {
  case $out in
    *"$1"*) ;;
    *) bad=$((bad + 1)); printf 'expected to read: %s\nbut it said:\n%s\n\n' "$1" "$out" ;;
  esac
}

# silent_on TEXT - the last output does not hold the text
silent_on() {
  case $out in
    *"$1"*) bad=$((bad + 1)); printf 'expected not to read: %s\nbut it said:\n%s\n\n' "$1" "$out" ;;
  esac
}

# ends_with STATUS COMMAND... - the command ends so; its output goes to $out
ends_with() {
  local want=$1 got=0
  shift
  out=$("$@" 2>&1) || got=$?
  if [ "$got" != "$want" ]; then
    bad=$((bad + 1)); printf 'expected status %s of: %s\nbut it was %s:\n%s\n\n' "$want" "$*" "$got" "$out"
  fi
}

finish() {
  [ "$bad" = 0 ] && echo "all as expected" && exit 0
  echo "$bad not as expected"
  exit 1
}
