/**
 * The dry fit as a person sees it: the job put together from the boards as they were cut, turned and drawn apart, beside it
 * what was judged, and where each figure comes from. It changes nothing.
 */
@NullMarked
package org.marktwice.view.dryfit;

import org.jspecify.annotations.NullMarked;
