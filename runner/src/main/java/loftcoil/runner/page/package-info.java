/**
 * The local web page: the {@link loftcoil.runner.show.LearnerApp} over HTTP on this machine only. Read
 * {@link loftcoil.runner.page.PageServer} first, then {@link loftcoil.runner.page.PageApi} for what the page may ask.
 *
 * <p>Uses {@code show} and nothing beneath it. The page's own scripts and styles are resources beside this package; no file
 * comes from elsewhere.
 */
@NullMarked
package loftcoil.runner.page;

import org.jspecify.annotations.NullMarked;
