import type { PlanForm, RhythmForm } from '../../backend/generated/types';

/** A plan being filled in: plain texts, one for each field that any rhythm has. */
export interface PlanDraft {
  crop: string;
  variety: string;
  packet: string;
  wanted: number;
  as: RhythmForm['as'];
  day: string;
  over: number;
  every: number;
  from: string;
  to: string;
  raise: string;
}

/** So many in a hundred over those wanted for a sale, unless set (judgement). */
export const OVER = 15;

export function planDraft(form: PlanForm | null, inDays: (days: number) => string): PlanDraft {
  const draft: PlanDraft = {
    crop: form?.crop ?? '',
    variety: form?.variety ?? '',
    packet: form?.packet ?? '',
    wanted: form?.wanted ?? 12,
    as: form?.rhythm.as ?? 'by',
    day: inDays(90),
    over: OVER,
    every: 3,
    from: inDays(0),
    to: inDays(90),
    raise: form?.raise_weeks ? String(form.raise_weeks) : '',
  };
  const rhythm = form?.rhythm;
  if (rhythm?.as === 'by' || rhythm?.as === 'sale') draft.day = rhythm.day;
  if (rhythm?.as === 'sale') draft.over = rhythm.over_percent;
  if (rhythm?.as === 'every') draft.every = rhythm.weeks;
  if (rhythm?.as === 'every' || rhythm?.as === 'true_leaves') Object.assign(draft, { from: rhythm.from, to: rhythm.to });
  return draft;
}

export function planForm(draft: PlanDraft): PlanForm {
  const { crop, variety, packet, wanted, day, from, to } = draft;
  const rhythm: RhythmForm = {
    by: { as: 'by' as const, day },
    sale: { as: 'sale' as const, day, over_percent: draft.over },
    every: { as: 'every' as const, weeks: draft.every, from, to },
    true_leaves: { as: 'true_leaves' as const, from, to },
  }[draft.as];
  const weeks = Number(draft.raise);
  return { crop, variety, packet: packet || null, wanted, rhythm, raise_weeks: weeks > 0 ? Math.round(weeks) : null };
}
