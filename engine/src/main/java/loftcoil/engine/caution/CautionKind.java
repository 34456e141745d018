package loftcoil.engine.caution;

import static loftcoil.engine.caution.Onset.IN_TIME;
import static loftcoil.engine.caution.Onset.ONE_DAY;
import static loftcoil.engine.caution.Severity.DANGER;
import static loftcoil.engine.caution.Severity.NOTE;
import static loftcoil.engine.caution.Severity.WARNING;
import static loftcoil.engine.caution.WorkStep.FILLING;
import static loftcoil.engine.caution.WorkStep.LOADS;
import static loftcoil.engine.caution.WorkStep.PARTS;
import static loftcoil.engine.caution.WorkStep.UPKEEP;

import java.util.Collections;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import loftcoil.engine.words.MeasuredText;
import loftcoil.engine.words.Sentences;

/**
 * What a caution is about. How bad it can get, how soon, and beside which steps of the work it stands are properties of the kind, so
 * that none is forgotten where the hand would be hurt; its sentences, who decides and the source stand under its code in
 * {@code cautions.properties}, and why it is as grave as it is in {@code models/caution.md}. Of kinds alike in gravity and onset, the
 * one listed here first leads.
 */
public enum CautionKind {
    /** The water boils somewhere in the loop. */
    BOIL(Conduct.STEAM, DANGER, FILLING),
    /** The loop comes near boiling. */
    BOIL_NEAR(Conduct.STEAM, WARNING, FILLING),
    /** The loop boils under a harder case. */
    BOIL_HARD(Conduct.STEAM, DANGER, FILLING),
    /** The tank comes near boiling in the year. */
    BOIL_TANK(Conduct.HOT_TANK, DANGER, ONE_DAY, FILLING),
    /** Bubbles form on the hottest side of the coil before its water boils. */
    SING(NOTE, UPKEEP),
    /** A lit fire under water that stands. */
    STILL(Conduct.STEAM, DANGER, FILLING),
    /** The tank is not above the coil. */
    TANK_LOW(Conduct.STEAM, DANGER, FILLING),
    /** A fire lit after a rest boils the loop or leaves it swinging. */
    START(Conduct.STEAM, DANGER, FILLING),
    /** A fire lit after a rest may do so, or the water takes long to set off, or runs backward. */
    START_UNSURE(Conduct.STEAM, WARNING, FILLING),
    /** Air gathers in the loop, or nothing tells the water which way to set off. */
    AIR(Conduct.STEAM, DANGER, FILLING),
    /** A leg with so little slope that it may hold air once it has sagged. */
    FLAT(Conduct.STEAM, WARNING, FILLING),
    /** Part of the loop is above the waterline. */
    SIPHON(Conduct.STEAM, DANGER, FILLING),
    /** Something in the loop can be shut. */
    VALVE(Conduct.STEAM, DANGER, ONE_DAY, PARTS),
    /** The coil is said to take more of the fuel than coils do. */
    COIL_SHARE(WARNING, PARTS),
    /** Joints of the coil stand in the fire. */
    COIL_JOINT(Conduct.STEAM, DANGER, IN_TIME, PARTS),
    /** The coil's tube is thin. */
    COIL_WALL(Conduct.STEAM, WARNING, IN_TIME, PARTS),
    /** The tank is sealed. */
    SEALED(Conduct.STEAM, DANGER, FILLING),
    /** The tank has no vent. */
    VENT_NONE(Conduct.STEAM, DANGER, PARTS, FILLING),
    /** The vent can be shut. */
    VENT_VALVE(Conduct.STEAM, DANGER, ONE_DAY, PARTS, FILLING),
    /** The vent is narrow. */
    VENT_BORE(Conduct.STEAM, DANGER, IN_TIME, PARTS),
    /** The vent ends low. */
    VENT_LOW(Conduct.STEAM, DANGER, PARTS),
    /** The cold feed can be shut. */
    FEED_VALVE(Conduct.STEAM, DANGER, ONE_DAY, PARTS, FILLING),
    /** Tank water can be sucked into drinking water. */
    BACKFLOW(WARNING, ONE_DAY, PARTS),
    /** Water of the tank is taken for drinking water. */
    DRINK(WARNING, IN_TIME, PARTS, UPKEEP),
    /** A tap gives water that burns. */
    SCALD(DANGER, PARTS),
    /** Germs grow in warm water. */
    LEGIONELLA(WARNING, IN_TIME, UPKEEP),
    /** The loop may freeze. */
    FROST_LOOP(Conduct.BACK_IN, DANGER, ONE_DAY, FILLING),
    /** The tank may freeze. */
    FROST_TANK(Conduct.BACK_IN, WARNING, ONE_DAY, UPKEEP),
    /** The tank behind its window may freeze. */
    FROST_WINDOW(Conduct.BACK_IN, WARNING, ONE_DAY, UPKEEP),
    /** What is not drained freezes in the empty house. */
    FROST_EMPTY(Conduct.BACK_IN, DANGER, ONE_DAY, UPKEEP),
    /** Poison in water that people use. */
    ANTIFREEZE(DANGER, FILLING),
    /** The return port is hardly covered even when full. */
    DRY_COVER(Conduct.STEAM, DANGER, FILLING),
    /** The taps can bare the return port. */
    DRY_DRAW(Conduct.STEAM, DANGER, FILLING),
    /** Nothing keeps the water from sinking to the return port. */
    LEVEL(Conduct.STEAM, WARNING, IN_TIME, UPKEEP),
    /** A fire is lit under a drained loop. */
    DRY_FIRE(Conduct.STEAM, DANGER, ONE_DAY, FILLING),
    /** Lime narrows the coil. */
    SCALE(Conduct.STEAM, WARNING, IN_TIME, UPKEEP),
    /** Metals that copper eats. */
    METALS(WARNING, IN_TIME, PARTS),
    /** Plastic near the fire. */
    PLASTIC(DANGER, PARTS),
    /** Lagging hotter than it may be. */
    LAGGING_HOT(Conduct.FUMES, WARNING, IN_TIME, PARTS),
    /** Bare pipe that burns a hand. */
    HOT_PIPE(WARNING, PARTS),
    /** The roof carries too much. */
    ROOF_LOAD(DANGER, LOADS),
    /** Too few bearers. */
    ROOF_BEARERS(DANGER, LOADS),
    /** The dwelling tips. */
    TIP(DANGER, ONE_DAY, LOADS),
    /** The axle carries too much. */
    AXLE(DANGER, ONE_DAY, LOADS),
    /** The flue is near what burns. */
    FLUE_NEAR(Conduct.FUMES, DANGER, FILLING),
    /** The heater is near what burns. */
    HEATER_NEAR(Conduct.FUMES, DANGER, FILLING),
    /** The flue ends low. */
    FLUE_LOW(Conduct.FUMES, WARNING, FILLING),
    /** No carbon monoxide alarm. */
    CO_ALARM(Conduct.FUMES, DANGER, FILLING, UPKEEP),
    /** Too little air for the fire. */
    CO_AIR(Conduct.FUMES, DANGER, FILLING),
    /** A fan pulls flue gas back. */
    CO_FAN(Conduct.FUMES, DANGER, ONE_DAY, FILLING),
    /** Tar in a cool flue. */
    CREOSOTE(Conduct.FUMES, DANGER, IN_TIME, UPKEEP),
    /** Wet wood. */
    WET_WOOD(Conduct.FUMES, WARNING, IN_TIME, UPKEEP),
    /** Too little pressure for a machine. */
    INLET(NOTE, PARTS),
    /** Warm water grows over the rim. */
    OVERFLOW(WARNING, FILLING),
    /** The overflow is narrower than what fills. */
    OVERFLOW_BORE(WARNING, ONE_DAY, PARTS),
    /** Panes larger than what the sun can see of the tank. */
    SUN_FACE(NOTE, PARTS),
    /** Plain panes before a hot tank. */
    GLASS(WARNING, ONE_DAY, PARTS),
    /** A dull week leaves the taps short. */
    DULL_WEEK(NOTE, ONE_DAY, UPKEEP);

