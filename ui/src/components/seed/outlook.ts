import type { PacketLine } from '../../backend/generated/types';
import type { Words } from '../../text/words.svelte';

/** "perhaps 6 to 8 in 10 come up"; nothing where it is not known. */
export function perhaps(words: Words, line: PacketLine): string {
  if (!line.germination) return '';
  const [low, high] = line.germination.map((share) => Math.round(share * 10)) as [number, number];
  return low === high ? words.t('packet-perhaps-one', { high }) : words.t('packet-perhaps', { low, high });
}

export function packetFacts(words: Words, line: PacketLine): string {
  const facts = [
    line.year === null ? words.t('packet-year-unknown') : String(line.year),
    perhaps(words, line),
    line.seeds_left === null ? '' : words.t('packet-seeds-left', { seeds: line.seeds_left }),
  ];
  return facts.filter(Boolean).join('\u00a0· ');
}
