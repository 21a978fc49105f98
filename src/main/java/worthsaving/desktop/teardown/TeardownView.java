package worthsaving.desktop.teardown;

import java.time.LocalDate;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Supplier;
import javafx.beans.property.ReadOnlyDoubleProperty;
import javafx.geometry.Insets;
import javafx.scene.Node;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.VBox;
import worthsaving.casebook.CaseFile;
import worthsaving.desktop.ScreenThread;
import worthsaving.desktop.Words;
import worthsaving.desktop.book.Bought;
import worthsaving.quantity.Money;

/** The teardown of one car: where it stands, what to do now, what was spent, and the journal. */
public final class TeardownView extends BorderPane {

    private static final double LEFT = 8;
    private static final double LEFT_SHARE = 0.16;
    private static final double RIGHT = 10;
    private static final double RIGHT_SHARE = 0.2;

    private final TeardownModel model;
    private final EntryForm form;
    private final OpeningsPane openings;
    private final AdvicePane advice = new AdvicePane();
    private final SpentPane spent = new SpentPane();
    private final OwnerPane owner;
    private final JournalPane journal;

    /** @param em size of the text */
    public TeardownView(TeardownModel model, Executor background, ScreenThread screen, Supplier<LocalDate> today,
            ReadOnlyDoubleProperty em) {
        this.model = model;
        setId("teardown");
        getStyleClass().add("screen");
        PhotoTaking photos = new PhotoTaking(model, background, screen);
        form = new EntryForm(model, photos, today);
        openings = new OpeningsPane(form::opened);
        owner = new OwnerPane(model);
        journal = new JournalPane(model, form::correct);
        VBox top = new VBox(8, new TeardownHead(model), Words.trouble(photos.troubleProperty()), form);
        BorderPane.setMargin(top, new Insets(0, 0, 8, 0));
        setTop(top);
        ScrollPane left = scroll(openings);
        left.prefWidthProperty().bind(em.multiply(LEFT).add(widthProperty().multiply(LEFT_SHARE)));
        setLeft(left);
        ScrollPane middle = scroll(new VBox(advice, owner));
        BorderPane.setMargin(middle, new Insets(0, 8, 0, 8));
        middle.setId("teardown-middle");
        setCenter(middle);
        ScrollPane right = scroll(new VBox(spent, journal));
        right.prefWidthProperty().bind(em.multiply(RIGHT).add(widthProperty().multiply(RIGHT_SHARE)));
        setRight(right);
        model.pictureProperty().addListener((o, was, is) -> show(is));
        model.fileProperty().addListener((o, was, is) -> show(is));
        model.book().revisionProperty().addListener(o -> owner.fill());
        show(model.fileProperty().get());
        show(model.pictureProperty().get());
    }

    /** Puts the cursor into the line to be added. */
    public void find() {
        form.find();
    }

    EntryForm form() {
        return form;
    }

    private void show(CaseFile file) {
        boolean there = file != null;
        getLeft().setVisible(there);
        getCenter().setVisible(there);
        getRight().setVisible(there);
        form.setVisible(there);
        form.setManaged(there);
        if (there) {
            journal.show(file);
            form.show(file);
            owner.fill();
        }
    }

    private void show(TeardownPicture picture) {
        Optional<TeardownPicture.Seen> seen = Optional.ofNullable(picture).flatMap(TeardownPicture::seen);
        for (Node part : new Node[] {openings, advice, spent}) {
            part.setVisible(seen.isPresent());
            part.setManaged(seen.isPresent());
        }
        seen.ifPresent(s -> {
            openings.show(s.advice().openings(), model.catalogue());
            advice.show(s.advice());
            Optional<Money> price = model.book().bought(picture.file().id()).map(Bought::paid);
            spent.show(s.advice().spent(), picture.file(), price);
            owner.show(s);
        });
    }

    private static ScrollPane scroll(Node content) {
        ScrollPane scroll = new ScrollPane(content);
        scroll.setFitToWidth(true);
        scroll.getStyleClass().add("panel");
        return scroll;
    }
}
