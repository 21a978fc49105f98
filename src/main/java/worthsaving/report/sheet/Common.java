package worthsaving.report.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import worthsaving.catalog.Catalogue;
import worthsaving.catalog.FailureItem;
import worthsaving.catalog.FindingKind;
import worthsaving.diagnosis.Belief;
import worthsaving.diagnosis.Influence;
import worthsaving.quantity.Money;
import worthsaving.ranking.Appraisal;
import worthsaving.repair.RepairPlan;
import worthsaving.report.CarName;
import worthsaving.report.Suspects;
import worthsaving.report.Words;
import worthsaving.vehicle.Listing;
import worthsaving.vehicle.TitleBrand;
import worthsaving.vehicle.Vehicle;

/** What all kinds of sheets say of a car that was judged. */
final class Common {

    private static final double WEAK = 0.05;

    private final Appraisal appraisal;
    private final Catalogue catalogue;
    private final SheetSettings settings;
    private final Map<String, FailureItem> items;
    private final Map<String, FindingKind> findings;

    Common(Appraisal appraisal, Catalogue catalogue, SheetSettings settings) {
        this.appraisal = appraisal;
        this.catalogue = catalogue;
        this.settings = settings;
        this.items = catalogue.itemsById();
        this.findings = catalogue.findingsById();
    }

    String title() {
        return settings.vin().text(CarName.of(appraisal.listing().vehicle()).orElse("Car of unknown make"));
    }

    String facts() {
        Listing listing = appraisal.listing();
        Vehicle car = listing.vehicle();
        List<String> facts = new ArrayList<>();
        facts.add(settings.vin().text(listing.id()));
        facts.add(car.odometer().get().map(d -> Words.whole(d.value()) + " "
                + d.unit().name().toLowerCase(Locale.ROOT)).orElse("mileage unknown"));
        facts.add(title(car.title()));
        facts.add(listing.ask().get().map(a -> "asked " + money(a)).orElse("no price asked"));
        listing.towMiles().get().ifPresent(m -> facts.add(Words.whole(m) + " miles to tow"));
        settings.vin().of(car).ifPresent(v -> facts.add("VIN " + v));
        return String.join(" \u00b7 ", facts);
    }

    private static String title(TitleBrand brand) {
        return switch (brand) {
            case CLEAN_CLAIMED -> "title clean, says the seller";
            case PARTS_ONLY -> "for parts only";
            default -> "title " + brand.name().toLowerCase(Locale.ROOT);
        };
    }

    DecisionSheet.Provenance provenance() {
        return new DecisionSheet.Provenance(catalogue.version(), appraisal.value().modelName(),
                appraisal.assessment().method().seed(), settings.prepared());
    }

    /** Items that may have failed, with the finding that speaks loudest for each. */
    Section.Table broken(Section.Importance importance) {
        List<List<String>> rows = Suspects.of(appraisal).stream()
                .map(b -> List.of(item(b.item()), because(b), Words.percent(b.prior().value()),
                        Words.percent(b.posterior().value())))
                .toList();
        return new Section.Table("What is probably broken", importance,
                List.of(Section.Column.text("item"), Section.Column.text("what speaks for it most"),
                        Section.Column.number("usual"), Section.Column.number("now")), rows, "", 0);
    }

    private String because(Belief belief) {
        return appraisal.diagnosis().influences(belief.item()).stream()
                .filter(i -> i.logRatio() > WEAK)
                .max(Comparator.comparingDouble(Influence::logRatio))
                .map(i -> said(i, belief))
                .orElse("age and miles");
    }

    private String said(Influence i, Belief about) {
        boolean met = i.seen().ifTrue() >= i.seen().ifFalse();
        if (i.subject().equals(about.item())) {
            return met ? "named or found failed" : "denied or found sound";
        }
        String name = findings.containsKey(i.subject()) ? findings.get(i.subject()).name() : item(i.subject());
        return name + (met ? "" : ": not so");
    }

    String item(String id) {
        return items.containsKey(id) ? items.get(id).name() : id;
    }

    /** The plan for what is likelier failed than not, when something allowed mends it. */
    Section.Table plan() {
        List<List<String>> rows = new ArrayList<>();
        String closing = "Nothing that is allowed mends what is likelier failed than not.";
        if (appraisal.likelyPlan().isPresent()) {
            RepairPlan plan = appraisal.likelyPlan().get();
            for (RepairPlan.Job job : dearestFirst(plan.jobs())) {
                rows.add(List.of(job.name(), job.partSource().name().toLowerCase(Locale.ROOT).replace('_', ' '),
                        Words.range(job.parts().amount()), Words.hours(job.hours().mean().value())));
            }
            for (RepairPlan.PaidStep step : plan.access()) {
                rows.add(List.of(step.name(), "access, paid once", "", Words.hours(step.hours().mean().value())));
            }
            for (RepairPlan.Purchase tool : plan.toolsToBuy()) {
                rows.add(List.of(tool.name(), "tool to buy", Words.range(tool.price().amount()), ""));
            }
            closing = "Together " + money(plan.meanCost()) + " and " + Words.hours(plan.meanHours().value())
                    + " hours on average, shared access counted once.";
        }
        return new Section.Table("Repair of what is likelier failed than not", Section.Importance.BACKGROUND,
                List.of(Section.Column.text("job"), Section.Column.text("part"), Section.Column.number("parts cost"),
                        Section.Column.number("hours")), rows, closing, 0);
    }

    private static List<RepairPlan.Job> dearestFirst(List<RepairPlan.Job> jobs) {
        return jobs.stream().sorted(Comparator.comparing((RepairPlan.Job j) -> j.parts().mean()).reversed()).toList();
    }

    /** The catalogue's cautions for what may be worked on: items, checks to make, ways in. */
    Section.Lines cautions(List<FindingKind> checks) {
        List<String> lines = new ArrayList<>();
        lines.add("Stands on rated points, never a jack alone; fuel pressure relieved; battery off where airbags are"
                + " near; high voltage for trained persons only.");
        for (Belief b : Suspects.toMind(appraisal)) {
            FailureItem item = items.get(b.item());
            if (item != null && !item.caution().isBlank()) {
                lines.add(item.name() + ": " + item.caution() + ".");
            }
        }
        for (FindingKind check : checks) {
            if (!check.caution().isBlank() || check.canDoDamage()) {
                lines.add("Checking \u201c" + check.name() + "\u201d: "
                        + (check.canDoDamage() ? "can do damage. " : "") + check.caution()
                        + (check.caution().isBlank() ? "" : "."));
            }
        }
        return Section.Lines.of("Cautions", Section.Importance.SAFETY, lines.stream().distinct().toList());
    }

    /** What was assumed and where the forecast is thin. */
    Section.Lines guesses(List<String> first) {
        List<String> lines = new ArrayList<>(first);
        appraisal.value().warnings().forEach(lines::add);
        appraisal.assumptions().forEach(a -> lines.add("Assumed: " + a + "."));
        lines.add("Chances, parts prices and hours are the catalogue's expert guesses unless labelled otherwise.");
        return Section.Lines.of("Guesses", Section.Importance.BACKGROUND, lines);
    }

    static String money(Money money) {
        return money.currency().getCurrencyCode() + " " + Words.whole(money);
    }

    static String capital(String words) {
        return words.isEmpty() ? words : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }
}
