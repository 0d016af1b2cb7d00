// What readings say of the unit, in the words of 'hotidle gauge'.
import { el } from './dom.js';

export function causes(setTo) {
  const body = el('div', {});
  const root = el('div', { className: 'causes', 'aria-live': 'polite' }, body);

  function next(sentence, read) {
    const place = read.place;
    return el('li', {}, sentence + ' ', el('button', { type: 'button', className: 'quiet', 'aria-label': 'Set the gauges so: ' + place.tap + ' in ' + place.range, onclick: () => setTo({
      range: place.range, engine_speed_rpm: place.speed_rpm, sump_temperature_c: place.oil_temperature_c, commanded_pa: place.commanded_pressure_pa }) }, 'set the gauges so'));
  }

  return {
    root,
    /** What stands there is of other readings or of another unit. */
    wait() {
      root.classList.add('old');
      root.setAttribute('aria-busy', 'true');
    },
    clear(sentence, again) {
      root.classList.remove('old');
      root.removeAttribute('aria-busy');
      body.replaceChildren(sentence ? el('p', { className: 'quiet' }, sentence + ' ', again ? el('button', { type: 'button', onclick: again }, 'Ask again') : '') : '');
    },
    /** As much as is found so far; what is still looked for is said. */
    show(answer) {
      const agreement = answer.found === 'AGREEMENT';
      const all = answer.found === 'ALL';
      root.classList.remove('old');
      if (all) {
        root.removeAttribute('aria-busy');
      } else {
        root.setAttribute('aria-busy', 'true');
      }
      const told = answer.told;
      const open = [...body.querySelectorAll('details')].map((one) => one.open);
      const faults = el('details', { open: Boolean(open[0]) }, el('summary', {}, 'Every fault, and what of it these readings may hide, ' + told.faults.length),
        el('div', { className: 'table', tabIndex: 0, role: 'region', 'aria-label': 'Every fault' }, el('table', {},
          el('thead', {}, el('tr', {}, told.faults_head.map((head) => el('th', { scope: 'col' }, head)))),
          el('tbody', {}, told.faults.map(([name, ...cells]) => el('tr', {}, el('th', { scope: 'row' }, name), cells.map((one) => el('td', {}, one))))))));
      body.replaceChildren(
        told.no_stall ? el('p', { className: 'caution' }, told.no_stall) : '',
        el('p', { className: told.agrees ? 'sentence' : 'sentence is-fails' }, told.verdict),
        el('p', {}, told.stands_out),
        told.on_regulator && !agreement ? el('p', {}, told.on_regulator) : '',
        told.over && !agreement ? el('h3', {}, told.over) : '',
        told.causes.length && !agreement ? el('ul', { className: 'shares' }, told.causes.map((one) => el('li', {}, one))) : '',
        told.next.length ? el('ul', { className: 'next' }, told.next.map((one, i) => next(one, answer.gauge.next_readings[i]))) : '',
        told.nothing_next && all ? el('p', {}, told.nothing_next) : '',
        all || told.agrees && !agreement ? '' : el('p', { className: 'quiet looking' }, agreement ? 'What may explain them is being looked for.' : 'Which reading to take next is being looked for.'),
        agreement ? '' : faults, el('details', { open: Boolean(open[1]) }, el('summary', {}, 'What is allowed for'), el('p', {}, told.assumed)));
    },
  };
}
