package worthsaving.report;

import java.io.IOException;

/** A judgement in the forms in which it is handed on. */
public interface Exported {

    /** For scripts; {@code shared/schema} describes it. */
    void json(Appendable out) throws IOException;

    /** For notes and messages. */
    void markdown(Appendable out) throws IOException;

    /** For spreadsheets. */
    void rows(RowWriter.Maker form) throws IOException;
}
