package worthsaving.intake;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import worthsaving.vehicle.Exposure;
import worthsaving.vehicle.Exposure.Hazard;
import worthsaving.vehicle.Exposure.Level;
import worthsaving.vehicle.Observation;
import worthsaving.vehicle.Observation.Sight;
import worthsaving.vehicle.Observation.Witness;

/**
 * Reads what was seen, said and read out. An id that the catalogue does not know refuses the row: a
 * verdict without that finding would be another verdict.
 */
final class EvidenceCells {

    private static final Pattern BETWEEN_IDS = Pattern.compile("[\\s,;|]+");
    private static final Pattern BETWEEN_CODES =
            Pattern.compile("(?:-[0-9A-Fa-f]{2}(?=[^0-9A-Za-z]|$)|[\\s,;|/:()\\[\\]])+");
    private static final Pattern STATUS =
            Pattern.compile("(?i)pending|permanent|history|historic|stored|confirmed|current|active|passed");

    private final Cells cells;
    private final Vocabulary vocabulary;
    private final Map<String, Observation> observations = new LinkedHashMap<>();

    EvidenceCells(Cells cells, Vocabulary vocabulary) {
        this.cells = cells;
        this.vocabulary = vocabulary;
    }

    /** Observations in the order of the columns, those from trouble codes last. */
    List<Observation> observations(List<ReadCode> codes) {
        findings(Field.PRESENT, Sight.PRESENT);
        findings(Field.ABSENT, Sight.ABSENT);
        findings(Field.UNSURE, Sight.UNSURE);
        sellerSays();
        items(Field.FOUND_FAILED, Sight.PRESENT);
        items(Field.FOUND_SOUND, Sight.ABSENT);
        codes(codes);
        return List.copyOf(observations.values());
    }

    /** Two codes may stand for one finding; the surer counts, and neither outweighs what was looked at. */
    private void codes(List<ReadCode> codes) {
        ScanReport.sights(codes, vocabulary).forEach((id, sight) -> {
            Observation before = observations.get(Witness.OWN_EYES + id);
            if (before == null || before.sight() == sight || sight == Sight.PRESENT) {
                add(Field.CODES, id, sight, Witness.OWN_EYES);
            }
        });
    }

    private void findings(Field field, Sight sight) {
        for (String word : words(field)) {
            id(field, word, vocabulary.findings(), vocabulary.items(), "finding",
                            sight == Sight.ABSENT ? Field.FOUND_SOUND : Field.FOUND_FAILED)
                    .ifPresent(id -> add(field, id, sight, Witness.OWN_EYES));
        }
    }

    private void items(Field field, Sight sight) {
        for (String word : words(field)) {
            id(field, word, vocabulary.items(), vocabulary.findings(), "failure item",
                            sight == Sight.ABSENT ? Field.ABSENT : Field.PRESENT)
                    .ifPresent(id -> add(field, id, sight, Witness.OWN_EYES));
        }
    }

    private void sellerSays() {
        List<String> claims = words(Field.SELLER_SAYS);
        if (claims.isEmpty()) {
            return;
        }
        Set<String> both = new TreeSet<>(vocabulary.findings());
        both.addAll(vocabulary.items());
        for (String word : claims) {
            boolean denied = word.startsWith("!");
            id(Field.SELLER_SAYS, denied ? word.substring(1) : word, both, Set.of(), "finding or failure item",
                            Field.SELLER_SAYS)
                    .ifPresent(id -> add(
                            Field.SELLER_SAYS, id, denied ? Sight.ABSENT : Sight.PRESENT, Witness.SELLER));
        }
    }

    private Optional<String> id(
            Field field, String word, Set<String> ids, Set<String> others, String kind, Field otherField) {
        if (ids.isEmpty()) {
            return Optional.of(word);
        }
        Optional<String> id = Vocabulary.spelled(word, ids);
        if (id.isEmpty()) {
            String mend = Vocabulary.spelled(word, others)
                    .map(o -> "it belongs into the column " + otherField.title())
                    .orElseGet(() -> Nearest.hint(word, ids, "see the ids in the catalogue, or tell it in the story"));
            cells.refuse(field, "the catalogue has no " + kind + " " + Cells.shown(word), mend);
        }
        return id;
    }

