import { FluentBundle, FluentResource, type FluentVariable } from '@fluent/bundle';
import type { Arg, CropName, DeviceForm, RangeView, Say } from '../backend/generated/types';
import { formatsOf } from './formats';
import { messagesOf, type Language } from './languages';

const files = import.meta.glob<string>('./en-GB/*.ftl', { query: '?raw', import: 'default', eager: true });

type Habits = Pick<DeviceForm, 'temperature' | 'length' | 'clock'>;
type Values = Record<string, FluentVariable>;

/** A day or a local moment, read as if in UTC so that no zone moves it. */
export function dateOf(day: string): Date {
  return new Date(day.length === 10 ? `${day}T00:00:00Z` : `${day.slice(0, 19)}Z`);
}

function bundleOf(language: Language, sources: readonly string[]): FluentBundle {
  const bundle = new FluentBundle(language, { useIsolating: false });
  for (const source of sources) bundle.addResource(new FluentResource(source));
  return bundle;
}

/** The words of the app: messages filled in, in the grower's language and units. */
export class Words {
  /** British English, in which is said what another language lacks. */
  #base: FluentBundle;
  /** The language that is spoken, if it is another. */
  #own: FluentBundle | null = null;
  #language: Language = $state('en-GB');
  /** The one that was last asked for. */
  #wanted: Language = 'en-GB';
  #formats = $derived(formatsOf(this.#language));
  #habits: Habits = $state({ temperature: 'celsius', length: 'mm', clock: 'h24' });
  #year = $state('');
  /** Keys that were asked for and are not in the message files. */
  readonly missing = new Set<string>();
  /** Messages without arguments, once made. */
  #fixed = new Map<string, string>();
  #later: Promise<void> | undefined;
  /** Something was asked for that was not there. */
  #lacked = false;
  /** Goes up when messages come in, so that all that was said is said again. */
  #loaded = $state(0);

  constructor(more: readonly string[] = []) {
    this.#base = bundleOf('en-GB', [...Object.values(files), ...more]);
  }

