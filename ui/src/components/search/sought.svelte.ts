import { asAppError } from '../../backend/backend';
import type { AppError, SearchView } from '../../backend/generated/types';
import type { Session } from '../../state/session.svelte';

/** What is typed is asked so long after the last key, ms. */
const PAUSE = 120;

/** What was looked for and found: there again when one comes back from a page. */
export class Sought {
  typed = $state('');
  /** What `asked` found; none: nothing was asked. */
  view: SearchView | null = $state.raw(null);
  asked = $state('');
  error: AppError | null = $state(null);
  readonly #session: Session;
  #turn = 0;
  #timer: ReturnType<typeof setTimeout> | undefined;

  constructor(session: Session) {
    this.#session = session;
  }

  /** Looks for what is typed, soon; an answer to what was typed before is let go. */
  look(typed: string) {
    clearTimeout(this.#timer);
    const turn = ++this.#turn;
    if (typed.trim()) this.#timer = setTimeout(() => void this.#ask(typed, turn), PAUSE);
    else this.#found(typed, null);
  }

  /** Waits for no answer any more. */
  rest() {
    clearTimeout(this.#timer);
    this.#turn += 1;
  }

  async #ask(typed: string, turn: number) {
    try {
      const view = await this.#session.backend.search(typed);
      if (turn === this.#turn) this.#found(typed, view);
    } catch (thrown) {
      if (turn === this.#turn) this.error = asAppError(thrown);
    }
  }

  #found(typed: string, view: SearchView | null) {
    this.asked = typed;
    this.view = view;
    this.error = null;
  }
}

const all = new WeakMap<Session, Sought>();

/** Of one sitting, another journal included: there what is found is asked again. */
export function soughtOf(session: Session): Sought {
  const found = all.get(session) ?? new Sought(session);
  all.set(session, found);
  return found;
}
