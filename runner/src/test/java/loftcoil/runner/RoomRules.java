package loftcoil.runner;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;

/**
 * What each room of the runner may touch. Each rule gives the breaches it finds as {@code class -> what it touches}, so that
 * it can be tried on classes that break it.
 *
 * @param root the package whose packages are the rooms
 */
record RoomRules(String root) {

    /** Low to high; rooms of one step do not know each other. */
    static final List<Set<String>> LADDER = List.of(
            Set.of("look"),
            Set.of("unit"),
            Set.of("lesson"),
            Set.of("exercise"),
            Set.of("course"),
            Set.of("chart"),
            Set.of("session"),
            Set.of("check"),
            Set.of("progress"),
            Set.of("show"),
            Set.of("page", "terminal", "handout", "workshop", "prove"),
            Set.of("cli"));

    /**
     * Rooms of the engine the runner knows by name; loop and caution for the records a sheet hands on, build for the build sheet, constant for what both count with.
     * Snippets know all.
     */
    private static final Set<String> ENGINE_DOORS = Set.of(
            "design",
            "survey",
            "sheet",
            "study",
            "clear",
            "build",
            "fault",
            "json",
            "loop",
            "caution",
            "words",
            "watch",
            "constant");

    Set<String> climbs(JavaClasses classes) {
        return uses(classes, use -> {
            String target = room(use.getTargetClass());
            String origin = room(use.getOriginClass());
            boolean inside = use.getTargetClass().getPackageName().startsWith(root + ".");
            return inside && !target.equals(origin) && step(target) >= step(origin);
        });
    }

    Set<String> strays(JavaClasses classes) {
        Set<String> strays = new TreeSet<>();
        classes.stream().filter(type -> step(room(type)) < 0).forEach(type -> strays.add(type.getName()));
        return strays;
    }

    /** Uses of classes of that package outside that room. */
    Set<String> outside(JavaClasses classes, String room, String packageStart) {
        return uses(
                classes,
                use -> !room(use.getOriginClass()).equals(room)
                        && use.getTargetClass().getPackageName().startsWith(packageStart));
    }

    Set<String> engineBackDoors(JavaClasses classes) {
        String engine = "loftcoil.engine.";
        return uses(classes, use -> {
            String target = use.getTargetClass().getPackageName();
            return target.startsWith(engine)
                    && ENGINE_DOORS.stream().noneMatch(door -> (target + ".").startsWith(engine + door + "."));
        });
    }

    Set<String> exits(JavaClasses classes) {
        return accesses(classes, access -> named(access, "java\\.lang\\.(System|Runtime)", "exit|halt"));
    }

    Set<String> prints(JavaClasses classes) {
        return accesses(
                classes,
                access -> named(access, "java\\.lang\\.System", "out|err")
                        || access.getName().equals("printStackTrace"));
    }

    Set<String> clocks(JavaClasses classes) {
        return accesses(
                classes,
                access -> named(access, "java\\.lang\\.System", "currentTimeMillis|nanoTime")
                        || named(access, "java\\.time\\..*", "now|system.*")
                        || named(access, "java\\.util\\.Date", "<init>"));
    }

    private Set<String> uses(JavaClasses classes, Predicate<Dependency> breach) {
        Set<String> found = new TreeSet<>();
        for (JavaClass type : classes) {
            type.getDirectDependenciesFromSelf().stream()
                    .filter(breach)
                    .forEach(use -> found.add(name(use.getOriginClass()) + " -> " + name(use.getTargetClass())));
        }
        return found;
    }

    private Set<String> accesses(JavaClasses classes, Predicate<JavaAccess<?>> breach) {
        Set<String> found = new TreeSet<>();
        for (JavaClass type : classes) {
            type.getAccessesFromSelf().stream()
                    .filter(breach)
                    .forEach(access -> found.add(
                            name(type) + " -> " + access.getTargetOwner().getSimpleName() + "." + access.getName()));
        }
        return found;
    }

    private static boolean named(JavaAccess<?> access, String ownerPattern, String namePattern) {
        return access.getTargetOwner().getName().matches(ownerPattern)
                && access.getName().matches(namePattern);
    }

    /** The class's name below the root; a class within another counts as that other. */
    private String name(JavaClass type) {
        String name = type.getName().replaceFirst("\\$.*", "");
        return name.startsWith(root + ".") ? name.substring(root.length() + 1) : name;
    }

    private String room(JavaClass type) {
        String below = type.getPackageName() + ".";
        return below.startsWith(root + ".") && below.length() > root.length() + 1
                ? below.substring(root.length() + 1, below.indexOf('.', root.length() + 1))
                : "";
    }

    private static int step(String room) {
        for (int i = 0; i < LADDER.size(); i++) {
            if (LADDER.get(i).contains(room)) {
                return i;
            }
        }
        return -1;
    }
}
