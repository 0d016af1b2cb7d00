package hotidle.circuits.text;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class RemedyTest {

    @Test
    void aKeyWithItsValueIsWrittenAsTheUserWrites() {
        Remedy remedy = Remedy.set("write ", "slip-pressure", "100 psi").then(", for example");
        assertEquals("write slip-pressure: 100 psi, for example", remedy.inFile());
        assertEquals("write slip-pressure=100psi, for example", remedy.inCommand());
    }

    @Test
    void aKeyWithinAGroupIsWrittenWithItsPathBehindACommand() {
        Remedy remedy = Remedy.set("add '", "openings.feed.edge", "...").then("'");
        assertEquals("add 'edge: ...'", remedy.inFile());
        assertEquals("add 'openings.feed.edge=...'", remedy.inCommand());
    }

    @Test
    void aCorrectedQuantityNamesTheOptionItStandsBehind() {
        Remedy remedy = Remedy.write("3", "mm", ", for example");
        assertEquals("write 3 mm, for example", remedy.inFile());
        assertEquals("write --clearance 3mm, for example", remedy.behind("--clearance"));
    }

    @Test
    void partsThatShareAFaultTellItOnceAndTwoFaultsAtOnePlaceAreTwo() {
        Problems problems = new Problems("a.yaml", "a");
        for (String part : new String[] {"seal 'a'", "seal 'b'"}) {
            for (String key : new String[] {"bore", "valve"}) {
                problems.error(
                        Place.START, new Fault(ProblemCode.MISSING_KEY, part, key, "has no " + key, "", Remedy.NONE));
            }
        }
        assertEquals(2, problems.count());
        assertEquals("seal 'a' has no bore", problems.inOrder().get(0).message());
    }
}
