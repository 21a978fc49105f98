#!/bin/sh
# Whether the full American fit is the same file on 1, 2 and 8 threads, byte for byte. From the project's folder:
#   sh src/bench/valuation/threads.sh [DATA_FOLDER]
set -e
data=${1:-../shared/data}/us_classifieds_2018_19.csv
mkdir -p target/benchmark/threads
for threads in 1 2 8; do
    ./worthsaving fit "$data" us_classifieds_2018_19 "target/benchmark/threads/us_$threads.json" --threads "$threads" \
        2> /dev/null
done
cd target/benchmark/threads
sha256sum us_1.json us_2.json us_8.json
cmp us_1.json us_2.json
cmp us_1.json us_8.json
echo "the same on 1, 2 and 8 threads: $(wc -c < us_1.json) bytes"
