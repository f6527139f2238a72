import { tick } from 'svelte';
import { asAppError, type Backend } from '../backend/backend';
import type { Tour } from '../components/tour/tour.svelte';
import type {
  Act,
  Answer,
  AppError,
  Coded,
  DeviceForm,
  ImportForm,
  Fix,
  PlanSow,
  PlantsLine,
  Say,
  SettingsView,
  StartView,
} from '../backend/generated/types';
import { languageOf, type Language } from '../text/languages';
import { dateOf, type Words } from '../text/words.svelte';
import { picture } from './picture';
import { Router } from './route.svelte';
import { share } from './share';

export type Written = Extract<Answer, { answer: 'written' }>;

interface Asked {
  questions: Coded[];
  resolve: (yes: boolean) => void;
}

/** What was last done, for the toast: its words and the act to undo. */
export interface Last {
  say: Say;
  act: string;
  undone: boolean;
  /** The act that was first done, whatever was undone and brought back since. */
  first: string;
}

/** What is sown again, and of what the bench is to be filled in. */
export interface Again {
  line: PlantsLine;
  seeds: number | null;
  wanted: number | null;
}

/** Acts that are said now, whatever day is being written down. */
const undated = new Set<Act['do']>([
  'put_off',
  'dismiss',
  'add_packet',
  'describe_packet',
  'describe_place',
  'order_places',
  'describe_garden',
  'away',
  'came_back',
  'night_low',
  'frost_odds',
  'plan',
  'end_plan',
  'reserve',
  'release',
]);

/** One sitting with the journal: who talks to the app, and what came of it. */
export class Session {
  readonly router = new Router();
  start: StartView | null = $state(null);
  startError: AppError | null = $state(null);
  /** Local time of the garden, as the app last said it. */
  now: string = $state('');
  /** When what is written happened; none: now. */
  happened: string | null = $state(null);
  last: Last | null = $state(null);
  lastError: AppError | null = $state(null);
  asked: Asked | null = $state(null);
  /** Goes up with every change: views ask again. */
  revision = $state(0);
  /** The short tour, once it is there. */
  tour: Tour | null = $state.raw(null);
  /** Plants to be sown again, for the bench. */
  again: Again | null = $state(null);
  /** A plan to be sown for, for the bench. */
  planned: PlanSow | null = $state(null);
  readonly backend: Backend;
  readonly words: Words;
  /** What the device's system speaks. */
  #system: Language = 'en-GB';
  readonly #awaited = new Set<Promise<unknown>>();
  readonly #once = new Map<string, { revision: number; asked: Promise<unknown> }>();

  constructor(backend: Backend, words: Words) {
    this.backend = backend;
    this.words = words;
  }

