#!/usr/bin/env bash
# How long a whole `fit` process takes, against a bare JVM that only loads the same classes and prints a line.
#   src/bench/start.sh [CHAIR] [ROUNDS]
# All are started in turn, the third as target/dryfit/dryfit starts it, from its jar and the classes kept beside it. The table has
# medians, of the wall clock and of processor time (user and system).
set -euo pipefail
cd "$(dirname "$0")/../.."

chair=${1:-models/harbour-armchair.json}
rounds=${2:-15}
out=target/start
mkdir -p "$out"
[ -e target/dryfit/lib/classes.jsa ] || mvn -q -B -ntp package -DskipTests
if [ -z "${CLASSPATH:-}" ]; then
  mvn -q -B -ntp compile dependency:build-classpath -Dmdep.outputFile="$out/path.txt"
  CLASSPATH=target/classes:$(cat "$out/path.txt")
fi
export CLASSPATH
javac -d "$out/classes" src/bench/java/dryfit/bench/BareStart.java
flags=${JAVA_FLAGS:-}

# shellcheck disable=SC2086
java $flags "-Xlog:class+load:file=$out/load.txt:none" dryfit.cli.Main fit "$chair" >"$out/report.txt" || [ $? = 4 ]
# Classes that the JVM spins as it runs have no file to be loaded from.
sed -n 's/ source: .*//p' "$out/load.txt" | grep -v -e '0x' -e '\$\$' -e 'LambdaForm' -e '\$Proxy' -e 'Species_' -e 'GeneratedConstructor' -e 'GeneratedMethod' >"$out/classes.txt"

once() { # NAME COMMAND...
  local name=$1 begin end
  shift
  begin=$(date +%s%N)
  TIMEFORMAT='%U %S'
  { time "$@" >"$out/said.txt"; } 2>"$out/time.txt" || true
  end=$(date +%s%N)
  echo "$name $(((end - begin) / 1000000)) $(tail -1 "$out/time.txt")" >>"$out/times.txt"
}

rm -f "$out/times.txt"
for _ in $(seq "$rounds"); do
  # shellcheck disable=SC2086
  once bare java $flags -cp "$out/classes:$CLASSPATH" dryfit.bench.BareStart "$out/classes.txt"
  # shellcheck disable=SC2086
  once fit java $flags dryfit.cli.Main fit "$chair"
  once launched target/dryfit/dryfit fit "$chair"
done

median() { # NAME FIELDS
  awk -v name="$1" "\$1 == name { print $2 }" "$out/times.txt" | sort -n | awk '{ v[NR] = $1 } END { print v[int((NR + 1) / 2)] }'
}
for what in "wall '\$2'" "processor '(\$3+\$4)*1000'"; do
  title=${what%% *}
  field=${what#* }
  field=${field//\'/}
  bare=$(median bare "${field//\\/}")
  fit=$(median fit "${field//\\/}")
  launched=$(median launched "${field//\\/}")
  awk -v t="$title" -v b="$bare" -v f="$fit" -v l="$launched" 'BEGIN {
    printf "%-10s bare JVM %5.0f ms   fit %5.0f ms, %.2f times   launched %5.0f ms, %.2f times\n", t, b, f, f / b, l, l / b
  }'
done
