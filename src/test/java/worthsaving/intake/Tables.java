package worthsaving.intake;

import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Tables and readers for the tests of this package. */
final class Tables {

    static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
    static final IntakeSettings SETTINGS = IntakeSettings.american(TODAY);
    static final Vocabulary VOCABULARY = new Vocabulary(
            Set.of("COLD_START_RATTLE", "OVERHEATS", "KNOCKS", "CODE_MISFIRE"),
            Set.of("HEAD_GASKET", "WATER_PUMP"),
            Map.of("P0217", List.of("OVERHEATS"), "P0300", List.of("CODE_MISFIRE")),
            Set.of("ford", "toyota", "kia", "opel", "volkswagen"));
    static final String HEADER = "id,year,make,model,odometer,price";

    private Tables() {}

    static ListingReader reader() {
        return new ListingReader(VOCABULARY, SETTINGS);
    }

    static Lot read(String... lines) {
        try {
            return reader().read(new StringReader(String.join("\n", lines) + "\n"), "t.csv");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A table of one row under our usual header with one more column. */
    static Lot withColumn(String column, String cell) {
        return read(HEADER + "," + column, "A1,2012,ford,focus,90000,1500," + cell);
    }

    static LotEntry one(Lot lot) {
        if (lot.entries().size() != 1 || !lot.refused().isEmpty()) {
            throw new AssertionError("expected one good row, found " + lot.entries().size() + " and " + lot.refused());
        }
        return lot.entries().get(0);
    }

    static Lot bad(String name) {
        try (InputStream in = Files.newInputStream(Path.of("shared/samples/bad", name))) {
            return reader().read(in, name);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
