// The state of the page: what differs from the build as written. It stands in the address behind #, and can be undone.
import { readGauges, writtenGauges } from './test-point.js';

const EMPTY = { build: null, duty: null, set_pressure_pa: null, engine_speed_rpm: null, sump_temperature_c: null, sizes: {}, faults: [], jobs: [] };

const NUMBERS = { set: 'set_pressure_pa', rpm: 'engine_speed_rpm', sump: 'sump_temperature_c' };

/** A state as a text for the address; numbers keep all their digits. */
export function written(state) {
  const text = new URLSearchParams();
  if (state.build) {
    text.set('build', state.build);
  }
  if (state.duty) {
    text.set('duty', state.duty);
  }
  for (const [word, key] of Object.entries(NUMBERS)) {
    if (state[key] !== null) {
      text.set(word, String(state[key]));
    }
  }
  for (const [size, value] of Object.entries(state.sizes)) {
    text.set('size.' + size, String(value));
  }
  state.faults.forEach((fault) => text.append('fault', fault));
  state.jobs.forEach((job) => text.append('job', job));
  return text.toString();
}

/** The state of such a text; what is no part of one is passed over. */
export function read(text) {
  const state = structuredClone(EMPTY);
  for (const [word, value] of new URLSearchParams(text)) {
    if (word === 'build' || word === 'duty') {
      state[word] = value;
    } else if (Object.hasOwn(NUMBERS, word) && value !== '' && Number.isFinite(Number(value))) {
      state[NUMBERS[word]] = Number(value);
    } else if (word.startsWith('size.') && Number.isFinite(Number(value))) {
      state.sizes[word.slice('size.'.length)] = Number(value);
    } else if (word === 'fault') {
      state.faults.push(value);
    } else if (word === 'job') {
      state.jobs.push(value);
    }
  }
  return state;
}

/** Steps that can be undone. */
const MOST = 200;

/** State and reference with what was before and after them. */
export class Story {
  constructor(listener) {
    this.listener = listener;
    this.past = [];
    this.future = [];
    this.now = this.fromAddress();
    this.settled = structuredClone(this.now);
    this.folded = () => {};
    addEventListener('hashchange', () => this.arrive());
  }

  fromAddress() {
    const all = new URLSearchParams(location.hash.slice(1));
    const kept = all.get('kept');
    const units = all.get('units');
    this.turned = (all.get('fold') || '').split(' ').filter((one) => one);
    all.delete('kept');
    all.delete('fold');
    all.delete('units');
    return { state: read(all.toString()), kept: kept === null ? null : read(kept), units, gauges: readGauges(all.get('gauges')) };
  }

  toAddress() {
    const text = new URLSearchParams(written(this.now.state));
    if (this.now.kept) {
      text.set('kept', written(this.now.kept));
    }
    if (this.now.units) {
      text.set('units', this.now.units);
    }
    const gauges = writtenGauges(this.now.gauges);
    if (gauges) {
      text.set('gauges', gauges);
    }
    if (this.turned.length > 0) {
      text.set('fold', this.turned.join(' '));
    }
    history.replaceState(null, '', location.pathname + '#' + text);
  }

  /** Which panels are not shut or open as they are at first: this is no step that is undone. */
  fold(turned) {
    this.turned = turned;
    this.toAddress();
  }

  /** Somebody typed another state into the address. */
  arrive() {
    const other = this.fromAddress();
    this.folded();
    if (JSON.stringify(other) !== JSON.stringify(this.now)) {
      this.now = other;
      this.settle();
    }
  }

  /** Changes the state; a slider that is still held is not settled yet. */
  turn(change, settled = true) {
    this.now = structuredClone(this.now);
    change(this.now.state, this.now);
    if (settled) {
      this.settle();
    } else {
      this.listener('turning');
    }
  }

  settle() {
    if (JSON.stringify(this.now) !== JSON.stringify(this.settled)) {
      this.past.push(this.settled);
      this.past.splice(0, this.past.length - MOST);
      this.future = [];
      this.settled = structuredClone(this.now);
    }
    this.toAddress();
    this.listener('settled');
  }

  undo() {
    this.move(this.past, this.future);
  }

  redo() {
    this.move(this.future, this.past);
  }

  move(from, to) {
    if (from.length > 0) {
      to.push(this.settled);
      this.now = from.pop();
      this.settled = structuredClone(this.now);
      this.toAddress();
      this.listener('moved');
    }
  }
}
