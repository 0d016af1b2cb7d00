// Readings that were taken, each beside what the model shows there, and what the program says of all of them.
import { ask } from './ask.js';
import { el } from './dom.js';
import { hand } from './download.js';
import * as units from './units.js';

/** Of a sheet that is handed in [bytes]. */
const LONGEST = 200_000;

const quantity = (reads) => reads === 'flow_m3_s' ? 'flow' : 'pressure';

/** A cell of a sheet may bring its unit along. */
const withUnit = (cell, unit) => /[a-z]/i.test(cell) ? cell : (cell + ' ' + unit).trim();

/** Text of a file, in the codes in which spreadsheets save. */
function decoded(bytes) {
  const [first, second] = new Uint8Array(bytes);
  if (first === 0xff && second === 0xfe || first === 0xfe && second === 0xff) {
    return new TextDecoder(first === 0xff ? 'utf-16le' : 'utf-16be').decode(bytes);
  }
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder('windows-1252').decode(bytes);
  }
}

export function readings(story, question, setTo) {
  const body = el('tbody', {});
  const said = el('p', { role: 'status', className: 'status' });
  const table = el('div', { className: 'table', tabIndex: 0, role: 'region', 'aria-label': 'Readings taken' },
    el('table', { className: 'readings' }, el('thead', {}, el('tr', {}, ['tap', 'read at', 'read', 'unit', 'accuracy', 'full scale', 'note', 'model', 'a sound build', 'act'].map((head) =>
      el('th', { scope: 'col' }, head)))), body));
  const save = el('button', { type: 'button', onclick: async () => {
    try {
      const answer = await ask('readings-file', question());
      hand(answer.name, answer.text);
    } catch (problem) {
      said.textContent = problem.message;
    }
  } }, 'Readings as CSV');
  const clear = el('button', { type: 'button', className: 'quiet', onclick: () => {
    story.turn((state, all) => {
      all.gauges.readings = [];
      all.gauges.file = null;
    });
    said.textContent = 'All readings are taken away; Undo brings them back.';
  } }, 'Take all away');
  const file = el('input', { type: 'file', accept: '.csv,.txt,.tsv,text/csv', id: 'readings-sheet', onchange: async () => {
    const one = file.files[0];
    if (one) {
      await take(one.size > LONGEST ? '' : decoded(await one.arrayBuffer()), one.name, one.size);
      file.value = '';
    }
  } });
  const pasted = el('textarea', { rows: 5, spellcheck: false, 'aria-label': 'A readings sheet, its head line first' });
  const paste = el('details', {}, el('summary', {}, 'Paste a readings sheet'), pasted,
    el('button', { type: 'button', onclick: () => take(pasted.value, null, pasted.value.length) }, 'Take it over'));
  const refusal = el('pre', { className: 'refusal', hidden: true, tabIndex: 0, role: 'alert' });
  const root = el('div', {}, el('h3', {}, 'Readings taken'), said, table,
    el('div', { className: 'tools' }, save, el('label', { htmlFor: 'readings-sheet' }, 'Load a readings sheet '), file, clear), paste, refusal);

  /** Whole or not at all. */
  async function take(text, name, size) {
    refusal.hidden = true;
    if (size > LONGEST) {
      said.textContent = 'This sheet is longer than ' + LONGEST / 1000 + ' kB: it is no sheet of readings.';
      return;
    }
    try {
      const asked = question();
      const answer = await ask('readings-taken', { ...asked, gauges: { ...asked.gauges, file: name, sheet: text } });
      refusal.textContent = answer.problems.join('\n\n');
      refusal.hidden = answer.problems.length === 0;
      if (answer.good) {
        story.turn((state, all) => {
          all.gauges.readings = answer.rows;
          all.gauges.file = name;
        });
        said.textContent = answer.rows.length + (answer.rows.length === 1 ? ' reading was' : ' readings were') + ' taken over' + (name ? ' from ' + name : '') + '.';
      } else {
        said.textContent = 'Nothing was taken over:';
      }
    } catch (problem) {
      said.textContent = problem.message;
    }
  }

  const cell = (i, title, label, size) => {
    const row = story.now.gauges.readings[i];
    return el('input', { type: 'text', value: row[title] || '', size, autocomplete: 'off', 'aria-label': label + ' of reading ' + (i + 1) + ', ' + (row.tap || ''), 'data-cell': i + ' ' + title,
      onchange: (event) => story.turn((state, all) => {
        if (event.target.value.trim() === '') {
          delete all.gauges.readings[i][title];
        } else {
          all.gauges.readings[i][title] = event.target.value.trim();
        }
      }) });
  };

  function line(row, i) {
    const model = el('td', { className: 'number', 'data-head': 'model' });
    const sound = el('td', { className: 'sound', 'data-head': 'a sound build' });
    const wrong = el('span', { className: 'how is-fails' });
    const at = [row.range, row['engine speed'] && withUnit(row['engine speed'], 'rpm'), row['oil temperature'] && withUnit(row['oil temperature'], row['temperature unit'] || ''),
      row['commanded pressure'] && withUnit(row['commanded pressure'], row.unit || '') + ' commanded', row['engine torque'] && row['engine torque'] + ' engine torque'].filter((one) => one).join(', ');
    const set = el('button', { type: 'button', className: 'quiet', 'aria-label': 'Set the gauges as for reading ' + (i + 1) + ', ' + (row.tap || '') }, 'set so');
    const away = el('button', { type: 'button', className: 'quiet', 'aria-label': 'Take away reading ' + (i + 1) + ', ' + (row.tap || ''), onclick: () => {
      story.turn((state, all) => { all.gauges.readings.splice(i, 1); });
      save.focus();
    } }, 'take away');
    const element = el('tr', {}, el('th', { scope: 'row' }, row.tap || '-'), el('td', { 'data-head': 'read at' }, at, wrong),
      el('td', { 'data-head': 'read' }, cell(i, 'reading', 'Value', 7)), el('td', { 'data-head': 'unit' }, row.unit || ''),
      el('td', { 'data-head': 'accuracy' }, cell(i, 'gauge accuracy', 'Accuracy', 6)), el('td', { 'data-head': 'full scale' }, cell(i, 'gauge full scale', 'Full scale', 5)),
      el('td', { 'data-head': 'note' }, cell(i, 'note', 'Note', 10)), model, sound, el('td', { className: 'acts' }, set, ' ', away));
    element.show = (beside) => {
      model.textContent = !beside || !beside.taken ? '' : beside.model === null ? 'not known' : units.said(quantity(beside.reads), beside.model);
      wrong.textContent = beside && beside.wrong ? 'LEFT OUT: ' + beside.wrong + (beside.mend ? '; ' + beside.mend : '') : beside && !beside.taken ? 'yet to be taken' : '';
      wrong.classList.toggle('is-fails', Boolean(beside && beside.wrong));
      set.hidden = !beside || !beside.taken;
      set.onclick = () => setTo(beside);
    };
    element.sound = (read) => {
      const q = read ? quantity(read.reads) : '';
      sound.replaceChildren(...(read ? [units.number(q, Math.max(0, read.sound_mean - 2 * read.sound_deviation)) + ' to ' + units.said(q, read.sound_mean + 2 * read.sound_deviation),
        el('span', { className: read.stands_out ? 'how is-fails' : 'how' }, Math.abs(read.off_deviations).toFixed(1) + ' deviations ' + (read.off_deviations < 0 ? 'below' : 'above') + (read.stands_out ? ', STANDS OUT' : ''))] : []));
    };
    return element;
  }

  let drawn = '';
  let rows = [];
  return {
    root,
    /** Rows are made anew only where somebody changed one, so that what is typed in stays where it is. */
    show(beside) {
      const now = story.now.gauges.readings;
      const key = JSON.stringify(now);
      if (key !== drawn) {
        drawn = key;
        const focus = document.activeElement && root.contains(document.activeElement) ? document.activeElement.getAttribute('data-cell') : null;
        rows = now.map(line);
        body.replaceChildren(...rows);
        if (focus) {
          [...body.querySelectorAll('input')].find((one) => one.getAttribute('data-cell') === focus)?.focus();
        }
      }
      table.hidden = now.length === 0;
      save.disabled = now.length === 0;
      clear.hidden = now.length === 0;
      rows.forEach((row, i) => row.show(beside[i]));
    },
    /** What a sound build reads, of those that count, in their order. */
    sound(beside, read) {
      let next = 0;
      rows.forEach((row, i) => row.sound(read && beside[i] && beside[i].taken ? read[next++] : null));
    },
  };
}
