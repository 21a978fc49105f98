package worthsaving.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import worthsaving.deal.DealTerms;
import worthsaving.deal.Place;
import worthsaving.deal.PlaceReader;
import worthsaving.deal.Term;
import worthsaving.quantity.Range;
import worthsaving.quantity.Source;

/** The money lines of a deal: those of a place, and the user's own over them. */
final class MoneyOptions {

    private static final String PLACES = "shared/places.csv";

    @Option(names = "--place", paramLabel = "NAME",
            description = "Taxes and fees of a place or kind of purchase from " + PLACES + ", labelled examples.")
    private String place;

    @Option(names = "--places", paramLabel = "FILE", description = "Your own table of places, with the same columns.")
    private Path file;

    @Option(names = "--money", paramLabel = "LINE=FIGURES",
            description = "One money line of your own, exactly or as low:mode:high, such as sales_tax=7.5 or "
                    + "title_transfer=40:75:150. 'worthsaving money' lists them.")
    private Map<String, String> lines = new LinkedHashMap<>();

    @Spec(Spec.Target.MIXEE)
    private CommandSpec spec;

    /** @throws IllegalArgumentException when a line is unknown or its figures are */
    DealTerms applyTo(DealTerms terms) {
        DealTerms changed = place == null ? terms : place(Resources.find()).applyTo(terms);
        for (Map.Entry<String, String> line : lines.entrySet()) {
            Term term = Term.ofId(line.getKey()).orElseThrow(() -> new IllegalArgumentException("--money: there is no"
                    + " money line '" + line.getKey() + "'; 'worthsaving money' lists them"));
            changed = changed.with(term, range(line.getValue()), Source.user());
        }
        return changed;
    }

    private static Range range(String text) {
        String[] figures = text.split(":", -1);
        try {
            return switch (figures.length) {
                case 1 -> Range.exactly(Double.parseDouble(text));
                case 3 -> new Range(Double.parseDouble(figures[0]), Double.parseDouble(figures[1]),
                        Double.parseDouble(figures[2]));
                default -> throw new NumberFormatException(text);
            };
        } catch (NumberFormatException e) {
            throw new IllegalArgumentException("--money: '" + text + "' is neither a figure nor low:mode:high", e);
        }
    }

    private Place place(Resources resources) {
        PrintWriter err = spec.commandLine().getErr();
        String name = file == null ? PLACES : file.toString();
        PlaceReader.Reading reading;
        try (Reader in = Resources.reader(file == null ? resources.path(PLACES) : file)) {
            reading = PlaceReader.read(name, in);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        reading.faults().forEach(err::println);
        Place found = reading.places().stream().filter(p -> p.id().equals(place)).findFirst()
                .orElseThrow(() -> new UserError(ExitCode.USAGE, "There is no place '" + place + "' in " + name
                        + "; it has " + reading.places().stream().map(Place::id).collect(Collectors.joining(", "))));
        err.println(found.name() + ". " + Place.CAUTION);
        return found;
    }
}
