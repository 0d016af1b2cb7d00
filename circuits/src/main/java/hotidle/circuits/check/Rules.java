package hotidle.circuits.check;

import hotidle.circuits.kind.Parts;
import hotidle.circuits.shape.Attributes;
import hotidle.transmission.Transmission;
import java.util.List;

/**
 * All rules between parts and sections, each asked at the point of the reading from which on what it looks at is known. Rules of one
 * part alone, such as a valve that must be narrower than its bore, stand with the kinds: see the package.
 */
public final class Rules {

    static final List<Rule.OfCircuit> OF_FILE = List.of(new SumpIsARegion(), new TeethFit());

    static final List<Rule.OfCircuit> OF_PARTS = List.of(
            new NoLoops(),
            new NodesDrain(),
            new PumpsHaveACeiling(),
            new ClutchesAreApplied(),
            new GearHasOnePairOfFaces(),
            new SideLoadOfOppositeChambers());

    static final List<Rule.OfCircuit> OF_SOUND_FILE = List.of(new RangesAgreeWithSelector());

    static final List<Rule.OfDuty> OF_DUTY = List.of(
            new RegionsHaveTemperatures(),
            new WarmedDuty(),
            new DutyHasTorque(),
            new DutyHasSpeed(),
            new DutySaysWhatValvesFeel(),
            new LockupHasAConverter(),
            new LineSolenoidFollowsTorque());

    static final List<Rule.OfDuty> OF_CHANGED_DUTY =
            List.of(new DutyPointIsTheCircuits(), new LineSolenoidFollowsTorque(), new LockupHasAConverter());

    static final List<Rule.OfCommand> OF_COMMAND =
            List.of(new EdgeIsAnOpening(), new PilotHasBothTables(), new LineOpensRegulator());

    static final List<Rule.OfBuild> OF_BUILD =
            List.of(new SetPressureNeedsACommand(), new TablesNeedASolenoid(), new BuildGivesItsReason());

    static final List<Rule.OfUnits> OF_UNITS = List.of(
            new SignalsAreKnown(),
            new PilotActsOnRegulator(),
            new CommandAgainstSpring(),
            new CommandAgainstDuty(),
            new CommandInReach());

    private Rules() {}

    /** Asks what the file's sections must agree on. */
    public static void ofFile(Attributes file, Parts parts) {
        OF_FILE.forEach(rule -> rule.check(file, parts));
    }

    /** Asks how the parts of a build hang together. */
    public static void ofParts(Attributes file, Parts parts) {
        OF_PARTS.forEach(rule -> rule.check(file, parts));
    }

    /** Asks what only a file without error can be asked. */
    public static void ofSoundFile(Attributes file, Parts parts) {
        OF_SOUND_FILE.forEach(rule -> rule.check(file, parts));
    }

    /** Asks what must be true of a duty point of the file. */
    public static void ofDuty(Attributes file, Attributes duty, Parts parts) {
        OF_DUTY.forEach(rule -> rule.check(file, duty, parts));
    }

    /** Asks what must be true of a duty point that a build changes. */
    public static void ofChangedDuty(Attributes file, Attributes duty, Parts parts) {
        OF_CHANGED_DUTY.forEach(rule -> rule.check(file, duty, parts));
    }

    /** Asks what must be true of a command whose regulator is there. */
    public static void ofCommand(Attributes file, Attributes command, Parts parts) {
        OF_COMMAND.forEach(rule -> rule.check(file, command, parts));
    }

    /** Asks what must be true of a build besides its changes. */
    public static void ofBuild(Attributes file, Attributes build) {
        OF_BUILD.forEach(rule -> rule.check(file, build));
    }

    /** Asks whether the command and all builds agree. */
    public static void ofUnits(Attributes command, List<Transmission> units) {
        OF_UNITS.forEach(rule -> rule.check(command, units));
    }
}
