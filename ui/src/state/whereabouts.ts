import { dateOf } from '../text/words.svelte';
import { readRoute } from './route.svelte';
import type { Session } from './session.svelte';

/** Where on a screen one was: how far down, and which link stood how high on the page. */
interface Spot {
  top: number;
  link: string | null;
  high: number;
}

/** What a phone left open when it put the app away. */
interface Left {
  hash: string;
  spot: Spot;
  /** The garden's time. */
  at: string;
  /** The button that had opened the sheet, and which of that name it was. */
  opener: { name: string; which: number } | null;
}

const kept = 'plumule-left';
/** Who comes back within so many minutes goes on where they were; later a day's round comes first. Judgement. */
const GOES_ON = 30;
/** For so many pictures a screen may still grow to what it was. */
const GROWS = 90;

/** Where on each screen one was, so that it is found again: in this sitting, and on a phone after it was put away. */
export class Whereabouts {
  readonly #session: Session;
  readonly #main: HTMLElement;
  readonly #spots = new Map<string, Spot>();
  /** Goes up with every screen that comes. */
  #turn = 0;
  /** What is still to be done on the screen that comes next. */
  #next: (() => void) | null = null;
  #opener: { button: HTMLElement; revision: number } | null = null;

  constructor(session: Session, main: HTMLElement) {
    this.#session = session;
    this.#main = main;
    document.addEventListener('click', ({ target }) => {
      const button = target instanceof Element ? target.closest<HTMLElement>('button') : null;
      if (button && !button.closest('dialog')) this.#opener = { button, revision: session.revision };
    });
    document.addEventListener('visibilitychange', () => document.visibilityState === 'hidden' && this.#putAway());
    if (phone() && location.hash === '') this.#goOn();
  }

  /** A screen is left. */
  leave(screen: string) {
    this.#spots.set(screen, spotIn(this.#main));
  }

  /** A screen is there again: a list as it was left, on the link that was followed; the page about one thing at its top. */
  back(screen: string, from: string) {
    const spot = screen.endsWith('/') ? this.#spots.get(screen) : undefined;
    this.#turn += 1;
    const goOn = this.#next;
    this.#next = null;
    if (goOn) return goOn();
    if (!spot) return;
    this.#find(spot, () => {
      const link = this.#main.querySelector<HTMLElement>(`a[href="#/${CSS.escape(from)}"]`);
      if (document.activeElement?.matches('h1, body')) link?.focus({ preventScroll: true });
      return link !== null;
    });
  }

  #putAway() {
    if (!phone()) return;
    const { now, revision } = this.#session;
    // A question is asked anew by whoever wants it, never by us.
    const sheet = document.querySelector('dialog[open]:not([role=alertdialog])');
    const opener = sheet && this.#opener?.revision === revision ? this.#opener.button : null;
    const left: Left = { hash: location.hash, spot: spotIn(this.#main), at: now, opener: opener && named(this.#main, opener) };
    try {
      localStorage.setItem(kept, JSON.stringify(left));
    } catch {
      // Without a store it opens on the round.
    }
  }

  #goOn() {
    const left = read();
    const { now } = this.#session;
    if (!left || !now) return;
    const minutes = (dateOf(now).getTime() - dateOf(left.at).getTime()) / 60_000;
    if (!(minutes >= 0 && minutes <= GOES_ON)) return;
    const { opener } = left;
    this.#next = () =>
      this.#find(left.spot, () => {
        const button = opener && buttonsOf(this.#main, opener.name)[opener.which];
        button?.click();
        return !opener || button !== undefined;
      });
    if (readRoute(left.hash).name === 'round') this.back('', '');
    else location.hash = left.hash;
  }

  /** Goes there, and stays there while the screen grows to its length; not against a hand that moves it. `then` until it is done. */
  #find({ top, link, high }: Spot, then: () => boolean) {
    const main = this.#main;
    const turn = this.#turn;
    let pictures = 0;
    let set: number | null = null;
    let done = false;
    const stop = new AbortController();
    for (const by of ['pointerdown', 'wheel', 'keydown']) {
      main.addEventListener(by, () => stop.abort(), { signal: stop.signal, passive: true });
    }
    const go = () => {
      if (stop.signal.aborted || turn !== this.#turn) return;
      const there = link === null ? null : main.querySelector(`a[href="${CSS.escape(link)}"]`);
      const reaches = main.scrollHeight - main.clientHeight >= top;
      const off = there ? there.getBoundingClientRect().top - high : reaches ? top - main.scrollTop : 0;
      // Something else has moved it away.
      if (set !== null && Math.abs(main.scrollTop - set) > 1 && Math.abs(off) > 1) return stop.abort();
      main.scrollTop += off;
      set = main.scrollTop;
      // What is not shown yet takes no focus.
      done ||= main.querySelector('[aria-busy=true]') === null && then();
      if (++pictures < GROWS) requestAnimationFrame(go);
      else stop.abort();
    };
    go();
  }
}

const phone = () => /Android|iPhone/.test(navigator.userAgent);

function spotIn(main: HTMLElement): Spot {
  const { left, top, width, height } = main.getBoundingClientRect();
  const seen = document.elementFromPoint?.(left + width / 2, top + height / 4)?.closest('article, li:has(a)');
  const link = seen?.querySelector('a[href^="#"]');
  return { top: main.scrollTop, link: link?.getAttribute('href') ?? null, high: link?.getBoundingClientRect().top ?? 0 };
}

const nameOf = (button: HTMLElement) => button.ariaLabel ?? button.textContent?.trim() ?? '';
const buttonsOf = (main: HTMLElement, name: string) => [...main.querySelectorAll<HTMLElement>('button')].filter((one) => !one.closest('dialog') && nameOf(one) === name);

function named(main: HTMLElement, button: HTMLElement): Left['opener'] {
  const which = buttonsOf(main, nameOf(button)).indexOf(button);
  return which < 0 ? null : { name: nameOf(button), which };
}

function read(): Left | null {
  try {
    const left = JSON.parse(localStorage.getItem(kept) ?? 'null') as Left | null;
    return typeof left?.hash === 'string' && typeof left.at === 'string' && left.spot ? left : null;
  } catch {
    return null;
  }
}
