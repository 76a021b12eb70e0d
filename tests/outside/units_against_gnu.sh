#!/bin/sh
# units_against_gnu.sh [units_dump] - holds every factor of src/units against GNU units.
#
# Without the path of a built units_dump it builds one (CC, CFLAGS). Every unit of the table
# must be listed below and agree to 1e-9. Status 0: all agree; 1: some do not; 77: GNU units
# is not installed.
set -eu

here=$(cd "$(dirname "$0")" && pwd)
top=$(cd "$here/../.." && pwd)

command -v units >/dev/null 2>&1 || { echo "GNU units is not installed: not compared"; exit 77; }

work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
HOME=$work
LC_ALL=C.UTF-8
export HOME LC_ALL

dump=${1:-}
if [ -z "$dump" ]; then
  dump=$work/units_dump
  # shellcheck disable=SC2086
  ${CC:-cc} -std=c11 -D_GNU_SOURCE ${CFLAGS:-} -I"$top/src" -o "$dump" "$here/units_dump.c" \
    "$top"/src/units/*.c "$top"/src/base/*.c -lm
fi
tab=$(printf '\t')

# GNU's name for the base of each quantity.
base_of() {
  case $1 in
    pressure) echo Pa ;;
    length) echo m ;;
    resistance) echo ohm ;;
    voltage) echo V ;;
    current) echo A ;;
    temperature) echo K ;;
    speed) echo radian/s ;;
    frequency) echo Hz ;;
    volume) echo m^3 ;;
    torque) echo 'N m' ;;
    time) echo s ;;
    ratio) echo 1 ;;
    mass) echo kg ;;
    flow) echo m^3/s ;;
    angle) echo radian ;;
    *) return 1 ;;
  esac
}

# GNU's name for each unit of ours.
gnu_of() {
  case $1 in
    'kgf/cm2') echo 'kgf/cm^2' ;;
    'um') echo micrometer ;;
    'kohm') echo kiloohm ;;
    'Mohm') echo megaohm ;;
    'mohm') echo milliohm ;;
    'degC') echo degcelsius ;;
    'degF') echo degfahrenheit ;;
    'rpm') echo revolution/minute ;;
    'in3') echo 'in^3' ;;
    'US fl oz') echo usfluidounce ;;
    'UK fl oz') echo brfluidounce ;;
    'US gal') echo usgallon ;;
    'UK gal') echo brgallon ;;
    'US qt') echo usquart ;;
    'UK qt') echo brquart ;;
    'US pt') echo uspint ;;
    'UK pt') echo brpint ;;
    'tsp') echo usteaspoon ;;
    'tbsp') echo ustablespoon ;;
    'in-lb') echo 'inch lbf' ;;
    'ft-lb') echo 'foot lbf' ;;
    'N.m') echo 'newton meter' ;;
    'kgf.m') echo 'kgf m' ;;
    'kgf.cm') echo 'kgf cm' ;;
    '%') echo percent ;;
    ':1') echo 1 ;;
    'US gal/min') echo usgallon/min ;;
    'UK gal/min') echo brgallon/min ;;
    'US gal/h') echo usgallon/hour ;;
    'UK gal/h') echo brgallon/hour ;;
    'L/h') echo liter/hour ;;
    'h') echo hour ;;
    'month') echo '365|12 day' ;;
    'year') echo '365 day' ;;
    'deg') echo degree ;;
    'rad') echo radian ;;
    'oz') echo ounce ;;
    psi | kPa | Pa | MPa | bar | mbar | inHg | inH2O | mmHg | atm) echo "$1" ;;
    in | thou | mm | cm | m | ft | ohm | V | mV | kV | A | mA | K | Hz | mL | L) echo "$1" ;;
    s | ms | min | day | week | 1 | g | kg | lb | mL/min | L/min | turn) echo "$1" ;;
    *) return 1 ;;
  esac
}

# near ours theirs what: do they agree to 1e-9?
near() {
  awk -v a="$1" -v b="$2" -v what="$3" 'BEGIN {
    d = a - b; if (d < 0) d = -d
    m = b < 0 ? -b : b; if (m == 0) m = 1
    if (!(d <= 1e-9 * m)) { printf "%s: ours %s, GNU units %s\n", what, a, b; exit 1 }
  }'
}

bad=0
count=0
"$dump" >"$work/table"
while IFS=$tab read -r name quantity factor offset basis; do
  count=$((count + 1))
  if ! theirs=$(gnu_of "$name") || ! base=$(base_of "$quantity"); then
    echo "$name ($quantity, $basis): not listed in this test"
    bad=$((bad + 1))
    continue
  fi
  value=$(units -t -o '%.17g' "$theirs" "$base" </dev/null) || value=none
  near "$factor" "$value" "$name" || bad=$((bad + 1))
  case $name in
    degC) want=$(units -t -o '%.17g' 'tempC(0)' K) ;;
    degF) want=$(units -t -o '%.17g' 'tempF(0)' K) ;;
    *) want=0 ;;
  esac
  near "$offset" "$want" "zero of $name" || bad=$((bad + 1))
done <"$work/table"

# Temperatures through both scales, as they are used.
for t in -40 0 20 68 212 1200; do
  ours=$("$dump" "$t" degF degC)
  near "$ours" "$(units -t -o '%.17g' "tempF($t)" tempC)" "$t degF in degC" || bad=$((bad + 1))
  ours=$("$dump" "$t" degC degF)
  near "$ours" "$(units -t -o '%.17g' "tempC($t)" tempF)" "$t degC in degF" || bad=$((bad + 1))
done

echo "$count units compared with $(units --version | head -n 1), $bad differ"
[ "$count" -gt 0 ] && [ "$bad" -eq 0 ]
