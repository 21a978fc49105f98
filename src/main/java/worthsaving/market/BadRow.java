package worthsaving.market;

/**
 * A row that could not be read.
 *
 * @param line in the file, from 1 with the header
 * @param column its header
 * @param value as it stood
 * @param reason what is wrong and what would mend it
 */
public record BadRow(long line, String column, String value, String reason) {

    @Override
    public String toString() {
        return "line " + line + ", column " + column + ": '" + value + "' " + reason;
    }
}
