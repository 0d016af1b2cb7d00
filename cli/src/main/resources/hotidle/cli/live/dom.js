// Elements made of plain values: text is always text, whatever stands in it.

/** An element with properties (a key that begins with "on" is a listener, "data" and "aria" are attributes) and children. */
export function el(tag, properties = {}, ...children) {
  const element = document.createElement(tag);
  for (const [key, value] of Object.entries(properties)) {
    if (value === undefined || value === null || value === false) {
      continue;
    }
    if (key.startsWith('on')) {
      element.addEventListener(key.slice(2), value);
    } else if (key in element && !key.startsWith('aria') && key !== 'list') {
      element[key] = value;
    } else {
      element.setAttribute(key, value === true ? '' : value);
    }
  }
  element.append(...children.flat().filter((child) => child !== null && child !== undefined && child !== ''));
  return element;
}

/** The element of an id. */
export const byId = (id) => document.getElementById(id);

/**
 * A field for a number. Its `show` leaves alone what is being typed; what is left without another number goes back to what was shown.
 */
export function numberField(label, set) {
  let shown = '';
  let typing = false;
  const field = el('input', { type: 'number', step: 'any', 'aria-label': label,
    oninput: () => { typing = true; },
    onchange: () => {
      typing = false;
      if (field.value !== '') {
        set(Number(field.value));
      }
    },
    onblur: () => {
      typing = false;
      field.value = shown;
    } });
  field.show = (text) => {
    shown = text;
    if (!typing && field.value !== text) {
      field.value = text;
    }
  };
  return field;
}

/** The head of a panel, by which it is shut and opened again; it may be made anew while the panel is shut. */
export const head = (panel, ...words) => el('h2', { id: panel + '-head' },
  el('button', { type: 'button', className: 'fold', 'aria-expanded': String(isOpen(byId(panel))) }, words));

/** What a panel holds, told beside its head while it is shut. */
export const about = (words) => el('span', { className: 'about' }, ': ' + words);

/** Whether a panel is open; it hears a `fold` when that changes. */
export const isOpen = (panel) => !panel.classList.contains('shut');

/** Words beside the head of a panel that are seen while its answer is awaited; its `of` says whether one of the state before stands there. */
export function stale() {
  const words = el('span', { className: 'stale' });
  words.of = (before) => { words.textContent = before ? ' of the state before; the new one is being worked out' : ' being worked out'; };
  return words;
}

/** A choice of one out of some, as radio buttons that look like tabs. */
export function tabs(legend, name, options, chosen, choose) {
  return el('fieldset', { className: 'tabs' }, el('legend', {}, legend), options.map((option) =>
    el('label', { title: option.about || '' },
      el('input', { type: 'radio', name, value: option.name, checked: option.name === chosen, onchange: () => choose(option.name) }),
      el('span', {}, option.label || option.name))));
}

/** Undo in a field of a part of the page is the browser's own, of that field: the page does not hear of it. */
export function ownUndo(root) {
  root.addEventListener('keydown', (event) => {
    if ((event.ctrlKey || event.metaKey) && event.key.toLowerCase() === 'z' && event.target.matches('textarea, input:not([type="range"])')) {
      event.stopPropagation();
    }
  });
}
