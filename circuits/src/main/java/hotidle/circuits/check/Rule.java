package hotidle.circuits.check;

import hotidle.circuits.kind.Parts;
import hotidle.circuits.shape.Attributes;
import hotidle.transmission.Transmission;
import java.util.List;

/** A rule: notes what is wrong, and how to mend it, at the place where it stands. */
sealed interface Rule {

    /** A rule of the sections and parts of a file, as one build has them. */
    non-sealed interface OfCircuit extends Rule {
        void check(Attributes file, Parts parts);
    }

    /** A rule of one duty point, of the file or of a build that changes its control. */
    non-sealed interface OfDuty extends Rule {
        void check(Attributes file, Attributes duty, Parts parts);
    }

    /** A rule of the command and the regulator that it names. */
    non-sealed interface OfCommand extends Rule {
        void check(Attributes file, Attributes command, Parts parts);
    }

    /** A rule of one build. */
    non-sealed interface OfBuild extends Rule {
        void check(Attributes file, Attributes build);
    }

    /** A rule of the command against all builds, made and without error. */
    non-sealed interface OfUnits extends Rule {
        void check(Attributes command, List<Transmission> units);
    }
}
