import type { Fix } from '../../backend/generated/types';
import type { Words } from '../../text/words.svelte';
import { blankReading, type Typed } from '../round/ReadFields.svelte';

export type Reading = Extract<Fix, { of: 'read' | 'read_now' }>;

/** A reading to type over; a blank one for what is none. */
export function readingOf(fix: Fix | null, words: Words): Typed {
  if (fix?.of === 'read') {
    return { ...blankReading(), of: fix.medium, low: words.fromCelsius(fix.range.min_c), high: words.fromCelsius(fix.range.max_c) };
  }
  if (fix?.of === 'read_now') {
    return { ...blankReading(), way: 'now', of: fix.medium, now: words.fromCelsius(fix.temperature_c) };
  }
  return blankReading();
}
