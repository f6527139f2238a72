import type { PlantName, PlantsLine, PlantsRef, TrayCard, TrayView } from '../../backend/generated/types';
import type { Words } from '../../text/words.svelte';

/** A tray as far as an answer needs to know it. */
export interface TrayAbout {
  tray: string;
  code: string;
  container: string;
  covered: boolean;
  plants: PlantsLine[];
}

export function aboutCard(card: TrayCard): TrayAbout {
  return card;
}

export function aboutTray(view: TrayView): TrayAbout {
  return { ...view, plants: view.plants.filter((p) => p.living).map((p) => p.line) };
}

export const same = (a: PlantsRef, b: PlantsRef) => a.type === b.type && a.id === b.id;

export const letterOf = (index: number) => String.fromCharCode(65 + (index % 26));

/** The plants a job is about: those it names, else the only ones there are. */
export function plantsOf(tray: TrayAbout, plants: PlantsRef | null): PlantsLine | undefined {
  if (!plants) return tray.plants.length === 1 ? tray.plants[0] : undefined;
  return tray.plants.find((line) => same(line.plants, plants));
}

/** "Tomato ‘Amber Lantern’", or the several of a mixed tray in a list. */
export function inTray(words: Words, plants: PlantName[]): string {
  if (plants.length === 0) return words.t('tray-nothing-in-it');
  return words.list(plants.map((line) => words.plant(line.crop, line.variety)));
}

/** What is to be said of some plants: stage, day and numbers. */
export function standing(words: Words, line: PlantsLine): string {
  const stage = words.Word('stage', line.stage);
  if (line.stage === 'sown') {
    return line.seeds === null
      ? words.t('plants-sown-pinch', { stage, day: line.day })
      : words.t('plants-sown', { stage, day: line.day, seeds: line.seeds });
  }
  return words.t('plants-standing', { stage, day: line.day, there: line.numbers.there });
}
