import type { SeedsAnswer, TreatmentForm } from '../../backend/generated/types';
import type { Session } from '../../state/session.svelte';
import { trayDraft, type TrayDraft } from '../tray/draft';

export type When = 'now' | 'morning' | 'yesterday' | 'day';

/** All that was filled in at the bench: plain, so that it can be kept. */
export interface SowDraft {
  from: 'seed' | 'other';
  packet: string | null;
  wanted: number;
  /** In how many of a hundred times it is to be enough. */
  odds: '80' | '90' | '95';
  perCell: number;
  /** Seeds as typed; none: as many as are enough. */
  seeds: number | null;
  way: SeedsAnswer['as'];
  /** Depth as set, mm; none: as advised. */
  depth: number | null;
  tray: TrayDraft;
  /** What was done to the seed before. */
  treatment: TreatmentForm;
  when: When;
  day: string;
  time: string;
  /** The sowing that it repeats or stands beside. */
  againOf: string | null;
  /** The plan that it answers. */
  plan: string | null;
  /** What is set in without seed. */
  origin: 'cuttings' | 'tubers' | 'bulbs' | 'plugs';
  crop: string;
  variety: string;
  number: number;
}

export const sowDraft = (rest: Partial<SowDraft> = {}): SowDraft => ({
  from: 'seed',
  packet: null,
  wanted: 6,
  odds: '90',
  perCell: 1,
  seeds: null,
  way: 'exact',
  depth: null,
  tray: trayDraft(),
  treatment: { soaked_hours: null, chipped: false, cold_weeks: null },
  when: 'now',
  day: '',
  time: '08:00',
  againOf: null,
  plan: null,
  origin: 'cuttings',
  crop: '',
  variety: '',
  number: 6,
  ...rest,
});

/** When it happened, local time of the garden; none: now. */
export function momentOf(draft: SowDraft, session: Session): string | null {
  switch (draft.when) {
    case 'now':
      return session.happened;
    case 'morning':
      return `${session.inDays(0)}T08:00:00`;
    case 'yesterday':
      return `${session.inDays(-1)}T18:00:00`;
    case 'day':
      return `${draft.day || session.inDays(-2)}T${draft.time}:00`;
  }
}
