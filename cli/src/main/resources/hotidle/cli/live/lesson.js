// A lesson: the program hides a fault, the pupil reads gauges, says what it is, and is shown what it was.
import { byId, el } from './dom.js';

export function lesson() {
  byId('lesson').append(el('h2', { id: 'lesson-head' }, 'Lesson'));
  return {
    show() {},
  };
}
