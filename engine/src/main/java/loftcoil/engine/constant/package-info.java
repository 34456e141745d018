/**
 * Constants of nature and agreed standard values, each once. Uses no other room. Read
 * {@link loftcoil.engine.constant.Constants}.
 */
@NullMarked
package loftcoil.engine.constant;

import org.jspecify.annotations.NullMarked;
