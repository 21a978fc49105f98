package worthsaving.desktop.car;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import worthsaving.desktop.Ground;
import worthsaving.desktop.ScreenThread;
import worthsaving.desktop.Texts;
import worthsaving.quantity.Money;
import worthsaving.ranking.Appraisal;
import worthsaving.ranking.RescueTerms;
import worthsaving.report.sheet.Audience;
import worthsaving.report.sheet.DecisionSheet;
import worthsaving.report.sheet.HtmlSheet;
import worthsaving.report.sheet.PdfSheet;
import worthsaving.shell.PhotoToShow;

/** The decision sheet of the car being worked on; holds no control. To be used on the screen thread only. */
public final class SheetModel {

    private final CarModel car;
    private SheetWork work;
    private final Executor background;
    private final ScreenThread screen;
    private final List<PhotoToShow> photos = new ArrayList<>();
    private final ReadOnlyBooleanWrapper busy = new ReadOnlyBooleanWrapper();
    private final ReadOnlyStringWrapper message = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper photoNames = new ReadOnlyStringWrapper("");
    private Audience audience = Audience.FLIPPER;
    private Optional<Double> quote = Optional.empty();
    private final Supplier<Keeping> keeping;
    private final Supplier<List<PhotoToShow>> journal;
    private boolean journalShown;

    /**
     * @param keeping how the owner of the car shown would keep it; a quote typed here counts before the one there
     * @param journal photos in the journal of the car shown
     */
    SheetModel(CarModel car, Supplier<Keeping> keeping, Supplier<List<PhotoToShow>> journal, Ground ground,
            Executor background, ScreenThread screen) {
        this.car = car;
        this.keeping = keeping;
        this.journal = journal;
        this.work = new SheetWork(ground);
        this.background = background;
        this.screen = screen;
    }

    /** Reckons with another catalogue from now on, as the car's model does. */
    public void use(Ground other) {
        screen.require();
        work = new SheetWork(other);
    }

    /** Begins a sheet of the car shown now: nothing typed or chosen for another counts. */
    public void begin() {
        screen.require();
        audience = Audience.FLIPPER;
        quote = Optional.empty();
        photos.clear();
        photoNames.set("");
        journalShown = true;
        say("");
    }

    /** What the photos in the car's journal are called; empty when it has none. */
    public List<String> journalPhotos() {
        return journal.get().stream().map(PhotoToShow::name).toList();
    }

    public void showJournalPhotos(boolean shown) {
        journalShown = shown;
    }

    public void setAudience(Audience whom) {
        audience = whom;
    }

    /** What a shop asks, as typed; blank for none. */
    public void setQuote(String typed) {
        try {
            String plain = typed.strip().replace(",", "");
            quote = plain.isEmpty() ? Optional.empty() : Optional.of(Double.valueOf(plain)).filter(q -> q >= 0
                    && !q.isInfinite());
            say(plain.isEmpty() || quote.isPresent() ? "" : Texts.of("sheet.no_amount", typed));
        } catch (NumberFormatException e) {
            quote = Optional.empty();
            say(Texts.of("sheet.no_amount", typed));
        }
    }

    public void addPhotos(List<Path> files) {
        files.forEach(file -> photos.add(new PhotoToShow(file)));
        photoNames.set(String.join(", ", photos.stream().map(PhotoToShow::name).toList()));
    }

    /** Writes the sheet; the name's ending says as what. Ends with a message. */
    public void save(Path file) {
        boolean pdf = file.getFileName().toString().toLowerCase(Locale.ROOT).endsWith(".pdf");
        run(sheet -> {
            write(file, out -> {
                if (pdf) {
                    PdfSheet.write(sheet, paper(), out);
                } else {
                    Writer writer = new OutputStreamWriter(out, StandardCharsets.UTF_8);
                    HtmlSheet.write(sheet, writer);
                    writer.flush();
                }
            });
            return Texts.of("sheet.saved", file);
        }, this::say);
    }

    /** Draws the sheet for a printer and hands the picture over on the screen thread. */
    public void draw(Consumer<SheetPicture> then) {
        run(sheet -> {
            ByteArrayOutputStream pdf = new ByteArrayOutputStream();
            PdfSheet.write(sheet, paper(), pdf);
            return SheetPicture.of(pdf.toByteArray());
        }, picture -> {
            say("");
            then.accept(picture);
        });
    }

    public void say(String text) {
        screen.require();
        message.set(text);
    }

    public ReadOnlyStringProperty messageProperty() {
        return message.getReadOnlyProperty();
    }

    public ReadOnlyStringProperty photoNamesProperty() {
        return photoNames.getReadOnlyProperty();
    }

    public ReadOnlyBooleanProperty busyProperty() {
        return busy.getReadOnlyProperty();
    }

    private PdfSheet.Paper paper() {
        return PdfSheet.Paper.usualFor(car.currency());
    }

    /** Work that may meet a file that cannot be used. */
    private interface Use<T> {
        T of(DecisionSheet sheet) throws IOException;
    }

    private <T> void run(Use<T> use, Consumer<T> then) {
        screen.require();
        if (busy.get()) {
            return;
        }
        Optional<CarPicture> picture = Optional.ofNullable(car.pictureProperty().get());
        Optional<Appraisal> appraisal = picture.flatMap(CarPicture::seen).map(CarPicture.Seen::appraisal);
        if (appraisal.isEmpty() || car.busyProperty().get()) {
            say(Texts.of("sheet.not_judged"));
            return;
        }
        Scenario scenario = picture.get().scenario();
        Audience whom = audience;
        SheetWork now = work;
        RescueTerms kept = keeping.get().terms();
        RescueTerms terms = quote.map(q -> kept.withQuote(new Money(q, car.currency()))).orElse(kept);
        List<PhotoToShow> files = new ArrayList<>(photos);
        if (journalShown) {
            files.addAll(journal.get());
        }
        busy.set(true);
        say(Texts.of("sheet.busy"));
        background.execute(() -> {
            Runnable after = attempt(() -> use.of(now.of(scenario, appraisal.get(), whom, terms)
                    .withPhotos(files.stream().map(PhotoToShow::read).toList())), then);
            screen.executor().execute(() -> {
                busy.set(false);
                after.run();
            });
        });
    }

    /** Work done in the background that may fail. */
    private interface Attempt<T> {
        T result() throws IOException;
    }

    /** What is to be done on the screen thread after it, whatever became of it. */
    private <T> Runnable attempt(Attempt<T> attempt, Consumer<T> then) {
        try {
            T result = attempt.result();
            return () -> then.accept(result);
        } catch (IOException e) {
            return () -> say(Texts.of("sheet.failed", e.getMessage()));
        } catch (SheetWork.SheetRefused e) {
            return () -> say(e.getMessage());
        } catch (RuntimeException e) {
            return () -> say(Texts.of("failed", e.getMessage()));
        }
    }

    /** What goes into a file. */
    private interface Content {
        void writeTo(OutputStream out) throws IOException;
    }

    /** Wholly, or not at all. */
    private static void write(Path file, Content content) throws IOException {
        Path draft = file.resolveSibling("." + file.getFileName() + ".part");
        try {
            try (OutputStream out = Files.newOutputStream(draft)) {
                content.writeTo(out);
            }
            Files.move(draft, file, StandardCopyOption.REPLACE_EXISTING);
        } finally {
            Files.deleteIfExists(draft);
        }
    }
}
