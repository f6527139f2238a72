/** Text as it is searched: no case, no accents. */
export function fold(text: string): string {
  return text.normalize('NFD').replace(/\p{M}/gu, '').toLocaleLowerCase('en-GB').trim();
}

/** Whether every word typed begins or stands in the text. */
export function matches(text: string, typed: string): boolean {
  const folded = fold(text);
  return fold(typed)
    .split(/\s+/)
    .every((part) => folded.includes(part));
}
