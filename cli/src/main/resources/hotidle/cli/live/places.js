// Where to find each panel: the page is long.
import { byId, el } from './dom.js';

/** Names the panels by their heads, in the order in which they stand. */
export function places() {
  byId('places').replaceChildren(...[...document.querySelectorAll('main section > h2')].map((head) => el('button', { type: 'button', className: 'quiet', onclick: () => {
    const panel = head.parentElement;
    panel.tabIndex = -1;
    panel.focus({ preventScroll: true });
    panel.scrollIntoView();
  } }, head.firstChild.textContent)));
}
