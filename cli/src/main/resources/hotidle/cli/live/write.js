// A field for a circuit file, with the messages of 'hotidle check' at their lines and the drawing beside it.
import { byId, el } from './dom.js';

export function write() {
  byId('write').append(el('h2', { id: 'write-head' }, 'Write a circuit here'));
  return {};
}
