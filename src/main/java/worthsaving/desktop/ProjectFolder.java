package worthsaving.desktop;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.net.URI;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import worthsaving.catalog.Catalogue;
import worthsaving.catalog.CatalogueReader;
import worthsaving.catalog.CatalogueReading;
import worthsaving.desktop.book.Sample;
import worthsaving.desktop.book.SampleFiles;
import worthsaving.desktop.catalogue.Shelf;
import worthsaving.desktop.market.MarketShelf;
import worthsaving.intake.advert.AdvertReader;
import worthsaving.intake.advert.Vocabulary;
import worthsaving.intake.advert.VocabularyException;
import worthsaving.market.Market;
import worthsaving.quantity.Seed;
import worthsaving.ranking.JudgeSettings;
import worthsaving.shell.FaultyInstallation;
import worthsaving.shell.MarketGround;
import worthsaving.shell.Markets;
import worthsaving.valuation.PriceModel;

/** The folder that holds catalogue, market settings, price models and samples. */
public final class ProjectFolder implements MarketShelf {

    private static final String PROPERTY = "worthsaving.home";
    private static final Path CATALOGUE = Path.of("shared", "catalogue");
    private static final Path VOCABULARY = Path.of("shared", "vocabulary");
    private static final Path SAMPLES = Path.of("shared", "samples");

    private static final int FAULTS_TOLD = 3;

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

    /**
     * The invented lot with cars under work and finished ones.
     *
     * @throws CannotStart when it cannot be read
     */
    public Sample sample(Ground ground) {
        try {
            return new SampleFiles(home.resolve(SAMPLES), worthsaving.intake.Vocabulary.of(
                    ground.catalogue(), ground.makes(), ground.adverts().codes()), ground.catalogue(), ground.today()).read();
        } catch (UncheckedIOException | IllegalStateException | IllegalArgumentException e) {
            throw new CannotStart(Texts.of("start.sample", SAMPLES, told(e)));
        }
    }

    /** Reads catalogue and price model of the United States; takes a second or so. */
    public Ground read(LocalDate today) {
        return read(today, "US");
    }

    /** Reads catalogue and the price model of a market; takes a second or so. */
    public Ground read(LocalDate today, String market) {
        Catalogue asWritten = catalogue();
        try {
            MarketGround ground = read(market);
            PriceModel model = ground.valuer().model();
            Ground plain = new Ground(asWritten, ground.valuer()::forecast, JudgeSettings.usual(asWritten, Seed.DEFAULT),
                    model.makes(), model::models, new AdvertReader(vocabulary()), today);
            return plain.on(HomeMarket.of(ground, asWritten), plain.values(), plain.makes(), plain.models());
        } catch (FaultyInstallation e) {
            throw new CannotStart(Texts.of("start.model", market, e.getMessage()));
        }
    }

    @Override
    public List<Market> markets() {
        return Markets.all(this::reader).stream().filter(m -> Files.isRegularFile(model(m.code()))).toList();
    }

    @Override
    public MarketGround read(String market) {
        Path file = model(market);
        try (Reader model = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
            return MarketGround.read(this::reader, model, file.getFileName().toString());
        } catch (IOException e) {
            throw new FaultyInstallation(Texts.of("start.no_model", file, told(e)));
        } catch (UncheckedIOException e) {
            throw new FaultyInstallation(told(e));
        }
    }

    private Path model(String market) {
        return home.resolve(Path.of("models", market.toLowerCase(Locale.ROOT) + ".json"));
    }

    /** The catalogue's files, to be read and replaced. */
    public Shelf shelf() {
        return new FolderShelf(home.resolve(CATALOGUE));
    }

    private Catalogue catalogue() {
        CatalogueReading reading = CatalogueReader.read(this::table);
        if (reading instanceof CatalogueReading.Valid valid) {
            return valid.catalogue();
        }
        throw new CannotStart(Texts.of("start.catalogue", reading.faults().size(), reading.faults().get(0)));
    }

    private Reader table(String name) {
        Path file = CATALOGUE.resolve(name);
        return Files.exists(home.resolve(file)) ? reader(file) : null;
    }

    private Vocabulary vocabulary() {
        try {
            return Vocabulary.read(name -> reader(VOCABULARY.resolve(name)));
        } catch (UncheckedIOException | VocabularyException e) {
            throw new CannotStart(Texts.of("start.vocabulary", VOCABULARY, told(e)));
        }
    }

    private Reader reader(String relative) {
        return reader(Path.of(relative));
    }

    private static String told(Exception failed) {
        Throwable cause = failed instanceof UncheckedIOException wrapped ? wrapped.getCause() : failed;
        if (cause instanceof NoSuchFileException missing) {
            return Texts.of("start.missing", missing.getFile());
        }
        return cause instanceof CharacterCodingException ? Texts.of("start.not_text")
                : cause.getMessage().lines().limit(FAULTS_TOLD + 1L).collect(Collectors.joining("\n"));
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
