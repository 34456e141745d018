package loftcoil.engine.run;

/** How long things lasted, s: fire lit, water boiling somewhere, loop running backward. */
record Times(double litS, double boiledS, double backwardS) {

    Times and(Times other, double times) {
        return new Times(
                litS + times * other.litS, boiledS + times * other.boiledS, backwardS + times * other.backwardS);
    }

    Times since(Times before) {
        return new Times(litS - before.litS, boiledS - before.boiledS, backwardS - before.backwardS);
    }
}
