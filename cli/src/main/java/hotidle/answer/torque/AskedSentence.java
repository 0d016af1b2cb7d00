package hotidle.answer.torque;

import hotidle.answer.format.Quantity;
import hotidle.answer.phrase.AskedTorquePhrase;
import hotidle.answer.phrase.TorquePhrase;
import hotidle.answer.torque.TorqueAnswer.BuildTorque;
import hotidle.study.AskedTorque;
import hotidle.study.TorqueHeld;
import hotidle.study.TorqueHeld.Carrier;

/** What is said of the engine torque that was asked for. */
record AskedSentence(Quantity.UnitSystem units) {

    /** Of a build, whether it holds it and from which set pressure on. */
    String of(BuildTorque build, AskedTorque asked) {
        String unsolved = asked.unsolved().isEmpty() ? "" : AskedTorquePhrase.notKnown(asked.unsolved());
        return said(build, asked) + unsolved;
    }

    private String said(BuildTorque build, AskedTorque asked) {
        AskedTorquePhrase phrase = new AskedTorquePhrase(units);
        String name = build.build();
        if (asked.from().isEmpty()) {
            String link = asked.gives().map(Carrier::name).orElse("");
            double carries = asked.gives().map(Carrier::torque).orElse(Double.NaN);
            return asked.pressureDecides()
                    ? phrase.notTried(name, asked.torque(), asked.highest(), link, asked.range(), carries)
                    : phrase.never(name, asked.torque(), link, asked.range(), carries);
        }
        if (build.least().isEmpty()) {
            return TorquePhrase.notKnown(name, build.notKnown());
        }
        TorqueHeld least = build.least().get();
        String link = least.held().orElseThrow().links().get(0).name();
        double torque = least.held().orElseThrow().torque();
        return holds(build, asked)
                ? phrase.holds(name, asked.torque(), build.set(), between(asked), link, least.range(), torque)
                : phrase.wouldHold(name, asked.torque(), build.set(), link, least.range(), torque, between(asked));
    }

    private String between(AskedTorque asked) {
        double from = asked.from().orElseThrow();
        return new AskedTorquePhrase(units)
                .between(from, asked.to(), from <= asked.lowest(), asked.to() >= asked.highest());
    }

    private static boolean holds(BuildTorque build, AskedTorque asked) {
        return build.least()
                .flatMap(TorqueHeld::held)
                .filter(held -> held.torque() >= asked.torque())
                .isPresent();
    }

    /** In a cell. */
    String cell(BuildTorque build, AskedTorque asked) {
        if (holds(build, asked)) {
            return AskedTorquePhrase.YES;
        }
        return asked.from().isPresent()
                ? new AskedTorquePhrase(units).from(asked.from().getAsDouble())
                : AskedTorquePhrase.NO;
    }
}
