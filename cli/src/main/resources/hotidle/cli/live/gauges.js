// Gauges at the taps: what a running pressure test would show, without the hot oil; readings typed in beside them, and what may explain these.
import { ahead } from './ahead.js';
import { asker } from './ask.js';
import { causes } from './causes.js';
import { about, byId, el, head } from './dom.js';
import { readings } from './readings.js';
import { scale } from './scales.js';
import { testPoint } from './test-point.js';
import { took } from './took.js';
import * as units from './units.js';

/** Two numbers of a test point are the same if they differ by less: rpm, K, Pa. */
const NEAR = { engine_speed_rpm: 0.5, sump_temperature_c: 0.05, commanded_pa: 500 };

const PLACES = 8;
const plain = (number) => String(Number(number.toPrecision(PLACES)));

export function gauges(story) {
  const root = byId('gauges');
  const point = testPoint(story);
  const where = el('p', { className: 'quiet' });
  const noStall = el('p', { className: 'caution', hidden: true });
  const caution = el('p', {});
  const trouble = el('p', { className: 'is-fails', role: 'status' });
  const list = el('ul', { className: 'scales' });
  const accuracy = el('input', { type: 'text', value: '2 %', size: 6, id: 'gauge-accuracy', autocomplete: 'off' });
  const fullScale = el('input', { type: 'text', size: 6, id: 'gauge-full-scale', autocomplete: 'off' });
  const meter = el('select', { id: 'gauge-flow' });
  const flow = el('input', { type: 'text', inputMode: 'decimal', size: 7, autocomplete: 'off', 'aria-label': 'Flow read' });
  const flowUnit = el('span', {});
  const flows = el('div', { className: 'tools' }, el('label', {}, 'Flow measured in ', meter), flow, flowUnit,
    el('button', { type: 'button', onclick: () => {
      if (flow.value.trim() !== '') {
        read(meter.value, flow.value.trim(), units.unit('flow'));
        flow.value = '';
      }
    } }, 'Note it'));
  flows.hidden = true;

  const question = () => ({ units: units.inUse(), state: story.now.state, gauges: story.now.gauges });
  const setTo = (place) => {
    story.turn((state, all) => {
      for (const key of ['range', 'engine_speed_rpm', 'sump_temperature_c', 'commanded_pa']) {
        all.gauges[key] = place[key] ?? null;
      }
    });
    list.scrollIntoView({ block: 'nearest' });
  };
  const table = readings(story, question, setTo);
  const outcome = causes(setTo);
  const reveal = el('button', { type: 'button', onclick: () => {
    during(true, true);
    root.focus();
  } }, 'Show them all the same');
  const notice = el('p', { className: 'beside', hidden: true },
    el('strong', {}, 'A lesson is on; its gauges are read in the panel Lesson.'), ' The gauges here are of the unit as it is set on this page, as worn as it is, with NO FAULT PUT IN. ', reveal);
  const body = el('div', {},
    el('div', { className: 'bench' },
      el('div', { className: 'bench-set' }, point.root, where, trouble,
        el('div', { className: 'before' }, el('h3', {}, 'Before you read them on a running unit'), noStall, caution)),
      el('div', {}, list, el('p', { className: 'quiet' }, 'Column: the model. Dotted: what is commanded. Triangle: what you read.'),
        el('div', { className: 'tools' }, el('label', { htmlFor: 'gauge-accuracy' }, 'Your gauge: accuracy '), accuracy,
          el('label', { htmlFor: 'gauge-full-scale' }, 'full scale '), fullScale), flows)),
    table.root, outcome.root);
  root.append(head('gauges', 'Gauges', about('what each tap shows, and what your own readings point to')), notice, body);

  /** While a lesson is on, gauges of a unit without its fault would be taken for the lesson's. */
  function during(lesson, shown) {
    notice.hidden = !lesson;
    reveal.hidden = shown;
    body.hidden = lesson && !shown;
    root.classList.toggle('beside-lesson', lesson);
  }

  let unit = null;
  let last = null;
  let lastRows = [];

  /** Whether what is shown is of what is set now; a reading that was typed in before it is waits for that. */
  let stands = false;
  let typed = [];

  /** When something was done that may change them [ms]. */
  let changedAt = 0;

  /** Whether the verdict stands, for which causes wait. */
  let free = false;
  let drawn = '';
  let scales = new Map();

  /** About readings of all scales at what is set; null while their numbers are awaited. */
  const later = ahead(list, () => stands && free && !last.unsolved ? { ...question(), gauges: { ...story.now.gauges,
    readings: last.gauges.filter((one) => one.pressure_pa !== null)
      .map((one) => row(one.tap, plain(units.toShown('pressure', one.pressure_pa)), units.unit('pressure'))) } } : null);

  const same = (key, one, other) => one === other || one !== null && other !== null && Math.abs(one - other) <= NEAR[key];

  /** Whether a reading was taken at what is set now. */
  const here = (read) => read && read.taken && read.range === last.range && same('engine_speed_rpm', read.engine_speed_rpm, last.engine_speed_rpm)
    && same('sump_temperature_c', read.sump_temperature_c, last.sump_temperature_c) && same('commanded_pa', read.commanded_pa, story.now.gauges.commanded_pa);

  /** What was answered to a row, if it still stands as it was. */
  const beside = (cells, k) => JSON.stringify(lastRows[k]) === JSON.stringify(cells) ? last.readings[k] : null;

  /** The cells of a row at what is set now. */
  function row(tap, text, unitOf) {
    const cells = { tap, range: last.range, 'engine speed': plain(last.engine_speed_rpm), 'oil temperature': plain(units.toShown('temperature', units.celsius.toSi(last.sump_temperature_c))),
      'temperature unit': units.unit('temperature'), reading: text, unit: unitOf, 'gauge accuracy': accuracy.value.trim() };
    if (fullScale.value.trim() !== '') {
      cells['gauge full scale'] = fullScale.value.trim();
    }
    if (story.now.gauges.commanded_pa !== null) {
      cells['commanded pressure'] = plain(units.toShown('pressure', story.now.gauges.commanded_pa)) + ' ' + units.unit('pressure');
    }
    return cells;
  }

  const SET = ['tap', 'range', 'engine speed', 'oil temperature', 'temperature unit', 'commanded pressure'];

  /** Whether a row is of a tap at what is set now, as it was answered or, where it cannot be taken, as it is written. */
  function hereAt(tap, cells, answered) {
    const made = row(tap, '', '');
    return cells.tap === tap && (here(answered) || SET.every((title) => cells[title] === made[title]));
  }

  /** Types a reading in at what is set now: over the one that stands there, and away with it where the field was emptied. */
  function read(tap, text, unitOf) {
    if (!stands) {
      typed.push([tap, text, unitOf]);
      return;
    }
    const made = row(tap, text, unitOf);
    story.turn((state, all) => {
      const rows = all.gauges.readings;
      const i = rows.findIndex((one, k) => hereAt(tap, one, beside(one, k)));
      if (text === '' && i >= 0) {
        rows.splice(i, 1);
      } else if (text !== '' && i >= 0) {
        rows[i].reading = text;
      } else if (text !== '') {
        rows.push(made);
      }
    });
  }

  function draw() {
    const key = last.gauges.map((one) => one.tap).join() + ' ' + unit.build;
    if (key !== drawn) {
      drawn = key;
      scales = new Map(last.gauges.map((one) => [one.tap, scale(one, (tap, text) => read(tap, text, units.unit('pressure')))]));
      list.replaceChildren(...[...scales.values()].map((one) => one.root));
      const through = last.meters.filter((one) => one.reads === 'flow_m3_s');
      flows.hidden = through.length === 0;
      meter.replaceChildren(...through.map((one) => el('option', { value: one.name, selected: one.name === 'cooler' }, one.name)));
    }
    flowUnit.textContent = units.unit('flow');
    const rows = lastRows.map((cells, k) => ({ cells, beside: last.readings[k] }));
    last.gauges.forEach((one) => scales.get(one.tap).show(one, one.line ? last.commanded_pa : null,
      rows.filter((row) => hereAt(one.tap, row.cells, row.beside))
        .map((row) => ({ value: row.beside.taken ? row.beside.value : null, text: row.cells.reading || '', unit: row.cells.unit || '' }))));
  }

  const askGauges = asker('gauges', {
    answered(answer, asked, sent, newest) {
      stands = newest;
      if (newest) {
        root.removeAttribute('aria-busy');
      }
      last = answer;
      lastRows = asked.gauges.readings;
      const warm = unit.duties.some((duty) => duty.sump_temperature_c !== null);
      trouble.textContent = answer.unsolved || '';
      where.textContent = 'Engine without load, range ' + answer.range + ', ' + Math.round(answer.engine_speed_rpm) + ' rpm'
        + (warm ? ', oil at ' + units.said('temperature', units.celsius.toSi(answer.sump_temperature_c)) : '')
        + (answer.commanded_pa === null ? '' : ', ' + units.said('pressure', answer.commanded_pa) + ' commanded')
        + '; all else as in driving condition ' + answer.like + '.';
      list.classList.remove('old');
      point.show(answer, warm);
      draw();
      showTable();
      if (newest && !answer.readings.some((one) => one.taken)) {
        forget();
        outcome.clear(answer.readings.length ? '' : 'Type in what your gauges show: whether it agrees with this build, and what may explain it, stands here then.');
      } else if (newest && free) {
        look();
      }
      if (newest) {
        typed.splice(0).forEach((one) => read(...one));
        later();
      }
    },
    refused(problem) {
      typed = [];
      root.removeAttribute('aria-busy');
      trouble.textContent = problem.message;
      list.classList.add('old');
    },
  });

  /** Rows as they stand now, each beside what was answered to it. */
  function showTable() {
    const besides = story.now.gauges.readings.map((cells, k) => last ? beside(cells, k) : null);
    table.show(besides);
    table.sound(besides, known && knownKey === causesKey() ? known.gauge.readings : null);
  }

  /** What causes depend on: neither the faults laid over nor what is set at the gauges. */
  const causesKey = () => {
    const state = story.now.state;
    return JSON.stringify([units.inUse(), state.build, state.sizes, state.jobs, state.set_pressure_pa, story.now.gauges.readings, story.now.gauges.file]);
  };

  let askedKey = '';

  /** Since when somebody waits for what readings say [ms]. */
  let lookedSince = 0;
  let known = null;
  let knownKey = '';

  function forget() {
    known = null;
    knownKey = '';
  }

  /** Whether they agree, then what may explain them, then what to read next: each as soon as it is known, and each once. */
  const STAGES = ['agreement', 'likely', 'causes'];
  const askers = STAGES.map((kind, i) => asker(kind, {
    overtaking: true,
    answered(answer) {
      if (askedKey !== causesKey()) {
        return;
      }
      known = answer;
      knownKey = askedKey;
      outcome.show(answer);
      showTable();
      took(kind, lookedSince);
      if (i + 1 < STAGES.length) {
        askers[i + 1](question());
      }
    },
    refused(problem) {
      forget();
      outcome.clear('What may explain these readings: ' + problem.message + '.', look);
    },
  }));

  const drop = () => askers.forEach((one) => one.drop());

  function look() {
    const key = causesKey();
    const all = known && knownKey === key && known.found === 'ALL';
    const asking = askedKey === key && askers.some((one) => one.awaits());
    if (!all && !asking && story.now.gauges.readings.some((cells) => cells.reading)) {
      outcome.wait();
      lookedSince = changedAt;
      askedKey = key;
      askers[0](question());
    }
  }

  return {
    /** Whether a lesson is on, whose fault is hidden. */
    lesson: (on) => during(on, !on),
    /** `same`: what was turned at concerns the gauges alone. */
    show(now, same, since) {
      unit = now;
      changedAt = since;
      caution.textContent = unit.caution;
      root.setAttribute('aria-busy', 'true');
      stands = false;
      free = free && same;
      if (askedKey !== causesKey()) {
        drop();
      }
      if (known && knownKey !== causesKey()) {
        outcome.wait();
      }
      showTable();
      askGauges(question(), since);
    },
    /** Once the verdict stands. */
    follow(caution) {
      noStall.textContent = caution;
      noStall.hidden = !caution;
      free = true;
      if (stands) {
        look();
      }
      later();
    },
  };
}
