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

async function post(kind, body) {
  let response;
  try {
    response = await fetch('api/' + kind, {
      method: 'POST',
      headers: { 'Content-Type': 'application/json', 'X-Hotidle-Token': TOKEN },
      body: JSON.stringify(body),
    });
  } catch {
    throw new Refused(0, 'The program does not answer: it has ended. Start hotidle live again and open the address that it prints.');
  }
  const answer = await response.json();
  if (!response.ok) {
    throw new Refused(response.status, answer.refused);
  }
  return answer;
}

/** Asks once. */
export const ask = (kind, question) => post(kind, { ...question, page: PAGE, number: ++number });

/**
 * Asks again and again: while an answer is awaited, only the newest question waits behind it. With `overtaking`, a new question is sent
 * at once, and the program gives the older one up.
 */
export function asker(kind, { overtaking = false, answered, refused }) {
  let busy = false;
  let next = null;
  let newest = 0;
  async function send(question) {
    busy = true;
    const mine = ++newest;
    const sent = performance.now();
    try {
      const answer = await ask(kind, question);
      if (mine === newest || !overtaking) {
        answered(answer, question, sent, next === null);
      }
    } catch (problem) {
      if (problem instanceof Refused) {
        if (problem.code !== 409 && mine === newest) {
          refused(problem);
        }
      } else {
        throw problem;
      }
    } finally {
      if (mine === newest) {
        busy = false;
      }
      if (next) {
        const following = next;
        next = null;
        send(following);
      }
    }
  }
  return (question) => {
    if (busy && !overtaking) {
      next = question;
    } else {
      send(question);
    }
  };
}
