package hotidle.study;

import hotidle.duty.*;
import hotidle.network.*;
import hotidle.newton.SteadySolver;
import hotidle.result.*;
import java.util.Optional;

final class StoryProbe {
    public static void main(String[] a) {
        for (double wear : new double[] {1, 2, 3}) {
            for (double set : new double[] {150, 270}) {
                Unit unit = SetPressure.of(TenNodes.worn(wear), set * TenNodes.PSI);
                SteadySolver solver = new SteadySolver(unit.network());
                Conditions c = unit.conditions(unit.duties().get(0));
                System.out.println("wear " + wear + " set " + set);
                Optional<State> before = Optional.empty();
                for (double rpm : new double[] {
                    300, 400, 500, 600, 650, 800, 1000, 1300, 1600, 2000, 2500, 3000, 4000, 5000, 6000, 7000
                }) {
                    Outcome o = solver.solve(c.atSpeed(rpm / 60), before);
                    if (o.unsolved().isPresent()) {
                        System.out.println(rpm + " " + o.unsolved().get());
                        continue;
                    }
                    State s = o.state().get();
                    before = o.state();
                    System.out.printf(
                            "%5.0f line %6.1f psi sec %6.1f x %.3f mm pilot %.1f conv %5.1f lube %5.2f L/min hub e %.3f fill %.3f suct %.0f imb %.1e steps %d %s%n",
                            rpm,
                            s.pressure("line") / TenNodes.PSI,
                            s.pressure("secondary-out") / TenNodes.PSI,
                            s.own("regulator", "position") * 1e3,
                            s.pressure("pilot") / TenNodes.PSI,
                            s.pressure("converter") / TenNodes.PSI,
                            (s.flow("lube-front") + s.flow("lube-rear")) * 6e4,
                            s.own("hub", "eccentricity"),
                            s.own("pump-inlet", "filling"),
                            s.pressure("suction"),
                            s.imbalance(),
                            s.steps(),
                            s.method());
                }
            }
        }
    }
}
