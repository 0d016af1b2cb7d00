// What is set while gauges are read: range, engine speed, oil temperature, line commanded. It follows the driving condition until it is turned.
import { el, numberField, tabs } from './dom.js';
import * as units from './units.js';

export const AS_DRIVEN = { range: null, engine_speed_rpm: null, sump_temperature_c: null, commanded_pa: null, readings: [], file: null };

const POINT = ['range', 'engine_speed_rpm', 'sump_temperature_c', 'commanded_pa'];

/** Gauges as a text for the address; nothing where they are as driven and nothing was read. */
export function writtenGauges(gauges) {
  const differing = Object.entries(gauges).filter(([, value]) => value !== null && !(Array.isArray(value) && value.length === 0));
  return differing.length === 0 ? null : JSON.stringify(Object.fromEntries(differing));
}

/** The gauges of such a text; what is no part of them is passed over. */
export function readGauges(text) {
  const gauges = structuredClone(AS_DRIVEN);
  let given = {};
  try {
    given = JSON.parse(text) || {};
  } catch {
    return gauges;
  }
  for (const key of ['range', 'file']) {
    gauges[key] = typeof given[key] === 'string' ? given[key] : null;
  }
  for (const key of POINT.slice(1)) {
    gauges[key] = Number.isFinite(given[key]) ? given[key] : null;
  }
  if (Array.isArray(given.readings)) {
    gauges.readings = given.readings.filter((row) => row && typeof row === 'object')
      .map((row) => Object.fromEntries(Object.entries(row).filter(([, cell]) => typeof cell === 'string')));
  }
  return gauges;
}

/** What can be slid; SI values in and out. */
const KNOBS = [
  { key: 'engine_speed_rpm', label: 'Engine speed', quantity: 'speed', low: 400 / 60, high: 4000 / 60, step: 10 / 60, into: (rpm) => rpm / 60, from: (si) => si * 60 },
  { key: 'sump_temperature_c', label: 'Oil temperature', quantity: 'temperature', low: 253.15, high: 423.15, step: 1, into: units.celsius.toSi, from: units.celsius.fromSi },
];

const PLACES = 10;
const clean = (number) => Number(number.toPrecision(PLACES));

export function testPoint(story) {
  const root = el('div', { className: 'point' });
  const back = el('button', { type: 'button', className: 'quiet', onclick: () => story.turn((state, all) => {
    POINT.forEach((key) => { all.gauges[key] = null; });
  }) }, 'As in the driving condition');
  let drawn = '';
  let rows = [];

  function knob(one) {
    const set = (si, settled) => story.turn((state, all) => { all.gauges[one.key] = clean(one.from(si)); }, settled);
    const id = 'gauge-' + one.key;
    const slider = el('input', { type: 'range', id, min: one.low, max: one.high, step: one.step,
      oninput: () => set(Number(slider.value), false), onchange: () => set(Number(slider.value), true) });
    const field = numberField(one.label + ' at the gauges [' + units.unit(one.quantity) + ']', (typed) => set(units.toSi(one.quantity, typed), true));
    const row = el('div', { className: 'knob' }, el('label', { htmlFor: id }, one.label), slider, field, el('span', {}, units.unit(one.quantity)));
    row.show = (answer) => {
      const own = story.now.gauges[one.key];
      const si = one.into(own === null ? answer[one.key] : own);
      slider.value = si;
      field.show(units.number(one.quantity, si));
      slider.setAttribute('aria-valuetext', units.said(one.quantity, si));
    };
    return row;
  }

  /** The line that is asked for; left empty, what the driving condition without load commands. */
  function commanded() {
    const field = el('input', { type: 'number', step: 'any', id: 'gauge-commanded', onchange: () => story.turn((state, all) => {
      all.gauges.commanded_pa = field.value === '' ? null : clean(units.toSi('pressure', Number(field.value)));
    }) });
    const row = el('div', { className: 'asked' }, el('label', { htmlFor: 'gauge-commanded' }, 'Line commanded '), field,
      ' ' + units.unit('pressure') + ', empty: as without load');
    row.show = (answer) => {
      const own = story.now.gauges.commanded_pa;
      if (document.activeElement !== field) {
        field.value = own === null ? '' : units.number('pressure', own);
        field.placeholder = units.number('pressure', answer.commanded_pa);
      }
    };
    return row;
  }

  return {
    root,
    show(answer, warm) {
      const key = [answer.ranges.join(), answer.range, units.inUse(), warm].join(' ');
      if (key !== drawn) {
        drawn = key;
        const focus = document.activeElement && root.contains(document.activeElement) ? document.activeElement : null;
        rows = [...KNOBS.filter((one) => warm || one.key !== 'sump_temperature_c').map(knob), ...(answer.can_be_commanded ? [commanded()] : [])];
        root.replaceChildren(
          tabs('Range', 'gauge-range', answer.ranges.map((name) => ({ name })), answer.range, (name) => story.turn((state, all) => { all.gauges.range = name; })),
          ...rows, back);
        if (focus && focus.name === 'gauge-range') {
          root.querySelector('input[name="gauge-range"]:checked').focus();
        }
      }
      back.disabled = POINT.every((one) => story.now.gauges[one] === null);
      rows.forEach((row) => row.show(answer));
    },
  };
}
