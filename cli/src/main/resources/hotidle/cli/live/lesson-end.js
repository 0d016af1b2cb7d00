// What a lesson was about: the fault, each reading beside what the answer would have read, curves before and after, and which readings
// would have told soonest.
import uPlot from './uPlot.esm.js';
import { AXIS } from './chart-look.js';
import { byId, el } from './dom.js';
import * as units from './units.js';

const SOUND = '#333333';
const FAULT = '#0072b2';
const ANSWER = '#a94a00';

/** Prints the lesson and nothing else of the page. */
export function printed() {
  document.body.classList.add('print-lesson');
  addEventListener('afterprint', () => document.body.classList.remove('print-lesson'), { once: true });
  print();
}

const LOOKING = 'Every fault is tried against the readings; this takes some seconds.';

/** Readings of a short way. */
const MOST_STEPS = 4;

const LINES = [['no fault put in', SOUND], ['with the fault', FAULT], ['your answer', ANSWER]];

/** Names where the lines end, moved apart where these lie close. */
function labels(u) {
  const g = u.ctx;
  const ratio = devicePixelRatio;
  const ends = LINES.map(([text, colour], i) => {
    const values = u.data[i + 1];
    let end = values.length - 1;
    while (end >= 0 && values[end] === null) {
      end--;
    }
    return { text, colour, y: end < 0 ? NaN : u.valToPos(values[end], 'y', true) - 9 * ratio };
  }).filter((one) => !Number.isNaN(one.y)).sort((a, b) => b.y - a.y);
  g.save();
  g.font = 'bold ' + 13 * ratio + 'px system-ui, "DejaVu Sans", sans-serif';
  g.textAlign = 'right';
  // the lowest name goes beneath its line where another line lies where it would stand
  if (ends.length > 1 && ends[0].y - ends[1].y < 26 * ratio) {
    ends[0].y += 25 * ratio;
  }
  let above = Infinity;
  for (const one of ends) {
    const y = Math.max(Math.min(one.y, above - 16 * ratio), u.bbox.top + 12 * ratio);
    above = y;
    g.strokeStyle = '#fff';
    g.lineWidth = 4 * ratio;
    g.strokeText(one.text, u.bbox.left + u.bbox.width - 6 * ratio, y);
    g.fillStyle = one.colour;
    g.fillText(one.text, u.bbox.left + u.bbox.width - 6 * ratio, y);
  }
  g.restore();
}

