// Where to find each panel: the page is long. A row of names that stays in sight, and panels that are shut and opened by their heads.
import { byId, el } from './dom.js';

/** What a panel shows once it is opened, where it does work for it: such a panel has no other way to be shut. */
const details = (panel) => panel.querySelector(':scope > details');

export function places(story) {
  const panels = [...document.querySelectorAll('main section')];

  function fold(panel, shut) {
    panel.classList.toggle('shut', shut);
    panel.querySelector('h2 > .fold')?.setAttribute('aria-expanded', String(!shut));
    story.fold(panels.filter((one) => one.classList.contains('shut')).map((one) => one.id));
  }

  function go(panel) {
    if (details(panel)) {
      details(panel).open = true;
    } else if (panel.classList.contains('shut')) {
      fold(panel, false);
    }
    panel.tabIndex = -1;
    panel.focus({ preventScroll: true });
    panel.scrollIntoView();
  }

  byId('main').addEventListener('click', (event) => {
    const head = event.target.closest('h2 > .fold');
    if (head) {
      const panel = head.closest('section');
      fold(panel, !panel.classList.contains('shut'));
    }
  });
  const listed = [byId('verdict'), ...panels.filter((one) => one.id !== 'verdict')]; // it stands first on any screen
  byId('places').replaceChildren(el('ul', {}, listed.map((panel) => el('li', {}, el('a', { href: '#' + panel.id, onclick: (event) => {
    event.preventDefault(); // the address keeps what is set
    go(panel);
  } }, panel.dataset.name)))));

  return {
    /** As the address has it. */
    show() {
      panels.forEach((panel) => {
        const shut = story.shut.includes(panel.id) && !details(panel);
        panel.classList.toggle('shut', shut);
        panel.querySelector('h2 > .fold')?.setAttribute('aria-expanded', String(!shut));
      });
    },
  };
}
