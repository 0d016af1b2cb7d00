package hotidle.cli;

import com.fasterxml.jackson.databind.JsonNode;
import hotidle.law.Bow;
import hotidle.law.Poppet;
import hotidle.law.RatedPoint;
import hotidle.network.Placed;
import hotidle.oil.Oil;
import hotidle.part.AnnularGap;
import hotidle.part.Bushing;
import hotidle.part.CheckValve;
import hotidle.part.Clutch;
import hotidle.part.Converter;
import hotidle.part.Cooler;
import hotidle.part.FaceGap;
import hotidle.part.Filter;
import hotidle.part.Fit;
import hotidle.part.FlatGap;
import hotidle.part.LubeBranch;
import hotidle.part.Orifice;
import hotidle.part.Part;
import hotidle.part.PumpChamber;
import hotidle.part.PumpInlet;
import hotidle.part.PumpSlip;
import hotidle.part.ReliefValve;
import hotidle.part.SealingRing;
import hotidle.part.Selector;
import hotidle.part.Setting;
import hotidle.part.Solenoid;
import hotidle.part.SpoolValve;
import hotidle.transmission.Transmission;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;

/**
 * The laws of flow written a second time, from their Javadoc and not from their code, to recompute the mass balance of each node from
 * nothing but printed numbers and the dimensions of the parts. It shares no formula with the solver: flows come out of
 * {@code a·q² + b·q = Δp} by the plain quadratic formula, openings and gaps as lengths and areas.
 * Past 300 lines, since every kind of part is written here a second time.
 *
 * <p>One formula for each kind of part, in one place so that none leans on another's code: hence the length.
 */
final class SecondOpinion {

    private static final double PI = Math.PI;
    private static final double SHARP = PI / (PI + 2);
    private static final double SLOT_HEADS = 1.686;

    private final Transmission unit;
    private final JsonNode state;
    private final Map<String, Double> balance = new HashMap<>();
    private final double ambient;

    // oil of the part in hand
    private double temperature;
    private double liquid;
    private double thin;

    private SecondOpinion(Transmission unit, JsonNode state) {
        this.unit = unit;
        this.state = state;
        ambient = unit.ambient();
    }

    /** Mass that stays in each node [kg/s], recomputed; held nodes among them. */
    static Map<String, Double> balance(Transmission unit, JsonNode state) {
        SecondOpinion opinion = new SecondOpinion(unit, state);
        for (Placed placed : unit.network().parts()) {
            opinion.oil(state.get("temperatures_c").get(placed.region()).doubleValue() + 273.15);
            opinion.add(placed, placed.part());
        }
        return opinion.balance;
    }

    private void oil(double kelvin) {
        Oil oil = unit.oil();
        temperature = kelvin;
        liquid = oil.density15() - oil.densitySlope() * (temperature - 288.15);
        Oil.Walther.HermiteKnot cold = oil.line().knots().get(0);
        Oil.Walther.HermiteKnot hot = oil.line().knots().get(1);
        if (oil.line().knots().size() > 2) {
            throw new IllegalStateException("no second opinion on an oil of more than two points");
        }
        double along = (Math.log(temperature) / Math.log(10) - cold.x()) / (hot.x() - cold.x());
        double loglog = (1 - along) * cold.y() + along * hot.y();
        thin = (Math.pow(10, Math.pow(10, loglog)) - 0.7) / 1e6 * liquid;
    }

    private double density(double gauge) {
        double absolute = gauge + ambient;
        double kept = (absolute + Math.sqrt(absolute * absolute + 40_000)) / 2;
        double air = unit.oil().airFraction();
        return liquid * (1 - air) / (1 - air + air * ambient / kept);
    }

    private double p(String node) {
        return state.get("pressures_pa").get(node).doubleValue();
    }

    /** Adds the flow of Δp = viscous·μ·q + kinetic·ρ·q² from one node to another. */
    private void flow(String from, String to, double viscous, double kinetic, double head) {
        double q = volume(from, to, viscous, kinetic, head);
        move(from, to, density((p(from) + p(to)) / 2) * q);
    }

