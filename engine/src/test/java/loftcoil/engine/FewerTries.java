package loftcoil.engine;

import net.jqwik.api.lifecycle.AroundPropertyHook;
import net.jqwik.api.lifecycle.PropagationMode;
import net.jqwik.api.lifecycle.PropertyAttributes;
import net.jqwik.api.lifecycle.PropertyExecutionResult;
import net.jqwik.api.lifecycle.PropertyExecutor;
import net.jqwik.api.lifecycle.PropertyLifecycleContext;

/**
 * Tries a fiftieth of what each property asks for, with its own seed; with {@code -Dloftcoil.thorough=true}, as the profile
 * {@code thorough} sets it, all of it. It holds for every property of the module by being listed as a service.
 */
public final class FewerTries implements AroundPropertyHook {

    private static final int SHARE = 50;

    /** A property that asks for fewer costs little for its number, or much for each. */
    private static final int LEAST = 10;

    /** jqwik's own, where a property names none. */
    private static final int USUAL = 1000;

    @Override
    public PropertyExecutionResult aroundProperty(PropertyLifecycleContext context, PropertyExecutor property) {
        PropertyAttributes attributes = context.attributes();
        attributes.setTries(now(attributes.tries().orElse(USUAL)));
        return property.execute();
    }

    /** How many tries are made of so many. */
    public static int now(int tries) {
        return Boolean.getBoolean("loftcoil.thorough") ? tries : Math.min(tries, Math.max(LEAST, tries / SHARE));
    }

    @Override
    public PropagationMode propagateTo() {
        return PropagationMode.ALL_DESCENDANTS;
    }
}
