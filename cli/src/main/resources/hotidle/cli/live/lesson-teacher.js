// The teacher sets a fault and gets a code of it. What was chosen is forgotten as soon as a lesson begins.
import { el } from './dom.js';

export function teacher(seal) {
  const fault = el('select', { onchange: () => limits() });
  const size = el('input', { type: 'number', step: 'any' });
  const unit = el('span', {});
  const sized = el('label', {}, 'Size ', size, ' ', unit);
  const allowed = el('p', { className: 'quiet' });
  const phrase = el('input', { type: 'text', autocomplete: 'off' });
  const code = el('output', { className: 'code' });
  const said = el('p', { role: 'status' });
  const wrong = el('p', { role: 'alert', className: 'is-fails' });
  let offer = null;

  const chosen = () => offer.faults.find((one) => one.name === fault.value);
  const times = (one) => one.share ? 100 : 1000;

  function limits() {
    const one = chosen();
    sized.hidden = !one.sized;
    unit.textContent = one.share ? '%' : 'mm';
    allowed.textContent = one.sized ? 'Allowed is ' + Number((one.least * times(one)).toPrecision(4)) + ' to ' + Number((one.most * times(one)).toPrecision(4)) + ' ' + unit.textContent + '.' : '';
    size.value = one.sized ? Number(((one.least + (one.most - one.least) / 3) * times(one)).toPrecision(3)) : '';
  }

  async function make() {
    wrong.textContent = '';
    said.textContent = '';
    code.textContent = '';
    const one = chosen();
    try {
      const answer = await seal({ build: offer.build, phrase: phrase.value,
        fault: one.name + (one.sized ? ':' + size.value + (one.share ? '%' : 'mm') : '') });
      code.textContent = answer.code;
      said.textContent = answer.phrase
        ? 'This code opens the lesson wherever the circuit is the same, with the phrase. Who has both could work out the fault with tools of his own: type the phrase in yourself, or trust the class.'
        : 'This code opens the lesson until the program ends, and tells nothing of the fault. With a phrase it would open it later and elsewhere too.';
    } catch (problem) {
      wrong.textContent = problem.message;
    }
  }

  return {
    root: el('div', {},
      el('div', { className: 'tools' }, el('label', {}, 'Fault ', fault), sized, el('label', {}, 'Phrase, if the code is to outlive the program ', phrase),
        el('button', { type: 'button', onclick: make }, 'Make a code')),
      allowed, wrong, code, said),
    offer(other) {
      offer = other;
      const kinds = new Map();
      offer.faults.forEach((one) => kinds.set(one.kind, [...(kinds.get(one.kind) || []), one]));
      fault.replaceChildren(...[...kinds].map(([kind, faults]) => el('optgroup', { label: kind },
        faults.map((one) => el('option', { value: one.name }, one.part ? one.part + ': ' + kind : kind)))));
      limits();
    },
    /** Nothing of the fault stays on the page. */
    forget() {
      fault.selectedIndex = 0;
      phrase.value = '';
      code.textContent = '';
      said.textContent = '';
      wrong.textContent = '';
      if (offer) {
        limits();
      }
    },
  };
}
