#!/usr/bin/env bash
# Fails when an #include or a link breaks the layers: arrows go down only.
# Usage: check_layers.sh [folder of the sources]   (default: src of this checkout)
#        check_layers.sh --self-test               plants bad includes and expects to catch each
set -u
here=$(cd "$(dirname "${BASH_SOURCE[0]}")" && pwd)

# What each layer may use, itself aside. A layer that is not listed here is a mistake.
declare -A may=(
  [base]=""
  [units]="base"
  [arith]="units base"
  [model]="units base"
  [knowledge]="model units base"
  [engine]="knowledge model arith units base"
  [weigh]="knowledge model units base"
  [plan]="weigh engine knowledge model units base"
  [assess]="plan weigh engine knowledge model units base"
  [simulate]="assess plan weigh engine knowledge model units base"
  [json]="base"
  [shop]="assess plan weigh engine knowledge model units base json"
  [report]="assess plan weigh engine knowledge model arith units base json"
  [practice]="simulate assess plan weigh engine knowledge model units base json"
  [cli]="practice report shop simulate assess plan weigh engine knowledge model arith units base json"
  [web]="practice report shop simulate assess plan weigh engine knowledge model arith units base json")

# Who alone may include a foreign header: pattern, layer.
only=("clips/ engine" "clips.h engine" "cjson/ json" "cJSON.h json" "sqlite3 shop" "hpdf.h report" "editline/ cli" "histedit.h cli")

wrong=0
complain() {
  printf '%s\n' "$1"
  wrong=$((wrong + 1))
}

allowed() { # layer used
  [[ $1 == "$2" || " ${may[$1]} " == *" $2 "* ]]
}

check_own() { # place layer path-in-quotes
  local used=${3%%/*}

  if [[ $3 == *..* || $3 != */* ]]; then
    complain "$1: \"$3\" is not written as \"layer/file.h\""
  elif [[ $3 != *.h ]]; then
    complain "$1: \"$3\" is not a header"
  elif [[ ! -v may[$used] ]]; then
    complain "$1: \"$3\" is of no known layer"
  elif ! allowed "$2" "$used"; then
    complain "$1: $2 must not use $used (\"$3\")"
  fi
}

check_foreign() { # place layer header
  local rule

  for rule in "${only[@]}"; do
    if [[ $3 == ${rule% *}* && $2 != "${rule#* }" ]]; then
      complain "$1: only ${rule#* } may include <$3>"
    fi
  done
}

