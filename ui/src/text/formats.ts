import type { Language } from './languages';

/** How a language writes days, times, numbers and lists (ECMA-402). */
export interface Formats {
  day: (day: Date, year: boolean) => string;
  shortDay: (day: Date, year: boolean) => string;
  monthLetter: (month: Date) => string;
  /** By the clock of twelve hours. */
  time12: (moment: Date) => string;
  number: (number: number, digits: 0 | 1 | 2) => string;
  list: (parts: string[]) => string;
  compare: (a: string, b: string) => number;
}

const made = new Map<Language, Formats>();

export function formatsOf(language: Language): Formats {
  let formats = made.get(language);
  if (!formats) made.set(language, (formats = make(language)));
  return formats;
}

function make(language: Language): Formats {
  const date = (options: Intl.DateTimeFormatOptions) => new Intl.DateTimeFormat(language, { timeZone: 'UTC', ...options });
  const full = { weekday: 'long', day: 'numeric', month: 'long' } as const;
  const short = { day: 'numeric', month: 'short' } as const;
  const [long, longYear] = [date(full), date({ ...full, year: 'numeric' })];
  const [brief, briefYear] = [date(short), date({ ...short, year: 'numeric' })];
  const letter = date({ month: 'narrow' });
  const time = date({ hour: 'numeric', minute: '2-digit', hour12: true });
  const numbers = [0, 1, 2].map((digits) => new Intl.NumberFormat(language, { maximumFractionDigits: digits }));
  const list = new Intl.ListFormat(language, { style: 'long', type: 'conjunction' });
  // A day is not parted from its month.
  const whole = (text: string) => text.replace(/(\d\.) /g, '$1\u00a0');
  // Older systems set a comma after a British weekday, which newer ones do not.
  const plain = (text: string) => whole(language === 'en-GB' ? text.replace(',', '') : text);
  return {
    day: (day, year) => plain((year ? longYear : long).format(day)),
    shortDay: (day, year) => whole((year ? briefYear : brief).format(day)),
    monthLetter: (month) => letter.format(month),
    time12: (moment) => time.format(moment),
    number: (number, digits) => numbers[digits]?.format(number) ?? String(number),
    list: (parts) => list.format(parts),
    compare: new Intl.Collator(language).compare,
  };
}
