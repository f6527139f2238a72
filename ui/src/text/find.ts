import { fold } from './fold';

/** Slips forgiven in a word of so many letters (judgement). */
const slips = (letters: number) => (letters < 4 ? 0 : letters < 6 ? 1 : 2);

/**
 * The fewest letters to put in, leave out, change or swap so that what is typed
 * begins a word (optimal string alignment, the end of the word left free).
 */
export function slipsTo(typed: string, word: string): number {
  let two: number[] = [];
  let one = Array.from({ length: word.length + 1 }, (_, j) => j);
  for (let i = 1; i <= typed.length; i += 1) {
    const row = [i];
    for (let j = 1; j <= word.length; j += 1) {
      const same = typed[i - 1] === word[j - 1] ? 0 : 1;
      let least = Math.min((one[j] ?? 0) + 1, (row[j - 1] ?? 0) + 1, (one[j - 1] ?? 0) + same);
      if (i > 1 && j > 1 && typed[i - 1] === word[j - 2] && typed[i - 2] === word[j - 1]) {
        least = Math.min(least, (two[j - 2] ?? 0) + 1);
      }
      row.push(least);
    }
    two = one;
    one = row;
  }
  return Math.min(...one);
}

const parts = (text: string) => fold(text).split(/[^\p{L}\p{N}]+/u).filter(Boolean);

/** How far off a text is: 0 where each word typed begins one of it, 1 where it stands within, more with slips; none where it does not fit. */
function off(words: string[], typed: string[]): number | null {
  let sum = 0;
  for (const part of typed) {
    let least = Infinity;
    for (const word of words) {
      if (word.startsWith(part)) least = 0;
      else if (word.includes(part)) least = Math.min(least, 1);
      else if (least > 1 && slips(part.length) > 0) {
        const slipped = slipsTo(part, word);
        if (slipped <= slips(part.length)) least = Math.min(least, 1 + slipped);
      }
    }
    if (least === Infinity) return null;
    sum += least;
  }
  return sum;
}

/** Something to be found, with the words it is found by. */
export interface Findable<T> {
  item: T;
  words: string[];
}

export const findable = <T>(item: T, text: string): Findable<T> => ({ item, words: parts(text) });

/** What fits what is typed, the best first, else as it was; with slips only where nothing fits without. */
export function find<T>(all: readonly Findable<T>[], typed: string): T[] {
  const wanted = parts(typed);
  const found = all.flatMap(({ item, words }) => {
    const far = off(words, wanted);
    return far === null ? [] : [{ item, far }];
  });
  const clean = found.filter(({ far }) => far <= wanted.length);
  return (clean.length > 0 ? clean : found).sort((a, b) => a.far - b.far).map(({ item }) => item);
}
