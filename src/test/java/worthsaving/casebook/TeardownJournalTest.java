package worthsaving.casebook;

import static org.assertj.core.api.Assertions.assertThat;
import static worthsaving.casebook.Cases.keep;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import worthsaving.casebook.JournalEntry.What;
import worthsaving.catalog.ShippedCatalogue;
import worthsaving.quantity.Hours;
import worthsaving.quantity.Money;
import worthsaving.teardown.Entry;
import worthsaving.teardown.Journal;
import worthsaving.teardown.JournalReader;
import worthsaving.vehicle.Observation;

/** The journal of a teardown is kept in the casebook, whole. */
class TeardownJournalTest {

    private static final LocalDate DAY = LocalDate.of(2025, 11, 20);
    private static final List<Entry> EVERY_KIND = List.of(
            new Entry.Paid("bought", "price", Money.usd(2_014), "2025-11-18"),
            new Entry.Opened("cover", "FRONT_COVER_OFF", "2025-11-22"),
            new Entry.Seen("cover", Observation.absent("TIM_CHAIN_WORN"), "2025-11-22"),
            new Entry.Worked("cover", "cover off", Hours.of(5.5), "2025-11-22"),
            new Entry.PartBought("cover", "TIM_CHAIN_WORN", Money.usd(310), "2025-11-23"),
            new Entry.Mended("cover", "TIM_CHAIN_WORN", "2025-11-24"),
            new Entry.Decision("cover", "go on", "2025-11-24"),
            new Entry.Note("cover", "flakes in the pan", "2025-11-24"));

    @TempDir
    Path folder;

    private Casebook book() {
        return Cases.open(folder.resolve("casebook.db"));
    }

    /** Zones at both ends of the world: a day stays the day that was written. */
    @ParameterizedTest
    @ValueSource(strings = {"Pacific/Kiritimati", "Etc/GMT+12", "Europe/Berlin", "America/St_Johns"})
    void a_line_becomes_an_entry_and_the_same_line_again(String zone) {
        ZoneId there = ZoneId.of(zone);
        for (Entry line : EVERY_KIND) {
            assertThat(JournalEntry.of(line, DAY, there).line(there)).isEqualTo(line);
        }
        assertThat(EVERY_KIND).extracting(e -> (Object) e.getClass()).as("one of each kind")
                .containsExactlyInAnyOrder((Object[]) Entry.class.getPermittedSubclasses());
    }

    @Test
    void a_line_without_a_day_gets_the_day_it_is_given() {
        Entry line = new Entry.Note("", "no day", "");
        assertThat(JournalEntry.of(line, DAY, ZoneId.of("UTC")).line(ZoneId.of("UTC")).when()).isEqualTo("2025-11-20");
    }

    @Test
    void the_casebook_gives_back_the_sample_teardown_as_it_was() throws IOException {
        Journal sample;
        try (Reader in = Files.newBufferedReader(Path.of("shared", "samples", "teardown_L01.csv"))) {
            sample = JournalReader.read("L01", in, ShippedCatalogue.load(), Money.USD).journal();
        }
        try (Casebook book = book()) {
            keep(book.save(new Edit.AddCase(Cases.listing("L01"))));
            for (Entry line : sample.entries()) {
                keep(book.save(new Edit.Write("L01", JournalEntry.of(line, DAY, ZoneId.systemDefault()))));
            }
        }
        try (Casebook again = book()) {
            assertThat(again.caseOf("L01").orElseThrow().teardown()).isEqualTo(sample);
        }
    }

    @Test
    void a_part_is_a_receipt_and_teaches_ones_part_prices() {
        try (Casebook book = book()) {
            keep(book.save(new Edit.AddCase(Cases.listing("A"))));
            keep(book.save(new Edit.Write("A", entry(new What.PartBought(
                    "TIM_CHAIN_WORN", Money.usd(300), Optional.of(Money.usd(250)))))));
            keep(book.save(new Edit.Write("A", entry(new What.Receipt(Money.usd(60), Optional.of(Money.usd(50)))))));
            keep(book.save(new Edit.Finish("A", Optional.of(Cases.actual(new SplittableRandom(1))))));
            CaseFile a = book.caseOf("A").orElseThrow();
            assertThat(a.receipts()).contains(Money.usd(360));
            assertThat(a.finished().orElseThrow().partPrice()).hasValue(1.2);
            assertThat(a.teardown().partsAtHand()).containsExactly("TIM_CHAIN_WORN");
            assertThat(a.teardown().paid(Money.usd(0))).isEqualTo(Money.usd(360));
        }
    }

    @Test
    void a_photo_belongs_to_its_entry_and_outlives_it() {
        Photo photo = Cases.photo(new SplittableRandom(1));
        try (Casebook book = book()) {
            keep(book.save(new Edit.AddCase(Cases.listing("A"))));
            keep(book.save(new Edit.AddCase(Cases.listing("B"))));
            keep(book.save(new Edit.Write("A", entry(new What.Opened("FRONT_COVER_OFF")), List.of(photo))));
            long entry = book.caseOf("A").orElseThrow().journal().get(0).number();
            keep(book.save(new Edit.AddPhoto("A", photo.of(entry))));
            assertThat(book.caseOf("A").orElseThrow().photosOf(entry)).hasSize(2);

            keep(book.save(new Edit.Strike(entry)));
            assertThat(book.caseOf("A").orElseThrow().photos()).extracting(p -> p.value().entry())
                    .containsExactly(Optional.empty(), Optional.empty());
            keep(book.undo());
            assertThat(book.caseOf("A").orElseThrow().photosOf(entry)).hasSize(2);

            assertThat(book.save(new Edit.AddPhoto("B", photo.of(entry)))).isInstanceOf(Saving.Failed.class);
            keep(book.save(new Edit.DropCase("A")));
            keep(book.undo());
            assertThat(book.caseOf("A").orElseThrow().photosOf(entry)).hasSize(2);
        }
    }

    private static JournalEntry entry(What what) {
        return new JournalEntry(Cases.NOON, "opened up", what, "");
    }
}