  /** The messages that the first picture does without. */
  loadLater(): Promise<void> {
    this.#later ??= import('./later').then(({ later }) => {
      for (const source of later) this.#base.addResource(new FluentResource(source));
      for (const key of this.missing) if (this.has(key)) this.missing.delete(key);
      if (this.#lacked) this.#loaded += 1;
    });
    return this.#later;
  }

  /** Speaks another language from now on; of several asked for in a breath, the last. */
  async speak(language: Language) {
    this.#wanted = language;
    if (language === this.#language) return;
    const sources = await messagesOf(language);
    if (this.#wanted !== language) return;
    this.#own = language === 'en-GB' ? null : bundleOf(language, sources);
    this.#fixed.clear();
    this.#language = language;
    this.#loaded += 1;
  }

  get language(): Language {
    return this.#language;
  }

  /** The device's units, and the day it is, whose year goes without saying. */
  use(habits: Habits, today?: string) {
    this.#habits = { temperature: habits.temperature, length: habits.length, clock: habits.clock };
    if (today) this.#year = today.slice(0, 4);
  }

  set today(day: string) {
    this.#year = day.slice(0, 4);
  }

  get thisYear(): string {
    return this.#year || '2024';
  }

  get fahrenheit(): boolean {
    return this.#habits.temperature === 'fahrenheit';
  }

  get inches(): boolean {
    return this.#habits.length === 'inch';
  }

  has(key: string): boolean {
    const has = this.#base.hasMessage(key);
    this.#lacked ||= !has;
    return has;
  }

  /** The message of a key; a key that is unknown shows as itself. */
  t(key: string, values?: Values): string {
    void this.#loaded;
    if (values) return this.#format(key, values);
    let text = this.#fixed.get(key);
    if (text === undefined) {
      text = this.#format(key, {});
      if (this.has(key)) this.#fixed.set(key, text);
    }
    return text;
  }

  #format(key: string, values: Values): string {
    for (const bundle of [this.#own, this.#base]) {
      const pattern = bundle?.getMessage(key)?.value;
      if (bundle && pattern) return bundle.formatPattern(pattern, values, []);
    }
    this.missing.add(key);
    this.#lacked = true;
    return key;
  }

  number(number: number, digits: 0 | 1 | 2 = 1): string {
    return this.#formats.number(number, digits);
  }

  say(say: Say): string {
    const values: Values = {};
    for (const [name, arg] of Object.entries(say.args)) {
      values[name] = arg.as === 'number' ? arg.value : this.arg(arg);
    }
    return this.t(say.key, values);
  }

  arg(arg: Arg): string {
    switch (arg.as) {
      case 'text':
        return arg.value;
      case 'number':
        return this.number(arg.value);
      case 'celsius':
        return this.celsius(arg.value);
      case 'millimetres':
        return this.mm(arg.value);
      case 'share':
        return this.share(arg.value);
      case 'day':
        return this.day(arg.value);
      case 'moment':
        return this.moment(arg.value);
      case 'word':
        return this.has(arg.value) ? this.t(arg.value) : arg.value;
      case 'variety':
        return this.#variety(arg.value);
      case 'list':
        return this.list(arg.value.map((part) => this.arg(part)));
    }
  }

  /** A word of a closed set where it begins a line. */
  Word(set: string, value: string): string {
    return this.capital(this.word(set, value));
  }

  capital(text: string): string {
    return text.charAt(0).toLocaleUpperCase(this.#language) + text.slice(1);
  }

  list(parts: string[]): string {
    return this.#formats.list(parts);
  }

  /** A word of a closed set, as `place-kind` and `cold_frame`. */
  word(set: string, value: string): string {
    return this.t(`${set}-${value.replaceAll('_', '-')}`);
  }

  crop(crop: CropName): string {
    return crop.known ? this.word('crop', crop.key) : crop.key;
  }

  /** All that a plant is called here: in the grower's language and in British English, for whoever looks for it. */
  names(crop: CropName): string[] {
    const base = crop.known ? this.#base.getMessage(`crop-${crop.key.replaceAll('_', '-')}`)?.value : null;
    const said = this.crop(crop);
    const english = base ? this.#base.formatPattern(base, {}, []) : said;
    return english === said ? [said] : [said, english];
  }

  /** Which of two texts comes first. */
  compare(a: string, b: string): number {
    return this.#formats.compare(a, b);
  }

  plant(crop: CropName, variety: string): string {
    return this.capital(this.crop(crop)) + this.#variety(variety);
  }

  #variety(name: string): string {
    return name && ` ${this.t('variety', { name })}`;
  }

  celsius(c: number): string {
    return this.fahrenheit ? `${this.number(c * 1.8 + 32, 0)}\u00a0°F` : `${this.number(c)}\u00a0°C`;
  }

  /** Two temperatures, the unit said once. */
  range(range: RangeView): string {
    if (range.min_c === range.max_c) return this.celsius(range.min_c);
    const low = this.celsius(range.min_c).replace(/\u00a0°[CF]$/, '');
    return this.t('screen-range', { low, high: this.celsius(range.max_c) });
  }

  mm(mm: number): string {
    if (!this.inches) return `${this.number(mm)}\u00a0mm`;
    return `${this.number(mm / 25.4, mm < 25.4 ? 2 : 1)}\u00a0in`;
  }

  share(share: number): string {
    return `${this.number(share * 100, 0)}\u00a0%`;
  }

  #told(day: string): boolean {
    return this.#year !== '' && day.slice(0, 4) !== this.#year;
  }

  day(day: string): string {
    return this.#formats.day(dateOf(day), this.#told(day));
  }

  /** "14 May"; with the year if it is not this year's. */
  shortDay(day: string): string {
    return this.#formats.shortDay(dateOf(day), this.#told(day));
  }

  /** The time of a moment, by the grower's clock. */
  time(moment: string): string {
    return this.#habits.clock === 'h12' ? this.#formats.time12(dateOf(moment)) : moment.slice(11, 16);
  }

  /** The letter a month begins with. */
  monthLetter(month: Date): string {
    return this.#formats.monthLetter(month);
  }

  moment(moment: string): string {
    return `${this.day(moment)}, ${this.time(moment)}`;
  }

  /** "23 °C" as typed in the grower's unit, as °C; none if it is not a number. */
  toCelsius(typed: string): number | null {
    const value = Number(typed.trim().replace(',', '.').replace('−', '-'));
    if (typed.trim() === '' || !Number.isFinite(value)) return null;
    return this.fahrenheit ? Math.round(((value - 32) / 1.8) * 10) / 10 : value;
  }

  /** °C as a number to type over, in the grower's unit. */
  fromCelsius(c: number): string {
    return String(this.fahrenheit ? Math.round(c * 1.8 + 32) : Math.round(c * 10) / 10);
  }

  get degree(): string {
    return this.fahrenheit ? '°F' : '°C';
  }

  /** A length as typed in the grower's unit, as mm; none if it is not a number. */
  toMm(typed: string): number | null {
    const value = Number(typed.trim().replace(',', '.'));
    if (typed.trim() === '' || !Number.isFinite(value)) return null;
    return this.inches ? Math.round(value * 254) / 10 : value;
  }

  /** mm as a number to type over, in the grower's unit. */
  fromMm(mm: number): string {
    return String(this.inches ? Math.round((mm / 25.4) * 1000) / 1000 : mm);
  }

  get lengthUnit(): string {
    return this.inches ? 'in' : 'mm';
  }
}
