package hotidle.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;

/** The script that tells whether a page serves who listens or uses keys alone. */
public final class AxeCore {

    private AxeCore() {}

    /** Its text, to be run in the page. */
    public static String script() throws IOException {
        String version = resource("/META-INF/maven/org.webjars.npm/axe-core/pom.properties")
                .replaceAll("(?s).*version=(\\S+).*", "$1");
        return resource("/META-INF/resources/webjars/axe-core/" + version + "/axe.min.js");
    }

    private static String resource(String name) throws IOException {
        try (InputStream in = AxeCore.class.getResourceAsStream(name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