    private void add(Field field, String id, Sight sight, Witness witness) {
        Observation before = observations.putIfAbsent(witness + id, new Observation(id, sight, witness));
        if (before != null && before.sight() != sight) {
            cells.refuse(field, id + " is told as " + word(before.sight()) + " and as " + word(sight),
                    "keep one of the two");
        }
    }

    private static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    private List<String> words(Field field) {
        String text = cells.text(field);
        if (text.isEmpty() || text.chars().allMatch(Character::isLetterOrDigit)) {
            return text.isEmpty() ? List.of() : List.of(text);
        }
        return BETWEEN_IDS.splitAsStream(text).filter(w -> !w.isEmpty()).distinct().toList();
    }

    Exposure exposure() {
        if (cells.text(Field.DROVE_ON).isEmpty() && cells.text(Field.STOPPED_AT_ONCE).isEmpty()) {
            return Exposure.UNKNOWN;
        }
        Map<Hazard, Level> levels = new EnumMap<>(Hazard.class);
        hazards(Field.DROVE_ON, Level.DRIVEN_ON, levels);
        hazards(Field.STOPPED_AT_ONCE, Level.STOPPED_AT_ONCE, levels);
        return levels.isEmpty() ? Exposure.UNKNOWN : new Exposure(levels);
    }

    private void hazards(Field field, Level level, Map<Hazard, Level> levels) {
        List<String> words = words(field);
        List<String> names = words.isEmpty() ? List.of() : Arrays.stream(Hazard.values()).map(Enum::name).toList();
        for (String word : words) {
            String name = word.toUpperCase(Locale.ROOT).replace('-', '_');
            if (!names.contains(name)) {
                cells.refuse(field, "there is no hazard " + Cells.shown(word),
                        Nearest.hint(word, names, "use one of: " + String.join(", ", names)));
            } else if (levels.putIfAbsent(Hazard.valueOf(name), level) == Level.DRIVEN_ON
                    && level == Level.STOPPED_AT_ONCE) {
                cells.refuse(field, name + " is told as driven on and as stopped at once", "keep one of the two");
            }
        }
    }

    /** Trouble codes; those without a finding are warned of and kept. */
    List<ReadCode> codes() {
        String text = cells.text(Field.CODES);
        if (text.isEmpty()) {
            return List.of();
        }
        List<ReadCode> codes = plain(words(Field.CODES)).orElseGet(() -> report(text));
        for (ReadCode read : codes) {
            TroubleCode code = read.code();
            if (!vocabulary.findings().isEmpty() && vocabulary.findings(code).isEmpty()) {
                boolean makers = code.definedBy() == TroubleCode.DefinedBy.MAKER;
                cells.warn(Field.CODES, "the catalogue has no finding for " + code
                        + (makers ? ", a code of the maker's own" : ""), "it is kept and weighs nothing");
            }
        }
        return codes;
    }

    private List<ReadCode> report(String text) {
        for (String word : BETWEEN_CODES.split(text)) {
            if (!word.isEmpty() && TroubleCode.parse(word).isEmpty() && !STATUS.matcher(word).matches()) {
                cells.refuse(Field.CODES, Cells.shown(word) + " is no trouble code",
                        "write P, C, B or U, a digit 0 to 3 and three hexadecimal digits, such as P0016");
            }
        }
        return ScanReport.read(text).codes();
    }

    /** Nearly all cells are plain lists of codes; they need no search. */
    private static Optional<List<ReadCode>> plain(List<String> words) {
        List<ReadCode> codes = new ArrayList<>();
        for (String word : words) {
            Optional<TroubleCode> code = TroubleCode.parse(word);
            if (code.isEmpty()) {
                return Optional.empty();
            }
            codes.add(new ReadCode(code.get(), ReadCode.Status.STORED, 1));
        }
        return Optional.of(codes.stream().distinct().toList());
    }
}
