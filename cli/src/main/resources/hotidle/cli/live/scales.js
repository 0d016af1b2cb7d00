// A plain vertical scale for each gauge, in psi on its left and in bar on its right.
import { el } from './dom.js';
import * as units from './units.js';

const PSI = 6894.757293168361;
const BAR = 1e5;

/** Full scales that gauges have [psi], with the step of their numbers in psi and in bar. */
const FULL = [[30, 10, 0.5], [60, 10, 1], [100, 20, 1], [160, 20, 2], [300, 50, 5], [400, 50, 5], [600, 100, 10], [1000, 200, 10], [2000, 500, 20], [5000, 1000, 50]];

/** A needle is read best below this share of the full scale. */
const ROOM = 0.85;

const WIDTH = 132;
const HEIGHT = 236;
const TOP = 22;
const FOOT = 10;
const MIDDLE = WIDTH / 2;
const HALF = 5;

function svg(tag, attributes, ...children) {
  const element = document.createElementNS('http://www.w3.org/2000/svg', tag);
  Object.entries(attributes).forEach(([key, value]) => element.setAttribute(key, value));
  element.append(...children);
  return element;
}

const text = (x, y, anchor, said, kind) => svg('text', { x, y, 'text-anchor': anchor, class: kind }, said);

/** Both units, whatever system the page is in. */
export const both = (pascal) => units.saidIn('shop', 'pressure', pascal) + ', ' + units.saidIn('metric', 'pressure', pascal);

/** A gauge at a tap. */
export function scale(tap, read) {
  let full = FULL[0];
  let ticked = null;
  const axes = svg('g', {});
  const needles = svg('g', {});
  const picture = svg('svg', { viewBox: '0 0 ' + WIDTH + ' ' + HEIGHT, role: 'img', class: 'scale' }, axes, needles);
  const figures = el('p', { className: 'figures' });
  const field = el('input', { type: 'text', inputMode: 'decimal', autocomplete: 'off', size: 7,
    onchange: () => read(tap.tap, field.value.trim()) });
  const unit = el('span', {});
  const off = el('p', { className: 'off' });
  const root = el('li', {}, el('h3', {}, tap.tap), el('p', { className: 'quiet where' }, tap.port), picture, figures,
    el('label', {}, 'you read ', el('span', { className: 'typed' }, field, ' ', unit)), off);

  const y = (pascal) => HEIGHT - FOOT - (HEIGHT - TOP - FOOT) * Math.min(1.03, Math.max(0, pascal / (full[0] * PSI)));

  function ticks() {
    const marks = [text(MIDDLE - 30, 12, 'middle', 'psi', 'unit'), text(MIDDLE + 30, 12, 'middle', 'bar', 'unit'),
      svg('line', { x1: MIDDLE - HALF - 3, x2: MIDDLE - HALF - 3, y1: y(0), y2: y(full[0] * PSI), class: 'axis' }),
      svg('line', { x1: MIDDLE + HALF + 3, x2: MIDDLE + HALF + 3, y1: y(0), y2: y(full[0] * PSI), class: 'axis' })];
    for (const [side, one, step] of [[-1, PSI, full[1]], [1, BAR, full[2]]]) {
      const edge = MIDDLE + side * (HALF + 3);
      for (let i = 0; i * step * one <= full[0] * PSI * 1.0001; i++) {
        const at = y(i * step * one);
        marks.push(svg('line', { x1: edge, x2: edge + side * 7, y1: at, y2: at, class: 'axis' }),
          text(edge + side * 10, at + 4, side < 0 ? 'end' : 'start', String(Number((i * step).toFixed(1))), 'number'));
        const half = y((i + 0.5) * step * one);
        if ((i + 0.5) * step * one < full[0] * PSI) {
          marks.push(svg('line', { x1: edge, x2: edge + side * 4, y1: half, y2: half, class: 'axis' }));
        }
      }
    }
    return marks;
  }

  return {
    root,
    /**
     * @param gauge    as it was answered
     * @param commanded at the line, else nothing
     * @param taken    what was read here [Pa], with the text that was typed
     */
    show(gauge, commanded, taken) {
      const pascal = gauge.pressure_pa;
      const marks = [pascal ?? 0, commanded ?? 0, ...taken.map((one) => one.value ?? 0)];
      const needed = Math.max(...marks) / PSI / ROOM;
      full = FULL.find(([most]) => most >= needed) || FULL[FULL.length - 1];
      if (full !== ticked) {
        ticked = full;
        axes.replaceChildren(...ticks());
      }
      const drawn = [];
      if (pascal !== null) {
        const top = y(pascal);
        drawn.push(svg('rect', { x: MIDDLE - HALF, y: top, width: 2 * HALF, height: Math.max(0, y(0) - top), class: 'filled' }),
          svg('line', { x1: MIDDLE - HALF - 3, x2: MIDDLE + HALF + 3, y1: top, y2: top, class: 'level' }));
      }
      if (commanded !== null) {
        const at = y(commanded);
        drawn.push(svg('line', { x1: MIDDLE - HALF - 12, x2: MIDDLE + HALF + 12, y1: at, y2: at, class: 'set' }));
      }
      taken.filter((one) => one.value !== null).forEach((one) => {
        const at = y(one.value);
        drawn.push(svg('path', { d: 'M' + (MIDDLE + HALF + 4) + ' ' + at + 'l10 -6v12z', class: 'read' }));
      });
      needles.replaceChildren(...drawn);
      figures.replaceChildren(...(pascal === null ? ['not known'] : [el('strong', {}, units.saidIn('shop', 'pressure', pascal)), ' ', units.saidIn('metric', 'pressure', pascal)]));
      const mine = taken.length ? taken[taken.length - 1] : null;
      picture.setAttribute('aria-label', tap.tap + ' shows ' + (pascal === null ? 'nothing that is known' : both(pascal))
        + (commanded === null ? '' : '; ' + both(commanded) + ' are commanded') + (mine && mine.value !== null ? '; read ' + both(mine.value) : ''));
      if (document.activeElement !== field) {
        field.value = mine ? mine.text : '';
      }
      field.setAttribute('aria-label', 'Read at ' + tap.tap + ' [' + units.unit('pressure') + ']');
      unit.textContent = mine ? mine.unit : units.unit('pressure');
      off.textContent = mine && mine.value !== null && pascal !== null ? units.said('pressure', Math.abs(mine.value - pascal)) + (mine.value < pascal ? ' below' : ' above') + ' the model' : '';
    },
  };
}
