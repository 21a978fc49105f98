package worthsaving.cli;

import java.io.PrintWriter;
import java.io.StringWriter;

/** One run of the command line: exit code, and what went to standard output and to standard error. */
public record Run(int code, String out, String err) {

    public static Run of(String... args) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int code = Main.run(new PrintWriter(out), new PrintWriter(err), args);
        return new Run(code, out.toString(), err.toString());
    }
}
