import type { Session } from '../../state/session.svelte';

/** Where it stops, in the order of the work. */
export const stops = ['round', 'sow', 'tray', 'seed', 'year'] as const;
export type Stop = (typeof stops)[number];

interface Kept {
  off: boolean;
  seen: string[];
}

function read(text: string | null): Kept {
  try {
    const { off, seen } = JSON.parse(text ?? '') as Partial<Kept>;
    return { off: off === true, seen: Array.isArray(seen) ? seen : [] };
  } catch {
    return { off: false, seen: [] };
  }
}

/** What the device keeps of the tour: whether it is wanted, and where it has been. */
export class Tour {
  #kept: Kept = $state.raw({ off: true, seen: [] });
  /** Not in this sitting. */
  hushed = $state(false);
  #session: Session;

  /** `text`: what the device has kept of it. */
  constructor(session: Session, text: string | null) {
    this.#session = session;
    this.#kept = read(text);
  }

  /** Whether a screen is still to be told of. */
  shows(stop: Stop): boolean {
    return !this.#kept.off && !this.hushed && !this.#kept.seen.includes(stop);
  }

  /** The next screen to tell of, and where it is; a tray only where there is one. */
  async after(stop: Stop): Promise<{ stop: Stop; id: string } | null> {
    for (const next of stops.slice(stops.indexOf(stop) + 1)) {
      if (!this.shows(next)) continue;
      if (next !== 'tray') return { stop: next, id: '' };
      const { places, nowhere } = await this.#session.backend.trays();
      const tray = [...places.flatMap((place) => place.trays), ...nowhere][0];
      if (tray) return { stop: next, id: tray.tray };
    }
    return null;
  }

  seen(stop: Stop) {
    if (this.shows(stop)) this.#keep({ off: false, seen: [...this.#kept.seen, stop] });
  }

  never() {
    this.#keep({ off: true, seen: [] });
  }

  /** From the start, as on a new device. */
  again() {
    this.hushed = false;
    this.#keep({ off: false, seen: [] });
  }

  /** What cannot be kept is told of once more: nothing is lost by it. */
  #keep(kept: Kept) {
    this.#kept = kept;
    this.#session.backend.keepDraft('tour', JSON.stringify(kept)).catch(() => undefined);
  }
}
