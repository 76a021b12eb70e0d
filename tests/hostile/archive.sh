#!/bin/bash
# archive.sh - the rule engine's library as we link it reaches nothing outside but through
# our guard: what it still calls by itself is on the list below, which is short and harmless.
set -u
archive="$PULLCORD_BUILD/libclips-guarded.a"
[ -f "$archive" ] || { echo "no $archive"; exit 1; }

# Arithmetic, text, and the buffered output to files that only guard_fopen could have opened.
harmless="_GLOBAL_OFFSET_TABLE_ __ctype_b_loc __errno_location __isoc99_sscanf acos asin atan atof atoi
ceil clearerr clock cos cosh exp fclose fflush fgets floor fprintf fputc fputs fread fseek ftell fwrite
getc log log10 longjmp memcpy memmove memset pow printf putc puts rand sin sinh sprintf sqrt srand stdin
stdout strcat strcmp strcpy strlen strncat strncmp strncpy strtod strtoll tanh tolower toupper ungetc
vsprintf
__stack_chk_fail __memcpy_chk __memset_chk __sprintf_chk __strcpy_chk __strcat_chk __fprintf_chk __printf_chk
__vsprintf_chk __strncpy_chk __strncat_chk __isoc23_sscanf __isoc23_strtoll" # the same, hardened builds

calls=$(nm -u "$archive" 2>/dev/null | awk '$1 == "U" { print $2 }' | sort -u)
defines=$(nm --defined-only "$archive" 2>/dev/null | awk 'NF == 3 { print $3 }' | sort -u)
outside=$(comm -23 <(echo "$calls") <(echo "$defines"))
[ "$(echo "$outside" | wc -l)" -gt 20 ] || { echo "nm says nothing about $archive"; exit 1; }

bad=0
guarded=0
for name in $outside; do
  case " $(echo $harmless) " in *" $name "*) continue ;; esac
  case $name in guard_*) guarded=$((guarded + 1)); continue ;; esac
  echo "the library calls $name"
  bad=1
done
for name in malloc free exit fopen remove rename setlocale EvaluateExpression RemoveLogicalSupport; do
  echo "$outside" | grep -qx "guard_$name" || { echo "nothing calls guard_$name: it was not renamed"; bad=1; }
done
if ! echo "$defines" | grep -qx EvaluateExpression; then
  echo "EvaluateExpression lost its name"
  bad=1
fi
if echo "$defines" | grep -qx main; then
  echo "the archive still holds a main() of its own"
  bad=1
fi
[ $bad = 0 ] && echo "guarded: $guarded calls"
exit $bad
