package worthsaving.desktop.lot;

import java.nio.file.Path;
import worthsaving.casebook.Edit;
import worthsaving.desktop.Ground;
import worthsaving.desktop.HandTurned;
import worthsaving.desktop.book.BookModel;
import worthsaving.desktop.book.Books;
import worthsaving.desktop.book.Sample;
import worthsaving.vehicle.Listing;

/** A lot on a casebook of its own, as the window has it, turned by hand. */
final class BookedLot {

    final BookModel book;
    final LotModel model;

    BookedLot(Ground ground, Path casebook, Sample sample, HandTurned threads) {
        book = new BookModel(Books.opening(casebook), sample, threads.background(), threads.screen());
        model = new LotModel(ground, book, threads.background(), threads.screen());
        book.revisionProperty().addListener(o -> model.follow());
        threads.turnAll();
    }

    void change(Listing listing) {
        book.save(new Edit.ChangeCase(listing));
    }
}
