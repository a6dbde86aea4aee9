#!/usr/bin/env bash
# Figures of the window: whole starts, then frames, drags and the heap. Needs a display.
#   src/bench/window.sh [MINUTES] [CHAIR]     MINUTES of dragging, 10 without
set -euo pipefail
cd "$(dirname "$0")/../.."

minutes=${1:-10}
chair=${2:-models/harbour-armchair.json}
out=target/window-figures
mkdir -p "$out"
[ -e target/dryfit/lib/classes.jsa ] || mvn -q -B -ntp package -DskipTests
if [ -z "${CLASSPATH:-}" ]; then
  mvn -q -B -ntp test-compile dependency:build-classpath -Dmdep.outputFile="$out/path.txt"
  CLASSPATH=target/classes:target/test-classes:$(cat "$out/path.txt")
fi
export CLASSPATH
javac -d "$out/classes" src/bench/java/dryfit/view/WindowFigures.java src/bench/java/dryfit/view/WoodSeen.java

DRYFIT_STATE="$out/state" java -Djava.awt.headless=false -cp "$out/classes" dryfit.view.WoodSeen 9 \
  target/dryfit/dryfit window --until-shown "$chair"
java -Dprism.forceGPU=true -Dprism.verbose=true -cp "$out/classes:$CLASSPATH" dryfit.view.WindowFigures "$minutes" |
  grep -E 'Renderer|median|95 %|heap'
