#!/bin/sh
# Reading a million rows beside a bare Commons CSV pass, then 100,000 spoilt adverts, tables, VINs, code lists and
# catalogue files. Run from the project folder after: mvn -Pbench test-compile
set -e
cd "$(dirname "$0")/../../.."
mvn -q dependency:build-classpath -Dmdep.outputFile=target/bench-classpath.txt > /dev/null
java -Xmx96m -cp "target/test-classes:target/classes:$(cat target/bench-classpath.txt)" \
    worthsaving.intake.MillionRows "${1:-1000000}"
mvn -q -Dworthsaving.fuzz="${2:-100000}" -Dtest=MutationFuzzTest test
