#!/bin/sh
# Price models beside scikit-learn and XGBoost, in one run; prints Markdown. From the project's folder:
#   sh src/bench/valuation/run.sh [DATA_FOLDER [set ...]]     every table (default folder ../shared/data)
#   sh src/bench/valuation/run.sh time [DATA_FOLDER [rows ...]]   fit time and memory at 100,000 rows, or as many as said
# Needs Debian's python3-sklearn, python3-xgboost, python3-pandas.
set -e
what=tables
if [ "$1" = time ]; then
    what=time
    shift
fi
data=${1:-../shared/data}
[ $# -gt 0 ] && shift
python=${PYTHON:-/usr/bin/python3}
[ -d target/lib ] || mvn -B -q -Dmaven.test.skip=true package
mkdir -p target/benchmark/classes
javac -nowarn -d target/benchmark/classes -cp "target/classes:target/lib/*" src/bench/valuation/Benchmark.java
echo "$(nproc) cores, $(grep -m1 'model name' /proc/cpuinfo | cut -d: -f2 | xargs), load $(cut -d' ' -f1-3 /proc/loadavg)"
echo "$(java -version 2>&1 | head -1); $($python -c 'import sklearn, xgboost; print("scikit-learn", sklearn.__version__, "XGBoost", xgboost.__version__)')"
$python src/bench/valuation/benchmark.py "$what" "$data" "$@"
