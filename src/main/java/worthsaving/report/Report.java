package worthsaving.report;

import java.io.IOException;

/** A result in the three forms that the command line prints. */
public interface Report {

    /** For people. */
    void text(Appendable out) throws IOException;

    /** For spreadsheets. */
    void csv(Appendable out) throws IOException;

    /** For scripts. */
    void json(Appendable out) throws IOException;
}
