import { asAppError } from '../backend/backend';
import type { AppError, Outcome, Task, WorkView } from '../backend/generated/types';
import type { Session } from './session.svelte';

/** How often long work is asked how far it is, ms. */
const ASK_EVERY = 200;

/** Long work: begun, watched and called off. One at a time. */
export class Work {
  /** What is under way; none: nothing is. */
  task: Task['work'] | null = $state(null);
  view: WorkView | null = $state.raw(null);
  error: AppError | null = $state(null);
  cancelled = $state(false);
  readonly #session: Session;

  constructor(session: Session) {
    this.#session = session;
  }

  get busy(): boolean {
    return this.task !== null;
  }

  /** What came of it; none if it went wrong or was called off. */
  async run(task: Task): Promise<Outcome | null> {
    if (this.busy) return null;
    this.task = task.work;
    this.error = null;
    this.cancelled = false;
    try {
      await this.#session.backend.beginWork(task);
      for (;;) {
        const view = await this.#session.backend.work();
        this.view = view;
        if (!view.running) {
          this.cancelled = view.error?.code === 'cancelled';
          this.error = this.cancelled ? null : view.error;
          return view.outcome;
        }
        await new Promise((go) => setTimeout(go, ASK_EVERY));
      }
    } catch (thrown) {
      this.error = asAppError(thrown);
      return null;
    } finally {
      this.task = null;
      this.view = null;
    }
  }

  async cancel() {
    await this.#session.backend.cancelWork();
  }
}
