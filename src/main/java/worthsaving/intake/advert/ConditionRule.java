package worthsaving.intake.advert;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import worthsaving.intake.CodeTable;
import worthsaving.intake.TroubleCode;
import worthsaving.vehicle.Exposure;
import worthsaving.vehicle.Observation.Sight;
import worthsaving.vehicle.Powertrain.Engine;
import worthsaving.vehicle.Powertrain.Gearbox;

/** Symptoms, claimed failures, running state, trouble codes and how long it was driven so. */
final class ConditionRule {

    /** Ending of items that stand for several until the gearbox or engine decides. */
    static final String GENERIC = "_GENERIC";

    private static final Pattern CODE = Pattern.compile("[pcbu][0-3][0-9a-f]{3}");
    private static final Map<String, Exposure.Hazard> HAZARDS = Map.of(
            "knock", Exposure.Hazard.LOW_OIL_PRESSURE, "oil_light", Exposure.Hazard.LOW_OIL_PRESSURE,
            "overheating", Exposure.Hazard.OVERHEATING, "coolant_loss", Exposure.Hazard.OVERHEATING,
            "misfire", Exposure.Hazard.MISFIRE, "transmission_slip", Exposure.Hazard.SLIPPING_GEARBOX,
            "cold_start_rattle", Exposure.Hazard.WORN_TIMING_DRIVE);

    private final Page page;
    private final Polarity polarity;
    private final Optional<Gearbox> gearbox;
    private final Optional<Engine> engine;
    private final Map<String, Found<Symptom>> symptoms = new LinkedHashMap<>();
    private final Map<String, Found<Claim>> claims = new LinkedHashMap<>();
    private final List<String> impliedStates = new ArrayList<>();

    ConditionRule(Page page, Polarity polarity, Optional<Gearbox> gearbox, Optional<Engine> engine) {
        this.page = page;
        this.polarity = polarity;
        this.gearbox = gearbox;
        this.engine = engine;
    }

    ConditionReading read() {
        page.hits("symptom").stream().filter(hit -> !polarity.elsewhere(hit)).forEach(this::symptom);
        new ClaimRule(page, polarity).read().forEach(claim -> claims.merge(claim.value().item(), claim,
                ConditionRule::graver));
        for (Implication implication : page.vocabulary().implications()) {
            if (implication.when().stream().allMatch(this::holds)) {
                add(implication);
            }
        }
        hide();
        claims.keySet().removeIf(item -> item.endsWith(GENERIC));
        List<String> held = symptoms.values().stream().map(Found::value).filter(s -> s.sight() == Sight.PRESENT)
                .map(Symptom::word).toList();
        Found<String> state = StateRule.find(page, polarity, held, impliedStates);
        List<Found<Symptom>> shown = symptoms.values().stream().filter(s -> listed(s.value())).toList();
        return new ConditionReading(state, shown, List.copyOf(claims.values()), codes(), exposure(held));
    }

    /** Words that only help to conclude ("cranks") are not shown as complaints. */
    private static boolean listed(Symptom symptom) {
        return !symptom.word().equals("cranks") && !symptom.word().equals("clicks");
    }

    private static Found<Claim> graver(Found<Claim> a, Found<Claim> b) {
        return b.value().standing().ordinal() < a.value().standing().ordinal() ? b : a;
    }

    private void symptom(Hit hit) {
        Optional<String> finding = page.vocabulary().symptoms().get(hit.means()).finding();
        Sight sight = polarity.denied(hit) ? Sight.ABSENT : Sight.PRESENT;
        Found<Symptom> found = Found.stated(new Symptom(hit.means(), finding, sight), page.spans(hit));
        symptoms.merge(hit.means(), found, (a, b) -> b.value().sight() == Sight.PRESENT ? b : a);
    }