    private double volume(String from, String to, double viscous, double kinetic, double head) {
        double drop = p(from) - p(to) - head;
        double mean = (p(from) + p(to)) / 2;
        double rho = density(mean);
        double b = viscous * thin * Math.exp(unit.oil().barus() * mean);
        double a = kinetic * rho;
        double size = Math.abs(drop);
        double q = a * size < 1e-12 * b * b ? size / b : (-b + Math.sqrt(b * b + 4 * a * size)) / (2 * a);
        for (int i = 0; i < 2; i++) {
            q -= (a * q * q + b * q - size) / (2 * a * q + b);
        }
        return Math.signum(drop) * q;
    }

    private void flow(String from, String to, double viscous, double kinetic) {
        flow(from, to, viscous, kinetic, 0);
    }

    private void move(String from, String to, double mass) {
        balance.merge(from, -mass, Double::sum);
        balance.merge(to, mass, Double::sum);
    }

    private double gap(Fit fit) {
        double warmer = temperature - fit.measuredAt();
        return fit.outer()
                + fit.outer() * fit.outerExpansion() * warmer
                - fit.inner()
                - fit.inner() * fit.innerExpansion() * warmer;
    }

    private void hole(String from, String to, double d, double length, double cd, double count) {
        double area = PI * d * d / 4;
        double viscous = 24 / Math.pow(d, 3) + 128 * length / (PI * Math.pow(d, 4));
        flow(from, to, viscous / count, Math.pow(cd * area * count, -2) / 2);
    }

    /**
     * A hole of unknown coefficient by bisection. Long: heads 1.5 + 13.74·√z and 2.28 + 64·z, blended at z = l/(d·Re) = 0.015. Short:
     * 1/C² and the creeping share, C 0.5961 at the end and 0.000521·(10⁶/(Re + 200))^0.7 before it.
     */
    private void bare(String from, String to, double d, double length, int count) {
        double drop = Math.abs(p(from) - p(to));
        double mean = (p(from) + p(to)) / 2;
        double rho = density(mean);
        double mu = thin * Math.exp(unit.oil().barus() * mean);
        double area = PI * d * d / 4;
        double low = 0;
        double high = area * Math.sqrt(2 * drop / rho);
        for (int i = 0; i < 200; i++) {
            double q = (low + high) / 2;
            double re = 4 * rho * q / (PI * d * mu);
            double heads = length < d / 2 ? sharp(re, length / d) : tube(length / d / re);
            if (heads * rho / 2 * Math.pow(q / area, 2) < drop) {
                low = q;
            } else {
                high = q;
            }
        }
        move(from, to, count * rho * Math.signum(p(from) - p(to)) * low);
    }

    private static double tube(double z) {
        double weight = 1 / (1 + Math.pow(0.015 / z, 4));
        return (1 - weight) * (1.5 + 13.74 * Math.sqrt(z)) + weight * (2.28 + 64 * z);
    }

    private static double sharp(double re, double slender) {
        double c = 0.5961 + 0.000521 * Math.pow(1e6 / (re + 200), 0.7);
        return 1 / (c * c) + (12 * PI + 64 * slender) / re;
    }

    /** Mean over s from 0 to 1 by Simpson's rule. */
    private static double mean(DoubleUnaryOperator function) {
        int n = 1000;
        double sum = 0;
        for (int i = 0; i <= n; i++) {
            sum += (i == 0 || i == n ? 1 : i % 2 == 1 ? 4 : 2) * function.applyAsDouble((double) i / n);
        }
        return sum / (3 * n);
    }

    /** c³ and the next term of the exact annulus, s²/15 with s = c/(d + c); what follows is below 1e-8 in the ready circuits. */
    private static double film(double inner, double c) {
        return c * c * c * (1 + Math.pow(c / (inner + c), 2) / 15);
    }

    private void slot(String from, String to, double width, double cube, double height, double length, double count) {
        flow(from, to, 12 * length / (width * cube) / count, SLOT_HEADS / 2 / Math.pow(width * height * count, 2));
    }

