package loftcoil.runner.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.URI;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.junit.jupiter.api.Test;

class BrowserTest {

    private static final URI ADDRESS = URI.create("http://127.0.0.1:7011/enter/secret");

    private final List<String> tried = new ArrayList<>();

    private Function<URI, Boolean> way(String name, boolean works) {
        return address -> {
            tried.add(name + " " + address);
            return works;
        };
    }

    @Test
    void theWaysAreTriedInTurnUntilOneWorks() {
        assertTrue(Browser.opened(List.of(way("first", false), way("second", true), way("third", true)), ADDRESS));

        assertEquals(List.of("first " + ADDRESS, "second " + ADDRESS), tried);
    }

    @Test
    void whereNoneWorksThatIsKnown() {
        assertFalse(Browser.opened(List.of(way("first", false), way("second", false)), ADDRESS));
        assertEquals(2, tried.size());
    }

    @Test
    void eachSystemHasThreeWaysOrMore() {
        assertEquals(3, Browser.ways("Windows 11", Map.of()).size());
        assertEquals(3, Browser.ways("Mac OS X", Map.of()).size());
        assertEquals(
                3, Browser.ways("Linux", Map.of("WSL_DISTRO_NAME", "Debian")).size());
        assertEquals(4, Browser.ways("Linux", Map.of("DISPLAY", ":0")).size());
        assertEquals(
                4, Browser.ways("Linux", Map.of("WAYLAND_DISPLAY", "wayland-0")).size());
    }

    @Test
    void whereThereIsNoScreenNothingIsTried() {
        assertEquals(List.of(), Browser.ways("Linux", Map.of()));
    }
}
