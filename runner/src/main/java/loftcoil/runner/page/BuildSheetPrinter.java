package loftcoil.runner.page;

import loftcoil.runner.show.UnknownNameException;

/** Makes files to print of the learner's own design. */
@FunctionalInterface
public interface BuildSheetPrinter {

    /** Prints nothing. */
    BuildSheetPrinter NONE = asked -> {
        throw new UnknownNameException("Nothing can be printed here.");
    };

    /**
     * Prints.
     *
     * @param asked what is wanted
     * @throws loftcoil.engine.fault.RefusedException where that paper is not known; the message says which are
     */
    Printed print(Asked asked);

    /** What a file is. */
    enum Form {
        /** The sheet, to read or print. */
        HTML("text/html; charset=utf-8"),
        /** The sheet on paper. */
        PDF("application/pdf"),
        /** The shopping list with a column for prices. */
        CSV("text/csv; charset=utf-8"),
        /** The survey of a house as a blank form to carry about, on paper. */
        FORM("application/pdf");

        private final String mediaType;

        Form(String mediaType) {
            this.mediaType = mediaType;
        }

        /** Its media type. */
        String mediaType() {
            return mediaType;
        }
    }

    /**
     * What is wanted.
     *
     * @param form what the file is to be
     * @param paper name of the paper
     * @param half whether as much as there is at once will do, without year and starts
     */
    record Asked(Form form, String paper, boolean half) {}

    /** A file. */
    final class Printed {

        private final String name;
        private final byte[] bytes;

        /**
         * A file.
         *
         * @param name what to call it: plain letters, digits and hyphens, with its ending
         * @param bytes its content; not copied, never changed
         */
        public Printed(String name, byte[] bytes) {
            this.name = name;
            this.bytes = bytes;
        }

        String name() {
            return name;
        }

        byte[] bytes() {
            return bytes;
        }
    }
}
