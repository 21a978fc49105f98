package worthsaving.cli;

import java.io.IOException;
import java.net.ProtocolFamily;
import java.nio.channels.DatagramChannel;
import java.nio.channels.Pipe;
import java.nio.channels.ServerSocketChannel;
import java.nio.channels.SocketChannel;
import java.nio.channels.spi.AbstractSelector;
import java.nio.channels.spi.SelectorProvider;
import java.util.function.Function;

/** Opens no channel onto the network; tells of each attempt. Made by the Java library, by name. */
public final class ClosedChannels extends SelectorProvider {

    private static Function<String, IOException> told = IOException::new;

    static void onOpen(Function<String, IOException> onOpen) {
        told = onOpen;
    }

    @Override
    public DatagramChannel openDatagramChannel() throws IOException {
        throw told.apply("datagram channel");
    }

    @Override
    public DatagramChannel openDatagramChannel(ProtocolFamily family) throws IOException {
        throw told.apply("datagram channel");
    }

    @Override
    public Pipe openPipe() throws IOException {
        throw told.apply("pipe");
    }

    @Override
    public AbstractSelector openSelector() throws IOException {
        throw told.apply("selector");
    }

    @Override
    public ServerSocketChannel openServerSocketChannel() throws IOException {
        throw told.apply("server channel");
    }

    @Override
    public SocketChannel openSocketChannel() throws IOException {
        throw told.apply("channel");
    }
}
