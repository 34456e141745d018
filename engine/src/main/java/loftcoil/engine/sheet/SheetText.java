package loftcoil.engine.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import loftcoil.engine.caution.Caution;
import loftcoil.engine.loop.SteadyFlow;

/** A sheet as lines of text for a person. */
public final class SheetText {

    private static final int WIDTH = 76;
    private static final double LEAST_NIGHT_FLOW = 1e-7;

    private final List<String> lines = new ArrayList<>();

    private SheetText() {}

    /** The sheet as lines without line breaks. */
    public static List<String> lines(Sheet sheet) {
        SheetText text = new SheetText();
        text.all(sheet);
        return List.copyOf(text.lines);
    }

    private void all(Sheet sheet) {
        lines.add(sheet.design().name());
        lines.add("");
        lines.add(String.format(
                Locale.ROOT, "Loop, whole tank at %.0f °C", sheet.loop().tankC()));
        wrapped("  ", sheet.loop().words());
        sheet.loop().flow().ifPresent(this::flow);
        sheet.spread().ifPresent(this::spread);
        night(sheet.loop().coldFire());
        lines.add("");
        lines.add("Tank");
        figure("full mass", "%.1f kg", sheet.tank().fullMassKg());
        figure("growth from 10 to 90 °C", "%.2f L", sheet.tank().expansionL());
        taps(sheet.taps());
        sheet.window().ifPresent(window -> {
            lines.add("");
            lines.add("Panes");
            figure("U value", "%.2f W/(m² K)", window.uValueWPerM2K());
            figure("sun that passes, square on", "%.0f %%", 100 * window.transmittanceNormal());
        });
        sheet.year().ifPresent(year -> {
            lines.add("");
            lines.addAll(YearText.lines(year));
        });
        lines.add("");
        lines.add("Cautions");
        if (sheet.cautions().isEmpty()) {
            lines.add("  none: nothing was found; that is no promise that there is nothing");
        }
        if (sheet.verdict().yearOpen()) {
            lines.add("  The year is not judged yet.");
        }
        sheet.cautions().forEach(this::caution);
        if (!sheet.asks().isEmpty()) {
            lines.add("");
            lines.add("Not said in the design");
            sheet.asks().forEach(ask -> wrapped("  ", ask.text() + " (" + ask.field() + ")"));
        }
    }

    private void flow(SteadyFlow flow) {
        figure("heat of the coil", "%.2f kW", flow.heat().coilW() / 1000);
        figure("flow", "%.4f kg/s (%.2f L/min)", flow.flowKgPerS(), flow.flowLPerMin());
        figure("drive", "%.1f Pa", flow.drivePa());
        figure("Reynolds number in the coil", "%.0f", flow.reynolds());
        figure("into the coil", "%.1f °C", flow.coil().startC());
        figure("out of the coil", "%.1f °C", flow.coil().endC());
        figure("back at the tank", "%.1f °C", flow.returnC());
        figure(
                "least distance from boiling",
                "%.1f °C, %s",
                flow.boilMargin().marginK(),
                flow.boilMargin().where());
        figure("heat lost on the way", "%.0f W", flow.heat().lostW());
        figure("heat into the tank", "%.0f W", flow.heat().tankW());
    }

    private void night(ColdFire night) {
        if (Math.abs(night.flowKgPerS()) < LEAST_NIGHT_FLOW) {
            figure("fire out", "%s", "the water stands still");
        } else {
            String way = night.flowKgPerS() < 0 ? "backward" : "forward";
            figure("fire out, flow", "%.5f kg/s %s", Math.abs(night.flowKgPerS()), way);
            figure("fire out, heat lost", "%.1f W", night.lossW());
        }
    }

    private void spread(HeatSpread spread) {
        end("with the least heat", spread.low());
        end("with the most heat", spread.high());
    }

    private void end(String label, HeatSpread.End end) {
        end.flow()
                .ifPresentOrElse(
                        flow -> figure(
                                label,
                                "%.2f kW: %.2f L/min, %.1f °C from boiling",
                                end.heatKW(),
                                flow.flowLPerMin(),
                                flow.boilMargin().marginK()),
                        () -> figure(label, "%.2f kW: no flow without boiling", end.heatKW()));
    }

    private void taps(List<TapFigures> taps) {
        if (taps.isEmpty()) {
            return;
        }
        lines.add("");
        lines.add("Taps, each alone open");
        for (TapFigures tap : taps) {
            if (tap.fillMin60L().isPresent()) {
                figure(
                        tap.name(),
                        "%.1f L/min from %.1f kPa; 60 L in %.1f min",
                        tap.flowLPerMin(),
                        tap.headKPa(),
                        tap.fillMin60L().getAsDouble());
            } else {
                figure(tap.name(), "%s", "nothing runs: it is not below the waterline");
            }
        }
    }

    private void caution(Caution caution) {
        lines.add("  " + caution.severity().label() + " " + caution.code());
        wrapped("    ", caution.text());
        wrapped("    ", "Source: " + caution.source());
    }

    private void figure(String label, String form, Object... values) {
        lines.add(String.format(Locale.ROOT, "  %-28s", label) + String.format(Locale.ROOT, form, values));
    }

    private void wrapped(String indent, String text) {
        StringBuilder line = new StringBuilder(indent);
        for (String word : text.split(" ", -1)) {
            if (line.length() > indent.length() && line.length() + word.length() > WIDTH) {
                lines.add(line.toString().stripTrailing());
                line = new StringBuilder(indent);
            }
            line.append(word).append(' ');
        }
        lines.add(line.toString().stripTrailing());
    }
}
