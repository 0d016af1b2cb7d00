package hotidle.part;

import hotidle.law.Channel;
import hotidle.law.Hole;
import hotidle.law.SeriesLoss;
import hotidle.law.Slot;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A multi-plate clutch or brake, or a band with its servo: what its piston seals let by, and the torque that it carries at rest and while it slips.
 *
 * <pre>
 * Clamping  N = p·A − F + head on the piston − head in the balance chamber; {@link OilRing}. Where no ring is given its head
 *           counts as nil: without a balance chamber that understates the force, and so the torque
 * Torque    μ·z·r·N; {@link Lining}. Of a band {@link Band}
 * Leak      an annular gap along the piston's seals and a bleed hole side by side; {@link Slot}, {@link Hole}
 * </pre>
 *
 * @param piston  area, spring and oil that turns with it
 * @param grip    what rubs
 * @param factor  torque that it should carry over the torque asked of it [-]
 * @param seal    what leaks
 * @param pack    what drags while it is open; empty where that is not known
 */
public record Clutch(Piston piston, Grip grip, double factor, Seal seal, Optional<OpenPack> pack) implements Part {

    /** A clutch whose drag while it is open is not known. */
    public Clutch(Piston piston, Grip grip, double factor, Seal seal) {
        this(piston, grip, factor, seal, Optional.empty());
    }

    /**
     * The pack while it is open.
     *
     * @param clearance between a lining and its plate [m]
     * @param feed      lube branch whose oil runs through the pack; empty where it is taken as full of oil
     */
    public record OpenPack(double clearance, Optional<String> feed) {
        public OpenPack {
            Check.positive("clearance of the open pack", clearance);
        }
    }

    /** Of the piston, less its return spring. */
    public static final Measure CLAMP_FORCE =
            new Measure("clamp_force_n", Measure.QuantityKind.FORCE, "of the piston, less its return spring");

    /** That the standing clutch holds, holding. */
    public static final Measure STATIC_CAPACITY =
            new Measure("static_capacity_n_m", Measure.QuantityKind.TORQUE, "that the standing clutch holds, holding");

    /** That the standing clutch carries, slipping. */
    public static final Measure SLIDING_CAPACITY = new Measure(
            "sliding_capacity_n_m", Measure.QuantityKind.TORQUE, "that the standing clutch carries, slipping");

    @Override
    public List<Measure> measures() {
        return List.of(CLAMP_FORCE, STATIC_CAPACITY, SLIDING_CAPACITY);
    }

    private static final double BLEED_DISCHARGE = 0.7;

    private static final Form FORM = new Form(List.of("piston", "drain"), List.of(), List.of());

    /**
     * The piston.
     *
     * @param area        A [m²]
     * @param returnForce F of the return spring with the clutch applied [N]
     * @param ring        oil behind it that turns with the drum; empty where its head is not counted
     * @param balance     oil in the balance chamber, which presses back; empty where there is none
     */
    public record Piston(double area, double returnForce, Optional<OilRing> ring, Optional<OilRing> balance) {
        public Piston {
            Check.positive("piston area", area);
            Check.notNegative("return force", returnForce);
        }

        /** A piston whose turning oil is not counted. */
        public static Piston plain(double area, double returnForce) {
            return new Piston(area, returnForce, Optional.empty(), Optional.empty());
        }
    }

    /**
     * What leaks.
     *
     * @param diameter of the piston's seal [m]
     * @param gap      that the seals leave, equivalent radial height [m]
     * @param length   of the seal along the flow [m]
     * @param bleed    diameter of the bleed hole in piston or drum [m], 0 for none
     */
    public record Seal(double diameter, double gap, double length, double bleed) {
        public Seal {
            Check.positive("seal diameter", diameter);
            Check.positive("seal gap", gap);
            Check.positive("seal length", length);
            Check.notNegative("bleed hole", bleed);
        }
    }

    public Clutch {
        Check.within("capacity factor", factor, 0.1, 10);
    }

    /**
     * Force of the oil's own rotation that helps to apply the clutch [N], below zero where the balance chamber has more.
     *
     * @param density of the oil [kg/m³]
     * @param speed   of the drum [rev/s]
     */
    public double head(double density, double speed) {
        return force(piston.ring, density, speed) - force(piston.balance, density, speed);
    }

    private static double force(Optional<OilRing> ring, double density, double speed) {
        return ring.map(oil -> oil.force(density, speed)).orElse(0.0);
    }

    /**
     * Torque that it carries [N·m], never below zero.
     *
     * @param pressure at the piston [Pa]
     * @param head     as {@link #head} gives it [N]
     * @param slipping whether it slips; at rest otherwise
     */
    public double capacity(double pressure, double head, boolean slipping) {
        return grip.torqueArm(slipping) * Math.max(pressure * piston.area - piston.returnForce + head, 0);
    }

    /** Pressure at the piston from which on it presses its plates against the return spring, without the oil's rotation [Pa]. */
    public double yields() {
        return piston.returnForce / piston.area;
    }

    /**
     * Pressure at the piston with which it carries a torque times its capacity factor [Pa].
     *
     * @param torque   asked of it [N·m], its size
     * @param head     as {@link #head} gives it [N]
     * @param slipping whether it slips; at rest otherwise
     */
    public double pressureFor(double torque, double head, boolean slipping) {
        return (factor * torque / grip.torqueArm(slipping) + piston.returnForce - head) / piston.area;
    }

    @Override
    public Map<String, Channel> channels() {
        Channel along = Channel.slot(Math.PI * seal.diameter());
        return seal.bleed() > 0 ? Map.of("seal", along, "bleed", Channel.hole(seal.bleed(), 1)) : Map.of("seal", along);
    }

    @Override
    public Form form() {
        return FORM;
    }

    @Override
    public Law law(Setting setting) {
        SeriesLoss lip = Slot.annular(seal.diameter, seal.gap, seal.length, 0);
        SeriesLoss hole = seal.bleed > 0 ? Hole.loss(seal.bleed, 0, BLEED_DISCHARGE) : SeriesLoss.SHUT;
        return new Law() {
            @Override
            public void evaluate(Reading in, Stamp out) {
                out.pass(in, 0, 1, lip, setting.oil());
                out.pass(in, 0, 1, hole, setting.oil());
            }

            @Override
            public List<Stream> streams(Reading in) {
                return List.of(
                        Stream.through("seal", in, 0, 1, lip, setting.oil()),
                        Stream.through("bleed", in, 0, 1, hole, setting.oil()));
            }

            @Override
            public List<Measure.Reported> measures(Reading in) {
                double pressure = in.pressure(0);
                return List.of(
                        CLAMP_FORCE.of(pressure * piston.area - piston.returnForce),
                        STATIC_CAPACITY.of(capacity(pressure, 0, false)),
                        SLIDING_CAPACITY.of(capacity(pressure, 0, true)));
            }
        };
    }
}
