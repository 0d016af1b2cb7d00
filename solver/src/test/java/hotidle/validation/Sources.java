package hotidle.validation;

import static hotidle.validation.Source.found;
import static hotidle.validation.Source.memory;

/** Publications that more than one topic quotes. */
final class Sources {

    static final Source ESPOSITO = found("A. Esposito, Fluid Power with Applications");
    static final Source MERRITT = memory("H. E. Merritt, Hydraulic Control Systems, 1967");
    static final Source RABIE = found("M. G. Rabie, Fluid Power Engineering");
    static final Source MASSEY = found("B. S. Massey, J. Ward-Smith, Mechanics of Fluids");
    static final Source SCHASCHKE = found("C. Schaschke, Fluid Mechanics: Worked Examples for Engineers");
    static final Source INCROPERA = memory(
            "F. P. Incropera, D. P. DeWitt, T. L. Bergman, A. S. Lavine, Fundamentals of Heat and Mass Transfer");
    static final Source WHITE = memory("F. M. White, Fluid Mechanics, 7th ed.");
    static final Source CENGEL_CIMBALA = found("Y. A. Çengel, J. M. Cimbala, Fluid Mechanics");
    static final Source CENGEL_CIMBALA_MEMORY = memory("Y. A. Çengel, J. M. Cimbala, Fluid Mechanics");
    static final Source CENGEL_MEMORY = memory("Y. A. Çengel, Heat and Mass Transfer");
    static final Source HOLMAN = memory("J. P. Holman, Heat Transfer");
    static final Source KHURMI_MEMORY = memory("R. S. Khurmi, J. K. Gupta, Theory of Machines");
    static final Source VENNARD = found("J. K. Vennard, Elementary Fluid Mechanics");
    static final Source KHURMI = found("R. S. Khurmi, J. K. Gupta, Theory of Machines");
    static final Source SULLIVAN = found("J. A. Sullivan, Fluid Power: Theory and Applications");
    static final Source FAIRES = found("V. M. Faires, Design of Machine Elements, solutions");
    static final Source RAIMONDI_BOYD =
            memory("A. A. Raimondi, J. Boyd, A solution for the finite journal bearing, ASLE Trans. 1, 1958");

    private Sources() {}
}
