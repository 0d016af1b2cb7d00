// Puts the page together: the state is turned, the program is asked, panels show what it answers.
import { Refused, ask, asker } from './ask.js';
import { gauges } from './gauges.js';
import { places } from './places.js';
import { hand } from './download.js';
import { drawing } from './drawing.js';
import { oil } from './oil.js';
import { lesson } from './lesson.js';
import { write } from './write.js';
import { work } from './work.js';
import { byId, el } from './dom.js';
import { conditions } from './conditions.js';
import { curve } from './curve.js';
import { sheet } from './sheet.js';
import { Story } from './state.js';
import { took } from './took.js';
import * as units from './units.js';
import { verdict } from './verdict.js';

let unit = null;
const story = new Story((how) => changed(how));
const bench = gauges(story);
const panels = { verdict: verdict(), conditions: conditions(story), curve: curve(), sheet: sheet(story),
  oil: oil(), work: work(story), drawing: drawing(story, ask),
  lesson: lesson((on) => bench.lesson(on)), write: write(), gauges: bench };

const where = places(story);
story.folded = where.show;
where.show();
if (panels.lesson.on()) {
  where.open(byId('lesson'));
}

function trouble(text) {
  byId('trouble').textContent = text;
  byId('trouble').hidden = !text;
}

/** Whether anything was shown yet. */
let shown = false;

const LAST = '\nWhat stands in dashed frames is the last state that was found.';

function refused(problem) {
  trouble(problem.message + (shown ? LAST : ''));
  grey(true);
  panels.sheet.cost(null);
  panels.work.moves(null);
  asked = '';
}

/** What stands there is of the last state that was solved. */
function grey(old) {
  [panels.curve, panels.oil, panels.drawing, panels.verdict].forEach((panel) => panel.grey(old));
}

/** What was asked for last: the same is not asked for twice. */
let asked = '';

const question = () => ({ units: units.inUse(), state: story.now.state, kept: story.now.kept });

/**
 * A verdict takes longer than a curve: it is asked for once the picture is there and the slider rests, by longer than lay between its last
 * two moves; costs and jobs follow it [ms].
 */
const REST = 40;
const LONGEST_PAUSE = 400;
const LONGER = 1.5;
let resting = 0;
let turning = false;

/** When it was last turned at, and how long before that the time before [ms]. */
let turned = 0;
let between = 0;

function rest(time) {
  clearTimeout(resting);
  resting = setTimeout(() => {
    resting = 0;
    askVerdict(question(), turned);
  }, time);
}

/** What is left of the time that a slider must rest; moves far apart tell nothing of the next one. */
const restLeft = () => Math.max(0, turned + Math.max(REST, between < LONGEST_PAUSE ? LONGER * between : 0) - performance.now());

const askState = asker('state', {
  answered(answer, asked, since, newest) {
    grey(Boolean(answer.unsolved));
    trouble(answer.unsolved ? answer.unsolved + (shown ? LAST : '') : '');
    if (!answer.unsolved) {
      shown = true;
      panels.curve.show(answer);
      panels.oil.show(answer);
      panels.drawing.show(answer, unit);
    }
    took('picture', since);
    if (newest) {
      rest(turning ? restLeft() : 0);
    }
  },
  refused,
});

/** It takes longest of all and comes last. */
const askWindow = asker('window', {
  overtaking: true,
  answered(answer, asked, since) {
    panels.verdict.set(answer);
    took('window', since);
  },
  refused: () => panels.verdict.set(null),
});

const askJobs = asker('jobs', {
  overtaking: true,
  answered(answer) {
    panels.work.moves(answer);
    askWindow(question());
  },
  refused() {
    panels.work.moves(null);
    askWindow(question());
  },
});

const askCosts = asker('costs', {
  overtaking: true,
  answered(answer) {
    panels.sheet.cost(answer);
    askJobs(question());
  },
  refused() {
    panels.sheet.cost(null);
    askJobs(question());
  },
});

const askVerdict = asker('verdict', {
  overtaking: true,
  answered(answer, asked, since) {
    panels.gauges.follow(answer.no_stall);
    panels.verdict.show(answer);
    panels.curve.find(answer);
    took('verdict', since);
    askCosts(question());
  },
  refused,
});

/** Nobody waits any more for what follows a state. */
function dropWhatFollows() {
  clearTimeout(resting);
  resting = 0;
  [askVerdict, askWindow, askCosts, askJobs].forEach((one) => one.drop());
}

