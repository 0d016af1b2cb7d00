// A lesson: the program hides a fault, the pupil reads gauges, says what it is, and is shown what it was. The page holds a ticket, from
// which nothing of the fault can be read.
import { ask } from './ask.js';
import { about, byId, el, head, isOpen, ownUndo, tabs } from './dom.js';
import { printed, revealed } from './lesson-end.js';
import { teacher } from './lesson-teacher.js';
import * as units from './units.js';

/** Kept for this tab, so that a reload goes on with the lesson. */
const KEPT = 'hotidle-lesson';

/** No lesson is on: its readings are a list of its own. */
const fresh = (build = null) => ({ build, ticket: null, title: '', readings: [], answer: '', why: '', over: false });
const HIGHEST_NUMBER = 9999;

const DIFFICULTIES = [{ name: 'easy', about: 'one glance at the right gauge tells that something is wrong' },
  { name: 'medium', about: 'the right gauge stands well outside what such units read with no fault put in' },
  { name: 'hard', about: 'it is seen at the right gauge alone, set to what shows it' }];

function kept() {
  try {
    return { ...fresh(), ...JSON.parse(sessionStorage.getItem(KEPT) || '{}') };
  } catch {
    return fresh();
  }
}

/** `during` is told whenever a lesson begins or ends. */
export function lesson(during) {
  const root = byId('lesson');
  let now = kept();
  let offer = null;
  let system = '';
  let difficulty = 'easy';

  /** Whether a fault is hidden, as it was told last. */
  let hidden = false;

  /** The build that the page is about: a lesson begins with it. */
  let pageBuild = null;
  const status = el('p', { role: 'status', className: 'sentence' });
  const wrong = el('p', { role: 'alert', className: 'is-fails' });

  const build = el('select', { onchange: () => learn(build.value) });
  const number = el('input', { type: 'number', min: 1, max: HIGHEST_NUMBER, step: 1, value: 1 + Math.floor(Math.random() * HIGHEST_NUMBER) });
  const hide = el('button', { type: 'button', onclick: () => guarded(draw) }, 'Hide a fault');
  const code = el('input', { type: 'text', className: 'code', autocomplete: 'off' });
  const phrase = el('input', { type: 'password', autocomplete: 'off' });
  const set = teacher((question) => ask('lesson-code', { lesson: question }));
  const begin = el('div', { className: 'begin' },
    el('p', {}, 'The program lays one fault over a unit of this circuit and tells nobody which. Read gauges until you know what it is, then say so.'),
    el('div', { className: 'tools' }, el('label', {}, 'Unit ', build), el('label', {}, 'Lesson number ', number)),
    tabs('How far it stands out', 'lesson-difficulty', DIFFICULTIES, difficulty, (name) => { difficulty = name; }),
    el('p', { className: 'quiet' }, 'The same number, unit and difficulty is the same lesson, also after the program was started again.'),
    hide,
    el('details', {}, el('summary', {}, 'Begin by a code of the teacher'),
      el('div', { className: 'tools' }, el('label', {}, 'Code ', code), el('label', {}, 'Phrase, if it has one ', phrase),
        el('button', { type: 'button', onclick: () => guarded(open) }, 'Open the lesson'))),
    el('details', {}, el('summary', {}, 'For the teacher: set a fault'), set.root));

  const tap = el('select', {});
  const range = el('select', {});
  const rpm = el('input', { type: 'number', min: 400, max: 4000, step: 50 });
  const warm = el('input', { type: 'number', step: 5 });
  const warmUnit = el('span', {});
  const warmLabel = el('label', {}, 'Sump ', warm, ' ', warmUnit);
  const take = el('button', { type: 'button', onclick: () => guarded(read) }, 'Read the gauge');
  const rows = el('tbody', {});
  const reads = el('th', { scope: 'col', className: 'number' });
  const sound = el('th', { scope: 'col', className: 'number' });
  const table = el('table', { className: 'readings' }, el('caption', {}, 'Readings taken'),
    el('thead', {}, el('tr', {}, el('th', { scope: 'col' }, 'no.'), ['gauge', 'range', 'engine', 'sump'].map((head) => el('th', { scope: 'col' }, head)), reads, sound)), rows);
  const taking = el('div', {}, el('h3', {}, 'Read the gauges'),
    el('div', { className: 'tools' }, el('label', {}, 'Gauge ', tap), el('label', {}, 'Range ', range), el('label', {}, 'Engine ', rpm, ' rpm'), warmLabel, take),
    el('div', { className: 'table', tabIndex: 0, role: 'region', 'aria-label': 'Readings taken' }, table));

  const kind = el('select', { onchange: () => { parts(); remember(); } });
  const part = el('select', { onchange: () => remember() });
  const why = el('textarea', { rows: 3, oninput: () => { now.why = why.value; save(); } });
  const reveal = el('button', { type: 'button', onclick: () => guarded(show) }, 'That is my answer: show me what it was');
  const saying = el('div', {}, el('h3', {}, 'What I think it is'),
    el('div', { className: 'tools' }, el('label', {}, 'What is wrong ', kind), el('label', {}, 'Where ', part)),
    el('label', { className: 'why' }, 'Which reading told me ', why), reveal);

  const end = revealed();
  const again = el('div', { className: 'tools' }, el('button', { type: 'button', onclick: () => printed() }, 'Print the lesson'),
    el('button', { type: 'button', onclick: () => guarded(leave) }, 'Another lesson'));
  const body = el('div', {}, begin, status, wrong, taking, saying, end.root, again);
  root.append(head('lesson', 'Lesson', about('a fault hidden behind the gauges')), body);
  ownUndo(root);
  root.addEventListener('fold', () => isOpen(root) && !offer && units.known() && learn(now.build || pageBuild));

  const save = () => sessionStorage.setItem(KEPT, JSON.stringify(now));

  /** Does what was asked for; what the program refuses is said. */
  async function guarded(action) {
    wrong.textContent = '';
    [hide, take, reveal].forEach((button) => { button.disabled = true; });
    try {
      await action();
    } catch (problem) {
      wrong.textContent = problem.message;
      refresh(false);
    } finally {
      [hide, take, reveal].forEach((button) => { button.disabled = false; });
    }
  }

  const options = (select, names, chosen) => {
    select.replaceChildren(...names.map((name) => el('option', { value: name }, name)));
    select.value = names.includes(chosen) ? chosen : names[0];
  };

  async function learn(name) {
    await guarded(async () => {
      offer = await ask('lesson-offer', { lesson: { build: name } });
      options(build, offer.builds, offer.build);
      options(tap, offer.taps, tap.value);
      options(range, offer.ranges, range.value);
      rpm.value = rpm.value || Math.round(offer.idle_rpm);
      warmLabel.hidden = offer.sump_temperature_c === null;
      set.offer(offer);
      kinds();
      refresh(true);
    });
    if (now.over && end.root.hidden) {
      await guarded(show);
    }
  }

  /** Kinds of fault, and the parts that can have the one that is chosen. */
  function kinds() {
    const named = [...new Set(offer.faults.map((fault) => fault.kind))];
    const mine = offer.faults.find((fault) => fault.name === now.answer);
    kind.replaceChildren(el('option', { value: '' }, 'I do not know'), ...named.map((one) => el('option', { value: one }, one)));
    kind.value = mine ? mine.kind : '';
    parts();
    if (mine) {
      part.value = mine.name;
    }
  }

  function parts() {
    const fitting = offer.faults.filter((fault) => fault.kind === kind.value);
    part.replaceChildren(...fitting.map((fault) => el('option', { value: fault.name }, fault.part || 'the whole unit')));
    part.disabled = fitting.length === 0;
  }

  function remember() {
    now.answer = kind.value ? part.value : '';
    save();
  }

  async function draw() {
    const wanted = { build: build.value, number: Number(number.value), difficulty };
    if (!Number.isInteger(wanted.number) || wanted.number < 1 || wanted.number > HIGHEST_NUMBER) {
      throw new Error('A lesson has a number from 1 to ' + HIGHEST_NUMBER + '.');
    }
    status.textContent = 'A fault is being hidden; this takes some seconds the first time.';
    const answer = await ask('lesson-draw', { lesson: wanted });
    await started(answer, 'Lesson ' + wanted.number + ', ' + wanted.difficulty + ', on ' + answer.build);
  }

  async function open() {
    const answer = await ask('lesson-open', { lesson: { code: code.value, phrase: phrase.value } });
    await started(answer, 'The teacher\u2019s lesson on ' + answer.build);
    phrase.value = '';
    code.value = '';
  }

  async function started(answer, title) {
    now = { ...fresh(answer.build), ticket: answer.ticket, title };
    save();
    set.forget();
    await learn(answer.build);
    end.clear();
    refresh(false);
    tap.focus();
  }

  function leave() {
    now = fresh(now.build);
    number.value = 1 + Math.floor(Math.random() * HIGHEST_NUMBER);
    why.value = '';
    save();
    kinds();
    end.clear();
    refresh(false);
    hide.focus();
  }

  const asked = (one) => ({ tap: one.tap, range: one.range, engine_speed_rpm: one.rpm, sump_temperature_c: one.celsius });

  async function read() {
    if (rpm.value === '' || !warmLabel.hidden && warm.value === '') {
      throw new Error('Set engine speed and sump temperature first.');
    }
    const mine = now;
    const celsius = warmLabel.hidden ? null : Number(units.celsius.fromSi(units.toSi('temperature', Number(warm.value))).toFixed(6));
    const one = { tap: tap.value, range: range.value, rpm: Number(rpm.value), celsius };
    const answer = await ask('lesson-read', { lesson: { ticket: now.ticket, readings: [asked(one)] } });
    if (mine !== now) {
      return;
    }
    if (answer.said) {
      wrong.textContent = answer.said;
      return;
    }
    now.readings.push({ ...one, pa: answer.pressure_pa, low: answer.sound_low_pa, high: answer.sound_high_pa });
    save();
    refresh(false);
  }

  async function show() {
    remember();
    const question = { units: units.inUse(), lesson: { ticket: now.ticket, answer: now.answer, readings: now.readings.map(asked) } };
    const mine = now;
    const answer = await ask('lesson-reveal', question);
    if (mine !== now) {
      return;
    }
    now.over = true;
    save();
    refresh(false);
    end.show(answer);
    const about = (kind, readings) => ask(kind, { units: units.inUse(), lesson: { ticket: now.ticket, readings } });
    end.review(async (one) => (await about('lesson-reveal', [one])).read[0], (readings) => about('lesson-review', readings), now.readings.map(asked));
  }

  const temperature = (celsius) => celsius === null ? '' : units.said('temperature', units.celsius.toSi(celsius));

  function row(one, i) {
    const cell = (head, text, number) => el('td', { 'data-head': head, className: number ? 'number' : '' }, text);
    return el('tr', {}, el('th', { scope: 'row', className: 'count' }, String(i + 1)), cell('gauge', one.tap), cell('range', one.range), cell('engine', Math.round(one.rpm) + ' rpm'),
      cell('sump', temperature(one.celsius)), cell('reads', units.said('pressure', one.pa), true),
      cell('no fault put in', units.number('pressure', Math.max(0, one.low)) + ' to ' + units.said('pressure', one.high), true));
  }

  /** Everything as it stands; `fresh` where the oil's temperature is to be set anew. */
  function refresh(fresh) {
    const on = now.ticket !== null;
    if (hidden !== (on && !now.over)) {
      hidden = on && !now.over;
      during(hidden);
    }
    begin.hidden = on;
    [taking, saying, again].forEach((one) => { one.hidden = !on; });
    taking.querySelector('.tools').hidden = now.over;
    taking.querySelector('h3').hidden = now.over; // nothing is read any more; the table has its own heading
    reveal.hidden = now.over;
    [kind, part, why].forEach((one) => { one.disabled = now.over || (one === part && !kind.value); });
    const changed = system !== units.inUse();
    system = units.inUse();
    if (offer && (fresh || changed) && offer.sump_temperature_c !== null) {
      warm.value = units.number('temperature', units.celsius.toSi(offer.sump_temperature_c));
      warmUnit.textContent = units.unit('temperature');
    }
    reads.textContent = 'reads';
    sound.textContent = 'no fault put in';
    rows.replaceChildren(...(units.known() ? now.readings.map(row) : []));
    table.hidden = now.readings.length === 0;
    why.value = now.why;
    const count = now.readings.length;
    status.textContent = on ? now.title + ': ' + (count === 0 ? 'no reading taken yet.' : count + (count === 1 ? ' reading' : ' readings') + ' taken.') : '';
  }

  refresh(false);
  return {
    /** Whether one is on, or was on when the page was left. */
    on: () => now.ticket !== null,
    show(unit) {
      const other = pageBuild !== unit.build;
      pageBuild = unit.build;
      if (isOpen(root) && (!offer || other && now.build === null)) {
        learn(now.build || pageBuild);
      } else if (system !== units.inUse()) {
        refresh(false);
      }
    },
  };
}
