// Questions to the program. The token comes with the address that was opened, once; it is kept for this tab and taken out of the address.

const KEPT = 'hotidle-token';

function token() {
  const given = new URLSearchParams(location.search).get('token');
  if (given) {
    sessionStorage.setItem(KEPT, given);
    history.replaceState(null, '', location.pathname + location.hash);
  }
  return sessionStorage.getItem(KEPT) || '';
}

const TOKEN = token();
const PAGE = crypto.randomUUID();
let number = 0;

/** What the program says where it gives no answer. */
export class Refused extends Error {
  constructor(code, message) {
    super(message);
    this.code = code;
  }
}

async function post(kind, body, signal) {
  let response;
  let answer;
  try {
    response = await fetch('api/' + kind, {
      method: 'POST',
      headers: { 'Content-Type': 'application/json', 'X-Hotidle-Token': TOKEN },
      body: JSON.stringify(body),
      signal,
    });
    answer = await response.json();
    window.answered += 1;
  } catch (problem) {
    if (problem.name === 'AbortError') {
      throw problem;
    }
    throw new Refused(0, 'The program does not answer: it has ended. Start hotidle live again and open the address that it prints.');
  }
  if (!response.ok) {
    throw new Refused(response.status, answer.refused);
  }
  return answer;
}

/** Answers that are awaited: for who measures or tests the page. */
window.awaited = 0;

/** Those of them that come long after the others: what may be set. */
window.awaitedLong = 0;

/** Answers that came. */
window.answered = 0;

const numbered = (question) => ({ ...question, page: PAGE, number: ++number });

/** Asks once; a signal takes the question back. */
export async function ask(kind, question, signal) {
  const long = kind === 'window' ? 1 : 0;
  window.awaited += 1;
  window.awaitedLong += long;
  try {
    return await post(kind, numbered(question), signal);
  } finally {
    window.awaited -= 1;
    window.awaitedLong -= long;
  }
}

/** Lets the program work ahead. Nobody waits for it, and whether it comes to an end makes no difference to any answer. */
export function hint(kind, question) {
  post(kind, numbered(question)).catch(() => {});
}

/**
 * Asks again and again: while an answer is awaited, only the newest question waits behind it. With `overtaking`, a new question is sent
 * at once and the older one is taken back: the program gives it up as soon as it hears of the newer one, and its answer is never shown.
 * What is given back asks, with the time since which somebody waits; its `drop` takes back what is being asked, its `awaits` says whether
 * anything is.
 */
export function asker(kind, { overtaking = false, answered, refused }) {
  let awaited = null;
  let next = null;
  async function send(question, since) {
    const mine = new AbortController();
    awaited = mine;
    try {
      const answer = await ask(kind, question, mine.signal);
      if (awaited === mine) {
        answered(answer, question, since, next === null);
      }
    } catch (problem) {
      if (!mine.signal.aborted && !(problem instanceof Refused)) {
        throw problem;
      }
      if (awaited === mine && problem.code !== 409) {
        refused(problem);
      }
    } finally {
      if (awaited === mine) {
        awaited = null;
        if (next) {
          const [following, then] = next;
          next = null;
          send(following, then);
        }
      }
    }
  }
  function drop() {
    const old = awaited;
    awaited = null;
    next = null;
    if (old) {
      old.abort();
    }
  }
  const again = (question, since = performance.now()) => {
    if (awaited && !overtaking) {
      next = [question, since];
    } else {
      drop();
      send(question, since);
    }
  };
  again.drop = drop;
  again.awaits = () => awaited !== null;
  return again;
}
