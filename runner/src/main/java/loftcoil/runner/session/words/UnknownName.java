package loftcoil.runner.session.words;

import java.util.Optional;

/** A name that nothing declares, with the nearest one that something does. */
final class UnknownName {

    private UnknownName() {}

    static Optional<String> say(Finding finding) {
        if (finding.is("doesnt.exist")) {
            String what = finding.inMessage("package (\\S+) does not exist");
            return Optional.of("Nothing is called " + what + "." + nearest(what, "variable", finding));
        }
        String name = finding.inMessage("symbol:\\s+(?:variable|method|class) (\\S+?)(?:\\(|\\s|$)");
        if (!finding.is("cant.resolve") || name.isEmpty()) {
            return Optional.empty();
        }
        String kind = finding.inMessage("symbol:\\s+(variable|method|class) ");
        String owner = finding.inMessage("location:\\s+(?:class|interface) ([\\w.]+)$");
        String inside = owner.isEmpty() ? "" : " in " + owner.substring(owner.lastIndexOf('.') + 1);
        String what =
                switch (kind) {
                    case "method" -> "There is no method " + name + inside + " that takes what is given here";
                    case "class" -> "There is no type called " + name;
                    default -> "Nothing is called " + name + inside;
                };
        return Optional.of(what + "." + nearest(name, kind, finding));
    }

    private static String nearest(String name, String kind, Finding finding) {
        Optional<String> near = NearName.of(name, finding.known());
        if (near.isPresent()) {
            boolean onlyCase = near.get().equalsIgnoreCase(name);
            return onlyCase ? " Capital letters count: it is " + near.get() + "." : " Did you mean " + near.get() + "?";
        }
        return kind.equals("variable") ? " Is it spelt right, and has the snippet that declares it run?" : "";
    }
}
