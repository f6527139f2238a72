import { convertFileSrc, invoke } from '@tauri-apps/api/core';
import { listen } from '@tauri-apps/api/event';
import type { Backend } from './backend';
import type { ActRequest, Answer, CorrectRequest, DeviceForm, Task } from './generated/types';

/** The app itself, through the shell. */
export class TauriBackend implements Backend {
  start: Backend['start'] = () => invoke('start');
  choose: Backend['choose'] = (journal) => invoke('choose', { journal });
  leaveDemo: Backend['leaveDemo'] = () => invoke('leave_demo');
  round: Backend['round'] = () => invoke('round');
  sitterSheet: Backend['sitterSheet'] = () => invoke('sitter_sheet');
  trays: Backend['trays'] = () => invoke('trays');
  tray: Backend['tray'] = (id) => invoke('tray', { id });
  search: Backend['search'] = (typed) => invoke('search', { typed });
  seed: Backend['seed'] = () => invoke('seed');
  packet: Backend['packet'] = (id) => invoke('packet', { id });
  readPackets: Backend['readPackets'] = async (file, form) => invoke('read_packets', await body(file), { headers: { form: JSON.stringify(form) } });
  importPackets: Backend['importPackets'] = async (file, form) => invoke('import_packets', await body(file), { headers: { form: JSON.stringify(form) } });
  bench: Backend['bench'] = (packet) => invoke('bench', { packet });
  results: Backend['results'] = (asked) => invoke('results', { asked });
  year: Backend['year'] = () => invoke('year');
  enough: Backend['enough'] = (ask) => invoke('enough', { ask });
  settings: Backend['settings'] = () => invoke('settings');
  frostPreview: Backend['frostPreview'] = (file, options) => invoke('frost_preview', { file, options });
  setDevice: Backend['setDevice'] = (device: DeviceForm) => invoke('set_device', { device });
  act: Backend['act'] = (request: ActRequest) => invoke('act', { request });
  undo: Backend['undo'] = (act, confirmed) => invoke('undo', { act, confirmed });
  withdraw: Backend['withdraw'] = (entry, confirmed) => invoke('withdraw', { entry, confirmed });
  correct: Backend['correct'] = (request: CorrectRequest) => invoke('correct', { request });
  history: Backend['history'] = (about) => invoke('history', { about });
  draft: Backend['draft'] = (name) => invoke('draft', { name });
  keepDraft: Backend['keepDraft'] = (name, text) => invoke('keep_draft', { name, text });
  addPhoto: Backend['addPhoto'] = async (file, of, confirmed) => {
    const headers: Record<string, string> = {};
    if (of.about) headers.about = of.about;
    if (of.happened) headers.happened = of.happened;
    if (confirmed) headers.confirmed = 'yes';
    return invoke('add_photo', await body(file), { headers });
  };
  photos: Backend['photos'] = (about) => invoke('photos', { about });
  removePhoto: Backend['removePhoto'] = (entry) => invoke('remove_photo', { entry });
  photoUrl: Backend['photoUrl'] = (photo, small) => `${convertFileSrc(photo, 'photo')}${small ? '?thumb' : ''}`;
  keep: Backend['keep'] = () => invoke('keep');
  beginWork: Backend['beginWork'] = (task: Task) => invoke('work_begin', { task });
  work: Backend['work'] = () => invoke('work');
  cancelWork: Backend['cancelWork'] = () => invoke('work_cancel');
  chooseFile: Backend['chooseFile'] = () => invoke('choose_file');
  chooseFolder: Backend['chooseFolder'] = () => invoke('choose_folder');
  leaveFolder: Backend['leaveFolder'] = () => invoke('leave_folder');
  exportPart: Backend['exportPart'] = (part) => invoke('export', { part });
  quit: Backend['quit'] = () => invoke('quit');
  notices: Backend['notices'] = () => invoke('notices');
  nextNotice: Backend['nextNotice'] = () => invoke('next_notice');
  askNotices: Backend['askNotices'] = () => invoke('ask_notices');
  setAtLogin: Backend['setAtLogin'] = (wanted) => invoke('set_at_login', { wanted });
  testNotice: Backend['testNotice'] = () => invoke('test_notice');
  opening: Backend['opening'] = () => invoke('opening');
  onOpening: Backend['onOpening'] = (opened) => listen('opening', opened);
  onNoted: Backend['onNoted'] = (noted) => listen<Answer>('noted', (event) => noted(event.payload));
  labels: Backend['labels'] = () => invoke('labels');
  saveLabels: Backend['saveLabels'] = (sheet) => invoke('save_labels', { sheet });
  findLabel: Backend['findLabel'] = (text) => invoke('find_label', { text });
  readLabel: Backend['readLabel'] = async (photo) => invoke('read_label', await body(photo));
  lostLabel: Backend['lostLabel'] = (lost) => invoke('lost_label', { lost });
  onDueChanged: Backend['onDueChanged'] = (changed) => listen('due-changed', changed);
}

/** The bytes of a file; Android's web view hands over text only. */
async function body(file: Blob): Promise<Uint8Array | { bytes: string }> {
  if (!navigator.userAgent.includes('Android')) return new Uint8Array(await file.arrayBuffer());
  const url = await new Promise<string>((resolve, reject) => {
    const reader = new FileReader();
    reader.onload = () => resolve(String(reader.result));
    reader.onerror = () => reject(reader.error);
    reader.readAsDataURL(file);
  });
  return { bytes: url.slice(url.indexOf(',') + 1) };
}
