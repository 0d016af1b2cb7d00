// How long what somebody did took until it stood there, by the browser's own clock: for who measures the page.

/** So many of a kind are remembered. */
const LOOKED_AT = 1000;

/** Times [ms] by what they were taken of: picture, verdict, causes, next reading. */
window.took = {};

/** What was answered to something done at a time is put on the page now. */
export function took(what, since) {
  requestAnimationFrame(() => setTimeout(() => {
    const times = window.took[what] ||= [];
    times.push(performance.now() - since);
    times.splice(0, times.length - LOOKED_AT);
  }));
}
