package hotidle.answer.heat;

import hotidle.answer.format.TextTable;
import hotidle.heat.HeatItem;
import hotidle.heat.WarmState;
import hotidle.heat.Warmed;
import hotidle.study.HeatStudy;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Where heat comes from and goes, a row a build and driving condition, for a spreadsheet. */
final class HeatRows {

    private HeatRows() {}

    static TextTable of(HeatStudy study) {
        List<String> head = new ArrayList<>(List.of("build", "duty", "verdict", "seconds", "sump_c", "converter_c"));
        Arrays.stream(HeatItem.Kind.values()).forEach(kind -> head.add(HeatRecord.key(kind)));
        TextTable table = new TextTable(head);
        for (HeatStudy.BuildHeat build : study.builds()) {
            for (HeatStudy.DutyHeat duty : build.duties()) {
                table.add(row(build.unit().build(), duty.warmed()));
            }
        }
        return table;
    }

    private static List<String> row(String build, Warmed warmed) {
        List<String> row = new ArrayList<>(List.of(
                build,
                warmed.duty().name(),
                HeatRecord.word(warmed.verdict()),
                warmed.seconds().map(String::valueOf).orElse("")));
        Optional<WarmState> state = warmed.settled();
        row.add(state.map(one -> HeatRecord.celsius(one.at().sump()).toString()).orElse(""));
        row.add(state.map(HeatAnswer::converter)
                .filter(OptionalDouble::isPresent)
                .map(one -> HeatRecord.celsius(one.getAsDouble()).toString())
                .orElse(""));
        Arrays.stream(HeatItem.Kind.values())
                .forEach(kind ->
                        row.add(state.map(one -> String.valueOf(one.flows().watts(kind)))
                                .orElse("")));
        return row;
    }
}
