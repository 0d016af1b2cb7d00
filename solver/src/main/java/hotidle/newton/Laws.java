package hotidle.newton;

import hotidle.network.Placed;
import hotidle.part.Part;
import hotidle.part.Setting;

/** Where the law of a placed part comes from: from the part, except in benchmarks that have laws of their own. */
interface Laws {

    /** Each part's own law. */
    Laws OWN = (placed, setting) -> placed.part().law(setting);

    Part.Law law(Placed placed, Setting setting);
}
