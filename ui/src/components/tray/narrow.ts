import type { TrayLine, TraysView } from '../../backend/generated/types';
import type { Words } from '../../text/words.svelte';

/** Which of the living trays are shown; empty: whichever. */
export interface Only {
  place: string;
  crop: string;
  /** Those of which something is due. */
  due: boolean;
}

export const usual: Only = { place: '', crop: '', due: false };

/** A place with its trays. */
export interface Group {
  id: string;
  name: string;
  lines: TrayLine[];
}

export const groupsOf = (words: Words, view: TraysView): Group[] =>
  [
    ...view.places.map(({ place, trays }) => ({ id: place.id, name: place.name, lines: trays })),
    { id: 'nowhere', name: words.t('tray-nowhere'), lines: view.nowhere },
  ].filter(({ lines }) => lines.length > 0);

const keys = (line: TrayLine) => line.plants.map(({ crop }) => crop.key);

/** The crops in some trays, by name. */
export function cropsOf(words: Words, groups: Group[]): { value: string; label: string }[] {
  const crops = groups.flatMap(({ lines }) => lines.flatMap(({ plants }) => plants.map(({ crop }) => crop)));
  const named = new Map(crops.map((crop) => [crop.key, words.capital(words.crop(crop))]));
  return [...named].map(([value, label]) => ({ value, label })).sort((a, b) => a.label.localeCompare(b.label));
}

export const many = (groups: Group[]): number => groups.reduce((sum, { lines }) => sum + lines.length, 0);

/** Those that are to be shown; the same list if all are. */
export function narrowed(groups: Group[], only: Only): Group[] {
  if (!only.place && !only.crop && !only.due) return groups;
  const shows = (line: TrayLine) => (!only.crop || keys(line).includes(only.crop)) && (!only.due || line.due > 0);
  return groups
    .filter(({ id }) => !only.place || id === only.place)
    .map((group) => ({ ...group, lines: group.lines.filter(shows) }))
    .filter(({ lines }) => lines.length > 0);
}
