package loftcoil.engine.run;

/** How long things lasted, s: fire lit, water boiling somewhere, loop running backward. */
record Times(double litS, double boiledS, double backwardS) {

    Times since(Times before) {
        return new Times(litS - before.litS, boiledS - before.boiledS, backwardS - before.backwardS);
    }
}
