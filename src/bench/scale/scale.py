"""Scoring a split table by two processes beside one, and ranking ever longer lots in a bounded heap.

Run from the project folder once ./worthsaving has built:
    python3 src/bench/scale/scale.py [listings to score] [listings to rank ...]
Lots of any size come from the invented sample: the same cars with other odometers and asks. Memory is the most that the
process held, the virtual machine's own included.
"""
import csv
import os
import sys
import tempfile
import time

RUN = ["java", "-XX:+UseSerialGC", "-Dworthsaving.home=.", "-cp", "target/worthsaving.jar:target/lib/*"]
MAIN = "worthsaving.cli.Main"


def lot(path, first, last, sample):
    with open(path, "w", encoding="utf-8", newline="") as file:
        out = csv.DictWriter(file, sample[0].keys(), lineterminator="\n")
        out.writeheader()
        for n in range(first, last):
            row = dict(sample[n % len(sample)])
            again = n // len(sample)
            row["id"] = f"{row['id']}-{again}"
            row["odometer"] = str(int(row["odometer"]) + 137 * again % 9973)
            row["price"] = str(round(int(row["price"]) * (0.9 + again % 41 / 200)))
            out.writerow(row)


def start(heap, command, table, result):
    command = RUN + [f"-Xmx{heap}m", MAIN] + command + ["--today", "2026-01-15", table]
    out = os.open(result, os.O_WRONLY | os.O_CREAT | os.O_TRUNC)
    nowhere = os.open(os.devnull, os.O_WRONLY)
    return os.posix_spawnp("java", command, os.environ, file_actions=[
        (os.POSIX_SPAWN_DUP2, out, 1), (os.POSIX_SPAWN_DUP2, nowhere, 2)])


def timed(what, jobs):
    """Runs the jobs side by side; prints clock, processor seconds and the most memory of any."""
    begun = time.time()
    processes = [start(*job) for job in jobs]
    ended = [os.wait4(p, 0) for p in processes]
    clock = time.time() - begun
    if any(os.waitstatus_to_exitcode(status) for _, status, _ in ended):
        sys.exit(f"{what}: a process failed")
    used = [usage for _, _, usage in ended]
    print(f"| {what} | {clock:.1f} | {sum(u.ru_utime + u.ru_stime for u in used):.1f} | "
          f"{max(u.ru_maxrss for u in used) / 1024:.0f} |", flush=True)


def text(path, header=True):
    with open(path, encoding="utf-8") as file:
        return file.read() if header else "".join(list(file)[1:])


def main():
    scored = int(sys.argv[1]) if len(sys.argv) > 1 else 1000
    ranked = [int(a) for a in sys.argv[2:]] or [100, 1000, 10000]
    with open("shared/samples/lot.csv", encoding="utf-8") as file:
        sample = list(csv.DictReader(line for line in file if not line.startswith("#")))
    with tempfile.TemporaryDirectory() as folder:
        def at(name):
            return os.path.join(folder, name)
        half = scored // 2
        lot(at("whole.csv"), 0, scored, sample)
        lot(at("a.csv"), 0, half, sample)
        lot(at("b.csv"), half, scored, sample)
        print("| what | seconds | processor seconds | most memory, MB |\n|---|---|---|---|")
        alone = ["score", "--threads", "1"]
        timed(f"score {scored:,}, one process of one thread, -Xmx400m", [(400, alone, at("whole.csv"), at("whole.out"))])
        timed(f"score {scored:,} in two parts, two such processes",
              [(400, alone, at("a.csv"), at("a.out")), (400, alone, at("b.csv"), at("b.out"))])
        if text(at("whole.out")) != text(at("a.out")) + text(at("b.out"), header=False):
            sys.exit("the parts joined differ from the whole")
        timed(f"score {scored:,}, one process of all threads", [(400, ["score"], at("whole.csv"), at("all.out"))])
        if text(at("whole.out")) != text(at("all.out")):
            sys.exit("the number of threads changed the scores")
        for rows in ranked:
            lot(at("rank.csv"), 0, rows, sample)
            timed(f"rank {rows:,}, all threads, -Xmx700m", [(700, ["rank", "--csv"], at("rank.csv"), at("rank.out"))])
        print("\nThe parts joined, and any number of threads, gave the same bytes.")


if __name__ == "__main__":
    main()
