package worthsaving.intake.advert;

import java.io.Reader;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import worthsaving.intake.CodeTable;

/** Builds a {@link Vocabulary} from its files. */
final class VocabularyReader {

    private static final Set<String> KINDS = Set.of("symptom", "item", "title", "state", "gearbox", "engine", "drive",
            "body", "exposure", "skip", "class", "cue", "part");
    private static final Set<String> USUAL = Set.of("", "CVT", "DUAL_CLUTCH", "DIESEL", "HYBRID", "ELECTRIC");

    /** What makes the name of a part a complaint about it. */
    private static final List<String> FRAMES = List.of("needs a/new/another/used/replace/rebuilt/the? PART",
            "needs a new/used/rebuilt/reman PART", "{bad} PART", "PART {bad}", "PART is/has/was/are {bad}",
            "light .. for the? PART", "code* for the? PART", "PART code*",
            "PART went/going/let/needs/problem*/issue*/failure/pushed", "PART is going", "PART is making .. noise*");

    private final Function<String, Reader> files;
    private final CsvRows rows;
    private final Map<String, List<String>> listed = new HashMap<>();
    private final ModelIndex models = new ModelIndex();
    private final Map<String, List<TrimWord>> trims = new HashMap<>();
    private final Map<String, List<String>> classes = new HashMap<>();
    private final List<Phrase> phrases = new ArrayList<>();
    private final List<Phrase> moneyPhrases = new ArrayList<>();
    private final List<MoneyCue> moneyCues = new ArrayList<>();
    private final Map<String, SymptomKind> symptoms = new LinkedHashMap<>();
    private final List<Implication> implications = new ArrayList<>();
    private final Places places = new Places();
    private final Set<String> items = new HashSet<>();
    private final Set<String> trimWords = new HashSet<>();

    VocabularyReader(Function<String, Reader> files) {
        this.files = files;
        this.rows = new CsvRows(files);
    }

    Vocabulary read() {
        rows.read("spelling.csv", List.of("written", "means"), this::spelling);
        rows.read("makes.csv", List.of("make", "aliases"), r -> models.addMake(need(r, "make"), r.list("aliases")));
        rows.read("models.csv", List.of("make", "model", "aliases", "usual", "priced_as", "weak"), this::model);
        models.ready();
        rows.read("trims.csv", List.of("kind", "trim", "aliases", "makes", "near"), this::trim);
        rows.read("symptoms.csv", List.of("symptom", "finding", "state", "hides"), this::symptom);
        rows.read("phrases.csv", List.of("kind", "means", "phrase"), this::phrase);
        rows.read("implied.csv", List.of("when", "then"), this::implication);
        rows.read("money.csv", List.of("role", "side", "reach", "weight", "phrase"), this::money);
        rows.read("places.csv", List.of("kind", "name", "region", "country"), this::place);
        CodeTable codes = codes();
        if (!rows.faults().isEmpty()) {
            throw new VocabularyException(rows.faults());
        }
        PhraseBook book = new PhraseBook(phrases);
        PhraseBook moneyBook = new PhraseBook(moneyPhrases);
        Set<String> words = new HashSet<>(book.vocabulary());
        words.addAll(moneyBook.vocabulary());
        Set<String> names = new HashSet<>(models.words());
        names.addAll(places.words());
        names.addAll(trimWords);
        items.removeIf(item -> item.endsWith(ConditionRule.GENERIC));
        return new Vocabulary(new Spelling(listed, words, book.prefixes(), names), models, trims, book, moneyBook,
                moneyCues, symptoms, implications, places, items, codes);
    }

    private CodeTable codes() {
        Reader in = files.apply(CodeTable.FILE);
        if (in == null) {
            rows.fault(CodeTable.FILE + ": the file is missing");
            return CodeTable.EMPTY;
        }
        try {
            return CodeTable.read(in);
        } catch (IllegalArgumentException e) {
            rows.fault(e.getMessage());
            return CodeTable.EMPTY;
        }
    }

    private static String need(CsvRows.Row row, String column) {
        String value = row.get(column);
        if (value.isEmpty()) {
            throw new IllegalArgumentException("column " + column + " is empty");
        }
        return value;
    }

