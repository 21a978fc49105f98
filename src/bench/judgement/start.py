"""Whole processes from start to end, beside the least that Java, and a JavaFX window, can do. Best and middle of five."""
import os
import subprocess
import sys
import tempfile
import time

RUNS = 5
JAVA = ["java", "-XX:+UseSerialGC", "-Dworthsaving.home=.", "-cp", "target/worthsaving.jar:target/lib/*",
        "worthsaving.cli.Main"]
NOTHING = "public class Nothing { public static void main(String[] a) { System.out.println(1); } }"


def timed(command):
    clock, used = [], []
    for _ in range(RUNS):
        begun = time.time()
        process = subprocess.Popen(command, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
        _, status, usage = os.wait4(process.pid, 0)
        clock.append(time.time() - begun)
        used.append((usage.ru_utime + usage.ru_stime, usage.ru_maxrss / 1024))
        if os.waitstatus_to_exitcode(status) != 0:
            sys.exit(f"failed: {' '.join(command)}")
    clock.sort()
    return clock[0], clock[RUNS // 2], min(u for u, _ in used), max(m for _, m in used)


def row(what, command):
    best, middle, used, most = timed(command)
    print(f"| {what} | {best:.2f} | {middle:.2f} | {used:.2f} | {most:.0f} |", flush=True)


def main():
    print("| process | seconds, best | seconds, middle | processor seconds, least | most memory, MB |\n|---|---|---|---|---|")
    with tempfile.TemporaryDirectory() as folder:
        source = os.path.join(folder, "Nothing.java")
        with open(source, "w", encoding="utf-8") as file:
            file.write(NOTHING)
        subprocess.run(["javac", "-d", folder, source], check=True)
        row("a Java program that prints 1", ["java", "-XX:+UseSerialGC", "-cp", folder, "Nothing"])
    row("help", JAVA + ["--help"])
    row("judge one car of the sample", JAVA + ["judge", "shared/samples/lot.csv", "--id", "L04"])
    row("rank the 25 cars of the sample", JAVA + ["rank", "shared/samples/lot.csv"])
    print(flush=True)
    screen = ["xvfb-run", "-a", "-s", "-screen 0 1400x900x24", "java", "-Dprism.order=sw", "-Xmx2g", "-cp", sys.argv[1],
              "worthsaving.desktop.MoveTimes", "L04"]
    shown = subprocess.run(screen, capture_output=True, text=True, check=True)
    print(shown.stdout)


if __name__ == "__main__":
    main()
