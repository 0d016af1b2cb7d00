// Who looks at the gauges will type in what his own show: what such readings are compared with is solved while he reads them.
import { hint } from './ask.js';

/** Whoever turns at something does not look at gauges yet [ms]. */
const PAUSE = 600;

/** Of the scales so much is seen by who looks at them [-]. */
const SEEN = 0.2;

/**
 * `asking` gives the question about readings at what is set now, or null while none can be asked. What is given back is called whenever
 * that may be another one; each is asked once, after all that somebody waits for.
 */
export function ahead(list, asking) {
  let seen = false;
  let pausing = 0;
  let asked = '';
  function later() {
    clearTimeout(pausing);
    if (seen) {
      pausing = setTimeout(now, PAUSE);
    }
  }
  function now() {
    if (window.awaited > 0) {
      later();
      return;
    }
    const question = asking();
    const key = JSON.stringify(question);
    if (question && key !== asked) {
      asked = key;
      hint('ahead', question);
    }
  }
  new IntersectionObserver((entries) => {
    seen = entries[entries.length - 1].isIntersecting;
    later();
  }, { threshold: SEEN }).observe(list);
  return later;
}