  async open() {
    try {
      await this.take(await this.backend.start());
      await this.backend.onDueChanged(() => this.refresh());
      await this.backend.onNoted((answer) => void this.#noted(answer));
      await this.backend.onOpening(() => void this.#openAsked());
      await this.#openAsked();
    } catch (thrown) {
      this.startError = asAppError(thrown);
    }
  }

  async take(start: StartView) {
    this.#system = languageOf(start.language);
    await this.useDevice(start.device);
    this.start = start;
    this.startError = null;
  }

  async useDevice(device: DeviceForm) {
    this.words.use(device);
    const root = document.documentElement;
    root.dataset.theme = device.theme;
    root.dataset.hand = device.hand;
    await this.words.speak(device.language === 'system' ? this.#system : languageOf(device.language));
    root.lang = this.words.language;
  }

  /** The app said what time it is in the garden. */
  atTime(now: string) {
    this.now = now;
    this.words.today = now;
  }

  refresh() {
    this.revision += 1;
  }

  /** Something is on its way that a screen should not be shown without; gives what says that it is there. */
  awaits(): () => void {
    let there = () => {};
    const coming = new Promise<void>((done) => (there = done));
    this.#awaited.add(coming);
    return () => (this.#awaited.delete(coming), there());
  }

  /** Once all that is awaited is there, and what that brought up in turn. */
  async settled() {
    await tick();
    while (this.#awaited.size > 0) {
      await Promise.all(this.#awaited);
      await tick();
    }
  }

  /** Asked once for all that show it, until something changes. */
  once<T>(name: string, ask: () => Promise<T>): Promise<T> {
    const { revision } = this;
    const before = this.#once.get(name);
    if (before?.revision === revision) return before.asked as Promise<T>;
    const asked = Promise.all([before?.asked.catch(() => null), ask()]).then(([old, fresh]) => share(old, fresh));
    this.#once.set(name, { revision, asked });
    return asked;
  }

  /** The garden's day, so many days from today: YYYY-MM-DD. */
  inDays(days: number): string {
    const day = dateOf(this.now.slice(0, 10) || '1970-01-01');
    day.setUTCDate(day.getUTCDate() + days);
    return day.toISOString().slice(0, 10);
  }

  /** To the bench, to sow the same once more, so many seeds for so many plants where that is told. */
  sowAgain(line: PlantsLine, seeds: number | null = null, wanted: number | null = null) {
    this.again = { line, seeds, wanted };
    this.router.go('sow');
  }

  /** To the bench, to sow what a plan asks for. */
  sowPlan(sow: PlanSow) {
    this.planned = sow;
    this.router.go('sow');
  }

  async choose(journal: 'own' | 'demo') {
    await this.take(await this.backend.choose(journal));
    this.#anew();
  }

  /** Another journal took the place of the one that was open. */
  async reopen() {
    await this.take(await this.backend.start());
    this.#anew();
  }

  async leaveDemo() {
    await this.take(await this.backend.leaveDemo());
    this.#anew();
  }

  async setDevice(device: DeviceForm): Promise<SettingsView> {
    const view = await this.backend.setDevice(device);
    await this.useDevice(view.device);
    return view;
  }

  /** Writes an act; none if it was asked about and declined. Rejects with an AppError. */
  async act(act: Act, at: string | null = this.happened): Promise<Written | null> {
    const happened = undated.has(act.do) ? null : at;
    const request = { act: $state.snapshot(act) as Act, happened, hand: '' };
    return this.#say((confirmed) => this.backend.act({ ...request, confirmed }));
  }

  /** Takes a photo in; of nothing yet if it is to be named later. */
  async addPhoto(file: Blob, about: string | null): Promise<Written | null> {
    const of = { about, happened: this.happened };
    return this.#say((confirmed) => this.backend.addPhoto(file, of, confirmed));
  }

  async removePhoto(entry: string): Promise<Written | null> {
    return this.#say(() => this.backend.removePhoto(entry));
  }

  /** Adds the packets of a table. */
  async importPackets(file: Blob, form: ImportForm): Promise<Written | null> {
    return this.#say(() => this.backend.importPackets(file, form));
  }

  async withdraw(entry: string): Promise<Written | null> {
    return this.#say((confirmed) => this.backend.withdraw(entry, confirmed));
  }

  /** Corrects a line; with neither fix nor time brings a withdrawn one back. */
  async correct(entry: string, fix: Fix | null, happened: string | null): Promise<Written | null> {
    const request = { entry, fix: $state.snapshot(fix) as Fix | null, happened, hand: '' };
    return this.#say((confirmed) => this.backend.correct({ ...request, confirmed }));
  }

  async undo() {
    const last = this.last;
    if (!last) return;
    try {
      const written = await this.#say((confirmed) => this.backend.undo(last.act, confirmed));
      if (written) this.last = { say: last.say, act: written.act, undone: !last.undone, first: last.first };
    } catch (thrown) {
      this.lastError = asAppError(thrown);
    }
  }

  forget() {
    this.last = null;
    this.lastError = null;
  }

  async #say(send: (confirmed: boolean) => Promise<Answer>): Promise<Written | null> {
    // What was pressed is seen to be, before all that follows from it is drawn.
    let seen = picture();
    let answer = await send(false);
    if (answer.answer === 'asks_first') {
      if (!(await this.#ask(answer.questions))) return null;
      seen = picture();
      answer = await send(true);
      if (answer.answer === 'asks_first') return null;
    }
    // The line that says it is not among the words of the first picture.
    await Promise.all([this.words.loadLater(), seen]);
    this.last = { say: answer.say, act: answer.act, undone: false, first: answer.act };
    this.lastError = null;
    this.refresh();
    return answer;
  }

  /** Where a notice that was pressed asks to go. */
  async #openAsked() {
    const tray = await this.backend.opening();
    if (tray !== null) this.router.go(tray ? 'tray' : 'round', tray);
  }

  /** Written from a notice: said, and can be undone, as if it were from here. */
  async #noted(answer: Answer) {
    if (answer.answer !== 'written') return;
    await this.words.loadLater();
    this.last = { say: answer.say, act: answer.act, undone: false, first: answer.act };
    this.lastError = null;
  }

  #ask(questions: Coded[]): Promise<boolean> {
    return new Promise((resolve) => {
      this.asked = {
        questions,
        resolve: (yes) => {
          this.asked = null;
          resolve(yes);
        },
      };
    });
  }

  #anew() {
    this.forget();
    this.happened = null;
    this.router.go('round');
    this.refresh();
  }
}
