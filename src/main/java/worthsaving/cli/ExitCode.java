package worthsaving.cli;

/** What the program ends with; scripts may rely on these. */
final class ExitCode {

    static final int OK = 0;
    static final int SOME_ROWS_REFUSED = 1;
    static final int USAGE = 2;
    static final int FILE_UNUSABLE = 3;
    static final int INSTALLATION_FAULTY = 4;
    static final int INTERNAL_ERROR = 70;

    private ExitCode() {}
}
