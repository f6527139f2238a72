import { tick } from 'svelte';
import { asAppError } from '../backend/backend';
import type { AppError } from '../backend/generated/types';
import type { Session } from './session.svelte';
import { share } from './share';

/** A view asked of the app, and asked again after every change. A screen is first shown once all of its are there, but for those it may do without. */
export class View<T> {
  value: T | null = $state.raw(null);
  error: AppError | null = $state(null);
  /** Whether an answer came, be it none. */
  loaded = $state(false);
  #turn = 0;

  constructor(session: Session, ask: () => Promise<T>, awaited = true) {
    $effect(() => {
      void session.revision;
      const there = awaited ? session.awaits() : undefined;
      void this.#load(ask()).then(there);
      return there;
    });
  }

  async #load(asked: Promise<T>) {
    const turn = ++this.#turn;
    try {
      const value = await asked;
      if (turn !== this.#turn) return;
      this.value = share(this.value, value);
      this.loaded = true;
      this.error = null;
    } catch (thrown) {
      if (turn === this.#turn) this.error = asAppError(thrown);
    }
  }
}

/** Something tried: whether it is under way, and what went wrong. */
export class Attempt {
  busy = $state(false);
  error: AppError | null = $state(null);

  /** What came of it; null if it was declined or went wrong. */
  async run<T>(work: () => Promise<T>): Promise<T | null> {
    if (this.busy) return null;
    const from = document.activeElement;
    this.busy = true;
    this.error = null;
    try {
      return await work();
    } catch (thrown) {
      this.error = asAppError(thrown);
      return null;
    } finally {
      this.busy = false;
      // A button that could not be pressed meanwhile has lost the focus.
      void tick().then(() => document.activeElement === document.body && (from as HTMLElement | null)?.focus());
    }
  }
}
