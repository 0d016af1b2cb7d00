// Where to find each panel: the page is long. A row of names that stays in sight, and panels that are shut and opened by their heads; those
// that are not needed first are shut until they are asked for.
import { byId, el, isOpen } from './dom.js';

export function places(story) {
  const panels = [...document.querySelectorAll('main section')];
  const shutAtFirst = new Set(panels.filter((panel) => !isOpen(panel)).map((panel) => panel.id));

  function set(panel, shut) {
    const other = isOpen(panel) === shut;
    panel.classList.toggle('shut', shut);
    panel.querySelector('h2 > .fold')?.setAttribute('aria-expanded', String(!shut));
    if (other) {
      panel.dispatchEvent(new Event('fold'));
    }
  }

  function fold(panel, shut) {
    set(panel, shut);
    story.fold(panels.filter((one) => isOpen(one) === shutAtFirst.has(one.id)).map((one) => one.id));
  }

  function go(panel) {
    fold(panel, false);
    panel.tabIndex = -1;
    panel.focus({ preventScroll: true });
    panel.scrollIntoView();
  }

  byId('main').addEventListener('click', (event) => {
    const head = event.target.closest('h2 > .fold');
    if (head) {
      const panel = head.closest('section');
      fold(panel, isOpen(panel));
    }
  });
  const listed = [byId('verdict'), ...panels.filter((one) => one.id !== 'verdict')]; // it stands first on any screen
  byId('places').replaceChildren(el('ul', {}, listed.map((panel) => el('li', {}, el('a', { href: '#' + panel.id, onclick: (event) => {
    event.preventDefault(); // the address keeps what is set
    go(panel);
  } }, panel.dataset.name)))));

  // what is read stays in sight beside what is turned at; where it is higher than the window, its lower end does
  const read = document.querySelector('.column.read');
  const bar = byId('bar');
  const stick = () => { read.style.top = Math.min(bar.offsetHeight, innerHeight - read.offsetHeight) + 'px'; };
  new ResizeObserver(stick).observe(read);
  addEventListener('resize', stick);

  return {
    go,
    /** Opens a panel where it stands. */
    open(panel) {
      fold(panel, false);
    },
    /** As the address has it. */
    show() {
      panels.forEach((panel) => set(panel, shutAtFirst.has(panel.id) !== story.turned.includes(panel.id)));
    },
  };
}
