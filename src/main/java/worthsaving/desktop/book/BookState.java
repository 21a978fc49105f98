package worthsaving.desktop.book;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import worthsaving.casebook.CaseFile;
import worthsaving.casebook.Casebook;
import worthsaving.casebook.Edited;

/**
 * The casebook as it stood at one moment.
 *
 * @param cases the casebook's own, without the sample's
 */
record BookState(List<CaseFile> cases, Map<String, String> settings, Optional<Edited> toUndo, Optional<Edited> toRedo) {

    static final BookState EMPTY = new BookState(List.of(), Map.of(), Optional.empty(), Optional.empty());

    BookState {
        cases = List.copyOf(cases);
        settings = Map.copyOf(settings);
    }

    /** @throws worthsaving.casebook.CasebookException when it cannot be read */
    static BookState of(Casebook book) {
        return book.readOnly() ? new BookState(book.cases(), book.settings(), Optional.empty(), Optional.empty())
                : new BookState(book.cases(), book.settings(), book.toUndo(), book.toRedo());
    }
}
