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
run org.openjdk.jmh.Main \
  "$pattern -jvmArgsAppend -Ddryfit.root=../.. -wi 3 -w 1s -i 3 -r 1s -to 60s -rf json -rff $out/jmh.json -o $out/jmh.txt"

if [ ! -d peer/node_modules/manifold-3d ]; then
  (cd peer && npm install --silent --no-audit --no-fund)
fi
node peer/time.mjs "$out/solids" >"$out/peer.jsonl"
node peer/table.mjs "$out/jmh.json" "$out/peer.jsonl"
