import { FluentBundle, FluentResource, type FluentVariable } from '@fluent/bundle';
import type { Arg, CropName, DeviceForm, RangeView, Say } from '../backend/generated/types';

const files = import.meta.glob<string>('./en-GB/*.ftl', { query: '?raw', import: 'default', eager: true });

type Habits = Pick<DeviceForm, 'temperature' | 'length'>;
type Values = Record<string, FluentVariable>;

const locale = 'en-GB';
const format = (options: Intl.DateTimeFormatOptions) =>
  new Intl.DateTimeFormat(locale, { timeZone: 'UTC', ...options });
const withYear = format({ weekday: 'long', day: 'numeric', month: 'long', year: 'numeric' });
const withoutYear = format({ weekday: 'long', day: 'numeric', month: 'long' });
const shortDay = format({ day: 'numeric', month: 'short' });
const shortDayYear = format({ day: 'numeric', month: 'short', year: 'numeric' });
const list = new Intl.ListFormat(locale, { style: 'long', type: 'conjunction' });

/** A day or a local moment, read as if in UTC so that no zone moves it. */
export function dateOf(day: string): Date {
  return new Date(day.length === 10 ? `${day}T00:00:00Z` : `${day.slice(0, 19)}Z`);
}

const numbers = [0, 1, 2].map((digits) => new Intl.NumberFormat(locale, { maximumFractionDigits: digits }));
const plain = (number: number, digits: 0 | 1 | 2 = 1) => numbers[digits]?.format(number) ?? String(number);

/** The words of the app: messages filled in, in the grower's units. */
export class Words {
  #bundle = new FluentBundle(locale, { useIsolating: false });
  #habits: Habits = $state({ temperature: 'celsius', length: 'mm' });
  #year = $state('');
  /** Keys that were asked for and are not in the message files. */
  readonly missing = new Set<string>();
  /** Messages without arguments, once made. */
  #fixed = new Map<string, string>();
  #later: Promise<void> | undefined;
  /** Goes up when messages come in, so that what said a bare key says it again. */
  #loaded = $state(0);

  constructor(more: readonly string[] = []) {
    this.#add([...Object.values(files), ...more]);
  }

  #add(sources: readonly string[]) {
    for (const source of sources) this.#bundle.addResource(new FluentResource(source));
  }

  /** The messages that the first picture does without. */
  loadLater(): Promise<void> {
    this.#later ??= import('./later').then(({ later }) => {
      this.#add(later);
      for (const key of this.missing) if (this.has(key)) this.missing.delete(key);
      this.#loaded += 1;
    });
    return this.#later;
  }

  /** The device's units, and the day it is, whose year goes without saying. */
  use(habits: Habits, today?: string) {
    this.#habits = { temperature: habits.temperature, length: habits.length };
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
    return this.#bundle.hasMessage(key);
  }

  /** The message of a key; a key that is unknown shows as itself. */
  t(key: string, values?: Values): string {
    if (values) return this.#format(key, values);
    let text = this.#fixed.get(key);
    if (text === undefined) {
      text = this.#format(key, {});
      if (this.#bundle.hasMessage(key)) this.#fixed.set(key, text);
    }
    return text;
  }

  #format(key: string, values: Values): string {
    void this.#loaded;
    const message = this.#bundle.getMessage(key);
    if (!message?.value) {
      this.missing.add(key);
      return key;
    }
    return this.#bundle.formatPattern(message.value, values, []);
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
        return plain(arg.value);
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
      case 'list':
        return list.format(arg.value.map((part) => this.arg(part)));
    }
  }

  /** A word of a closed set where it begins a line. */
  Word(set: string, value: string): string {
    return this.capital(this.word(set, value));
  }

  capital(text: string): string {
    return text.charAt(0).toLocaleUpperCase(locale) + text.slice(1);
  }

  list(parts: string[]): string {
    return list.format(parts);
  }

  /** A word of a closed set, as `place-kind` and `cold_frame`. */
  word(set: string, value: string): string {
    return this.t(`${set}-${value.replaceAll('_', '-')}`);
  }

  crop(crop: CropName): string {
    return crop.known ? this.word('crop', crop.key) : crop.key;
  }

  plant(crop: CropName, variety: string): string {
    const name = this.capital(this.crop(crop));
    return variety ? `${name} ‘${variety}’` : name;
  }

  celsius(c: number): string {
    return this.fahrenheit ? `${plain(c * 1.8 + 32, 0)} °F` : `${plain(c)} °C`;
  }

  /** Two temperatures, the unit said once. */
  range(range: RangeView): string {
    if (range.min_c === range.max_c) return this.celsius(range.min_c);
    const low = this.celsius(range.min_c).replace(/ °[CF]$/, '');
    return this.t('screen-range', { low, high: this.celsius(range.max_c) });
  }

  mm(mm: number): string {
    if (!this.inches) return `${plain(mm)} mm`;
    return `${plain(mm / 25.4, mm < 25.4 ? 2 : 1)} in`;
  }

  share(share: number): string {
    return `${plain(share * 100, 0)} %`;
  }

  day(day: string): string {
    const spoken = day.slice(0, 4) === this.#year || !this.#year ? withoutYear : withYear;
    return spoken.format(dateOf(day)).replace(',', '');
  }

  /** "14 May"; with the year if it is not this year's. */
  shortDay(day: string): string {
    const spoken = day.slice(0, 4) === this.#year || !this.#year ? shortDay : shortDayYear;
    return spoken.format(dateOf(day));
  }

  moment(moment: string): string {
    return `${this.day(moment)}, ${moment.slice(11, 16)}`;
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
}
