package worthsaving.cli;

import java.io.IOException;
import java.net.URL;
import java.net.URLConnection;
import java.net.URLStreamHandler;
import java.util.function.Supplier;

/** Opens no URL; tells of the attempt. */
final class ClosedHandler extends URLStreamHandler {

    private final Supplier<IOException> onOpen;

    ClosedHandler(Supplier<IOException> onOpen) {
        this.onOpen = onOpen;
    }

    @Override
    protected URLConnection openConnection(URL url) throws IOException {
        throw onOpen.get();
    }
}
