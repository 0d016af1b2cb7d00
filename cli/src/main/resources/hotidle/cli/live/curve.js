// Line pressure against engine speed: now, and what is kept as reference.
import uPlot from './uPlot.esm.js';
import { AXIS } from './chart-look.js';
import { byId, el, head } from './dom.js';
import * as units from './units.js';

const NOW = '#0072b2';
const KEPT = '#a94a00';
const SET = '#333333';

export function curve() {
  const root = byId('curve');
  const found = el('span', { id: 'curve-found' });
  const highest = el('span', { id: 'curve-highest' });
  const before = () => el('span', { className: 'stale' }, 'before: ');
  const later = el('div', { className: 'later' }, el('p', { className: 'sentence' }, before(), found), el('p', {}, before(), highest));
  const place = el('div', { className: 'chart', role: 'img' });
  const under = el('p', { className: 'quiet', id: 'curve-under' });
  const rows = el('tbody', {});
  const numbers = el('details', {}, el('summary', {}, 'The same as a table'), el('div', { className: 'table', tabIndex: 0, role: 'region', 'aria-label': 'Line pressure by speed' },
    el('table', {}, el('thead', {}, el('tr', {}, ['engine speed', 'line', 'set', 'reference'].map((head) => el('th', { scope: 'col' }, head)))), rows)));
  const picture = el('button', { type: 'button', className: 'quiet', onclick: () => {
    const canvas = place.querySelector('canvas');
    const link = el('a', { href: canvas.toDataURL('image/png'), download: 'line-pressure.png' });
    link.click();
  } }, 'Curve as PNG');
  root.append(head('curve', 'Line pressure against engine speed'), later, place, under, numbers, picture);
  let chart = null;
  let system = '';
  let last = null;
  let own = null;

  function data(answer) {
    const kept = answer.kept;
    const speeds = [...new Set([...answer.curve.engine_speed_rpm, ...(kept ? kept.engine_speed_rpm : [])])].sort((a, b) => a - b);
    const at = (curve, key) => {
      if (!curve) {
        return speeds.map(() => null);
      }
      const by = new Map(curve.engine_speed_rpm.map((speed, i) => [speed, curve[key][i]]));
      // undefined: that curve was not asked at this speed, its line goes on; null: no state was found there
      return speeds.map((speed) => by.has(speed) ? (by.get(speed) === null ? null : units.toShown('pressure', by.get(speed))) : undefined);
    };
    return [speeds, at(answer.curve, 'set_pa'), at(kept, 'line_pa'), at(answer.curve, 'line_pa')];
  }

  /** Names on the lines, where each ends; a point where the driving condition is. */
  function labels(u) {
    const g = u.ctx;
    const ratio = devicePixelRatio;
    g.save();
    g.font = 'bold ' + 13 * ratio + 'px system-ui, "DejaVu Sans", sans-serif';
    g.textAlign = 'right';
    const taken = [];
    for (const [i, text, colour] of [[3, 'now', NOW], [2, 'reference', KEPT], [1, 'set', SET]]) {
      let end = u.data[i].length - 1;
      while (end >= 0 && (u.data[i][end] === null || u.data[i][end] === undefined)) {
        end--;
      }
      if (end < 0) {
        continue;
      }
      let y = u.valToPos(u.data[i][end], 'y', true) - 8 * ratio;
      while (taken.some((other) => Math.abs(other - y) < 16 * ratio) || (i !== 3 && Math.abs(y - taken[0] - 8 * ratio) < 16 * ratio)) {
        y += 8 * ratio;
      }
      taken.push(y);
      g.fillStyle = colour;
      g.strokeStyle = '#fff';
      g.lineWidth = 4 * ratio;
      g.strokeText(text, u.bbox.left + u.bbox.width - 6 * ratio, y);
      g.fillText(text, u.bbox.left + u.bbox.width - 6 * ratio, y);
    }
    if (own && own.line !== null) {
      g.beginPath();
      g.arc(u.valToPos(own.speed, 'x', true), u.valToPos(own.line, 'y', true), 5 * ratio, 0, 2 * Math.PI);
      g.fillStyle = NOW;
      g.strokeStyle = '#fff';
      g.lineWidth = 2 * ratio;
      g.fill();
      g.stroke();
    }
    g.restore();
  }

  function make(values) {
    return new uPlot({
      width: place.clientWidth || 320,
      height: 300,
      scales: { x: { time: false }, y: { range: (u, low, high) => [0, Math.max(high, 1) * 1.08] } },
      legend: { show: false },
      cursor: { y: false, points: { size: 7 }, drag: { x: false, y: false } },
      axes: [{ ...AXIS, label: 'engine speed [rpm]', values: (u, ticks) => ticks.map((tick) => String(tick)) },
        { ...AXIS, label: 'line pressure [' + units.unit('pressure') + ']', size: 52, values: (u, ticks) => ticks.map((tick) => String(tick)) }],
      series: [{},
        { stroke: SET, width: 1.2, dash: [2, 4], points: { show: false } },
        { stroke: KEPT, width: 2, dash: [8, 5], points: { show: false } },
        { stroke: NOW, width: 3, points: { show: false } }],
      hooks: { draw: [labels], setCursor: [hover] },
    }, values, place);
  }

  function hover(u) {
    const i = u.cursor.idx;
    if (i === null || i === undefined || !last) {
      under.textContent = spoken();
      return;
    }
    const text = (value) => value === null || value === undefined ? 'not known' : value.toFixed(units.decimals('pressure')) + ' ' + units.unit('pressure');
    under.textContent = Math.round(u.data[0][i]) + ' rpm: line ' + text(u.data[3][i]) + ', set ' + text(u.data[1][i])
      + (last.kept ? ', reference ' + text(u.data[2][i]) : '');
  }

  /** The line where the driving condition is; with a decimal more where it differs from what is set by less than is shown. */
  function spoken() {
    if (!last) {
      return '';
    }
    const at = 'At ' + Math.round(last.state.engine_speed_rpm) + ' rpm: line ';
    if (last.set_pa === null || last.line_pa === null) {
      return at + units.said('pressure', last.line_pa) + (last.set_pa === null ? '' : ' of ' + units.said('pressure', last.set_pa) + ' set') + '.';
    }
    const [line, set] = units.apart('pressure', last.line_pa, last.set_pa);
    return at + line + ' of ' + set + ' set.';
  }

  new ResizeObserver(() => {
    if (chart && place.clientWidth > 0 && chart.width !== place.clientWidth) {
      chart.setSize({ width: place.clientWidth, height: 300 });
    }
  }).observe(place);

  function table(values) {
    rows.replaceChildren(...values[0].map((speed, i) => el('tr', {}, el('th', { scope: 'row' }, Math.round(speed) + ' rpm'),
      ...[3, 1, 2].map((line) => el('td', { className: 'number' }, values[line][i] === null || values[line][i] === undefined ? '-' : values[line][i].toFixed(units.decimals('pressure')))))));
  }

  return {
    grey(grey) {
      root.classList.toggle('old', grey);
      if (grey) {
        later.classList.remove('waiting');
      }
    },
    show(answer) {
      last = answer;
      const values = data(answer);
      own = { speed: answer.state.engine_speed_rpm, line: answer.line_pa === null ? null : units.toShown('pressure', answer.line_pa) };
      if (chart && system === units.inUse()) {
        chart.setData(values);
      } else {
        if (chart) {
          chart.destroy();
        }
        system = units.inUse();
        chart = make(values);
      }
      under.textContent = spoken();
      place.setAttribute('aria-label', 'Line pressure against engine speed. ' + spoken());
      if (numbers.open) {
        table(values);
      } else {
        numbers.ontoggle = () => numbers.open && table(data(last));
      }
    },
    /** What takes longer is of another state until it comes. */
    wait() {
      later.classList.toggle('waiting', found.textContent !== ''); // at first nothing is of a state before
    },
    find(answer) {
      later.classList.remove('waiting');
      found.textContent = answer.found;
      highest.textContent = answer.highest;
    },
  };
}
