package worthsaving.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.net.InetSocketAddress;
import java.net.Proxy;
import java.net.ProxySelector;
import java.net.Socket;
import java.net.SocketAddress;
import java.net.SocketImplFactory;
import java.net.URI;
import java.net.URL;
import java.nio.channels.SocketChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import jdk.jfr.Recording;
import jdk.jfr.consumer.RecordedEvent;
import jdk.jfr.consumer.RecordingFile;

/**
 * A process of its own that runs commands and prints what they gave, every attempt to use the network and every file
 * read: lines that begin with {@code code}, {@code net} and {@code file}. Each way of the Java library onto the network
 * ends in an {@link IOException}: URLs, sockets, channels and the choice of a proxy.
 */
public final class Watched {

    /** Parts one command from the next. */
    static final String NEXT = "--next";
    /** Instead of commands: tries each way onto the network. */
    static final String TRY_NETWORK = "try-network";

    private static final List<String> ATTEMPTS = new CopyOnWriteArrayList<>();

    private Watched() {}

    public static void main(String[] args) throws Exception {
        closeNetwork();
        Path events = Files.createTempFile("watched", ".jfr");
        try (Recording recording = new Recording()) {
            recording.enable("jdk.FileRead").withoutThreshold().withoutStackTrace();
            recording.start();
            if (args[0].equals(TRY_NETWORK)) {
                tryNetwork();
                Files.readAllBytes(Path.of(args[1]));
            } else {
                commands(args).forEach(Watched::run);
            }
            recording.stop();
            recording.dump(events);
        }
        ATTEMPTS.forEach(a -> System.out.println("net " + a));
        for (RecordedEvent event : RecordingFile.readAllEvents(events)) {
            if (event.getEventType().getName().equals("jdk.FileRead")) {
                System.out.println("file " + event.getString("path"));
            }
        }
        Files.delete(events);
    }

    private static List<String[]> commands(String[] args) {
        List<String[]> commands = new ArrayList<>();
        int from = 0;
        for (int i = 0; i <= args.length; i++) {
            if (i == args.length || args[i].equals(NEXT)) {
                commands.add(Arrays.copyOfRange(args, from, i));
                from = i + 1;
            }
        }
        return commands;
    }

    private static void run(String[] command) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int code = Main.run(new PrintWriter(out), new PrintWriter(err), command);
        System.out.println("code " + code + " " + command[0] + " printed " + out.toString().length() + " characters");
        System.out.print(out);
        System.err.print(err);
    }

    private static IOException attempt(String what) {
        ATTEMPTS.add(what);
        return new IOException("no network here: " + what);
    }

    /** Java 17 calls the factories deprecated and has nothing in their place. */
    @SuppressWarnings("deprecation")
    private static void closeNetwork() throws IOException {
        SocketImplFactory none = () -> {
            throw new IllegalStateException(attempt("socket"));
        };
        Socket.setSocketImplFactory(none);
        java.net.ServerSocket.setSocketFactory(none);
        URL.setURLStreamHandlerFactory(protocol -> List.of("http", "https", "ftp", "mailto").contains(protocol)
                ? new ClosedHandler(() -> attempt("URL of " + protocol)) : null);
        ProxySelector.setDefault(new ProxySelector() {
            @Override
            public List<Proxy> select(URI uri) {
                throw new IllegalStateException(attempt("proxy for " + uri));
            }

            @Override
            public void connectFailed(URI uri, SocketAddress address, IOException failed) {
                attempt("connection to " + uri);
            }
        });
        System.setProperty("java.nio.channels.spi.SelectorProvider", ClosedChannels.class.getName());
        ClosedChannels.onOpen(Watched::attempt);
    }

    private static void tryNetwork() {
        quietly(() -> URI.create("http://localhost/").toURL().openStream().close());
        quietly(() -> new Socket("localhost", 9).close());
        quietly(() -> SocketChannel.open(new InetSocketAddress("localhost", 9)).close());
        quietly(() -> java.net.http.HttpClient.newHttpClient().send(java.net.http.HttpRequest.newBuilder(
                URI.create("http://localhost:9/")).build(), java.net.http.HttpResponse.BodyHandlers.discarding()));
    }

    private static void quietly(Attempt attempt) {
        int before = ATTEMPTS.size();
        try {
            attempt.make();
        } catch (Exception | Error refused) {
            System.out.println(ATTEMPTS.size() > before ? "seen" : "missed: " + refused);
        }
    }

    @FunctionalInterface
    private interface Attempt {
        void make() throws Exception;
    }
}
