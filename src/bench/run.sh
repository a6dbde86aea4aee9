#!/usr/bin/env bash
# Runs the benchmarks and their peers and prints one table. See BENCHMARKS.md.
#   src/bench/run.sh [PATTERN]   PATTERN chooses JMH benchmarks, e.g. Solid, Chair or Growth; all without it
set -euo pipefail
cd "$(dirname "$0")"

pattern=${1:-.}
out=target/bench
mvn -q -B -ntp compile
rm -rf "$out"
mkdir -p "$out/solids"

run() { mvn -q -B -ntp exec:exec "-Dmain.class=$1" "-Dmain.arguments=$2"; }

run dryfit.bench.Right ""
run dryfit.bench.Dump "$out/solids 0"
jmh() { # NAME PATTERN ITERATIONS
  run org.openjdk.jmh.Main "$2 -jvmArgsAppend -Ddryfit.root=../.. $3 -to 60s -rf json -rff $out/$1.json -o $out/$1.txt"
}
jmh jmh "$pattern -e ChairBenchmark.change" "-wi 3 -w 1s -i 3 -r 1s"
# An edit is warm only after thousands of them.
case $pattern in
  . | Chair*) jmh change "ChairBenchmark.change -p engine=exact" "-wi 10 -w 12s -i 5 -r 3s" ;;
esac

if [ ! -d peer/node_modules/manifold-3d ]; then
  (cd peer && npm install --silent --no-audit --no-fund)
fi
node peer/time.mjs "$out/solids" >"$out/peer.jsonl"
node peer/table.mjs "$out"/*.json "$out/peer.jsonl"
