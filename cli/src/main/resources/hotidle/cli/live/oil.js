// Where the oil goes that the pump displaces, as lengths with their numbers.
import { byId, el, head } from './dom.js';
import * as units from './units.js';

/** Ends of the oil smaller than this share of it are put together. */
const SMALL = 0.01;

/** Gathered by what becomes of the oil and what it is booked under, the largest first. */
function gathered(ends) {
  const fates = new Map();
  for (const end of ends) {
    const groups = fates.get(end.fate) || new Map();
    const label = end.fate === 'leaks' || end.fate === 'used' ? end.group : '';
    const one = groups.get(label) || { label, flow: 0, share: 0, parts: [] };
    one.flow += end.flow_m3_s;
    one.share += end.share;
    one.parts.push(end);
    groups.set(label, one);
    fates.set(end.fate, groups);
  }
  return [...fates].map(([fate, groups]) => ({
    fate,
    flow: [...groups.values()].reduce((sum, one) => sum + one.flow, 0),
    share: [...groups.values()].reduce((sum, one) => sum + one.share, 0),
    groups: [...groups.values()].filter((one) => one.label).sort((a, b) => b.flow - a.flow),
  }));
}

const percent = (share) => (100 * share).toFixed(0) + ' %';

export function oil() {
  const root = byId('oil');
  const body = el('tbody', {});
  const top = el('p', { className: 'quiet' });
  root.append(head('oil', 'Where the oil goes'), top,
    el('table', { className: 'oil' }, el('thead', {}, el('tr', {}, ['goes to', 'flow', 'share'].map((head) => el('th', { scope: 'col' }, head)), el('td', {}))), body));

  function row(label, flow, share, inner, title) {
    const length = el('meter', { min: 0, max: 1, value: Math.max(0, Math.min(1, share)), className: inner ? 'inner' : '', 'aria-hidden': 'true' });
    return el('tr', { title }, el('th', { scope: 'row', className: inner ? 'in1' : '' }, label),
      el('td', { className: 'number' }, units.number('trickle', flow)), el('td', { className: 'number' }, percent(share)), el('td', { className: 'length' }, length));
  }

  return {
    grey(grey) {
      root.classList.toggle('old', grey);
    },
    show(answer) {
      const fates = gathered(answer.oil);
      const swept = answer.state.figures ? answer.state.figures.swept_m3_s : null;
      top.textContent = 'The pump displaces ' + units.said('flow', swept) + ' at ' + Math.round(answer.state.engine_speed_rpm) + ' rpm.';
      root.querySelector('thead th:nth-child(2)').textContent = units.unit('trickle');
      body.replaceChildren(...fates.flatMap((one) => [
        row(one.fate, one.flow, one.share, false),
        ...one.groups.filter((group) => group.share >= SMALL || group.share < 0).map((group) => row(group.label, group.flow, group.share, true,
          [...group.parts].sort((a, b) => b.flow_m3_s - a.flow_m3_s).slice(0, 8).map((part) => part.part + ' ' + units.said('trickle', part.flow_m3_s)).join(', '))),
      ]));
    },
  };
}
