package worthsaving.report;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import worthsaving.ranking.Judged;
import worthsaving.ranking.Scored;

/**
 * Listings scored one by one: a row each, in the order of the table, none depending on another. A listing that could not
 * be judged has its id, the reason and what would mend it, and no figures.
 */
public final class ScoreReport {

    private static final String REFUSED = "not_judged_because";
    private static final String MEND = "mend";

    private final VinGuard vin;
    private final List<StandingColumn> columns;
    private final RowWriter rows;

    /** Writes the header at once. */
    public ScoreReport(VinGuard vin, RowWriter.Maker form) throws IOException {
        this.vin = vin;
        this.columns = StandingColumn.all(vin);
        List<String> header = new ArrayList<>(columns.stream().map(StandingColumn::name).toList());
        header.add(REFUSED);
        header.add(MEND);
        this.rows = form.of(header.toArray(String[]::new));
    }

    public void add(Scored scored) throws IOException {
        Object[] cells = new Object[columns.size() + 2];
        if (scored.standing().isPresent()) {
            for (int i = 0; i < columns.size(); i++) {
                cells[i] = StandingColumn.cell(columns.get(i).of(scored.standing().get()));
            }
        } else {
            Judged.Refused no = scored.refused().orElseThrow();
            cells[0] = vin.text(no.listing().id());
            cells[columns.size()] = no.reason();
            cells[columns.size() + 1] = no.mend();
        }
        rows.row(cells);
    }
}
