/**
 * Reading JSON that a person wrote or a program sent: a text becomes one object ({@link loftcoil.engine.json.JsonText}), and
 * an object gives its fields one by one, each fault noted with the path of its field. Read
 * {@link loftcoil.engine.json.JsonFields} first.
 */
@NullMarked
package loftcoil.engine.json;

import org.jspecify.annotations.NullMarked;
