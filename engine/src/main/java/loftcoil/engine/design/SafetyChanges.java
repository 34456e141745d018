package loftcoil.engine.design;

import java.util.List;
import java.util.stream.Stream;
import loftcoil.engine.pipe.TubeTable;

/** The named changes of what can hurt somebody: vent, cold feed, frost. */
final class SafetyChanges {

    private SafetyChanges() {}

    static void into(ChangeTable table) {
        table.choice("vent.kind", "How the tank is open to the air", withUnsaid(Vent.KINDS))
                .as(
                        design -> WithSafety.said(design).vent().map(Vent::kind).orElse(WithSafety.NOT_SAID),
                        Design::withVentKind);
        table.choice("vent.tube", "Tube of the open vent", TubeTable.names())
                .as(design -> WithSafety.openPipe(design).tube().orElseThrow(), Design::withVentTube);
        table.number("vent.aboveWaterlineM", "Open end of the vent above the waterline", SafetyFaults.ABOVE_WATERLINE)
                .as(
                        design -> WithSafety.openPipe(design).aboveWaterlineM().orElseThrow(),
                        Design::withVentAboveWaterlineM);
        table.choice("vent.valve", "Valve in the open vent", List.of(WithSafety.NO_VALVE, WithSafety.VALVE))
                .as(
                        design -> WithSafety.openPipe(design).valve().orElseThrow()
                                ? WithSafety.VALVE
                                : WithSafety.NO_VALVE,
                        Design::withVentValve);
        table.choice("coldFeed.kind", "How cold water comes into the tank", withUnsaid(ColdFeed.KINDS))
                .as(
                        design -> WithSafety.said(design)
                                .coldFeed()
                                .map(ColdFeed::kind)
                                .orElse(WithSafety.NOT_SAID),
                        Design::withColdFeedKind);
        table.number("coldFeed.airGapMm", "Free fall of the cold water into the tank", SafetyFaults.AIR_GAP)
                .as(design -> WithSafety.feed(design).airGapMm().orElseThrow(), Design::withColdFeedAirGapMm);
        table.choice("absence.drained", "The dwelling left in winter", WithSafety.ABSENCES)
                .as(WithSafety::absence, Design::withAbsence);
    }

    private static List<String> withUnsaid(List<String> kinds) {
        return Stream.concat(Stream.of(WithSafety.NOT_SAID), kinds.stream()).toList();
    }
}
