package worthsaving.desktop.teardown;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import worthsaving.casebook.JournalEntry;
import worthsaving.casebook.JournalEntry.What;
import worthsaving.catalog.Catalogue;
import worthsaving.catalog.ShippedCatalogue;
import worthsaving.desktop.teardown.Line.Field;
import worthsaving.quantity.Hours;
import worthsaving.quantity.Money;
import worthsaving.vehicle.Observation;
import worthsaving.vehicle.Observation.Sight;

class LineTest {

    private static final Catalogue CATALOGUE = ShippedCatalogue.load();
    private static final LocalDate TODAY = LocalDate.of(2025, 12, 1);
    private static final Optional<Subject> COVER = Optional.of(new Subject("FRONT_COVER_OFF", "Front cover", false));
    private static final Optional<Subject> CHAIN = Optional.of(new Subject("TIM_CHAIN_WORN", "Timing chain", true));

    private static Line.Read read(Kind kind, Optional<Subject> subject, String words, String figure, String planned,
            String day) {
        return new Line(kind, subject, Sight.ABSENT, words, figure, planned, day, " cover ").read(Money.USD, TODAY);
    }

    private static JournalEntry entry(What what, String text) {
        return JournalEntry.on(LocalDate.of(2025, 11, 22), ZoneId.systemDefault(), "cover", what, text);
    }

    private static List<JournalEntry> everyKind() {
        return List.of(entry(new What.Opened("FRONT_COVER_OFF"), "seized"),
                entry(new What.Finding(Observation.absent("TIM_CHAIN_WORN")), ""),
                entry(new What.Work(Hours.of(5.5), Optional.of(Hours.of(4))), "cover off"),
                entry(new What.Receipt(Money.usd(1_234.5), Optional.empty()), "machining"),
                entry(new What.PartBought("TIM_CHAIN_WORN", Money.usd(310), Optional.of(Money.usd(280))), "kit"),
                entry(new What.Mended("TIM_CHAIN_WORN"), ""), entry(new What.Note(), "flakes"),
                entry(new What.Decision(), "go on"));
    }

    @Test
    void an_entry_put_into_the_line_and_kept_is_the_same_entry() {
        for (JournalEntry entry : everyKind()) {
            Line line = Line.of(entry, id -> Optional.of(new Subject(id, id, false)));
            assertThat(line.read(Money.USD, TODAY).entry()).as(entry.what().toString()).contains(entry);
        }
        assertThat(everyKind()).extracting(e -> (Object) e.what().getClass())
                .containsExactlyInAnyOrder((Object[]) What.class.getPermittedSubclasses());
    }

    @Test
    void a_line_without_a_day_is_of_today() {
        assertThat(read(Kind.OPENED, COVER, "", "", "", "").entry()).contains(JournalEntry.on(
                TODAY, ZoneId.systemDefault(), "cover", new What.Opened("FRONT_COVER_OFF"), ""));
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', value = {
        "HOURS;'';FIGURE;Enter a number", "HOURS;1,5;FIGURE;“1,5” must be a number up to 1,000",
        "HOURS;-2;FIGURE;must be a number", "HOURS;NaN;FIGURE;must be a number", "HOURS;1001;FIGURE;up to 1,000",
        "RECEIPT;2k;FIGURE;up to 1,000,000", "RECEIPT;12,34;FIGURE;must be a number", "PART;1e9;FIGURE;must be a number"
    })
    void a_figure_that_cannot_be_used_is_said_with_its_mend(Kind kind, String figure, Field field, String said) {
        Line.Read read = read(kind, CHAIN, "x", figure, "", "2025-11-22");
        assertThat(read.entry()).isEmpty();
        assertThat(read.wrong()).containsOnlyKeys(field);
        assertThat(read.wrong().get(field)).contains(said);
    }

    @Test
    void thousands_and_decimals_are_understood() {
        assertThat(read(Kind.RECEIPT, Optional.empty(), "x", "1,234.50", "1200", "").entry().orElseThrow().what())
                .isEqualTo(new What.Receipt(Money.usd(1_234.5), Optional.of(Money.usd(1_200))));
        assertThat(read(Kind.HOURS, Optional.empty(), "x", ".5", "", "").entry().orElseThrow().what())
                .isEqualTo(new What.Work(Hours.of(.5), Optional.empty()));
    }

    @Test
    void what_is_missing_is_said_beside_its_field_and_nothing_is_written() {
        assertThat(read(Kind.FINDING, Optional.empty(), "", "", "", "").wrong()).containsOnlyKeys(Field.SUBJECT);
        assertThat(read(Kind.NOTE, Optional.empty(), " ", "", "", "").wrong()).containsOnlyKeys(Field.WORDS);
        assertThat(read(Kind.PART, Optional.empty(), "", "x", "y", "z").wrong())
                .containsOnlyKeys(Field.SUBJECT, Field.FIGURE, Field.PLANNED, Field.DAY);
        assertThat(read(Kind.NOTE, Optional.empty(), "n", "", "", "22.11.2025").wrong().get(Field.DAY))
                .contains("write it as 2025-12-01");
        assertThat(read(Kind.NOTE, Optional.empty(), "n", "", "", "2025-12-02").wrong().get(Field.DAY))
                .contains("a day up to 2025-12-01");
    }

    @Test
    void things_are_found_by_words_of_their_name_not_by_id() {
        List<Subject> steps = Subject.of(CATALOGUE, Kind.OPENED);
        assertThat(Subject.search(steps, "cover front")).extracting(Subject::id).containsExactly("FRONT_COVER_OFF");
        assertThat(Subject.search(steps, "FRONT_COVER_OFF")).isEmpty();
        assertThat(Subject.search(steps, "")).hasSameSizeAs(CATALOGUE.accessSteps());
        List<Subject> seen = Subject.of(CATALOGUE, Kind.FINDING);
        assertThat(seen).hasSize(CATALOGUE.findings().size() + CATALOGUE.items().size());
        assertThat(Subject.search(seen, "timing chain stretched")).extracting(Subject::item).containsExactly(true);
        assertThat(Subject.of(CATALOGUE, Kind.NOTE)).isEmpty();
    }
}
