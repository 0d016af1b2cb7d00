// A field for a circuit file, with the messages of 'hotidle check' at their lines and the drawing beside it. Nothing of it is kept but in
// this tab, and in the file that the browser saves where the user says.
import { ask, asker } from './ask.js';
import { about, byId, el, head, isOpen, ownUndo } from './dom.js';
import { hand } from './download.js';
import * as units from './units.js';

const KEPT = 'hotidle-written';

/** Of a file that is opened here [bytes]. */
const LONGEST = 128 * 1024;

const EARLIER = 'Drawn below is an earlier text, the last without an error.';

/** How long the keys rest before the text is checked, and before it is drawn [ms]. */
const REST = 250;
const DRAW = 900;

export function write() {
  const root = byId('write');
  const text = el('textarea', { id: 'written', wrap: 'off', rows: 24, 'aria-describedby': 'written-said' });
  text.setAttribute('spellcheck', 'false');
  text.setAttribute('autocapitalize', 'off');
  const gutter = el('div', { className: 'gutter', 'aria-hidden': 'true' });
  const said = el('p', { id: 'written-said', role: 'status' });
  const list = el('ol', { className: 'problems' });
  const summary = el('pre', {});
  const holds = el('details', {}, el('summary', {}, 'What it holds, and what it leaves to the program'), summary);
  const place = el('div', { className: 'picture', tabIndex: 0, role: 'region', 'aria-label': 'The written circuit drawn' });
  const drawn = el('p', { className: 'quiet' });
  const ready = el('select', {});
  const file = el('input', { type: 'file', accept: '.yaml,.yml,text/plain', onchange: () => opened() });
  const name = el('input', { type: 'text', value: 'circuit.yaml', autocomplete: 'off' });
  const field = el('div', { className: 'editor' }, gutter, text);
  root.append(head('write', 'Write a circuit here', about('a circuit file with its messages and its drawing')),
    el('p', {}, 'What is written is checked as you type. Nothing is saved but by you. A file that is saved opens whole with \u2018hotidle live FILE\u2019.'),
    el('div', { className: 'tools' }, el('label', {}, 'Ready circuit ', ready), el('button', { type: 'button', onclick: () => begin() }, 'Begin with it'),
      el('label', {}, 'File of yours ', file), el('label', {}, 'Save as ', name), el('button', { type: 'button', onclick: () => save() }, 'Save')),
    el('div', { className: 'pair' },
      el('div', {}, el('label', { htmlFor: 'written' }, 'Circuit file'), field),
      el('div', {}, el('h3', {}, 'Messages'), said, list, holds, el('h3', {}, 'Drawing'), drawn, place)));
  ownUndo(root);
  let problems = [];
  let resting = 0;
  let drawing = 0;
  let checked = null;

  const question = () => ({ units: units.inUse(), text: text.value });

  const check = asker('write-check', {
    answered(answer, asked) {
      checked = asked.text;
      problems = answer.problems;
      shown(answer);
      clearTimeout(drawing);
      if (answer.good) {
        drawing = setTimeout(() => picture(question()), DRAW);
      } else {
        drawn.textContent = place.firstChild ? EARLIER : 'It is drawn as soon as it has no error.';
        place.classList.add('old');
      }
    },
    refused(problem) {
      said.textContent = problem.message;
    },
  });

  const picture = asker('write-drawing', {
    answered(answer, asked) {
      const svg = document.importNode(new DOMParser().parseFromString(answer.svg, 'image/svg+xml').documentElement, true);
      svg.removeAttribute('width');
      svg.removeAttribute('height');
      place.replaceChildren(svg);
      if (asked.text !== text.value) {
        drawn.textContent = EARLIER;
        place.classList.add('old');
        return;
      }
      place.classList.remove('old');
      drawn.textContent = 'As it is joined, without pressures; the selector stands in ' + answer.range + '.';
    },
    refused(problem) {
      drawn.textContent = problem.message;
    },
  });

  /** Line numbers, those with a message marked by a sign. */
  function numbers() {
    const bad = new Map();
    problems.filter((one) => one.own && checked === text.value).forEach((one) => bad.set(one.line, bad.get(one.line) === 'error' ? 'error' : one.severity));
    const count = text.value.split('\n').length;
    gutter.replaceChildren(...Array.from({ length: count }, (unused, i) => el('div', { className: bad.has(i + 1) ? 'marked ' + bad.get(i + 1) : '' },
      (bad.has(i + 1) ? (bad.get(i + 1) === 'error' ? '\u25b6 ' : '\u25b7 ') : '') + (i + 1))));
    gutter.scrollTop = text.scrollTop;
  }

  function shown(answer) {
    const errors = problems.filter((one) => one.severity === 'error').length;
    const warnings = problems.length - errors;
    const count = (number, word) => number + ' ' + word + (number === 1 ? '' : 's');
    said.textContent = (errors ? count(errors, 'error') : 'No error') + (warnings ? ', ' + count(warnings, 'warning') : '') + '.';
    list.replaceChildren(...problems.map((one) => el('li', {},
      el('button', { type: 'button', className: 'quiet', disabled: !one.own, onclick: () => go(one) }, (one.own ? '' : one.file + ' ') + 'line ' + one.line + ', column ' + one.column),
      ' ', el('span', { className: one.severity === 'error' ? 'is-fails' : 'is-close' }, one.severity), ': ' + one.said,
      one.why ? el('span', { className: 'how' }, 'why: ' + one.why) : '', one.mend ? el('span', { className: 'how' }, 'mend: ' + one.mend) : '')));
    holds.hidden = !answer.good;
    summary.textContent = answer.good ? answer.summary : '';
    numbers();
  }

  /** To the place of a message, which is marked. */
  function go(one) {
    const lines = text.value.split('\n');
    const start = lines.slice(0, one.line - 1).reduce((sum, line) => sum + line.length + 1, 0) + one.column - 1;
    text.focus();
    text.setSelectionRange(start, start + Math.max(1, one.width));
    const height = parseFloat(getComputedStyle(text).lineHeight);
    text.scrollTop = Math.max(0, (one.line - 5) * height);
    text.scrollLeft = 0;
    field.scrollIntoView({ block: 'nearest' });
  }

  function typed() {
    try {
      sessionStorage.setItem(KEPT, text.value);
    } catch {
      // longer than a browser keeps for a tab: it is lost with the tab
    }
    numbers();
    clearTimeout(resting);
    clearTimeout(drawing);
    resting = setTimeout(() => check(question()), REST);
  }

  function put(other, called) {
    text.value = other;
    name.value = called;
    text.setSelectionRange(0, 0);
    text.scrollTop = 0;
    typed();
  }

  async function begin() {
    try {
      const answer = await ask('write-begin', { text: ready.value });
      put(answer.text, answer.name);
    } catch (problem) {
      said.textContent = problem.message;
    }
  }

  async function opened() {
    const one = file.files[0];
    if (one && one.size > LONGEST) {
      said.textContent = 'This file is longer than ' + LONGEST / 1024 + ' kB: check it with hotidle check.';
    } else if (one) {
      put(await one.text(), one.name);
    }
    file.value = ''; // so that the same file can be opened again
  }

  function save() {
    hand(/\.ya?ml$/.test(name.value) ? name.value.replace(/\.yml$/, '.yaml') : (name.value || 'circuit') + '.yaml', text.value);
  }

  text.oninput = typed;
  text.onscroll = () => { gutter.scrollTop = text.scrollTop; };
  async function offered() {
    try {
      const answer = await ask('write-offer', {});
      ready.replaceChildren(...answer.ready.map((one) => el('option', {}, one)));
      if (text.value === '') {
        put(sessionStorage.getItem(KEPT) || answer.start, 'circuit.yaml');
      }
    } catch (problem) {
      said.textContent = problem.message;
    }
  }

  root.addEventListener('fold', () => isOpen(root) && ready.length === 0 && offered());
}
