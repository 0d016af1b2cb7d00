package hotidle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import org.junit.jupiter.api.Test;

class LiveCommandTest {

    @Test
    void theAddressIsPrintedAndTheServerIsGoneOnceItHasEnded() {
        Run run = Run.of("live", "training-rig", "--no-browser", "--for", "0s");
        assertEquals(0, run.code(), run.err());
        assertTrue(run.out().startsWith("The live page of training-rig: http://127.0.0.1:"), run.out());
        assertTrue(run.out().endsWith("has ended.\n"), run.out());
    }

    @Test
    void anOpenerThatIsMissingIsSaidAndTheAddressStandsThereAllTheSame() throws IOException, InterruptedException {
        // Java looks once, at its first process, which system this is and where what nobody reads goes: of another it
        // could start none
        new ProcessBuilder("true")
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start()
                .waitFor();
        String system = System.getProperty("os.name");
        try {
            System.setProperty("os.name", "Windows without its own programs");
            Run run = Run.of("live", "training-rig", "--for", "0s");
            assertEquals(0, run.code(), run.err());
            assertTrue(run.out().contains("http://127.0.0.1:"), run.out());
            assertEquals("no browser could be opened from here; open the address above in one\n", run.err());
        } finally {
            System.setProperty("os.name", system);
        }
    }

    @Test
    void aPortThatSomebodyElseHasIsRefusedInOneMessage() throws IOException {
        try (ServerSocket taken = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            String port = String.valueOf(taken.getLocalPort());
            Run run = Run.of("live", "training-rig", "--no-browser", "--for", "0s", "--port", port);
            assertEquals(2, run.code());
            assertTrue(run.err().startsWith("hotidle: --port " + port + " cannot be used: "), run.err());
            assertFalse(run.err().contains("\tat "), run.err());
        }
    }
}
