package worthsaving.intake;

/** Counts and forgets; stops after a number of progress calls. */
final class CountingSink implements LotSink {

    private final int stopAfter;
    private int calls;
    long good;
    long refused;
    long warnings;
    long rowsReported;
    long charactersReported;

    CountingSink(int stopAfter) {
        this.stopAfter = stopAfter;
    }

    @Override
    public void good(LotEntry entry) {
        good++;
    }

    @Override
    public void refused(RefusedRow row) {
        refused++;
    }

    @Override
    public void warning(IntakeFault fault) {
        warnings++;
    }

    @Override
    public boolean goOn(long rows, long characters) {
        rowsReported = rows;
        charactersReported = characters;
        return ++calls < stopAfter;
    }
}
