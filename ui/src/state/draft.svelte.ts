import { onDestroy, untrack } from 'svelte';
import type { Session } from './session.svelte';

/** What is typed is on disk at most so long after the key, ms: the rest of half a second is for the way there. */
const PAUSE = 300;

/**
 * What is typed or chosen in a form and not yet written: kept under a name as
 * it changes, filled in again when the form comes back.
 */
export class Draft<T> {
  /** What is filled in was kept from before. */
  kept = $state(false);
  /** What was discarded, until the form is left. */
  discarded: T | null = $state.raw(null);
  readonly #session: Session;
  readonly #name: string;
  readonly #fill: (value: T) => void;
  /** The form as nobody touched it. */
  #blank: T;
  /** As it is kept; none: nothing is. */
  #text: string | null = null;
  #wanted: string | null = null;
  #timer: ReturnType<typeof setTimeout> | undefined;
  #ready = $state(false);
  #over = false;

  /**
   * `read` gives what is filled in, `fill` fills in what was kept. What `read`
   * gives at first is a form that nobody touched; that is not kept. A form
   * that was opened for something else does not `come back`.
   */
  constructor(session: Session, name: string, read: () => T, fill: (value: T) => void, comesBack = true) {
    this.#session = session;
    this.#name = name;
    this.#fill = fill;
    this.#blank = untrack(() => $state.snapshot(read()) as T);
    if (comesBack) {
      const there = session.awaits();
      onDestroy(there);
      void this.#restore(read).then(there);
    } else this.#ready = true;
    $effect(() => {
      const now = JSON.stringify(read());
      if (!this.#ready || this.#over) return;
      this.#wanted = now === JSON.stringify(this.#blank) ? null : now;
      if (this.#wanted !== this.#text) this.#timer ??= setTimeout(() => this.#keep(), PAUSE);
    });
    const leaving = () => this.#keep();
    document.addEventListener('visibilitychange', leaving);
    onDestroy(() => {
      document.removeEventListener('visibilitychange', leaving);
      this.#keep();
      this.#over = true;
    });
  }

  /** It was written down: nothing is left to keep, and the form is as given now. */
  done(blank: T = this.#blank) {
    this.#blank = $state.snapshot(blank) as T;
    this.kept = false;
    this.discarded = null;
    this.#wanted = null;
    this.#keep();
  }

  /** Starts the form afresh. */
  discard(now: T) {
    this.discarded = $state.snapshot(now) as T;
    this.kept = false;
    this.#fill(structuredClone(this.#blank));
  }

  /** Brings back what was discarded. */
  bringBack() {
    const back = this.discarded;
    if (back === null) return;
    this.discarded = null;
    this.kept = true;
    this.#fill(structuredClone(back));
  }

  async #restore(read: () => T) {
    try {
      this.#text = await this.#session.backend.draft(this.#name);
      const touched = JSON.stringify(read()) !== JSON.stringify(this.#blank);
      if (this.#text !== null && !touched && !this.#over) {
        this.#fill(JSON.parse(this.#text) as T);
        this.kept = true;
      }
    } catch {
      // A draft that cannot be read is none; the form is there all the same.
    }
    this.#ready = true;
  }

  #keep() {
    clearTimeout(this.#timer);
    this.#timer = undefined;
    if (!this.#ready || this.#over || this.#wanted === this.#text) return;
    const text = (this.#text = this.#wanted);
    // Where it cannot be kept, writing it down says so.
    this.#session.backend.keepDraft(this.#name, text).catch(() => (this.#text = null));
  }
}
