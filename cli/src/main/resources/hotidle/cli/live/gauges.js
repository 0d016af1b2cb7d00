// Gauges at the taps: what a running pressure test would show, without the hot oil.
import { byId, el } from './dom.js';

export function gauges() {
  byId('gauges').append(el('h2', { id: 'gauges-head' }, 'Gauges'));
  return {
    show() {},
    follow() {},
  };
}
