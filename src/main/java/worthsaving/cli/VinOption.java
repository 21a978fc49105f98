package worthsaving.cli;

import picocli.CommandLine.Option;
import worthsaving.report.VinGuard;

/** Whether vehicle identification numbers may leave with what is exported. */
final class VinOption {

    @Option(names = "--with-vin", description = "Let vehicle identification numbers stand in exports; otherwise they "
            + "are left out, and hidden where one stands in an id.")
    private boolean withVin;

    VinGuard guard() {
        return new VinGuard(withVin);
    }
}
