package worthsaving.desktop;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import worthsaving.catalog.Catalogue;
import worthsaving.catalog.CatalogueReader;
import worthsaving.catalog.CatalogueReading;
import worthsaving.desktop.book.Sample;
import worthsaving.desktop.book.SampleFiles;
import worthsaving.desktop.catalogue.Shelf;
import worthsaving.intake.advert.AdvertReader;
import worthsaving.intake.advert.Vocabulary;
import worthsaving.intake.advert.VocabularyException;
import worthsaving.market.MarketSettings;
import worthsaving.quantity.Seed;
import worthsaving.ranking.JudgeSettings;
import worthsaving.valuation.ModelFormatException;
import worthsaving.valuation.PriceModel;
import worthsaving.valuation.Valuer;

/** The folder that holds catalogue, market settings, price models and samples. */
public final class ProjectFolder {

    private static final String PROPERTY = "worthsaving.home";
    private static final Path CATALOGUE = Path.of("shared", "catalogue");
    private static final Path MARKET = Path.of("shared", "market");
    private static final Path VOCABULARY = Path.of("shared", "vocabulary");
    private static final Path SAMPLES = Path.of("shared", "samples");
    private static final Path MODEL = Path.of("models", "us.json");

    private final Path home;

    private ProjectFolder(Path home) {
        this.home = home;
    }

    /**
     * Where property worthsaving.home points, else above the program file, else above the working folder.
     *
     * @throws CannotStart saying where it was looked for
     */
    public static ProjectFolder find() {
        List<Path> starts = new ArrayList<>();
        String set = System.getProperty(PROPERTY);
        if (set != null) {
            starts.add(Path.of(set).toAbsolutePath());
        } else {
            starts.add(Path.of(URI.create(
                    ProjectFolder.class.getProtectionDomain().getCodeSource().getLocation().toString())));
            starts.add(Path.of("").toAbsolutePath());
        }
        for (Path start : starts) {
            for (Path folder = start; folder != null; folder = folder.getParent()) {
                if (Files.isDirectory(folder.resolve(CATALOGUE))) {
                    return new ProjectFolder(folder);
                }
            }
        }
        throw new CannotStart(Texts.of("start.no_folder", CATALOGUE, starts));
    }

    /** The invented lot that a first-time user sees. */
    public Path sampleLot() {
        return home.resolve(SAMPLES).resolve("lot.csv");
    }

    /** The invented lot with cars under work and finished ones. @throws CannotStart when it cannot be read */
    public Sample sample(Ground ground) {
        try {
            return new SampleFiles(home.resolve(SAMPLES), worthsaving.intake.Vocabulary.of(
                    ground.catalogue(), ground.makes(), ground.adverts().codes()), ground.catalogue(), ground.today()).read();
        } catch (UncheckedIOException | IllegalStateException | IllegalArgumentException e) {
            throw new CannotStart(Texts.of("start.sample", SAMPLES, e.getMessage()));
        }
    }

    /** Reads catalogue and price model; takes a second or so. */
    public Ground read(LocalDate today) {
        Catalogue catalogue = catalogue();
        Valuer valuer = valuer();
        return new Ground(catalogue, valuer::forecast, JudgeSettings.usual(catalogue, Seed.DEFAULT),
                valuer.model().makes(), valuer.model()::models, new AdvertReader(vocabulary()), today);
    }

    /** The catalogue's files, to be read and replaced. */
    public Shelf shelf() {
        return new FolderShelf(home.resolve(CATALOGUE));
    }

    private Catalogue catalogue() {
        CatalogueReading reading = CatalogueReader.read(name -> reader(CATALOGUE.resolve(name)));
        if (reading instanceof CatalogueReading.Valid valid) {
            return valid.catalogue();
        }
        throw new CannotStart(Texts.of("start.catalogue", reading.faults().size(), reading.faults().get(0)));
    }

    private Vocabulary vocabulary() {
        try {
            return Vocabulary.read(name -> reader(VOCABULARY.resolve(name)));
        } catch (UncheckedIOException | VocabularyException e) {
            throw new CannotStart(Texts.of("start.vocabulary", VOCABULARY, e.getMessage()));
        }
    }

    private Valuer valuer() {
        try (Reader model = reader(MODEL);
                Reader factors = reader(MARKET.resolve("market_settings.csv"));
                Reader index = reader(MARKET.resolve("price_index.csv"))) {
            PriceModel prices = PriceModel.read(model, MODEL.toString());
            return new Valuer(prices, MarketSettings.read(factors, index, prices.market()));
        } catch (IOException | UncheckedIOException | IllegalArgumentException | ModelFormatException e) {
            throw new CannotStart(Texts.of("start.model", MODEL, e.getMessage()));
        }
    }

    private Reader reader(Path relative) {
        try {
            return Files.newBufferedReader(home.resolve(relative), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The installation is faulty; the message says what is wrong and what mends it. */
    public static final class CannotStart extends RuntimeException {

        CannotStart(String message) {
            super(message);
        }
    }
}
