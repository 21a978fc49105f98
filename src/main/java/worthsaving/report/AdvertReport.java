package worthsaving.report;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
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
    private final TextTable table = new TextTable().left("field").left("read as", 40).left("").left("from", 60);

    public AdvertReport(AdvertReading reading) {
        this.reading = reading;
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

    private static String plain(Object value) {
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
            return c.item() + " " + c.standing().name().toLowerCase(Locale.ROOT);
        }
        if (value instanceof SaidCode c) {
            return c.code() + c.finding().map(f -> ": " + f).orElse(
                    c.code().definedBy() == TroubleCode.DefinedBy.MAKER ? ": the maker's own, not used" : ": not used");
        }
        if (value instanceof OfferReading.Figure f) {
            return f.role().name().toLowerCase(Locale.ROOT) + " " + f.money();
        }
        return value instanceof Enum<?> e ? spoken(e.name().toLowerCase(Locale.ROOT)) : value.toString();
    }

    private static String spoken(String word) {
        return word.replace('_', ' ');
    }

    private String words(List<Span> spans) {
        return spans.stream().map(s -> "'" + s.of(reading.text()) + "'").collect(Collectors.joining(" "));
    }
}
