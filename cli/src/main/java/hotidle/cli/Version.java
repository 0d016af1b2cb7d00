package hotidle.cli;

import java.util.Optional;
import picocli.CommandLine.IVersionProvider;

/** What runs: version and commit as the packed jar has them, and the Java that runs it. */
final class Version implements IVersionProvider {

    /** As in the poms. */
    static final String NUMBER = "0.1.0";

    @Override
    public String[] getVersion() {
        return lines(Optional.ofNullable(Version.class.getPackage().getImplementationVersion()));
    }

    /**
     * The lines to print.
     *
     * @param packed version and commit with a plus between them; empty where the classes were not packed
     */
    static String[] lines(Optional<String> packed) {
        String commit = packed.map(text -> text.substring(text.indexOf('+') + 1))
                .filter(text -> text.matches("[0-9a-f]{7,40}(-changed)?"))
                .orElse("not known");
        return new String[] {
            "Hot Idle " + NUMBER, "commit " + commit, "Java " + System.getProperty("java.version"),
        };
    }
}
