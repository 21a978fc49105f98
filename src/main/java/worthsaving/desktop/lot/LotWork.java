package worthsaving.desktop.lot;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import java.util.function.IntConsumer;
import java.util.stream.Stream;
import worthsaving.catalog.FailureItem;
import worthsaving.desktop.Ground;
import worthsaving.desktop.Texts;
import worthsaving.intake.ListingReader;
import worthsaving.intake.LotSummary;
import worthsaving.intake.Vocabulary;
import worthsaving.ranking.Judge;
import worthsaving.ranking.Judged;
import worthsaving.ranking.LotRanking;
import worthsaving.ranking.Order;
import worthsaving.ranking.Ranked;
import worthsaving.ranking.Standing;
import worthsaving.vehicle.Listing;

/** What the lot does in the background: read a table, judge its listings, put them in order. */
final class LotWork {

    private final Ground ground;
    private final Judge judge;
    private final Map<String, FailureItem> items;
    private volatile int total;

    LotWork(Ground ground) {
        this.ground = ground;
        this.judge = new Judge(ground.catalogue(), ground.values(), ground.settings());
        this.items = ground.catalogue().itemsById();
    }

    /** What is asked for. */
    sealed interface Request {

        /** A table to read and judge. */
        record Open(Path table) implements Request {}

        /** Changed listings to judge anew, and the rest to be kept. */
        record Change(Content of, List<Listing> changed, Order order) implements Request {}

        /** The same cars judged anew. */
        record Again(Content of, Order order) implements Request {}

        /** Another order of the same. */
        record Sort(Content of, Order order) implements Request {}
    }

    /**
     * A lot judged.
     *
     * @param title name of the table
     * @param header header line of the table, for handing refused rows back
     * @param refusedRows rows of the table as they stood in it
     * @param edited ids of listings changed since they were read
     */
    record Content(
            String title,
            Ranked ranked,
            Order order,
            List<Problem> reading,
            String header,
            List<String> refusedRows,
            Set<String> edited) {

        static final Content EMPTY =
                new Content("", new Ranked(List.of(), List.of()), Order.EXPECTED_PROFIT, List.of(), "", List.of(),
                        Set.of());

        List<Listing> listings() {
            return Stream.concat(
                    ranked.places().stream().map(p -> p.standing().listing()),
                    ranked.refused().stream().map(Judged.Refused::listing)).toList();
        }

        /** Listings changed or added since the table was read. */
        List<Listing> editedListings() {
            return listings().stream().filter(l -> edited.contains(l.id())).toList();
        }

        List<Problem> problems() {
            List<Problem> all = new ArrayList<>(reading);
            ranked.refused().forEach(r -> all.add(Problem.of(r)));
            return all;
        }
    }

    Content of(Request request, BooleanSupplier cancelled, IntConsumer progress) {
        if (request instanceof Request.Open open) {
            return open(open.table(), cancelled, progress);
        }
        if (request instanceof Request.Change change) {
            total = change.changed().size();
            return change(change);
        }
        if (request instanceof Request.Again again) {
            Content before = again.of();
            Ranked ranked = new LotRanking(judge).rank(before.listings(), again.order(), progress, cancelled);
            return new Content(before.title(), ranked, again.order(), before.reading(), before.header(),
                    before.refusedRows(), before.edited());
        }
        Request.Sort sort = (Request.Sort) request;
        return withOrder(sort.of(), sort.order());
    }

    Judge judge() {
        return judge;
    }

    /** How many listings are being judged, or were last. */
    int total() {
        return total;
    }

    String itemName(String id) {
        return items.containsKey(id) ? items.get(id).name() : id;
    }

    List<LotRow> rows(Content content) {
        return content.ranked().places().stream()
                .map(place -> LotRow.of(place, items, content.edited().contains(place.standing().listing().id())))
                .toList();
    }

    private Content open(Path table, BooleanSupplier cancelled, IntConsumer progress) {
        total = 0;
        TableSink sink = new TableSink(cancelled);
        LotSummary summary = read(table, sink);
        if (summary.cancelled()) {
            throw new CancellationException("reading was cancelled");
        }
        if (!summary.readable()) {
            throw new UnreadableTable(sink.problems());
        }
        total = sink.listings().size();
        Ranked ranked = new LotRanking(judge).rank(sink.listings(), Order.EXPECTED_PROFIT, progress, cancelled);
        return new Content(summary.source(), ranked, Order.EXPECTED_PROFIT, sink.problems(), sink.header(),
                sink.refusedRows(), Set.of());
    }

    private LotSummary read(Path table, TableSink sink) {
        ListingReader reader = new ListingReader(Vocabulary.of(ground.catalogue(), ground.makes(), ground.adverts().codes()),
                ground.tables());
        try (InputStream in = Files.newInputStream(table)) {
            return reader.read(in, table.getFileName().toString(), sink);
        } catch (IOException e) {
            throw new UnreadableTable(List.of(new Problem(table.toString(), Texts.of("problem.file_refused"),
                    Texts.of("problem.unreadable"), Texts.of("problem.unreadable.mend"))));
        }
    }

    private Content change(Request.Change change) {
        Content before = change.of();
        Set<String> ids = new TreeSet<>();
        change.changed().forEach(l -> ids.add(l.id()));
        List<Standing> standings = new ArrayList<>();
        before.ranked().places().stream().map(Ranked.Place::standing)
                .filter(s -> !ids.contains(s.listing().id())).forEach(standings::add);
        List<Judged.Refused> refused = new ArrayList<>(before.ranked().refused().stream()
                .filter(r -> !ids.contains(r.listing().id())).toList());
        for (Listing listing : change.changed()) {
            Judged judged = judge.judge(listing);
            if (judged instanceof Judged.Done done) {
                standings.add(Standing.of(done.appraisal()));
            } else {
                refused.add((Judged.Refused) judged);
            }
        }
        Set<String> edited = new TreeSet<>(before.edited());
        edited.addAll(ids);
        return new Content(before.title(), Ranked.of(standings, refused, change.order()), change.order(),
                before.reading(), before.header(), before.refusedRows(), edited);
    }

    private static Content withOrder(Content of, Order order) {
        List<Standing> standings = of.ranked().places().stream().map(Ranked.Place::standing).toList();
        return new Content(of.title(), Ranked.of(standings, of.ranked().refused(), order), order, of.reading(),
                of.header(), of.refusedRows(), of.edited());
    }

    /** The listing with an id, if it was judged or refused. */
    static Optional<Listing> find(Content content, String id) {
        return content.listings().stream().filter(l -> l.id().equals(id)).findFirst();
    }

    /** Nothing of the table could be used. */
    static final class UnreadableTable extends RuntimeException {
        private final transient List<Problem> problems;

        UnreadableTable(List<Problem> problems) {
            super(problems.isEmpty() ? "" : problems.get(0).what());
            this.problems = List.copyOf(problems);
        }

        List<Problem> problems() {
            return problems;
        }
    }
}
