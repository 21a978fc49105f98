#!/bin/sh
# Kills a process that writes into a casebook, a thousand times at random moments, and looks for every edit it had kept.
# From the project's folder: sh src/bench/reliability/kill.sh [kills] [seed]. Fails when an edit is missing.
set -e
mvn -B -Dstyle.color=never -Dtest=KillTest -Dworthsaving.kills="${1:-1000}" -Dworthsaving.kills.seed="${2:-}" test
