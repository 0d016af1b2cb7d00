package hotidle.assess;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.EnumSet;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class AssumedTest {

    /** The film that a roughness asks for, the oil that it takes and the load that a bushing bears are nowhere written. */
    @Test
    void onlyWhatTheHubNeedsIsAssumedWhateverTheFileSays() {
        Set<Margin.Kind> assumed =
                EnumSet.allOf(Margin.Kind.class).stream().filter(Assumed::limit).collect(Collectors.toSet());
        assertEquals(Set.of(Margin.Kind.FILM, Margin.Kind.FILM_OIL, Margin.Kind.UNIT_LOAD), assumed);
    }
}
