package worthsaving.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Casebooks written by the command line. */
final class Books {

    private Books() {}

    /** The lot's cases; the first with every kind of entry, a photo, a forecast and an end. */
    static void worked(Path file, String lot) throws IOException {
        Path picture = Files.writeString(file.resolveSibling("cover.jpg"), "no real picture");
        ok(file, "add", lot);
        ok(file, "forecast", "=A1");
        ok(file, "opened", "=A1", "FRONT_COVER_OFF", "mount was seized", "--stage", "cover", "--on", "2025-12-02");
        ok(file, "finding", "=A1", "TIM_CHAIN_WORN", "--is", "absent", "--stage", "cover");
        ok(file, "hours", "=A1", "5.5", "--planned", "4");
        ok(file, "receipt", "=A1", "31", "oil");
        ok(file, "part", "=A1", "WATER_PUMP", "88.50", "--planned", "70");
        ok(file, "mended", "=A1", "WATER_PUMP");
        ok(file, "note", "=A1", "go on", "--decision");
        ok(file, "note", "=A1", "flakes");
        ok(file, "photo", "=A1", picture.toString(), "the cover", "--entry", "1");
        ok(file, "finish", "=A1", "--paid", "900", "--sold", "4100", "--bought-on", "2099-01-02", "--sold-on",
                "2099-02-01", "--days-to-sell", "7", "--failed", "WATER_PUMP");
    }

    static Run ok(Path file, String... arguments) {
        List<String> all = new ArrayList<>(List.of("casebook"));
        all.addAll(List.of(arguments));
        all.addAll(List.of("--casebook", file.toString()));
        Run run = Run.of(all.toArray(String[]::new));
        assertThat(run.code()).as(run.err()).isZero();
        return run;
    }
}
