package worthsaving.desktop.car;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import worthsaving.casebook.Edit;
import worthsaving.desktop.HandTurned;
import worthsaving.desktop.Units;
import worthsaving.desktop.book.BookModel;
import worthsaving.desktop.book.Books;
import worthsaving.desktop.book.Sample;
import worthsaving.desktop.car.KeepingModel.Field;
import worthsaving.quantity.Money;
import worthsaving.ranking.Judge;
import worthsaving.ranking.Judged;
import worthsaving.ranking.Rescue;
import worthsaving.ranking.RescueTerms;
import worthsaving.ranking.Rescuer;
import worthsaving.vehicle.Observation.Sight;

class KeepingModelTest {

    @TempDir
    Path folder;

    private final HandTurned threads = new HandTurned();
    private CarModel car;
    private BookModel book;
    private KeepingModel keeping;

    @BeforeEach
    void open() {
        car = new CarModel(Cars.GROUND, threads.background(), threads.screen());
        book = new BookModel(Books.opening(folder.resolve("book.db")), Sample.NONE, threads.background(), threads.screen());
        keeping = new KeepingModel(car, book, Cars.GROUND, threads.background(), threads.screen());
        book.save(new Edit.AddCase(Cars.overheated()));
        threads.turnAll();
        car.open(Cars.overheated());
        threads.turnAll();
    }

    @AfterEach
    void close() {
        book.close();
        threads.turnAll();
    }

    private static Rescue core(RescueTerms terms) {
        var judged = (Judged.Done) new Judge(Cars.GROUND.catalogue(), Cars.GROUND.values(), Cars.GROUND.settings())
                .judge(Cars.overheated());
        return new Rescuer(Cars.GROUND.catalogue(), Cars.GROUND.values(), Cars.GROUND.settings())
                .compare(judged.appraisal(), terms);
    }

    @Test
    void nothing_is_reckoned_until_the_page_is_looked_at() {
        assertThat(keeping.rescueProperty().get()).isNull();
        keeping.open(true);
        assertThat(keeping.busyProperty().get()).isTrue();
        threads.turnAll();
        assertThat(keeping.busyProperty().get()).isFalse();
        assertThat(keeping.rescueProperty().get().plan()).isEqualTo(core(RescueTerms.of(3, 12_000)).plan());
    }

    @Test
    void what_is_entered_counts_is_kept_and_is_taken_back_by_undo() {
        keeping.open(true);
        assertThat(keeping.enter(Field.YEARS, "5", Units.MILES)).isEmpty();
        assertThat(keeping.enter(Field.DISTANCE, "16,000", Units.KILOMETRES)).isEmpty();
        assertThat(keeping.enter(Field.QUOTE, "3,100", Units.MILES)).isEmpty();
        assertThat(keeping.enter(Field.OFFER, "650", Units.MILES)).isEmpty();
        threads.turnAll();
        double miles = Units.KILOMETRES.distance(16_000).miles();
        Rescue expected = core(RescueTerms.of(5, miles).withQuote(Money.usd(3_100)).withAsItStands(Money.usd(650)));
        Rescue rescue = keeping.rescueProperty().get();
        assertThat(rescue.plan()).isEqualTo(expected.plan());
        assertThat(rescue.breakEvenQuote()).isEqualTo(expected.breakEvenQuote());
        assertThat(Keeping.of("T1", book.settings(), Money.USD)).isEqualTo(
                new Keeping(5, miles, Optional.of(Money.usd(3_100)), Optional.of(Money.usd(650))));
        book.undo();
        threads.turnAll();
        assertThat(keeping.keepingProperty().get().offer()).isEmpty();
        assertThat(keeping.rescueProperty().get().plan())
                .isEqualTo(core(RescueTerms.of(5, miles).withQuote(Money.usd(3_100))).plan());
        assertThat(keeping.enter(Field.QUOTE, "", Units.MILES)).isEmpty();
        threads.turnAll();
        assertThat(keeping.rescueProperty().get().quote()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', value = {
        "YEARS;'';", "YEARS;0;1 to 15", "YEARS;16;1 to 15", "YEARS;2.5;1 to 15", "YEARS;long;",
        "DISTANCE;0;above 0", "DISTANCE;300000;200,000", "QUOTE;a lot;", "OFFER;-5;"
    })
    void what_cannot_be_used_is_said_and_changes_nothing(Field field, String text, String why) {
        Map<String, String> before = book.settings();
        assertThat(keeping.enter(field, text, Units.MILES)).isNotBlank().contains(why == null ? "" : why);
        threads.turnAll();
        assertThat(book.settings()).isEqualTo(before);
        assertThat(keeping.keepingProperty().get()).isEqualTo(Keeping.USUAL);
    }

    @Test
    void a_finding_changes_the_sums() {
        keeping.open(true);
        threads.turnAll();
        Rescue before = keeping.rescueProperty().get();
        car.seen("WHITE_SMOKE_SWEET", Sight.PRESENT);
        threads.turnAll();
        assertThat(keeping.rescueProperty().get().plan()).isNotEqualTo(before.plan());
    }

    @Test
    void settings_that_cannot_be_read_count_as_not_there() {
        assertThat(Keeping.of("T1", Map.of("car.T1.keep.years", "forever", "car.T1.keep.miles", "-3",
                "car.T1.keep.quote", "NaN", "car.T1.keep.offer", "1e99"), Money.USD)).isEqualTo(Keeping.USUAL);
    }
}
