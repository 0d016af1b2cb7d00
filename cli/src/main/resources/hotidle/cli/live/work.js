// Jobs that can be done to the build, and faults that can be laid over it.
import { byId, el, head } from './dom.js';
import * as units from './units.js';

const sized = (fault) => fault.size_of !== 'nothing';
const share = (fault) => fault.size_of === 'wear' || fault.size_of === 'share';

/** A size with which a fault begins: as a rule a third of what it can be. */
const begin = (fault) => fault.least + (fault.most - fault.least) / 3;

/** As the program reads it: shares in per cent, lengths in metres. */
const written = (fault, size) => fault.name + (sized(fault) ? ':' + (share(fault) ? Number((100 * size).toPrecision(12)) + '%' : size + 'm') : '');

const sizeOf = (fault, text) => {
  const size = text.slice(fault.name.length + 1);
  return share(fault) ? parseFloat(size) / 100 : size.endsWith('mm') ? parseFloat(size) / 1000 : parseFloat(size);
};

/** What a spool that is stuck so far off its rest lets through: a valve that limits has shut there. */
function lets(fault, position) {
  const open = (one) => one.opens_up === (position > one.edge_m);
  const named = (word, some) => some.length ? [some.map((one) => one.name).join(', ') + ' ' + word] : [];
  return [...named('OPEN', fault.openings.filter(open)), ...named('SHUT', fault.openings.filter((one) => !open(one)))].join('; ');
}

const wordOf = { wear: 'of its wear allowance', share: '', position: '', diameter: '', nothing: '' };

export function work(story) {
  const root = byId('work');
  const jobs = el('ul', { className: 'plain jobs' });
  const list = el('ul', { className: 'plain faults' });
  const select = el('select', { id: 'fault' });
  const add = el('button', { type: 'button' }, 'Lay it over');
  root.append(head('work', 'Jobs and faults'), el('h3', {}, 'Jobs'), jobs,
    el('h3', {}, 'Faults'), el('div', { className: 'tools' }, el('label', {}, 'Fault ', select), add), list);
  let drawn = '';
  let shownJobs = '';
  let known = null;

  /** What each job moves, by its name; nothing where it is not known yet. */
  let moved = new Map();

  add.onclick = () => {
    const fault = known.faults.find((one) => one.name === select.value);
    if (fault && !story.now.state.faults.some((text) => of(text) === fault)) {
      story.turn((state) => state.faults.push(written(fault, begin(fault))));
    }
  };

  const of = (text) => known.faults.find((fault) => text === fault.name || text.startsWith(fault.name + ':'));

  const shown = (fault, size) => share(fault) ? (100 * size).toFixed(1) + ' %'
    : fault.size_of === 'position' ? units.said('travel', size) + ' off its rest: ' + lets(fault, size) : units.said('travel', size);

  function faultLine(text, i) {
    const fault = of(text);
    if (!fault) {
      return el('li', {}, text + ': not a fault of this unit ', remove(i, text));
    }
    const name = (fault.part ? fault.part + ': ' : '') + fault.about;
    if (!sized(fault)) {
      return el('li', {}, name + ' ', remove(i, name));
    }
    const size = sizeOf(fault, text);
    const set = (value, settled) => story.turn((state) => { state.faults[i] = written(fault, value); }, settled);
    const said = el('span', {}, shown(fault, size));
    const slider = el('input', { type: 'range', min: fault.least, max: fault.most, step: (fault.most - fault.least) / 200, 'aria-label': name, 'aria-valuetext': shown(fault, size),
      oninput: () => set(Number(slider.value), false), onchange: () => set(Number(slider.value), true) });
    slider.value = size;
    const line = el('li', {}, el('span', {}, name), ' ', slider, ' ', said, ' ' + wordOf[fault.size_of] + ' ', remove(i, name));
    line.show = () => {
      const now = story.now.state.faults[i];
      if (now) {
        const value = sizeOf(fault, now);
        said.textContent = shown(fault, value);
        slider.setAttribute('aria-valuetext', shown(fault, value));
        slider.value = value;
      }
    };
    return line;
  }

  const remove = (i, name) => el('button', { type: 'button', className: 'quiet', 'aria-label': 'Take away: ' + name,
    onclick: () => {
      story.turn((state) => state.faults.splice(i, 1));
      select.focus();
    } }, 'take away');

  return {
    /** What stands at each job is of the state before. */
    wait() {
      jobs.classList.add('costing');
    },
    /** What each job moves here: it comes later than the rest. */
    moves(answer) {
      jobs.classList.remove('costing');
      moved = new Map(answer ? answer.jobs.map((one) => [one.name, one.moves]) : []);
      jobs.querySelectorAll('.moves').forEach((line) => { line.textContent = moved.get(line.dataset.moves) || ''; });
    },
    show(unit) {
      known = unit;
      const state = story.now.state;
      const offered = [unit.build, ...unit.jobs.map((job) => job.name), '', ...state.jobs].join('\n');
      if (offered !== shownJobs) {
        shownJobs = offered;
        showJobs(unit, state);
      }
      const key = unit.build + ' ' + units.inUse() + ' ' + state.faults.map((text) => text.split(':')[0]).join();
      if (key !== drawn) {
        drawn = key;
        const chosen = select.value;
        const kinds = new Map();
        unit.faults.forEach((fault) => kinds.set(fault.about, [...(kinds.get(fault.about) || []), fault]));
        select.replaceChildren(...[...kinds].map(([about, faults]) => el('optgroup', { label: about },
          faults.map((fault) => el('option', { value: fault.name }, fault.part ? fault.part + ': ' + about : about)))));
        select.value = chosen || unit.faults[0]?.name;
        list.replaceChildren(...state.faults.map(faultLine));
      }
      [...list.children].forEach((line) => line.show && line.show());
    },
  };

  function showJobs(unit, state) {
    const held = jobs.contains(document.activeElement) ? document.activeElement.dataset.job : null;
    jobs.replaceChildren(...unit.jobs.map((job, i) => {
      const done = state.jobs.includes(job.name);
      const about = [job.about, job.hours === null ? '' : job.hours + ' h', job.price === null ? '' : 'price ' + job.price];
      return el('li', {}, el('button', { type: 'button', 'data-job': job.name, 'aria-pressed': String(done), 'aria-describedby': 'job-' + i, onclick: () => {
        story.turn((now) => {
          now.jobs = done ? now.jobs.filter((name) => name !== job.name) : [...now.jobs, job.name];
        });
      } }, (done ? '\u2713 ' : '') + job.name), ' ',
      el('span', { id: 'job-' + i }, about.filter((one) => one).join(', '), ' ', el('span', { className: 'moves', 'data-moves': job.name }, moved.get(job.name) || '')));
    }));
    if (held !== null) {
      [...jobs.querySelectorAll('button')].find((one) => one.dataset.job === held)?.focus();
    }
    if (unit.jobs.length === 0) {
      jobs.replaceChildren(el('p', { className: 'quiet' }, 'Nothing in this build is worn, so that there is no job to do.'));
    }
  }
}
