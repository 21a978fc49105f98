package worthsaving.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import worthsaving.casebook.Access;
import worthsaving.casebook.Casebook;
import worthsaving.desktop.Ground;
import worthsaving.desktop.HandTurned;
import worthsaving.desktop.ProjectFolder;
import worthsaving.desktop.book.BookModel;
import worthsaving.desktop.book.Sample;
import worthsaving.desktop.teardown.TeardownModel;
import worthsaving.teardown.Advice;

/** The teardown screen and the command line say the same of the same case, with the shipped price model and seed. */
class WindowAndCommandTest {

    private static final LocalDate DAY = LocalDate.of(2025, 12, 1);

    @TempDir
    private Path folder;

    @Test
    void the_screen_shows_the_figures_of_the_command_line() throws IOException {
        Path file = folder.resolve("casebook.db");
        Books.ok(file, "add", "shared/samples/lot.csv", "--today", DAY.toString());
        Books.ok(file, "import", "L01", "shared/samples/teardown_L01.csv");
        JsonNode told = new ObjectMapper().readTree(
                Run.of("teardown", "L01", "--casebook", file.toString(), "--today", DAY.toString(), "--json").out());

        Ground ground = ProjectFolder.find().read(DAY);
        HandTurned hands = new HandTurned();
        BookModel book = new BookModel(() -> Casebook.open(file, Access.WRITE), Sample.NONE, hands.background(),
                hands.screen());
        hands.turnAll();
        TeardownModel model = new TeardownModel(book, ground, hands.background(), hands.screen());
        model.open(Optional.of(book.caseOf("L01").orElseThrow().listing()));
        hands.turnAll();
        Advice shown = model.pictureProperty().get().seen().orElseThrow().advice();
        book.close();
        hands.turnAll();

        assertThat(shown.best().worth().amount()).isEqualTo(told.get("worth").doubleValue());
        assertThat(shown.best().name()).isEqualTo(told.get("what").textValue());
        assertThat(shown.options()).hasSize(told.get("options").size());
        for (int i = 0; i < shown.options().size(); i++) {
            assertThat(shown.options().get(i).move().worth().amount())
                    .isEqualTo(told.get("options").get(i).get("worth").doubleValue());
            assertThat(shown.options().get(i).move().id()).isEqualTo(told.get("options").get(i).get("id").textValue());
        }
        assertThat(shown.costToFinish().orElseThrow().mean()).isEqualTo(told.get("cost_to_finish").doubleValue());
        assertThat(shown.spent().total().amount()).isEqualTo(told.get("spent_not_counted").doubleValue());
        assertThat(shown.chanceStopIsBetter()).isEqualTo(told.get("chance_stop_is_better").doubleValue());
    }
}
