package worthsaving.cli;

import java.io.PrintWriter;
import worthsaving.intake.IntakeFault;
import worthsaving.intake.LotSink;
import worthsaving.intake.RefusedRow;
import worthsaving.report.TextTable;

/** Tells of the rows left out as they come, and counts them; what becomes of the good ones is said below. */
abstract class FaultTeller implements LotSink {

    private static final int FAULTS_TOLD = 1_000;

    private final PrintWriter err;
    private long good;
    private long refused;
    private long faults;

    FaultTeller(PrintWriter err) {
        this.err = err;
    }

    /** One more good row was kept. */
    void kept() {
        good++;
    }

    boolean noneRefused() {
        return refused == 0;
    }

    @Override
    public void refused(RefusedRow row) {
        refused++;
        row.faults().forEach(this::tell);
    }

    @Override
    public void warning(IntakeFault fault) {
        tell(fault);
    }

    private void tell(IntakeFault fault) {
        faults++;
        if (faults <= FAULTS_TOLD) {
            err.println(TextTable.plain(fault.toString()));
        }
    }

    /** What was left out, once reading is over. */
    void end() {
        if (faults > FAULTS_TOLD) {
            err.println((faults - FAULTS_TOLD) + " more faults; see all with: worthsaving lot check");
        }
        if (refused > 0) {
            err.println(refused + " row(s) left out, " + good + " kept");
        }
    }
}
