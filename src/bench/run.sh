#!/bin/sh
# What the core costs, each beside a named alternative in the same run; prints Markdown and keeps the figures in
# target/bench. From the project's folder:
#   sh src/bench/run.sh                    judgement, posterior and start
#   sh src/bench/run.sh judgement          judging a car beside numpy; moves and tornado beside drawing anew
#   sh src/bench/run.sh posterior          beside plain elimination and a Python script
#   sh src/bench/run.sh start              from a command or a click to something on the screen, beside bare ones
#   sh src/bench/run.sh lots [ROWS ...]    scoring by one and two processes, ranking long lots
#   sh src/bench/run.sh fit [ROWS ...]     price models beside scikit-learn and XGBoost
# Needs Debian's python3-sklearn and python3-pandas, and xvfb for start.
set -e
cd "$(dirname "$0")/../.."
out=target/bench
python=${PYTHON:-/usr/bin/python3}
mkdir -p "$out"
mvn -B -q -Pbench test-compile dependency:build-classpath -Dmdep.outputFile="$out/classpath" -Dmdep.includeScope=test
classes="target/test-classes:target/classes:$(cat "$out/classpath")"
echo "$(nproc) cores, $(grep -m1 'model name' /proc/cpuinfo | cut -d: -f2 | xargs), load $(cut -d' ' -f1-3 /proc/loadavg)," \
    "$(java -version 2>&1 | head -1), numpy $($python -c 'import numpy; print(numpy.__version__)')"

judgement() {
    java -XX:+UseSerialGC -Xmx2g -cp "$classes" worthsaving.ranking.JudgeBench "${1:-6}" | tee "$out/judge.txt"
    java -cp "$classes" worthsaving.diagnosis.CarsInNumbers "$out/cars.jsonl"
    $python src/bench/judgement/judgement.py "$out/cars.jsonl" > "$out/numpy.csv"
    $python src/bench/judgement/table.py "$out/judge.txt" "$out/numpy.csv" "$out/judgement.png"
}

start() {
    [ -f target/worthsaving.jar ] || mvn -B -q -Dmaven.test.skip=true package
    $python src/bench/judgement/start.py "$classes"
}

[ $# -gt 0 ] || set -- judgement posterior start
case $1 in
    judgement | posterior | start)
        for part in "$@"; do
            echo; echo "## $part"; echo
            if [ "$part" = posterior ]; then sh src/bench/diagnosis/run.sh; else "$part"; fi
        done ;;
    lots)
        shift
        mvn -B -q -Dmaven.test.skip=true package
        $python src/bench/scale/scale.py "${@:-1000}" ;;
    fit)
        shift
        sh src/bench/valuation/run.sh time ../shared/data "$@" ;;
    *) echo "no such part: $1" >&2; exit 2 ;;
esac