/** Build and jobs that the page knows of. */
let learnt = '';

/** The unit that is being asked for. */
let learning = null;

async function changed(how) {
  const since = begun();
  const key = JSON.stringify([story.now.state, story.now.kept, story.now.units, panels.drawing.wanted()]);
  const same = key === asked;
  asked = key;
  if (!same) {
    panels.verdict.wait();
    panels.curve.wait();
    panels.sheet.waitForCost();
    panels.work.wait();
    between = since - turned;
    turned = since;
    dropWhatFollows();
  }
  const wanted = JSON.stringify([story.now.state.build, story.now.state.jobs]);
  if (wanted !== learnt) {
    learnt = wanted;
    if (!await learn()) {
      return;
    }
  } else if (learning) {
    return;
  }
  if (!unit) {
    return;
  }
  if (system() !== units.inUse()) {
    units.use(system());
    byId('units').value = units.inUse();
  }
  turning = how === 'turning';
  if (same && !turning && resting) {
    rest(0); // the slider was let go: nothing more is to come
  }
  if (!same) {
    dropWhatFollows(); // a state before may have been answered while the unit was asked for
    askState({ ...question(), drawn: panels.drawing.wanted() }, since);
  }
  panels.gauges.show(unit, same, since);
  panels.conditions.show(unit);
  panels.sheet.show(unit);
  panels.work.show(unit);
  panels.lesson.show(unit);
  steps();
  byId('drop').hidden = !story.now.kept;
}

/** When somebody did what is being answered [ms]. */
const begun = () => Math.min(window.event?.timeStamp || Infinity, performance.now());

/** System of units of the page: what was chosen, else that of the unit. */
const system = () => units.systems().includes(story.now.units) ? story.now.units : unit.unit_system;

/** Undo and redo; who has used one up is led to the other. */
function steps() {
  const held = document.activeElement;
  byId('undo').disabled = story.past.length === 0;
  byId('redo').disabled = story.future.length === 0;
  if (held.disabled) {
    byId(held.id === 'undo' ? 'redo' : 'undo').focus();
  }
}

/** Whether the unit is known that the newest state is about: one that was asked for before is no longer waited for. */
async function learn() {
  const mine = new AbortController();
  if (learning) {
    learning.abort();
  }
  learning = mine;
  try {
    unit = await ask('unit', { state: { build: story.now.state.build, jobs: story.now.state.jobs } }, mine.signal);
  } catch (problem) {
    if (mine.signal.aborted) {
      return false;
    }
    learning = null;
    learnt = '';
    asked = '';
    if (!(problem instanceof Refused)) {
      throw problem;
    }
    refused(problem);
    return false;
  }
  learning = null;
  units.learn(unit.quantities);
  units.use(system());
  byId('circuit').textContent = unit.circuit;
  byId('about').textContent = unit.about;
  byId('caution').textContent = unit.caution;
  document.title = unit.circuit + ', live';
  byId('units').replaceChildren(...units.systems().map((one) => el('option', { value: one, selected: one === units.inUse() }, one)));
  return true;
}

byId('undo').onclick = () => story.undo();
byId('redo').onclick = () => story.redo();
byId('keep').onclick = () => story.turn((state, all) => { all.kept = structuredClone(state); });
byId('drop').onclick = () => {
  story.turn((state, all) => { all.kept = null; });
  byId('keep').focus();
};
for (const file of ['sheet-file', 'build-file', 'report-file']) {
  const button = byId(file);
  button.onclick = async () => {
    button.setAttribute('aria-busy', 'true');
    try {
      const answer = await ask(file, { ...question(), gauges: story.now.gauges });
      hand(answer.name, answer.text);
    } catch (problem) {
      trouble(problem.message);
    } finally {
      button.removeAttribute('aria-busy');
    }
  };
}
byId('units').onchange = () => story.turn((state, all) => { all.units = byId('units').value; });
byId('skip').onclick = (event) => {
  event.preventDefault();
  where.go(byId('sheet'));
};
byId('end').onclick = async () => {
  try {
    await ask('end', {});
  } catch (problem) {
    trouble(problem.message);
    return;
  }
  trouble('The program has ended. Start hotidle live again to go on; the address keeps what you have set.');
};
addEventListener('keydown', (event) => {
  if ((event.ctrlKey || event.metaKey) && event.key.toLowerCase() === 'z' && !['text', 'textarea'].includes(event.target.type)) {
    event.preventDefault();
    event.shiftKey ? story.redo() : story.undo();
  }
});

changed('settled');
