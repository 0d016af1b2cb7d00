// The measurement sheet: every size that wears, with a slider and a field.
import { about, byId, el, head, numberField } from './dom.js';
import * as units from './units.js';

const quantity = (size) => size.kind === 'area' ? 'area' : 'fit';

/** Positions of a slider. */
const STEPS = 200;

export function sheet(story) {
  const root = byId('sheet');
  let drawn = '';
  let rows = [];
  let order = 'part';
  let only = 'all';
  let body = null;

  let costs = new Map();
  let known = null;
  const alone = el('p', { className: 'caution', hidden: true });

  const now = (size) => story.now.state.sizes[size.name] ?? size.value;

  function set(size, value, settled) {
    story.turn((state) => {
      if (units.number(quantity(size), value) === units.number(quantity(size), size.value)) {
        delete state.sizes[size.name];
      } else {
        state.sizes[size.name] = value;
      }
    }, settled);
  }

  /** Names of the jobs that bring a fit back to new. */
  const jobsOf = (size) => known.jobs.filter((job) => job.sizes.includes(size.name)).map((job) => job.name).join(', or ');

  function row(size) {
    const q = quantity(size);
    const name = size.part + ' ' + size.key;
    const slider = el('input', { type: 'range', min: size.low, max: size.high, step: (size.high - size.low) / STEPS, 'aria-label': name,
      oninput: () => set(size, Number(slider.value), false), onchange: () => set(size, Number(slider.value), true) });
    const field = numberField(name + ' [' + units.unit(q) + ']', (typed) => set(size, units.toSi(q, typed), true));
    const cost = el('td', { className: 'number cost', 'data-head': 'costs [' + units.unit('pressure') + ']' });
    const mark = el('span', { className: 'mark' });
    const line = el('tr', {},
      el('th', { scope: 'row' }, el('span', { className: 'part' }, size.part), ' ', size.key, el('span', { className: 'how' }, size.how), ' ',
        jobsOf(size) ? el('span', { className: 'how job' }, 'renewed by: ' + jobsOf(size)) : ''),
      el('td', { className: 'number', 'data-head': 'new' }, units.number(q, size.fresh)),
      el('td', { className: 'number', 'data-head': 'limit' }, units.number(q, size.limit)),
      el('td', { className: 'number', 'data-head': 'measured' }, units.number(q, size.measured)),
      el('td', { 'data-head': 'turn', className: 'turn' }, slider),
      el('td', { 'data-head': 'now [' + units.unit(q) + ']', className: 'now' }, field, ' ', mark), cost);
    line.cost = cost;
    line.size = size;
    let shown = '';
    line.show = () => {
      const value = now(size);
      const changed = size.name in story.now.state.sizes;
      const key = [value, changed, only].join();
      if (key === shown) {
        return;
      }
      shown = key;
      slider.value = value;
      field.show(units.number(q, value));
      slider.setAttribute('aria-valuetext', units.said(q, value) + (past(size, value) ? ', past its limit' : ''));
      mark.textContent = [past(size, value) ? 'past limit' : '', changed ? 'changed' : ''].filter((word) => word).join(', ');
      mark.classList.toggle('is-fails', past(size, value));
      line.classList.toggle('changed', changed);
      line.hidden = only === 'changed' && !changed || only === 'worn' && !changed && !worn(size, value);
    };
    return line;
  }

  const worn = (size, value) => Math.abs(value - size.fresh) > 1e-9 * size.fresh;

  const past = (size, value) => size.limit !== null && (value - size.limit) * (size.limit - size.fresh) > 0;

  const wear = (size) => {
    const end = size.limit ?? size.measured;
    return end === null || end === undefined || end === size.fresh ? -1 : (now(size) - size.fresh) / (end - size.fresh);
  };

  const costOf = (size) => costs.get(size.name)?.line_pa ?? -1;
  const lostOf = (size) => costs.get(size.name)?.lost_m3_s ?? -1;

  const ORDERS = {
    part: { label: 'as in the circuit', by: null },
    cost: { label: 'most costly first', by: (a, b) => costOf(b) - costOf(a) || lostOf(b) - lostOf(a) },
    wear: { label: 'most worn first', by: (a, b) => wear(b) - wear(a) },
  };

  function sort() {
    const by = ORDERS[order].by;
    body.append(...(by ? [...rows].sort((a, b) => by(a.size, b.size)) : rows));
  }

  function build(unit) {
    known = unit;
    rows = unit.sizes.map(row);
    body = el('tbody', {}, rows);
    const choice = (label, options, chosen, choose) => {
      const select = el('select', { onchange: () => choose(select.value) },
        Object.entries(options).map(([value, text]) => el('option', { value, selected: value === chosen }, text)));
      return el('label', {}, label, ' ', select);
    };
    root.replaceChildren(
      head('sheet', 'Measurement sheet', about('type what you measured; what each fit costs')),
      el('div', { className: 'tools' },
        choice('Show', { all: 'all fits', worn: 'worn or changed', changed: 'changed' }, only, (value) => { only = value; rows.forEach((one) => one.show()); }),
        choice('Order', Object.fromEntries(Object.entries(ORDERS).map(([key, one]) => [key, one.label])), order, (value) => { order = value; sort(); }),
        el('button', { type: 'button', onclick: () => story.turn((state) => { state.sizes = {}; }) }, 'All as in the build')),
      alone,
      el('table', { className: 'sheet' },
        el('caption', {}, 'Lengths [' + units.unit('fit') + '], areas [' + units.unit('area') + ']. Type what you measured, or slide.'),
        el('thead', {}, el('tr', {}, ['fit, and where to measure it', 'new', 'limit', 'measured', 'turn', 'now', 'costs ' + units.unit('pressure')].map((head) => el('th', { scope: 'col' }, head)))),
        body));
    sort();
  }

  return {
    /** What each fit costs comes later than the rest. */
    cost(answer) {
      root.classList.remove('costing');
      costs = new Map(answer ? answer.fits.flatMap((fit) => fit.sizes.map((size) => [size, fit])) : []);
      alone.textContent = answer ? answer.not_alone : '';
      alone.hidden = !alone.textContent;
      rows.forEach((line) => {
        const fit = costs.get(line.size.name);
        line.cost.replaceChildren(...(fit ? [units.number('pressure', fit.line_pa), ...(fit.starves ? [' ', el('span', { className: 'how' }, 'not alone')] : [])] : []));
        line.cost.title = fit ? fit.repair + ' as new: line ' + units.said('pressure', fit.line_pa) + ' higher, ' + units.said('trickle', fit.lost_m3_s) + ' less lost' : '';
      });
      if (order === 'cost' && !root.contains(document.activeElement)) {
        sort();
      }
    },
    waitForCost() {
      root.classList.add('costing');
    },
    show(unit) {
      const key = unit.build + ' ' + units.inUse() + ' ' + story.now.state.jobs.join();
      if (key !== drawn) {
        drawn = key;
        build(unit);
      }
      rows.forEach((one) => one.show());
    },
  };
}
