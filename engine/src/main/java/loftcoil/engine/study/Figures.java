package loftcoil.engine.study;

import java.util.List;

/** Collects figures whose keys begin alike. */
final class Figures {

    private final List<SheetFigure> all;
    private final FigureGroup group;
    private final String path;
    private final String of;

    private Figures(List<SheetFigure> all, FigureGroup group, String path, String of) {
        this.all = all;
        this.group = group;
        this.path = path;
        this.of = of;
    }

    /** Collects into this list, figures of this group with keys below this path. */
    static Figures into(List<SheetFigure> all, FigureGroup group, String path) {
        return new Figures(all, group, path, "");
    }

    /** The same with whose figures they are before each label, such as the name of a tap. */
    Figures of(String whose) {
        return new Figures(all, group, path, whose + ": ");
    }

    /** The same a step deeper in the keys. */
    Figures at(String step) {
        return new Figures(all, group, path + step, of);
    }

    Figures more(String key, String label, String unit, double value) {
        return add(key, label, unit, Better.MORE, value);
    }

    Figures less(String key, String label, String unit, double value) {
        return add(key, label, unit, Better.LESS, value);
    }

    Figures plain(String key, String label, String unit, double value) {
        return add(key, label, unit, Better.NONE, value);
    }

    private Figures add(String key, String label, String unit, Better wish, double value) {
        all.add(new SheetFigure(path + key, new SheetFigure.Kind(group, of + label, unit, wish), value));
        return this;
    }
}
