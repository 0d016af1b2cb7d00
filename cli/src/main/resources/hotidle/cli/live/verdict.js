// What the build comes to, in the words of 'hotidle margins'.
import { byId, el, head, stale } from './dom.js';

/** Rows that are shown at once. */
const SHOWN = 4;

/** Limits that fail and are shown at once, at most. */
const FAILING = 12;

/** The sentence with its verdict word marked. */
function emphasised(answer) {
  const word = /\b(FAILS|NARROW|NOT KNOWN|HOLDS)\b/.exec(answer.summary);
  return word ? [answer.summary.slice(0, word.index), el('strong', { className: 'is-' + answer.verdict }, word[0]), answer.summary.slice(word.index + word[0].length)]
    : [answer.summary];
}

export function verdict() {
  const root = byId('verdict');
  const sentence = el('p', { className: 'sentence' });
  const said = el('div', { 'aria-live': 'polite', 'aria-atomic': 'true' }, sentence);
  const may = el('p', { className: 'sentence', id: 'may-set' });
  const later = el('div', { className: 'later', 'aria-live': 'polite' }, may);
  const more = el('div', {});
  const old = stale();
  root.append(head('verdict', 'Verdict', old), said, later, more);

  function table(limits, caption) {
    return el('div', { className: 'table', tabIndex: 0, role: 'region', 'aria-label': caption },
      el('table', { className: 'cards' },
        el('caption', {}, caption),
        el('thead', {}, el('tr', {}, ['verdict', 'driving condition', 'limit and why', 'is'].map((head) => el('th', { scope: 'col' }, head)))),
        el('tbody', {}, limits.map((one) => el('tr', {},
          el('th', { scope: 'row', className: 'is-' + one.verdict }, one.headroom_said + ' ' + one.verdict_said),
          el('td', { 'data-head': 'driving condition' }, one.duty),
          el('td', { 'data-head': 'limit' }, one.label, el('span', { className: 'how' }, one.why)),
          el('td', { 'data-head': 'is', className: 'figure' }, one.is_of_needed))))));
  }

  return {
    wait() {
      root.classList.add('waiting');
      later.classList.add('waiting');
      old.of(Boolean(root.dataset.verdict));
      may.textContent ||= 'Which pressure it may be set to is being worked out.';
      root.setAttribute('aria-busy', 'true');
    },
    /** What stands there is no answer to what is asked for now, and none will come. */
    grey(old) {
      root.classList.toggle('old', old);
      if (old) {
        root.classList.remove('waiting');
        later.classList.remove('waiting');
        root.removeAttribute('aria-busy');
      }
    },
    /** What the unit may be set to: it comes later than the rest. */
    set(answer) {
      later.classList.remove('waiting');
      may.textContent = answer ? [answer.said, answer.not_known].filter((one) => one).join(' ') : '';
    },
    show(answer) {
      root.classList.remove('waiting', 'old');
      root.removeAttribute('aria-busy');
      root.dataset.verdict = answer.verdict;
      sentence.replaceChildren(...emphasised(answer));
      const open = more.querySelector('details');
      const worst = answer.limits.filter((one) => one.verdict !== 'holds');
      const held = answer.limits.filter((one) => one.verdict === 'holds');
      const first = Math.max(SHOWN, Math.min(FAILING, worst.filter((one) => one.verdict === 'fails').length));
      const hidden = worst.slice(first);
      const fail = hidden.filter((one) => one.verdict === 'fails').length;
      const rest = (fail ? fail + ' more that fail and all' : 'All') + (worst.length ? ' other limits' : ' limits');
      more.replaceChildren(
        el('p', {}, answer.counted),
        ...answer.not_known.map((line) => el('p', { className: 'is-fails' }, line)),
        answer.no_stall ? el('p', { className: 'caution' }, answer.no_stall) : '',
        worst.length ? table(worst.slice(0, first), 'Limits that do not hold with ease, the worst first') : '',
        el('details', { open: Boolean(open && open.open) },
          el('summary', {}, rest + ', ' + (hidden.length + held.length)),
          table([...hidden, ...held], rest)));
    },
  };
}
