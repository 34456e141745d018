package loftcoil.runner.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.net.URI;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The browser is opened one way or another, or it is said that it was not. */
class BrowserTest {

    private static final URI ADDRESS = URI.create("http://127.0.0.1:7011/open/key");

    private final StringWriter said = new StringWriter();

    private void open(Browser.Way... ways) {
        Browser.open(ADDRESS, List.of(ways), new PrintWriter(said));
    }

    @Test
    void theNextWayIsTriedWhereOneFailsAndNoneAfterOneThatTakesIt() {
        List<String> tried = new ArrayList<>();
        open(
                address -> {
                    throw new IOException("no such program");
                },
                address -> {
                    throw new NoClassDefFoundError("a window system that is gone");
                },
                address -> tried.add(address.toString()),
                address -> tried.add("too much"));
        assertEquals(List.of(ADDRESS.toString()), tried);
        assertEquals("", said.toString());
    }

    @Test
    void whereNoWayTakesItThatIsSaid() {
        open(address -> false);
        assertTrue(said.toString().contains("open the address above yourself"), said.toString());
    }

    @Test
    void eachSystemHasItsOpenerAndNoneIsTriedWithoutAScreen() {
        assertEquals(List.of("open"), Browser.opener("Mac OS X", Map.of()));
        assertEquals("rundll32", Browser.opener("Windows 11", Map.of()).get(0));
        assertEquals(List.of("xdg-open"), Browser.opener("Linux", Map.of("WAYLAND_DISPLAY", "wayland-0")));
        assertEquals(
                "rundll32.exe",
                Browser.opener("Linux", Map.of("WSL_DISTRO_NAME", "Debian")).get(0));
        assertEquals(List.of(), Browser.opener("Linux", Map.of()), "a text browser would take the terminal");
    }
}