check_file() { # file layer
  local line text

  while IFS=: read -r line text; do
    if [[ $text =~ include[[:space:]]*\"([^\"]+)\" ]]; then
      check_own "$1:$line" "$2" "${BASH_REMATCH[1]}"
      check_foreign "$1:$line" "$2" "${BASH_REMATCH[1]}"
    elif [[ $text =~ include[[:space:]]*\<([^\>]+)\> ]]; then
      check_foreign "$1:$line" "$2" "${BASH_REMATCH[1]}"
      [[ ! -v may[${BASH_REMATCH[1]%%/*}] || ! -f $top/${BASH_REMATCH[1]} ]] ||
        complain "$1:$line: our own header <${BASH_REMATCH[1]}> belongs in quotes"
    else
      complain "$1:$line: this include cannot be read: $text"
    fi
  done < <(grep -nE '^[[:space:]]*#[[:space:]]*include' "$1")
}

# The USES of each pullcord_layer() in CMakeLists.txt are held to the same table.
check_links() {
  local layer used

  while read -r layer used; do
    if [[ ! -v may[$layer] ]]; then
      complain "CMakeLists.txt: $layer is of no known layer"
      continue
    fi
    for used in $used; do
      used=${used#pullcord_}
      allowed "$layer" "$used" || complain "CMakeLists.txt: $layer must not be linked with $used"
    done
  done < <(tr '\n' ' ' <"$top/CMakeLists.txt" | grep -oE 'pullcord_layer\([^()]*USES[^()]*\)' |
    sed -E 's/pullcord_layer\(([a-z_]+).*USES(.*)\)/\1\2/')
}

check_all() {
  local file layer files=0

  while IFS= read -r file; do
    layer=${file#"$top"/}
    if [[ $layer != */* ]]; then
      complain "$file: lies in no layer"
      continue
    fi
    layer=${layer%%/*}
    if [[ ! -v may[$layer] ]]; then
      complain "$file: folder $layer is no known layer"
      continue
    fi
    files=$((files + 1))
    check_file "$file" "$layer"
  done < <(find "$top" \( -name '*.c' -o -name '*.h' -o -name '*.h.in' \) | LC_ALL=C sort)
  [[ ! -f $top/CMakeLists.txt ]] || check_links
  ((files > 0)) || complain "$top: no sources found"
  printf '%d files looked through, %d includes or links against the layers\n' "$files" "$wrong"
  ((wrong == 0))
}

# Plants one mistake, expects the script to fail and to say so in these words.
caught=0 missed=0
plant() { # file text expected-words
  local tree out

  tree=$(mktemp -d)
  mkdir -p "$tree"/{base,units,engine,weigh,json,cli,report,shop}
  printf '#include <stdio.h>\n' >"$tree/base/err.h"
  printf '#include "base/err.h"\n#include <clips/clips.h>\n' >"$tree/engine/engine.c"
  mkdir -p "$(dirname "$tree/$1")"
  printf '%b\n' "$2" >>"$tree/$1"
  out=$(bash "$here/check_layers.sh" "$tree")
  if [[ $? -ne 0 && $out == *"$3"* ]]; then
    caught=$((caught + 1))
  else
    missed=$((missed + 1))
    printf 'not caught in %s: %s\n%s\n' "$1" "$2" "$out"
  fi
  rm -rf "$tree"
}

self_test() {
  local tree

  plant base/a.c '#include "units/parse.h"' 'base must not use units'
  plant weigh/a.c '#include "engine/engine.h"' 'weigh must not use engine'
  plant engine/a.c '  #  include "plan/next.h"' 'engine must not use plan'
  plant report/a.h '#include "shop/words.h"' 'report must not use shop'
  plant shop/a.c '#include "cli/commands.h"' 'shop must not use cli'
  plant units/a.c '#include "json/json.h"' 'units must not use json'
  plant cli/a.c '#include <clips/clips.h>' 'only engine may include'
  plant cli/a.c '#include "clips.h"' 'only engine may include'
  plant cli/a.c '#include <cjson/cJSON.h>' 'only json may include'
  plant report/a.c '#include <sqlite3.h>' 'only shop may include'
  plant cli/a.c '#include <hpdf.h>' 'only report may include'
  plant base/a.c '#include <editline/readline.h>' 'only cli may include'
  plant units/a.c '#include "../base/err.h"' 'is not written as'
  plant units/a.c '#include <base/err.h>' 'belongs in quotes'
  plant units/a.c '#include "base/err.c"' 'is not a header'
  plant units/a.c '#include HEADER' 'cannot be read'
  plant gadget/a.c 'int x;' 'no known layer'
  plant a.c 'int x;' 'lies in no layer'
  plant CMakeLists.txt 'pullcord_layer(weigh SOURCES a.c\n  USES pullcord_model pullcord_engine)' \
    'weigh must not be linked with engine'
  tree=$(mktemp -d)
  mkdir -p "$tree/base" "$tree/shop"
  printf '#include <stdio.h>\n' >"$tree/base/a.c"
  printf '#include "base/a.h"\n#include "json/json.h"\n#include <sqlite3.h>\n' >"$tree/shop/a.c"
  if ! bash "$here/check_layers.sh" "$tree"; then
    missed=$((missed + 1))
    printf 'a sound tree was refused\n'
  fi
  rm -rf "$tree/base" "$tree/shop"
  if bash "$here/check_layers.sh" "$tree" >/dev/null; then
    missed=$((missed + 1))
    printf 'an empty tree was passed\n'
  fi
  rm -rf "$tree"
  printf '%d planted mistakes caught, %d missed\n' "$caught" "$missed"
  ((missed == 0))
}

if [[ ${1-} == --self-test ]]; then
  self_test
else
  top=${1:-$here/../../src}
  top=$(cd "$top" && pwd) || exit 1
  check_all
fi
