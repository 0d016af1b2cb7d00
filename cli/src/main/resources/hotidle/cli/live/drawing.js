// The circuit drawn, shaded by pressure. It is laid out by the program once; what a state changes is put into it here.
import { about, byId, el, head, isOpen } from './dom.js';
import { hand } from './download.js';
import * as units from './units.js';

/** Light to dark, as the drawings that the program writes. */
const LOW = [0xc3, 0xb1, 0xdd];
const HIGH = [0x2b, 0x08, 0x57];
const UNKNOWN = 'rgb(34,34,34)';
const THINNEST = 0.3;
const WIDEST = 1.6;

/** Room that stays above the drawing, in millimetres of its paper. */
const ABOVE = 4;

function colour(share) {
  if (share === null || share === undefined) {
    return UNKNOWN;
  }
  const s = Math.min(1, Math.max(0, share));
  return 'rgb(' + LOW.map((low, i) => Math.round(low + s * (HIGH[i] - low))).join(',') + ')';
}

export function drawing(story, ask) {
  const root = byId('drawing');
  const place = el('div', { className: 'picture', tabIndex: 0, role: 'region', 'aria-label': 'The circuit drawn' });
  const key = el('p', { className: 'quiet' });
  const part = el('select', { id: 'part' });
  const detail = el('div', { 'aria-live': 'polite', className: 'detail' });
  root.append(head('drawing', 'Circuit', about('the circuit drawn, shaded by pressure')),
    el('div', { className: 'tools' }, el('label', {}, 'Look at ', part),
      el('button', { type: 'button', onclick: () => picture() }, 'Drawing as SVG')), detail, key, place);
  let unit = null;
  let last = null;
  let laidOut = '';
  let pieces = new Map();
  let layingOut = '';
  let asked = null;

  root.addEventListener('fold', () => {
    if (!isOpen(root)) {
      giveUp();
    } else if (last && last.labels) {
      layOut();
    } else if (last) {
      story.listener('settled');
    }
  });
  part.onchange = () => look(part.value);

  function byPiece(what) {
    return pieces.get(what) || [];
  }

  /** What the drawing on the page is to be of: another range has another one. */
  function wanted() {
    const duty = unit.duties.find((one) => one.name === story.now.state.duty) || unit.duties[0];
    return units.inUse() + ' ' + duty.range;
  }

  async function layOut() {
    const of = wanted();
    if (of === layingOut) {
      return;
    }
    giveUp();
    if (of === laidOut) {
      return;
    }
    layingOut = of;
    const mine = new AbortController();
    asked = mine;
    place.classList.add('old');
    key.textContent = 'The circuit is being laid out; this takes some seconds the first time.';
    try {
      const question = { units: units.inUse(), state: story.now.state };
      let answer = await ask('drawing', question, mine.signal);
      while (answer.svg === null) {
        key.textContent = 'The circuit is being laid out: ' + answer.tried + ' of ' + answer.ways + ' ways tried.';
        answer = await ask('drawing', question, mine.signal);
      }
      const svg = document.importNode(new DOMParser().parseFromString(answer.svg, 'image/svg+xml').documentElement, true);
      svg.removeAttribute('width');
      svg.removeAttribute('height');
      place.replaceChildren(svg);
      pieces = new Map();
      svg.querySelectorAll('[data-piece]').forEach((piece) => {
        const name = piece.getAttribute('data-piece');
        piece.inColour = coloured(piece);
        pieces.set(name, [...(pieces.get(name) || []), piece]);
        if (name.startsWith('box ')) {
          piece.classList.add('box');
          piece.addEventListener('click', () => {
            part.value = name.slice('box '.length);
            look(part.value);
          });
        }
      });
      byPiece('head').forEach((head) => head.remove());
      trim(svg);
      laidOut = of;
      layingOut = '';
      place.classList.remove('old');
      if (last && last.labels) {
        paint(last.labels);
      }
    } catch (problem) {
      if (!mine.signal.aborted) {
        layingOut = '';
        key.textContent = problem.message;
      }
    }
  }

  /** Another drawing is wanted, or none: nobody waits for this one. */
  function giveUp() {
    layingOut = '';
    place.classList.remove('old');
    if (asked) {
      asked.abort();
      asked = null;
    }
  }

  /** Takes away the room above the drawing that its heading has on paper; nothing where it is not shown, so that it has no size. */
  function trim(svg) {
    const [left, top, width, height] = svg.getAttribute('viewBox').split(' ').map(Number);
    const drawn = svg.getBBox();
    const above = Math.floor(drawn.y - top) - ABOVE;
    if (drawn.height > 0 && above > 0) {
      svg.setAttribute('viewBox', [left, top + above, width, height - above].join(' '));
    }
  }

  /** The lines of a piece get a colour and a width. */
  function stroke(piece, to, width) {
    const line = piece.querySelector('path, line, polyline');
    if (line) {
      line.setAttribute('stroke', to);
      line.setAttribute('stroke-width', width);
    }
  }

  /** What was drawn in the colour of its node, so that it can be drawn in another one: elements and which of their colours. */
  function coloured(piece) {
    const tag = piece.getAttribute('data-piece').startsWith('tag ');
    const groups = [...piece.querySelectorAll('g[fill]')];
    const own = (groups[tag ? 1 : 0] || piece).getAttribute('stroke');
    return [...piece.querySelectorAll('[fill], [stroke]')].flatMap((one) =>
      ['fill', 'stroke'].filter((key) => one.getAttribute(key) === own).map((key) => [one, key]));
  }

  function shade(piece, to) {
    piece.inColour.forEach(([one, key]) => one.setAttribute(key, to));
  }

  /** What is read aloud of a piece. */
  function name(piece, text) {
    const title = piece.querySelector('title');
    if (title.textContent !== text) {
      title.textContent = text;
    }
  }

  /** Where a spool stands: the mark on the line under its words. */
  function stand(piece, share) {
    const mark = [...piece.querySelectorAll('rect')].filter((rect) => rect.getAttribute('width') === '1.2').pop();
    const line = mark && [...piece.querySelectorAll('g[stroke="rgb(136,136,136)"] path, g[stroke="rgb(136,136,136)"] line')].pop();
    if (line && share !== null) {
      const box = line.getBBox();
      mark.setAttribute('x', box.x + share * (box.width - 1.2));
    }
  }

  function write(piece, lines) {
    const texts = [...piece.querySelectorAll('text')];
    texts.forEach((text, i) => {
      const line = lines[i] ?? '';
      if (text.textContent !== line) {
        text.textContent = line;
      }
    });
  }

  function paint(labels) {
    const shares = new Map(labels.nets.map((net) => [net.net, net.share]));
    const titles = new Map(labels.nets.map((net) => [net.net, net.title]));
    for (const line of labels.lines) {
      const [net, , role] = line.line.split(' ');
      const pilot = role && role.startsWith('pilot');
      const width = pilot || line.share === null ? THINNEST : THINNEST + (WIDEST - THINNEST) * Math.min(1, Math.abs(line.share));
      ['wire ', 'lead '].forEach((what) => byPiece(what + line.line).forEach((piece) => {
        stroke(piece, colour(shares.get(net)), width);
        name(piece, titles.get(net));
      }));
    }
    for (const net of labels.nets) {
      byPiece('junctions ' + net.net).forEach((piece) => {
        shade(piece, colour(net.share));
        name(piece, net.title);
      });
      byPiece('tag ' + net.net).forEach((piece) => {
        shade(piece, colour(net.share));
        name(piece, net.title);
        write(piece, [net.heading, ...net.below]);
      });
    }
    for (const one of labels.parts) {
      byPiece('box ' + one.part).forEach((piece) => {
        name(piece, one.title);
        write(piece, [one.part, ...one.below]);
        stand(piece, one.stands);
      });
    }
    key.textContent = labels.high ? 'Light to dark: ' + labels.low + ' to ' + labels.high + '; ' + labels.widest + '. ' + labels.signs + '.' : 'No pressures are known here.';
  }

  /** As it stands here, with its key. */
  function picture() {
    const svg = place.querySelector('svg');
    if (svg) {
      const copy = svg.cloneNode(true);
      copy.setAttribute('xmlns', 'http://www.w3.org/2000/svg');
      const title = copy.querySelector('title');
      title.textContent += '. ' + key.textContent;
      hand('circuit.svg', new XMLSerializer().serializeToString(copy));
    }
  }

  function look(name) {
    const one = unit.parts.find((other) => other.name === name);
    place.querySelectorAll('.looked').forEach((piece) => piece.classList.remove('looked'));
    if (!one) {
      detail.replaceChildren();
      return;
    }
    byPiece('box ' + name).forEach((piece) => piece.classList.add('looked'));
    const state = last ? last.state : null;
    const flows = state && state['flows_m3_s'] ? Object.entries(state['flows_m3_s']).filter(([path]) => path === name || path.startsWith(name + '.')) : [];
    const sizes = unit.sizes.filter((size) => size.part === name);
    const rows = [
      ['kind', one.kind + (one.about ? ', ' + one.about : '')],
      ['booked under', one.group],
      ['between', one.nodes.map((node) => node + (state && state.pressures_pa && node in state.pressures_pa ? ' ' + units.said('pressure', state.pressures_pa[node]) : '')).join(', ')],
      ...flows.map(([path, flow]) => ['flow' + (path === name ? '' : ' ' + path.slice(name.length + 1)), units.said('trickle', flow)]),
      ...sizes.map((size) => [size.key, units.said(size.kind === 'area' ? 'area' : 'fit', story.now.state.sizes[size.name] ?? size.value) + ' (new '
        + units.said(size.kind === 'area' ? 'area' : 'fit', size.fresh) + ')']),
      ['law', one.law],
      ['source', one.source],
    ];
    detail.replaceChildren(el('h3', {}, name), el('dl', {}, rows.filter(([, value]) => value).map(([word, value]) => [el('dt', {}, word), el('dd', {}, value)]).flat()));
  }

  return {
    wanted: () => isOpen(root),
    grey(grey) {
      root.classList.toggle('old', grey);
    },
    show(answer, known) {
      last = answer;
      if (unit !== known) {
        unit = known;
        const chosen = part.value;
        part.replaceChildren(el('option', { value: '' }, 'a part'), ...unit.parts.map((one) => el('option', { value: one.name }, one.name)));
        part.value = chosen;
      }
      if (!isOpen(root)) {
        return;
      }
      layOut();
      if (answer.labels && laidOut === wanted()) {
        paint(answer.labels);
      }
      if (part.value) {
        look(part.value);
      }
    },
  };
}