    private void add(Placed placed, Part part) {
        String from = placed.nodes().get(0);
        String to = placed.nodes().get(placed.nodes().size() == 1 ? 0 : 1);
        if (part instanceof Orifice orifice) {
            if (!Double.isInfinite(orifice.upstream())) {
                throw new IllegalStateException("no second opinion on a hole from a channel");
            }
            if (orifice.dischargeCoefficient().isPresent()) {
                double cd = orifice.dischargeCoefficient().getAsDouble();
                hole(from, to, orifice.diameter(), orifice.length(), cd, orifice.count());
            } else {
                bare(from, to, orifice.diameter(), orifice.length(), orifice.count());
            }
        } else if (part instanceof LubeBranch branch) {
            add(placed, branch.outlet());
        } else if (part instanceof AnnularGap annulus) {
            double c = gap(annulus.fit()) / 2;
            double factor = 1 + 1.5 * Math.pow(annulus.eccentricity(), 2);
            slot(
                    from,
                    to,
                    PI * (annulus.fit().inner() + c),
                    factor * film(annulus.fit().inner(), c),
                    c,
                    annulus.length(),
                    1);
        } else if (part instanceof FlatGap flat) {
            if (flat.entry() != flat.exit()) {
                throw new IllegalStateException("no second opinion on tapered gaps");
            }
            double power = flat.shape() == Bow.ACROSS ? 1 : 2;
            double cube = mean(s -> Math.pow(flat.entry() + flat.bow() * Math.pow(1 - s * s, power), 3));
            double height = mean(s -> flat.entry() + flat.bow() * Math.pow(1 - s * s, power));
            slot(from, to, flat.width(), cube, height, flat.length(), 1);
        } else if (part instanceof FaceGap face) {
            disc(from, to, face.inner(), face.outer(), gap(face.fit()) * face.share(), face.sector(), face.faces());
        } else if (part instanceof SealingRing ring) {
            ring(from, to, ring);
        } else if (part instanceof Filter filter) {
            rated(from, to, filter.rated(), filter.blocked(), liquid * 9.80665 * filter.rise());
        } else if (part instanceof Cooler cooler) {
            rated(from, to, cooler.rated(), cooler.blocked(), 0);
        } else if (part instanceof Converter converter) {
            Setting.Lockup lockup =
                    Setting.Lockup.valueOf(state.get("lockup").textValue().toUpperCase(Locale.ROOT));
            RatedPoint loss =
                    switch (lockup) {
                        case OFF -> converter.open();
                        case SLIPPING -> converter.lockup().orElseThrow().slipping();
                        case ON -> converter.lockup().orElseThrow().on();
                    };
            rated(from, to, loss, 0, 0);
        } else if (part instanceof CheckValve valve) {
            poppet(from, to, valve.poppet());
        } else if (part instanceof ReliefValve valve) {
            poppet(from, to, valve.poppet());
        } else if (part instanceof PumpChamber chamber) {
            chamber(placed, chamber);
        } else if (part instanceof SpoolValve spool) {
            spool(placed, spool);
        } else if (part instanceof Selector selector) {
            selector(placed, selector);
        } else if (part instanceof Solenoid solenoid) {
            solenoid(placed, solenoid);
        } else if (part instanceof Clutch clutch) {
            slot(
                    from,
                    to,
                    PI * (clutch.seal().diameter() + clutch.seal().gap()),
                    film(clutch.seal().diameter(), clutch.seal().gap()),
                    clutch.seal().gap(),
                    clutch.seal().length(),
                    1);
            if (clutch.seal().bleed() > 0) {
                hole(from, to, clutch.seal().bleed(), 0, 0.7, 1);
            }
        } else if (part instanceof Bushing bushing) {
            double e = state.get("states").get(placed.name() + ".eccentricity").doubleValue();
            double c = gap(bushing.fit()) / 2;
            if (bushing.heated()) {
                double rise =
                        state.get("states").get(placed.name() + ".film-rise").doubleValue();
                oil(temperature + rise);
            }
            slot(
                    from,
                    to,
                    PI * (bushing.fit().inner() + c),
                    film(bushing.fit().inner(), c) * (1 + 1.5 * e * e),
                    c,
                    bushing.length(),
                    1);
        } else if (!(part instanceof PumpInlet)) {
            throw new IllegalStateException("no second opinion on " + part);
        }
    }

