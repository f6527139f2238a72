import * as data from './fake-data';
import type { JobKind, JobView, PlaceRound, PlantsLine, PlantsRef, TrayCard } from './generated/types';

/** Canned trays after emergence: too warm, drawn, hungry, empty, and nowhere. */
const job = (kind: JobKind, why: string, plants: PlantsRef | null = null): JobView => ({
  key: `job-${kind}`, kind, plants, today: false, due: data.day(0), why: data.say(`fake-why-${why}`), suggested: null, verdict: null,
});
const card = (tray: string, code: string, plants: PlantsLine, jobs: JobView[]): TrayCard => ({
  tray, code, container: 'cells', covered: false, plants: [plants], jobs,
});

export function growing(places: PlaceRound[], lines: Record<'lettuce' | 'cabbage' | 'celery' | 'parsley', PlantsLine>) {
  const [, sill] = places;
  if (!sill) return { places, nowhere: [] };
  const cards = [
    card('t-k4', 'K4', lines.lettuce, [job('cooler_now', 'cooler'), job('look_for_legginess', 'leggy', lines.lettuce.plants)]),
    card('t-h3', 'H3', lines.celery, [job('feed', 'feed')]),
    card('t-k5', 'K5', lines.cabbage, [job('empty_the_tray', 'empty')]),
  ];
  return { places: [{ ...sill, cards }], nowhere: [card('t-k9', 'K9', lines.parsley, [job('say_where', 'say-where')])] };
}