export function revealed() {
  const root = el('div', { className: 'revealed', hidden: true, tabIndex: -1 });
  const place = el('div', { className: 'chart', role: 'img' });
  const waiting = el('div', { 'aria-live': 'polite' });
  let chart = null;
  let last = null;

  function readings(caption, lines, answered) {
    const heads = ['reading', 'with the fault', 'no fault put in'].concat(answered ? ['your answer'] : []);
    const cell = (head, si) => el('td', { 'data-head': head, className: 'number' }, units.said('pressure', si));
    return el('div', { className: 'table', tabIndex: 0, role: 'region', 'aria-label': caption },
      el('table', { className: 'readings' }, el('caption', {}, caption),
        el('thead', {}, el('tr', {}, heads.map((head, i) => el('th', { scope: 'col', className: i ? 'number' : '' }, head)))),
        el('tbody', {}, lines.map((one) => el('tr', {}, el('th', { scope: 'row' }, one.place), cell('with the fault', one.pressure_pa), cell('no fault put in', one.sound_pa),
          answered ? cell('your answer', one.answer_pa) : '')))));
  }

  const shown = (values) => values.map((value) => value === null ? null : units.toShown('pressure', value));

  function draw(curve) {
    if (chart) {
      chart.destroy();
    }
    const answer = curve.answer_pa.length ? curve.answer_pa : curve.sound_pa.map(() => null);
    chart = new uPlot({
      width: Math.min(place.clientWidth || 320, 900),
      height: 300,
      scales: { x: { time: false }, y: { range: (u, low, high) => [0, Math.max(high, 1) * 1.4] } },
      legend: { show: false },
      cursor: { show: false },
      axes: [{ ...AXIS, label: 'engine speed [rpm]', values: (u, ticks) => ticks.map((tick) => String(tick)) },
        { ...AXIS, label: 'pressure [' + units.unit('pressure') + ']', size: 52, values: (u, ticks) => ticks.map((tick) => String(tick)) }],
      series: [{},
        { stroke: SOUND, width: 1.6, dash: [3, 4], points: { show: false } },
        { stroke: FAULT, width: 3, points: { show: false } },
        { stroke: ANSWER, width: 2, dash: [10, 5], points: { show: false } }],
      hooks: { draw: [labels] },
    }, [curve.engine_speed_rpm, shown(curve.sound_pa), shown(curve.fault_pa), shown(answer)], place);
    place.setAttribute('aria-label', curve.title.replace(/ at \d+ rpm/, '') + ' against engine speed: no fault put in, with the fault' + (curve.answer_pa.length ? ', your answer' : ''));
  }

  function numbers(curve) {
    const text = (values, i) => values.length ? units.number('pressure', values[i]) : '-';
    return el('details', {}, el('summary', {}, 'The same as a table'),
      el('div', { className: 'table', tabIndex: 0, role: 'region', 'aria-label': 'The curves as numbers' }, el('table', {},
        el('thead', {}, el('tr', {}, ['engine speed', ...LINES.map(([name]) => name + ' [' + units.unit('pressure') + ']')].map((head) => el('th', { scope: 'col' }, head)))),
        el('tbody', {}, curve.engine_speed_rpm.map((rpm, i) => i % 4 ? '' : el('tr', {}, el('th', { scope: 'row' }, Math.round(rpm) + ' rpm'),
          [curve.sound_pa, curve.fault_pa, curve.answer_pa].map((values) => el('td', { className: 'number' }, text(values, i)))))))));
  }

  new ResizeObserver(() => {
    if (chart && place.clientWidth > 0 && chart.width !== Math.min(place.clientWidth, 900)) {
      chart.setSize({ width: Math.min(place.clientWidth, 900), height: 300 });
    }
  }).observe(place);

  return {
    root,
    clear() {
      root.hidden = true;
      root.replaceChildren();
      waiting.replaceChildren();
      last = null;
    },
    show(answer) {
      last = answer;
      const answered = answer.curve.answer_pa.length > 0;
      root.hidden = false;
      root.replaceChildren(el('h3', {}, 'What it was'),
        el('p', { className: 'sentence' }, answer.judged + ' ' + answer.said),
        answer.answer ? el('p', {}, answer.answer) : '',
        answer.read.length ? readings('Your readings', answer.read, answered) : '',
        el('div', { className: 'shows' }, readings('Where it shows most, each gauge once', answer.shows, answered),
          el('p', {}, answer.gentlest),
          el('p', { className: 'before' }, el('strong', {}, 'Where it shows most may be a hard test. '), byId('caution').textContent)),
        el('h4', {}, 'Before and after: ' + answer.curve.title.replace(/ at \d+ rpm/, '')), place, numbers(answer.curve),
        el('h4', {}, 'Which readings would have told soonest'), waiting,
        el('p', { className: 'quiet' }, 'The same in a terminal: ', el('code', {}, answer.command)));
      draw(answer.curve);
      root.focus();
    },
    /**
     * Which readings would have told soonest: first the gauge at which the fault shows most, then each time what is expected to tell
     * most. Each of them takes a second or two, since every fault is tried against them.
     */
    async review(read, asked, taken) {
      const mine = last;
      const way = el('ol', {});
      const mineTold = el('p', {});
      const busy = el('p', { className: 'quiet' });
      waiting.replaceChildren(mineTold, el('p', {}, 'A short way: first the gauge at which the fault shows most, which only who knows it knows; then each time the reading '
        + 'expected to tell most. What no gauge tells apart counts as one cause.'), way, busy);
      const rows = [];
      let best = last.shows[0].at;
      let looked = taken.length === 0;
      async function go() {
        busy.textContent = LOOKING;
        try {
          if (!looked) {
            const answer = await asked(taken);
            if (mine !== last) {
              return;
            }
            mineTold.textContent = answer.told + ' ' + answer.next;
            looked = true;
          }
          while (best && rows.length < MOST_STEPS) {
            const shows = rows.length === 0 ? last.shows[0] : await read(best);
            const answer = await asked([...rows, best]);
            if (mine !== last) {
              return;
            }
            rows.push(best);
            way.append(el('li', {}, shows.place + ': ' + units.said('pressure', shows.pressure_pa) + ' where the unit with no fault put in has ' + units.said('pressure', shows.sound_pa) + '; ' + answer.after + '.'));
            best = answer.found ? null : answer.best;
          }
          busy.textContent = '';
        } catch (problem) {
          if (mine === last) {
            // what was found stands there; the rest is looked for anew
            busy.replaceChildren(problem.message + '. ', el('button', { type: 'button', onclick: () => go() }, 'Go on from here'));
          }
        }
      }
      await go();
    },
  };
}