    private void disc(String from, String to, double inner, double outer, double h, double sector, double faces) {
        double viscous = 6 * (Math.log(outer) - Math.log(inner)) / (PI * h * h * h) / sector;
        double area = 2 * PI * inner * h * sector;
        flow(from, to, viscous / faces, SLOT_HEADS / (2 * area * area) / (faces * faces));
    }

    private void ring(String from, String to, SealingRing ring) {
        double radial = gap(ring.bore()) / 2;
        double end = gap(ring.joint());
        double seal =
                ring.contact() - radial + (ring.bore().outer() - ring.bore().inner()) / 2;
        double n = ring.count();
        duct(from, to, Math.max(end, radial), Math.min(end, radial), ring.width(), n);
        double around = PI * ring.bore().outer();
        double shaft = ring.bore().outer() - 2 * radial;
        double beside = PI * (shaft + radial);
        double viscous =
                12 * ring.width() / (beside * film(shaft, radial)) + 12 * seal / (around * Math.pow(ring.sideGap(), 3));
        double kinetic = SLOT_HEADS / 2 * (Math.pow(beside * radial, -2) + Math.pow(around * ring.sideGap(), -2));
        flow(from, to, viscous / n, kinetic / (n * n));
    }

    /** A duct with four walls, by its plain series; the heads lost to the growth of the profile by the law's own fit. */
    private void duct(String from, String to, double w, double h, double length, double n) {
        double sum = 0;
        for (int k = 1; k < 400; k += 2) {
            sum += Math.tanh(k * PI * w / (2 * h)) / Math.pow(k, 5);
        }
        double conductance = w * h * h * h / 12 * (1 - 192 * h / (Math.pow(PI, 5) * w) * sum);
        double r = h / w;
        double growth = 0.685714285714286
                + 1.3931 * r
                + 1.8382 * r * r
                - 5.6031 * r * r * r
                + 4.4453 * Math.pow(r, 4)
                - 1.2083 * Math.pow(r, 5);
        flow(from, to, length / conductance / n, (1 + growth) / 2 / Math.pow(w * h * n, 2));
    }

    private void rated(String from, String to, RatedPoint point, double blocked, double head) {
        double open = 1 - blocked;
        double viscous = (1 - point.turbulentShare()) * point.drop() / point.flow() / point.viscosity();
        double kinetic = point.turbulentShare() * point.drop() / Math.pow(point.flow(), 2) / point.density();
        flow(from, to, viscous / open, kinetic / (open * open), head);
    }

    private void poppet(String from, String to, Poppet poppet) {
        flow(from, to, poppet.leak().viscous(), poppet.leak().kinetic());
        double force = (p(from) - p(to)) * PI / 4 * poppet.seat() * poppet.seat();
        double lift = Math.min((force - poppet.preload()) / poppet.springRate(), poppet.stop());
        if (lift > 0) {
            area(from, to, PI * poppet.seat() * lift, poppet.dischargeCoefficient());
        }
    }

    /** A sharp opening of any shape: creeping limit of the round hole of its area. */
    private void area(String from, String to, double area, double cd) {
        double d = 2 * Math.sqrt(area / PI);
        flow(from, to, 24 / (d * d * d), 0.5 / (cd * cd * area * area));
    }

