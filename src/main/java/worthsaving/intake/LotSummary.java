package worthsaving.intake;

import java.util.List;
import java.util.Map;

/**
 * How the reading of a table went.
 *
 * @param encoding name of the encoding it was read in; blank when characters were handed in
 * @param separator between cells
 * @param columns our name for a field, and the column it was read from
 * @param uses what each column in use was taken for and why, in the order of the table
 * @param header every column as the file spells it
 * @param unusedColumns columns nothing was read from
 * @param good rows that became listings
 * @param refused rows left out
 * @param warnings faults that cost no row
 * @param readable false when the file as a whole was refused
 * @param cancelled true when the sink stopped the reading
 */
public record LotSummary(
        String source,
        String encoding,
        char separator,
        Map<String, String> columns,
        List<ColumnUse> uses,
        List<String> header,
        List<String> unusedColumns,
        long good,
        long refused,
        long warnings,
        boolean readable,
        boolean cancelled) {

    /**
     * What a column was taken for.
     *
     * @param field our name
     * @param column as the file spells it
     */
    public record ColumnUse(String field, String column, String why) {}
}
