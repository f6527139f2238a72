import type { BringsView, InsideView, KeepView, Outcome, RecoveryView, Task, WorkView } from './generated/types';
import { day, n, say } from './fake-data';

const backup = (days: number) => ({ name: `${day(days)}.db`, at: `${day(days)}T08:12:00` });

export const folder = '/media/card/garden/plumule';

export const keep = (demo: boolean): KeepView => ({
  demo,
  backups: [0, -1, -2, -3, -7, -14, -31].map(backup),
  current: false,
  folder: demo ? null : folder,
  trouble: null,
});

const inside: InsideView = {
  entries: 1284, first: '2024-02-03', last: day(-4), photos: 57, photos_found: 57, written: null, sealed: false,
};
const archive: InsideView = { ...inside, written: `${day(-4)}T19:40:00` };
const brings: BringsView = {
  inside: archive, new: 31, known: 1253, photos_new: 4, photos_missing: 0, conflicts: 2, theirs_hold: 1, unknown_kinds: 0,
  kinds: [{ kind: 'felt', number: 14 }, { kind: 'counted', number: 9 }, { kind: 'sown', number: 1 }],
};
const recovery: RecoveryView = {
  backup: backup(-1), in_backup: 1240, salvaged: 43, altered: 1, missing: 1, entries: 1283, device_made_anew: false,
};

const came: Record<Task['work'], Outcome> = {
  backup: { came: 'backup', ...backup(0) },
  check: {
    came: 'checked', entries: 1284, photos: 57,
    findings: [{ code: 'entry_altered', say: say('finding-entry-altered', { entry: n(417) }) }],
  },
  look_inside: { came: 'inside', ...inside },
  restore: { came: 'restored', inside, set_aside: true },
  save_archive: { came: 'saved', inside: archive, left_out: 0 },
  look_inside_archive: { came: 'inside', ...archive },
  restore_archive: { came: 'restored', inside: archive, set_aside: false },
  preview_archive: { came: 'preview', ...brings },
  take_in_archive: { came: 'taken_in', ...brings, kinds: [] },
  share: { came: 'shared', devices: 1, new: 12, photos_new: 1, waiting: 1, written: 3, photos_written: 0 },
  look_over: { came: 'looked_over', ...recovery },
  recover: { came: 'recovered', ...recovery },
};

export function work(task: Task | undefined, running: boolean, cancelled: boolean): WorkView {
  const error = cancelled && !running ? { code: 'cancelled', say: say('error-cancelled') } : null;
  const outcome = task && !running && !error ? structuredClone(came[task.work]) : null;
  return { number: 1, running, step: running ? 'photos' : '', share: running ? 0.4 : null, outcome, error };
}
