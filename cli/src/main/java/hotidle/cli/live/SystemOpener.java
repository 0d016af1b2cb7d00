package hotidle.cli.live;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;

/** Opens an address as the system does: the launcher runs Java without a screen, so that Java itself cannot. */
public final class SystemOpener {

    /** An opener that lives longer than this has opened something (chosen) [ms]. */
    private static final long PATIENCE = 1500;

    private SystemOpener() {}

    /** Whether the system took it. */
    public static boolean opened(String address) {
        return opened(opener(System.getProperty("os.name")), address);
    }

    static List<String> opener(String system) {
        String name = system.toLowerCase(Locale.ROOT);
        if (name.startsWith("windows")) {
            return List.of("rundll32", "url.dll,FileProtocolHandler");
        }
        return List.of(name.startsWith("mac") ? "open" : "xdg-open");
    }

    static boolean opened(List<String> opener, String address) {
        List<String> command = new java.util.ArrayList<>(opener);
        command.add(address);
        try {
            Process process = new ProcessBuilder(command)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .redirectError(ProcessBuilder.Redirect.DISCARD)
                    .start();
            return !process.waitFor(PATIENCE, TimeUnit.MILLISECONDS) || process.exitValue() == 0;
        } catch (IOException missing) {
            return false;
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            return true;
        }
    }
}