    private boolean holds(String condition) {
        if (condition.startsWith("!")) {
            return !holds(condition.substring(1));
        }
        int colon = condition.indexOf(':');
        String name = condition.substring(colon + 1);
        return switch (colon < 0 ? "" : condition.substring(0, colon)) {
            case "ITEM" -> claims.containsKey(name) && claims.get(name).value().held();
            case "GEARBOX" -> gearbox.filter(g -> g.name().equals(name)).isPresent();
            case "ENGINE" -> engine.filter(e -> e.name().equals(name)).isPresent();
            default -> symptoms.containsKey(name) && symptoms.get(name).value().sight() == Sight.PRESENT;
        };
    }

    private void add(Implication implication) {
        List<Span> words = new ArrayList<>();
        Found<Claim> particular = null;
        for (String condition : implication.when()) {
            if (condition.startsWith("ITEM:")) {
                particular = claims.get(condition.substring("ITEM:".length()));
                words.addAll(particular.words());
            } else if (symptoms.containsKey(condition)) {
                words.addAll(symptoms.get(condition).words());
            }
        }
        String why = "follows from " + String.join(" and ", implication.when().stream()
                .filter(c -> !c.startsWith("!"))
                .map(c -> c.startsWith("ITEM:") ? "what is said of the part" : c.replace('_', ' ')).toList());
        String then = implication.then();
        if (then.startsWith("!ITEM:")) {
            claims.remove(then.substring("!ITEM:".length()));
        } else if (then.startsWith("STATE:")) {
            impliedStates.add(then.substring("STATE:".length()));
        } else if (then.startsWith("ITEM:")) {
            String item = then.substring("ITEM:".length());
            boolean same = particular != null && particular.value().item().endsWith(GENERIC);
            Claim claim = new Claim(item, same ? particular.value().standing() : Claim.Standing.IMPLIED);
            claims.putIfAbsent(item, same && !particular.isGuessed()
                    ? Found.stated(claim, words) : Found.guessed(claim, words, why));
        } else {
            Optional<String> finding = page.vocabulary().symptoms().get(then).finding();
            symptoms.putIfAbsent(then, Found.guessed(new Symptom(then, finding, Sight.PRESENT), words, why));
        }
    }

    private void hide() {
        for (Found<Symptom> found : List.copyOf(symptoms.values())) {
            if (found.value().sight() == Sight.PRESENT) {
                page.vocabulary().symptoms().get(found.value().word()).hides().forEach(symptoms::remove);
            }
        }
    }

    private List<Found<SaidCode>> codes() {
        List<Found<SaidCode>> codes = new ArrayList<>();
        for (int i = 0; i < page.tokens().size(); i++) {
            Optional<TroubleCode> code = CODE.matcher(page.at(i)).matches()
                    ? TroubleCode.parse(page.at(i)) : Optional.empty();
            if (code.isPresent()) {
                boolean doubted = page.text().startsWith("?", page.span(i, i).end());
                SaidCode said = new SaidCode(code.get(),
                        page.vocabulary().codes().row(code.get()).flatMap(CodeTable.Row::finding),
                        doubted ? Sight.UNSURE : Sight.PRESENT);
                codes.add(doubted ? Found.guessed(said, List.of(page.span(i, i)), "the seller is not sure")
                        : Found.stated(said, List.of(page.span(i, i))));
            }
        }
        return codes;
    }

    private Exposure exposure(List<String> held) {
        List<Hit> hits = page.hits("exposure");
        if (hits.isEmpty()) {
            return Exposure.UNKNOWN;
        }
        boolean drivenOn = hits.stream().anyMatch(hit -> hit.means().equals(Exposure.Level.DRIVEN_ON.name()));
        Map<Exposure.Hazard, Exposure.Level> levels = new EnumMap<>(Exposure.Hazard.class);
        for (String word : held) {
            if (HAZARDS.containsKey(word)) {
                levels.put(HAZARDS.get(word), drivenOn ? Exposure.Level.DRIVEN_ON : Exposure.Level.STOPPED_AT_ONCE);
            }
        }
        return new Exposure(levels);
    }
}
