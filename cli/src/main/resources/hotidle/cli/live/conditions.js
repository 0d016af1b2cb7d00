// Build, driving condition, and what can be turned at there: set pressure, engine speed, sump temperature.
import { byId, el, head, numberField, tabs } from './dom.js';
import * as units from './units.js';

/** What can be turned at; SI values in and out. How far a set pressure goes, the program says. */
const KNOBS = [
  { key: 'set_pressure_pa', label: 'Set pressure', quantity: 'pressure', ends: (unit) => unit.set_pressures, steps: 350,
    own: (unit) => unit.set_pressure_pa, into: (x) => x, from: (x) => x },
  { key: 'engine_speed_rpm', label: 'Engine speed', quantity: 'speed', ends: () => ({ low: 400 / 60, high: 6000 / 60 }), steps: 560,
    own: (unit, duty) => duty.engine_speed_rpm, into: (rpm) => rpm / 60, from: (si) => si * 60 },
  { key: 'sump_temperature_c', label: 'Sump temperature', quantity: 'temperature', ends: () => ({ low: 233.15, high: 433.15 }), steps: 200,
    own: (unit, duty) => duty.sump_temperature_c, into: units.celsius.toSi, from: units.celsius.fromSi },
];

export function conditions(story) {
  const root = byId('conditions');
  let drawn = '';

  function knob(one, unit, duty) {
    const own = one.own(unit, duty);
    if (own === null || own === undefined) {
      return null;
    }
    const set = (si, settled) => story.turn((state) => {
      const value = one.from(si);
      state[one.key] = Math.abs(value - own) <= 1e-9 * Math.max(1, Math.abs(own)) ? null : value;
    }, settled);
    const id = 'knob-' + one.key;
    const { low, high } = one.ends(unit);
    const slider = el('input', { type: 'range', id, min: low, max: high, step: (high - low) / one.steps,
      oninput: () => set(Number(slider.value), false), onchange: () => set(Number(slider.value), true) });
    const field = numberField(one.label + ' [' + units.unit(one.quantity) + ']', (typed) => set(units.toSi(one.quantity, typed), true));
    const back = el('button', { type: 'button', className: 'quiet', 'aria-label': 'Back to the ' + one.label.toLowerCase() + ' as written',
      onclick: () => {
        story.turn((state) => { state[one.key] = null; });
        field.focus();
      } }, 'as written');
    const row = el('div', { className: 'knob' }, el('label', { htmlFor: id }, one.label), slider, field,
      el('span', {}, units.unit(one.quantity)), back);
    row.show = () => {
      const value = story.now.state[one.key];
      const si = one.into(value === null ? own : value);
      slider.value = si;
      slider.setAttribute('aria-valuetext', units.said(one.quantity, si));
      field.show(units.number(one.quantity, si));
      back.hidden = value === null;
    };
    return row;
  }

  let rows = [];
  return {
    show(unit) {
      const state = story.now.state;
      const duty = unit.duties.find((one) => one.name === state.duty) || unit.duties[0];
      const key = [unit.build, duty.name, units.inUse()].join(' ');
      if (key !== drawn) {
        drawn = key;
        const focus = document.activeElement && root.contains(document.activeElement) ? document.activeElement : null;
        const again = focus && focus.name ? [focus.name, focus.value] : null;
        rows = KNOBS.map((one) => knob(one, unit, duty)).filter((row) => row);
        root.replaceChildren(
          head('conditions', 'Build and driving condition'),
          tabs('Build', 'build', unit.builds, unit.build, (name) => story.turn((now) => {
            now.build = name;
            now.sizes = {};
            now.jobs = [];
          })),
          tabs('Driving condition', 'duty', unit.duties, duty.name, (name) => story.turn((now) => {
            now.duty = name;
            now.engine_speed_rpm = null;
            now.sump_temperature_c = null;
          })),
          el('p', { className: 'quiet' }, duty.name + (duty.about ? ': ' + duty.about : '') + '. Range ' + duty.range + ', lockup ' + duty.lockup + ', '
            + units.said('torque', duty.engine_torque_n_m) + ' at the engine.'),
          ...rows);
        if (again) {
          const found = [...root.querySelectorAll('input')].find((one) => one.name === again[0] && one.value === again[1]);
          if (found) {
            found.focus();
          }
        }
      }
      rows.forEach((row) => row.show());
    },
  };
}