    static final Sentences SENTENCES = Sentences.read(CautionKind.class, "cautions.properties");

    @SuppressWarnings("ImmutableEnumChecker")
    private final Optional<Conduct> conduct;

    private final Severity severity;
    private final Onset onset;
    // Never changed after it is made; a Set does not say so in its type.
    @SuppressWarnings("ImmutableEnumChecker")
    private final Set<WorkStep> beside;

    /** One that the next fire or the next draw can bring. */
    CautionKind(Severity severity, WorkStep first, WorkStep... others) {
        this(severity, Onset.NEXT_USE, first, others);
    }

    CautionKind(Severity severity, Onset onset, WorkStep first, WorkStep... others) {
        this(Optional.empty(), severity, onset, EnumSet.of(first, others));
    }

    /** The same where a rule of conduct says what to do if it comes true. */
    CautionKind(Conduct conduct, Severity severity, WorkStep first, WorkStep... others) {
        this(Optional.of(conduct), severity, Onset.NEXT_USE, EnumSet.of(first, others));
    }

    CautionKind(Conduct conduct, Severity severity, Onset onset, WorkStep first, WorkStep... others) {
        this(Optional.of(conduct), severity, onset, EnumSet.of(first, others));
    }

    CautionKind(Optional<Conduct> conduct, Severity severity, Onset onset, Set<WorkStep> beside) {
        this.conduct = conduct;
        this.severity = severity;
        this.onset = onset;
        this.beside = Collections.unmodifiableSet(beside);
    }

    /** Code of our own, such as {@code LC-BOIL}, by which other programs know it. */
    public String code() {
        return "LC-" + name().replace('_', '-');
    }

    /** How bad it can get; a caution of it may be milder. */
    public Severity severity() {
        return severity;
    }

    /** What to do if it comes true; empty where none of the table of conduct applies. */
    public Optional<Conduct> conduct() {
        return conduct;
    }

    /** How soon it can hurt. */
    public Onset onset() {
        return onset;
    }

    /** The steps of the work it stands beside; at least one. */
    public Set<WorkStep> beside() {
        return beside;
    }

    /** Whose rules and word come before this program's. */
    public MeasuredText decides() {
        return SENTENCES.say(code() + ".decides");
    }

    /** Published source, or "common practice, no source". */
    public MeasuredText source() {
        return SENTENCES.say(code() + ".source");
    }

    /** The caution with its one sentence. */
    Caution raised(Object... filling) {
        return raised(SENTENCES.say(code(), filling));
    }

    /** The caution with one of its several sentences. */
    Caution raisedAs(String which, Object... filling) {
        return raised(part(which, filling));
    }

    /** Words of this kind that make up a sentence or part of one. */
    MeasuredText part(String which, Object... filling) {
        return SENTENCES.say(code() + "." + which, filling);
    }

    private Caution raised(MeasuredText found) {
        return new Caution(this, severity, SENTENCES.say("ask-first", "found", found, "decides", decides()));
    }
}