    private void chamber(Placed placed, PumpChamber pump) {
        String inlet = placed.nodes().get(0);
        String outlet = placed.nodes().get(1);
        double filling = state.get("states")
                .get(placed.signals().get(0).owner() + ".filling")
                .doubleValue();
        double turns = state.get("engine_speed_rpm").doubleValue() / 60;
        double kept = (1 - pump.slip().lost().share()) / (1 + pump.slip().lost().bySpeed() * turns);
        move(inlet, outlet, density(p(inlet)) * filling * pump.displacement() * turns * kept);
        double opened = pump.slip().opening() * Math.max(p(outlet) - p(inlet), 0);
        for (PumpSlip.Face face : pump.slip().faces()) {
            double h = (gap(face.fit()) + opened) / 2;
            disc(outlet, inlet, face.inner(), face.outer(), h, face.sector(), face.count());
        }
        for (PumpSlip.Tip tip : pump.slip().tips()) {
            double h = gap(tip.fit()) / 2 + opened;
            double dragged = PI * tip.surface() * turns * (gap(tip.fit()) / 2) * tip.width() / 2 * filling;
            double heads = SLOT_HEADS / 2 / Math.pow(tip.width() * h, 2);
            double play = tip.hub().isEmpty()
                    ? 0
                    : gap(tip.hub().get())
                            / gap(tip.fit())
                            * state.get("states")
                                    .get(placed.signals().get(1).owner() + ".eccentricity")
                                    .doubleValue();
            double off = play / Math.pow(1 + Math.pow(play, 8), 0.125);
            double cube = h * h * h * (1 + 1.5 * off * off);
            double viscous = 12 * tip.land() * tip.teeth() / (tip.width() * cube);
            double slip = volume(outlet, inlet, viscous, heads * tip.teeth(), 0);
            double rounded = slip * slip / (slip + 1e-11);
            double back = slip > 0 ? rounded * Math.pow(1 + Math.pow(rounded / dragged, 4), -0.25) : 0;
            move(inlet, outlet, density(p(inlet)) * back);
            flow(outlet, inlet, viscous, heads * tip.teeth());
        }
        if (pump.slide().isPresent() || pump.slip().fitted().laminar() > 0) {
            throw new IllegalStateException("no second opinion on slides and fitted slip");
        }
        area(outlet, inlet, pump.slip().orificeArea(), SHARP);
    }

    private void spool(Placed placed, SpoolValve spool) {
        double x = state.get("positions_m").get(placed.name()).doubleValue();
        for (SpoolValve.Opening opening : spool.openings()) {
            if (opening.holes() > 0) {
                throw new IllegalStateException("no second opinion on round holes");
            }
            double c = gap(opening.fit()) / 2;
            double underlap = opening.opensUp() ? x - opening.edge() : opening.edge() - x;
            double root = Math.hypot(underlap, c);
            double width = PI * opening.fit().outer() * opening.share();
            double clear = Math.hypot((root + underlap) / 2, c);
            double rounded = underlap > 0 ? c * c / 2 / (root + underlap) : (root - underlap) / 2;
            double overlap = rounded / (1 + Math.pow(c / rounded, 2));
            double factor = 1 + 1.5 * opening.eccentricity() * opening.eccentricity();
            double sealing = width / opening.fit().outer() * (opening.fit().outer() - c);
            double viscous =
                    12 * overlap / (sealing * factor * film(opening.fit().outer() - 2 * c, c))
                            + 32 / PI / (width * clear * clear);
            double kinetic = 0.5 / Math.pow(opening.discharge() * width * clear, 2);
            flow(placed.nodes().get(opening.from()), placed.nodes().get(opening.to()), viscous, kinetic);
        }
    }

    private void selector(Placed placed, Selector selector) {
        String range = state.get("range").textValue();
        for (Selector.Connection link : selector.links()) {
            if (link.ranges().contains(range)) {
                hole(placed.nodes().get(link.from()), placed.nodes().get(link.to()), link.diameter(), 0, 0.7, 1);
            }
        }
    }

    private void solenoid(Placed placed, Solenoid solenoid) {
        double y = state.get("states").get(placed.name() + ".opening").doubleValue();
        double feed = 0.01 + 0.99 * (solenoid.bleed() ? 1 : y);
        double exhaust = 0.01 + 0.99 * (1 - y);
        List<String> nodes = placed.nodes();
        area(nodes.get(0), nodes.get(1), PI / 4 * solenoid.feed() * solenoid.feed() * feed, SHARP);
        area(nodes.get(1), nodes.get(2), PI / 4 * solenoid.exhaust() * solenoid.exhaust() * exhaust, SHARP);
    }
}
