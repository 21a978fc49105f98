#!/bin/sh
# Speed of the diagnosis beside plain variable elimination and the Python script, in one run.
# From the project's folder: sh src/bench/diagnosis/run.sh
set -e
out=target/diagnosis-bench
mkdir -p "$out"
mvn -B -q -Pbench test-compile dependency:build-classpath -Dmdep.outputFile="$out/classpath" -Dmdep.includeScope=test
classpath="target/test-classes:target/classes:$(cat "$out/classpath")"
nproc; uptime; java -version 2>&1 | head -1; python3 --version
echo "narrow: 20 certain findings of at most 6 causes each, 4 of them present; time of the script:"
python3 src/bench/diagnosis/reference.py --plain --most-causes 6 --present 4 --cars 20 > "$out/narrow.jsonl"
echo "any: 20 certain findings whatever their causes, 8 of them present; time of the script:"
python3 src/bench/diagnosis/reference.py --plain --present 8 --cars 20 > "$out/any.jsonl"
java -Xmx3g -cp "$classpath" worthsaving.diagnosis.DiagnosisBench narrow any
java -Xmx3g -cp "$classpath" org.openjdk.jmh.Main DiagnosisBench.full_update -rf csv -rff "$out/full.csv"
java -Xmx3g -cp "$classpath" org.openjdk.jmh.Main DiagnosisBench -e full_update -p cars=narrow
