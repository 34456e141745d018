package loftcoil.engine.design;

import java.util.List;

/** The named changes of the panes. */
final class WindowChanges {

    private WindowChanges() {}

    static void into(ChangeTable table) {
        table.whole("window.panes", "Number of panes", DesignRanges.PANES)
                .as(design -> WithWindow.orStarted(design).panes(), Design::withPanes);
        table.number("window.areaM2", "Area of glass that lets sun in", DesignRanges.PANE_AREA)
                .as(design -> WithWindow.orStarted(design).areaM2(), Design::withPaneAreaM2);
        table.number("window.tiltDeg", "Tilt of the panes from the level", DesignRanges.TILT)
                .as(design -> WithWindow.orStarted(design).tiltDeg(), Design::withPaneTiltDeg);
        table.number("window.azimuthDeg", "Direction the panes face, clockwise from north", DesignRanges.AZIMUTH)
                .as(design -> WithWindow.orStarted(design).azimuthDeg(), Design::withPaneAzimuthDeg);
        table.number("window.gapMm", "Gap between panes", DesignRanges.GAP)
                .as(design -> WithWindow.orStarted(design).gapMm(), Design::withPaneGapMm);
        table.number("window.absorptance", "Share of the sun the dark tank takes up", DesignRanges.ABSORPTANCE)
                .as(design -> WithWindow.orStarted(design).absorptance(), Design::withAbsorptance);
        table.choice("window.shutter", "Board over the panes at night", List.of(WithWindow.NO_BOARD, WithWindow.BOARD))
                .as(
                        design -> WithWindow.orStarted(design).shutter().isPresent()
                                ? WithWindow.BOARD
                                : WithWindow.NO_BOARD,
                        Design::withShutter);
    }
}
