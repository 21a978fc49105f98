package worthsaving.intake.advert;

import java.io.Reader;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import worthsaving.intake.CodeTable;

/** Everything the reader of adverts knows of words; read from plain CSV files that the user may edit. */
public final class Vocabulary {

    /** Names of the files asked for, all in one folder. */
    public static final List<String> FILES = List.of("spelling.csv", "makes.csv", "models.csv", "trims.csv",
            "phrases.csv", "symptoms.csv", "implied.csv", "money.csv", "places.csv", CodeTable.FILE);

    private final Spelling spelling;
    private final ModelIndex models;
    private final Map<String, List<TrimWord>> trims;
    private final PhraseBook phrases;
    private final PhraseBook moneyPhrases;
    private final List<MoneyCue> moneyCues;
    private final Map<String, SymptomKind> symptoms;
    private final List<Implication> implications;
    private final Places places;
    private final Set<String> items;
    private final CodeTable codes;

    Vocabulary(
            Spelling spelling,
            ModelIndex models,
            Map<String, List<TrimWord>> trims,
            PhraseBook phrases,
            PhraseBook moneyPhrases,
            List<MoneyCue> moneyCues,
            Map<String, SymptomKind> symptoms,
            List<Implication> implications,
            Places places,
            Set<String> items,
            CodeTable codes) {
        this.spelling = spelling;
        this.models = models;
        this.trims = trims;
        this.phrases = phrases;
        this.moneyPhrases = moneyPhrases;
        this.moneyCues = moneyCues;
        this.symptoms = symptoms;
        this.implications = implications;
        this.places = places;
        this.items = items;
        this.codes = codes;
    }

    /**
     * @param files gives a reader for each of {@link #FILES}, or null where there is none; each is closed
     * @throws VocabularyException listing every fault with file and line
     */
    public static Vocabulary read(Function<String, Reader> files) {
        return new VocabularyReader(files).read();
    }

    /** Failure items of the catalogue that phrases may claim. */
    public Set<String> items() {
        return new TreeSet<>(items);
    }

    /** Findings of the catalogue that symptoms and trouble codes stand for. */
    public Set<String> findings() {
        Set<String> findings = new TreeSet<>(codes.findings());
        symptoms.values().forEach(kind -> kind.finding().ifPresent(findings::add));
        return findings;
    }

    /** What trouble codes stand for. */
    public CodeTable codes() {
        return codes;
    }

    Spelling spelling() {
        return spelling;
    }

    ModelIndex models() {
        return models;
    }

    List<TrimWord> trims(String bareName) {
        return trims.getOrDefault(bareName, List.of());
    }

    PhraseBook phrases() {
        return phrases;
    }

    PhraseBook moneyPhrases() {
        return moneyPhrases;
    }

    MoneyCue moneyCue(Hit hit) {
        return moneyCues.get(Integer.parseInt(hit.means()));
    }

    Map<String, SymptomKind> symptoms() {
        return symptoms;
    }

    List<Implication> implications() {
        return implications;
    }

    Places places() {
        return places;
    }
}
