package worthsaving.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import java.io.BufferedReader;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.StringReader;
import java.lang.management.ManagementFactory;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInfo;
import worthsaving.catalog.CatalogueReader;
import worthsaving.catalog.CatalogueReading;
import worthsaving.intake.advert.AdvertPile;
import worthsaving.intake.advert.AdvertReader;
import worthsaving.intake.advert.AdvertReading;
import worthsaving.intake.advert.SavedPage;
import worthsaving.vehicle.Vin;

/**
 * Spoilt adverts, tables, VINs, code lists and catalogue files: none may end in an exception of the program, and whatever
 * is turned away must carry a reason. {@code -Dworthsaving.fuzz=100000} runs that many in all and also holds each to
 * one second of processor time.
 */
class MutationFuzzTest {

    private static final int USUAL = 3_000;
    private static final int KINDS = 5;
    private static final long SEED = 20_261_125L;
    private static final LocalDate DAY = LocalDate.of(2026, 11, 25);
    private static final List<Charset> CHARSETS = List.of(StandardCharsets.UTF_8, StandardCharsets.UTF_16LE,
            StandardCharsets.ISO_8859_1, Charset.forName("windows-1252"));
    private static final List<String> CATALOGUE = List.of("items.csv", "damage.csv", "findings.csv",
            "finding_links.csv", "access.csv", "remedies.csv", "tools.csv", "money.csv", "parts.csv");
    private static final Path SHARED = Path.of("shared");

    private interface Case {
        /** @return true when something was turned away */
        boolean run(Mutator mutator) throws IOException;
    }

    private static void run(TestInfo info, Case one) throws IOException {
        String set = System.getProperty("worthsaving.fuzz");
        int times = (set == null ? USUAL : Integer.parseInt(set)) / KINDS;
        long slowest = 0;
        int turnedAway = 0;
        for (int i = 0; i < times; i++) {
            long seed = SEED + 31L * i + info.getDisplayName().hashCode();
            long start = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
            try {
                turnedAway += one.run(new Mutator(seed)) ? 1 : 0;
            } catch (RuntimeException | StackOverflowError e) {
                fail(info.getDisplayName() + " with seed " + seed, e);
            }
            slowest = Math.max(slowest, ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - start);
        }
        assertThat(turnedAway).as("some must be turned away, or nothing was spoilt").isPositive();
        if (set != null) {
            System.out.printf("%s: %,d run, %,d turned away, slowest %.0f ms%n", info.getDisplayName(), times,
                    turnedAway, slowest / 1e6);
            assertThat(slowest).as("slowest, in ns").isLessThan(1_000_000_000L);
        }
    }

    private static List<String> adverts() throws IOException {
        List<String> texts = new ArrayList<>();
        try (BufferedReader in = Files.newBufferedReader(Path.of("src/test/resources/adverts/invented.jsonl"))) {
            in.lines().forEach(line -> texts.add(line.replaceAll("(?s).*\"text\": ?\"(.*?)\", ?\"fields.*", "$1")));
        }
        return texts;
    }

    @Test
    void adverts(TestInfo info) throws IOException {
        AdvertReader reader = new AdvertReader(worthsaving.intake.advert.Vocabulary.read(name -> open("vocabulary",
                name)));
        AdvertPile pile = new AdvertPile(reader);
        List<String> texts = adverts();
        run(info, mutator -> {
            String text = mutator.spoil(mutator.any(texts), texts);
            AdvertReading reading = reader.read(text, DAY);
            reading.toListing("a", "fuzz");
            boolean empty = reading.car().make().isEmpty();
            assertThat(!empty || !reading.notes().isEmpty()).as(text).isTrue();
            pile.split(text, DAY);
            SavedPage page = SavedPage.of("a.eml", text.getBytes(StandardCharsets.UTF_8));
            page.problem().ifPresent(why -> assertThat(why).isNotBlank());
            return empty;
        });
    }

    private static java.io.Reader open(String folder, String name) {
        try {
            return Files.newBufferedReader(SHARED.resolve(folder).resolve(name));
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    @Test
    void tables(TestInfo info) throws IOException {
        String lot = Files.readString(SHARED.resolve("samples/lot.csv"));
        List<String> others = List.of(lot, "Nr;Preis \u20ac;km-Stand;Bj.;Marke;Modell\n1;1.234,56;210.000;2012;Opel;Astra\n",
                "id\tyear\tmake\tmodel\todometer\tprice\ncar1\t2012\tford\tfocus\t98k\t$1,200\n");
        run(info, mutator -> {
            String text = mutator.spoil(mutator.any(others), others);
            Lot read = Tables.reader().read(new ByteArrayInputStream(text.getBytes(mutator.any(CHARSETS))), "t.csv");
            read.refused().forEach(row -> assertThat(row.faults()).as(text).isNotEmpty()
                    .allSatisfy(f -> assertThat(f.what() + f.mend()).isNotBlank()));
            if (!read.summary().readable()) {
                assertThat(read.warnings()).as(text).isNotEmpty();
            }
            return !read.summary().readable() || !read.refused().isEmpty();
        });
    }

    @Test
    void vins(TestInfo info) throws IOException {
        List<String> vins = List.of("1M8GDM9AXKP042788", "1HGCM82633A004352", "WVWZZZ1KZAW123456");
        run(info, mutator -> {
            String text = mutator.spoil(mutator.any(vins), vins);
            try {
                Vin vin = new Vin(text);
                vin.modelYear();
                vin.region();
                return !vin.checkDigitHolds();
            } catch (IllegalArgumentException e) {
                assertThat(e.getMessage()).as(text).isNotBlank();
                return true;
            }
        });
    }

    @Test
    void code_lists(TestInfo info) throws IOException {
        List<String> lists = List.of("P0016 P0300 pending", "Stored codes:\nP0420 catalyst\nU0100\n\nPending\nP1326",
                "C0035-00 history; B0001:1A permanent");
        CodeTable table = CodeTable.read(open("vocabulary", CodeTable.FILE));
        run(info, mutator -> {
            String text = mutator.spoil(mutator.any(lists), lists);
            ScanReport report = ScanReport.read(text);
            report.codes().forEach(read -> table.row(read.code()));
            Lot lot = Tables.withColumn("codes", '"' + text.replace("\"", "\"\"") + '"');
            lot.refused().forEach(row -> assertThat(row.faults()).as(text).isNotEmpty());
            return report.codes().isEmpty() || !lot.refused().isEmpty();
        });
    }

    @Test
    void catalogue_files(TestInfo info) throws IOException {
        Map<String, String> files = new HashMap<>();
        for (String name : CATALOGUE) {
            files.put(name, Files.readString(SHARED.resolve("catalogue").resolve(name)));
        }
        List<String> texts = List.copyOf(files.values());
        run(info, mutator -> {
            String spoilt = mutator.any(CATALOGUE);
            String text = mutator.spoil(files.get(spoilt), texts);
            CatalogueReading reading = CatalogueReader.read(name -> new StringReader(
                    name.equals(spoilt) ? text : files.getOrDefault(name, "")));
            boolean valid = reading instanceof CatalogueReading.Valid;
            assertThat(valid || !reading.faults().isEmpty()).as(spoilt).isTrue();
            reading.faults().forEach(fault -> assertThat(fault.toString()).isNotBlank());
            return !valid;
        });
    }
}