    private static <E extends Enum<E>> E one(Class<E> type, String value) {
        try {
            return Enum.valueOf(type, value.toUpperCase(Locale.ROOT));
        } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException(
                    "'" + value + "' is not one of " + List.of(type.getEnumConstants()), e);
        }
    }

    private void spelling(CsvRows.Row row) {
        String written = need(row, "written");
        if (listed.put(written, List.of(need(row, "means").split(" "))) != null) {
            throw new IllegalArgumentException("'" + written + "' is listed twice");
        }
    }

    private void model(CsvRows.Row row) {
        String[] usual = row.get("usual").split(" ");
        if (!USUAL.contains(usual[0])) {
            throw new IllegalArgumentException("column usual holds '" + usual[0] + "', which is not one of " + USUAL);
        }
        if (usual.length > 1 && !Rx.is(usual[1], "\\d{4}")) {
            throw new IllegalArgumentException("column usual names the year '" + usual[1] + "'; write four digits");
        }
        if (!Set.of("", "yes", "make").contains(row.get("weak"))) {
            throw new IllegalArgumentException("column weak holds '" + row.get("weak")
                    + "'; write yes, make or nothing");
        }
        int from = usual.length > 1 ? Integer.parseInt(usual[1]) : 0;
        Optional<String> pricedAs = Optional.of(row.get("priced_as")).filter(p -> !p.isEmpty());
        if (pricedAs.isPresent() && pricedAs.get().indexOf('/') < 1) {
            throw new IllegalArgumentException("column priced_as holds '" + pricedAs.get() + "'; write make/model");
        }
        models.addModel(new Model(need(row, "make"), need(row, "model"), usual[0], from, pricedAs,
                !row.get("weak").isEmpty(), row.get("weak").isEmpty() || row.get("weak").equals("yes")),
                row.list("aliases"));
    }

    private void trim(CsvRows.Row row) {
        TrimWord word = new TrimWord(one(TrimWord.Kind.class, row.get("kind")), need(row, "trim"),
                Set.copyOf(row.list("makes")), row.yes("near"));
        List<String> names = new ArrayList<>(row.list("aliases"));
        names.add(word.shown());
        for (String name : names) {
            trims.computeIfAbsent(TrimRule.bare(name), k -> new ArrayList<>(1)).add(word);
            trimWords.addAll(List.of(name.toLowerCase(Locale.ROOT).split(" ")));
        }
    }

    private void symptom(CsvRows.Row row) {
        String word = need(row, "symptom");
        SymptomKind kind = new SymptomKind(word, Optional.of(row.get("finding")).filter(f -> !f.isEmpty()),
                Optional.of(row.get("state")).filter(s -> !s.isEmpty()),
                row.get("hides").isEmpty() ? List.of() : List.of(row.get("hides").split(" ")));
        if (symptoms.put(word, kind) != null) {
            throw new IllegalArgumentException("symptom '" + word + "' is listed twice");
        }
    }

    private void phrase(CsvRows.Row row) {
        String kind = need(row, "kind");
        String means = need(row, "means");
        if (!KINDS.contains(kind)) {
            throw new IllegalArgumentException("kind '" + kind + "' is not one of " + KINDS);
        }
        if (kind.equals("class")) {
            List<String> words = new ArrayList<>();
            for (String word : need(row, "phrase").split("/")) {
                words.add(word);
            }
            classes.put(means, words);
            return;
        }
        if (kind.equals("part")) {
            items.add(means);
            for (String noun : row.list("phrase")) {
                for (String frame : FRAMES) {
                    phrases.add(Phrase.parse("item", means, frame.replace("PART", noun), classes, listed).asFramed());
                }
            }
            return;
        }
        checkMeaning(kind, means);
        for (String text : row.list("phrase")) {
            phrases.add(Phrase.parse(kind.equals("cue") ? "cue:" + means : kind, means, text, classes, listed));
        }
    }

    private void checkMeaning(String kind, String means) {
        if (means.equals(PhraseBook.NOTHING)) {
            return;
        }
        switch (kind) {
            case "symptom" -> known(symptoms.containsKey(means), means, "symptoms.csv");
            case "title" -> one(TitleRule.Said.class, means);
            case "gearbox" -> one(worthsaving.vehicle.Powertrain.Gearbox.class, means);
            case "engine" -> one(worthsaving.vehicle.Powertrain.Engine.class, means);
            case "drive" -> one(worthsaving.vehicle.Powertrain.Drive.class, means);
            case "exposure" -> one(worthsaving.vehicle.Exposure.Level.class, means);
            case "item" -> items.add(means);
            default -> { }
        }
    }

    private static void known(boolean known, String word, String file) {
        if (!known) {
            throw new IllegalArgumentException("'" + word + "' is not listed in " + file);
        }
    }

    private void implication(CsvRows.Row row) {
        List<String> when = List.of(need(row, "when").split(" "));
        for (String condition : when) {
            String bare = condition.startsWith("!") ? condition.substring(1) : condition;
            known(bare.indexOf(':') > 0 || symptoms.containsKey(bare), bare, "symptoms.csv");
        }
        String then = need(row, "then");
        known(then.indexOf(':') > 0 || symptoms.containsKey(then), then, "symptoms.csv");
        if (then.startsWith("ITEM:")) {
            items.add(then.substring("ITEM:".length()));
        }
        implications.add(new Implication(when, then));
    }

    private void money(CsvRows.Row row) {
        double weight;
        int reach;
        try {
            weight = Double.parseDouble(row.get("weight"));
            reach = Integer.parseInt(row.get("reach"));
        } catch (NumberFormatException e) {
            throw new IllegalArgumentException("reach and weight must be numbers", e);
        }
        String id = Integer.toString(moneyCues.size());
        moneyCues.add(new MoneyCue(
                one(MoneyCue.Role.class, row.get("role")), one(MoneyCue.Side.class, row.get("side")), reach, weight));
        for (String text : row.list("phrase")) {
            moneyPhrases.add(Phrase.parse("money" + id, id, text, classes, listed));
        }
    }

    private void place(CsvRows.Row row) {
        Places.Place place = new Places.Place(need(row, "name"), row.get("region"), need(row, "country"));
        switch (row.get("kind")) {
            case "REGION" -> places.addRegion(place);
            case "PLACE" -> places.addPlace(place);
            default -> throw new IllegalArgumentException("kind '" + row.get("kind") + "' is neither REGION nor PLACE");
        }
    }
}
