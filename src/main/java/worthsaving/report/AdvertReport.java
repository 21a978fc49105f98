package worthsaving.report;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import worthsaving.catalog.Catalogue;
import worthsaving.catalog.FailureItem;
import worthsaving.catalog.FindingKind;
import worthsaving.intake.TroubleCode;
import worthsaving.intake.advert.AdvertReading;
import worthsaving.intake.advert.CarReading;
import worthsaving.intake.advert.Claim;
import worthsaving.intake.advert.Found;
import worthsaving.intake.advert.Mileage;
import worthsaving.intake.advert.OfferReading;
import worthsaving.intake.advert.SaidCode;
import worthsaving.intake.advert.Span;
import worthsaving.intake.advert.Symptom;
import worthsaving.vehicle.Observation;

/** What was read from an advert: each field with the words it came from, guesses marked. */
public final class AdvertReport {

    private final AdvertReading reading;
    private final Map<String, FailureItem> items;
    private final Map<String, FindingKind> findings;
    private final TextTable table = new TextTable().left("field").left("read as", 60).left("").left("from", 50);

    /** @param catalogue names the parts and findings */
    public AdvertReport(AdvertReading reading, Catalogue catalogue) {
        this.reading = reading;
        this.items = catalogue.itemsById();
        this.findings = catalogue.findingsById();
    }

    public void text(Appendable out) throws IOException {
        CarReading car = reading.car();
        field("year", car.year());
        field("make", car.make());
        field("model", car.model());
        field("trim", car.trim());
        field("mileage", car.mileage());
        field("engine", car.engine());
        field("gearbox", car.gearbox());
        field("drive", car.drive());
        field("price", reading.offer().price());
        field("title", Optional.of(reading.offer().title()));
        field("place", reading.offer().location());
        field("running", Optional.of(reading.condition().runningState()));
        reading.offer().otherMoney().forEach(m -> field("other money", Optional.of(m)));
        reading.condition().symptoms().forEach(s -> field("symptom", Optional.of(s)));
        reading.condition().claims().forEach(c -> field("seller says", Optional.of(c)));
        reading.condition().codes().forEach(c -> field("trouble code", Optional.of(c)));
        table.write(out);
        for (String note : reading.notes()) {
            out.append(TextTable.plain(note)).append('\n');
        }
    }

    private void field(String name, Optional<? extends Found<?>> found) {
        if (found.isEmpty()) {
            table.row(name, "not said", "", "");
            return;
        }
        Found<?> f = found.get();
        table.row(name, plain(f.value()), f.isGuessed() ? "guessed: " + f.why() : "", words(f.words()));
    }

    private String plain(Object value) {
        if (value instanceof Mileage m) {
            String least = m.lowerBound() ? "at least " : "";
            return m.distance().map(d -> least + Words.whole(d.value()) + " "
                    + d.unit().name().toLowerCase(Locale.ROOT)).orElse("true mileage unknown");
        }
        if (value instanceof Symptom s) {
            return spoken(s.word()) + (s.sight() == Observation.Sight.ABSENT ? ": not so" : "")
                    + (s.finding().isEmpty() ? ": read but not used" : "");
        }
        if (value instanceof Claim c) {
            return c.standing().name().toLowerCase(Locale.ROOT) + ": "
                    + (items.containsKey(c.item()) ? items.get(c.item()).name() : c.item());
        }
        if (value instanceof SaidCode c) {
            return c.code() + c.finding().map(f -> ": " + (findings.containsKey(f) ? findings.get(f).name() : f)).orElse(
                    c.code().definedBy() == TroubleCode.DefinedBy.MAKER ? ": the maker's own, not used" : ": not used");
        }
        if (value instanceof OfferReading.Figure f) {
            return spoken(f.role().name().toLowerCase(Locale.ROOT)) + " " + f.money();
        }
        return value instanceof Enum<?> e ? spoken(e.name().toLowerCase(Locale.ROOT)) : spoken(value.toString());
    }

    private static String spoken(String word) {
        return word.replace('_', ' ');
    }

    private String words(List<Span> spans) {
        return spans.stream().map(s -> "'" + s.of(reading.text()) + "'").collect(Collectors.joining(" "));
    }
}
