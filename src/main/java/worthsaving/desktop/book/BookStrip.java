package worthsaving.desktop.book;

import java.util.Locale;
import javafx.beans.binding.Bindings;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import worthsaving.desktop.Texts;
import worthsaving.desktop.Words;

/** What is to be told of the casebook, above every screen: why nothing is kept, or what was not. */
public final class BookStrip extends VBox {

    public BookStrip(BookModel book) {
        getStyleClass().add("book-strip");
        Label note = Words.trouble(Bindings.createStringBinding(() -> sentence(book.noteProperty().get()), book.noteProperty()));
        note.setId("book-note");
        Label trouble = Words.trouble(Bindings.when(book.troubleProperty().isEmpty()).then("")
                .otherwise(Bindings.concat(Texts.of("book.not_kept"), " ", book.troubleProperty())));
        trouble.setId("book-trouble");
        getChildren().addAll(note, trouble);
        visibleProperty().bind(note.visibleProperty().or(trouble.visibleProperty()));
        managedProperty().bind(visibleProperty());
    }

    private static String sentence(String words) {
        return words.isEmpty() ? "" : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1) + ".";
    }

    /** What was kept last, to stand in the bar. */
    public static Label said(BookModel book) {
        Label said = Words.plain("", "soft");
        said.setId("book-said");
        said.textProperty().bind(book.saidProperty());
        return said;
    }
}
