package worthsaving.desktop.car;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import javafx.beans.value.ObservableBooleanValue;
import javafx.print.PageLayout;
import javafx.print.Printer;
import javafx.print.PrinterJob;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ButtonType;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Dialog;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.image.ImageView;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import javafx.stage.FileChooser;
import javafx.stage.Window;
import worthsaving.desktop.Choices;
import worthsaving.desktop.Texts;
import worthsaving.desktop.Words;
import worthsaving.report.sheet.Audience;

/** Asks for whom a decision sheet is, and saves or prints it. */
public final class SheetDialog extends Dialog<Void> {

    /** What Java hands a page to; where it lacks, the page is lost without a word. */
    private static final Path LPR = Path.of("/usr/bin/lpr");

    private final SheetModel model;
    private final BiFunction<FileChooser, Window, File> where;

    /**
     * @param car its name
     * @param where asks for the file to save to; null for none
     */
    public SheetDialog(Window owner, String car, SheetModel model, BiFunction<FileChooser, Window, File> where) {
        this.model = model;
        this.where = where;
        model.begin();
        initOwner(owner);
        setTitle(Texts.of("sheet.title_of", car));
        getDialogPane().getStylesheets().addAll(owner.getScene().getRoot().getStylesheets());
        getDialogPane().setStyle(owner.getScene().getRoot().getStyle());
        getDialogPane().getButtonTypes().add(ButtonType.CLOSE);
        ComboBox<Audience> whom =
                Choices.of("sheet.for", Audience.values(), Audience.FLIPPER, model::setAudience);
        whom.setId("sheet-for");
        TextField quote = new TextField();
        quote.setId("sheet-quote");
        quote.textProperty().addListener((o, was, is) -> model.setQuote(is));
        quote.disableProperty().bind(whom.valueProperty().isNotEqualTo(Audience.OWNER));
        Node quoted = field("sheet.quote", quote);
        shownWhile(quoted, quote.disabledProperty().not());
        Label photos = Words.wrapped("", "soft");
        photos.textProperty().bind(model.photoNamesProperty());
        shownWhile(photos, photos.textProperty().isNotEmpty());
        Label message = Words.wrapped("", "soft");
        message.setId("sheet-message");
        message.textProperty().bind(model.messageProperty());
        HBox actions = new HBox(8, button("sheet.pdf", () -> save("sheet.pdf_files", "*.pdf")),
                button("sheet.html", () -> save("sheet.html_files", "*.html")), button("sheet.print", this::print));
        actions.disableProperty().bind(model.busyProperty());
        VBox content = new VBox(8, field("sheet.whom", whom), quoted,
                button("sheet.photos", this::choosePhotos), photos, actions, message);
        content.getStyleClass().add("padded");
        content.setPrefWidth(420);
        List<String> titles = model.journalPhotos();
        if (!titles.isEmpty()) {
            content.getChildren().add(2, journal(titles));
        }
        getDialogPane().setContent(content);
    }

    private Node journal(List<String> titles) {
        CheckBox shown = new CheckBox(Texts.of("sheet.journal", String.join(", ", titles)));
        shown.setId("sheet-journal");
        shown.setWrapText(true);
        shown.setSelected(true);
        shown.selectedProperty().addListener((o, was, is) -> model.showJournalPhotos(is));
        return shown;
    }

    private static void shownWhile(Node node, ObservableBooleanValue needed) {
        node.visibleProperty().bind(needed);
        node.managedProperty().bind(needed);
    }

    private static Node field(String key, Node control) {
        Label label = new Label(Texts.of(key));
        label.setLabelFor(control);
        return new VBox(2, label, control);
    }

    private static Button button(String key, Runnable action) {
        Button button = new Button(Texts.of(key));
        button.setId(key.replace('.', '-'));
        button.setOnAction(e -> action.run());
        return button;
    }

    private Window window() {
        return getDialogPane().getScene().getWindow();
    }

    private void choosePhotos() {
        FileChooser chooser = new FileChooser();
        chooser.setTitle(Texts.of("sheet.photos"));
        chooser.getExtensionFilters().add(new FileChooser.ExtensionFilter(
                Texts.of("sheet.photo_files"), "*.jpg", "*.jpeg", "*.png", "*.JPG", "*.JPEG", "*.PNG"));
        Optional.ofNullable(chooser.showOpenMultipleDialog(window()))
                .ifPresent(files -> model.addPhotos(files.stream().map(File::toPath).toList()));
    }

    private void save(String kind, String pattern) {
        FileChooser chooser = new FileChooser();
        chooser.setTitle(Texts.of("sheet.title"));
        chooser.getExtensionFilters().add(new FileChooser.ExtensionFilter(Texts.of(kind), List.of(pattern)));
        chooser.setInitialFileName("sheet" + pattern.substring(1));
        Optional.ofNullable(where.apply(chooser, window())).ifPresent(file -> model.save(
                file.getName().endsWith(pattern.substring(1)) ? file.toPath()
                        : new File(file.getPath() + pattern.substring(1)).toPath()));
    }

    /** Any printer will do to begin with where the system has named none as the usual one; the dialog offers the others. */
    private static Optional<Printer> printer() {
        return Optional.ofNullable(Printer.getDefaultPrinter()).or(() -> Printer.getAllPrinters().stream().findFirst());
    }

    private void print() {
        PrinterJob job = printer().map(PrinterJob::createPrinterJob).orElse(null);
        if (job == null) {
            model.say(Texts.of("sheet.no_printer"));
            return;
        }
        if (System.getProperty("os.name").startsWith("Linux") && !Files.isExecutable(LPR)) {
            job.cancelJob();
            model.say(Texts.of("sheet.no_lpr"));
            return;
        }
        if (!job.showPrintDialog(window())) {
            job.cancelJob();
            return;
        }
        model.draw(picture -> {
            PageLayout asked = job.getJobSettings().getPageLayout();
            PageLayout page = job.getPrinter().createPageLayout(
                    asked.getPaper(), asked.getPageOrientation(), Printer.MarginType.HARDWARE_MINIMUM);
            ImageView view = new ImageView(picture.image());
            view.setPreserveRatio(true);
            view.setFitWidth(page.getPrintableWidth());
            view.setFitHeight(page.getPrintableHeight());
            model.say(job.printPage(page, view) && job.endJob() ? Texts.of("sheet.printed") : Texts.of("sheet.not_printed"));
        });
    }
}
