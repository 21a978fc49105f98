package worthsaving.desktop.market;

import java.util.List;
import java.util.Optional;
import worthsaving.casebook.Edit;
import worthsaving.desktop.Texts;
import worthsaving.desktop.book.BookModel;

/** Notes kept in the casebook, where undo takes them back like any other edit. */
public record BookNotes(BookModel book) implements MarketNotes {

    @Override
    public Optional<String> get(String name) {
        return Optional.ofNullable(book.settings().get(name));
    }

    @Override
    public void put(String name, Optional<String> text) {
        book.save(new Edit.Several(Texts.of("market.edit"), List.of(new Edit.Set(name, text))));
    }

    @Override
    public boolean keeps() {
        return !book.readOnly();
    }
}
