import type {
  ActRequest,
  Answer,
  AppError,
  BenchView,
  CorrectRequest,
  ResultsAsked,
  ResultsView,
  Candidate,
  DeviceForm,
  FoundLabel,
  LabelSheet,
  LabelsView,
  LostLabel,
  PhotoView,
  EnoughAsk,
  EnoughView,
  KeepView,
  NextNoticeView,
  NoticesView,
  FrostCsvOptions,
  FrostPreview,
  ImportForm,
  ImportView,
  PacketView,
  RoundView,
  SearchView,
  SeedView,
  SettingsView,
  SitterSheet,
  StartView,
  Task,
  TimelineLine,
  TraysView,
  TrayView,
  WorkView,
  YearView,
} from './generated/types';

/** What a photo is of (none: to be named later) and when it happened (none: now). */
export interface OfPhoto {
  about: string | null;
  happened: string | null;
}

/** Everything the UI can ask of the app. Each call rejects with an AppError. */
export interface Backend {
  start(): Promise<StartView>;
  choose(journal: 'own' | 'demo'): Promise<StartView>;
  leaveDemo(): Promise<StartView>;
  round(): Promise<RoundView>;
  sitterSheet(): Promise<SitterSheet>;
  trays(): Promise<TraysView>;
  tray(id: string): Promise<TrayView>;
  /** What fits words and days, in the whole journal. */
  search(typed: string): Promise<SearchView>;
  seed(): Promise<SeedView>;
  packet(id: string): Promise<PacketView>;
  readPackets(file: Blob, form: ImportForm): Promise<ImportView>;
  importPackets(file: Blob, form: ImportForm): Promise<Answer>;
  bench(packet: string | null): Promise<BenchView>;
  results(asked: ResultsAsked): Promise<ResultsView>;
  /** Sowing windows, plans, plants kept for somebody. */
  year(): Promise<YearView>;
  enough(ask: EnoughAsk): Promise<EnoughView>;
  settings(): Promise<SettingsView>;
  /** What a record of daily minima would give; nothing is written. */
  frostPreview(file: number[], options: FrostCsvOptions): Promise<FrostPreview>;
  setDevice(device: DeviceForm): Promise<SettingsView>;
  act(request: ActRequest): Promise<Answer>;
  undo(act: string, confirmed: boolean): Promise<Answer>;
  withdraw(entry: string, confirmed: boolean): Promise<Answer>;
  correct(request: CorrectRequest): Promise<Answer>;
  /** Journal lines about a subject, as `packet:…` or `place:…`. */
  history(about: string): Promise<TimelineLine[]>;
  /** What was kept of a form that was not written yet. */
  draft(name: string): Promise<string | null>;
  keepDraft(name: string, text: string | null): Promise<void>;
  addPhoto(file: Blob, of: OfPhoto, confirmed: boolean): Promise<Answer>;
  /** The photos about something, or those still to be named. */
  photos(about: string | null): Promise<PhotoView[]>;
  removePhoto(entry: string): Promise<Answer>;
  /** Where a photo is to be had, for an image's source. */
  photoUrl(photo: string, small: boolean): string;
  keep(): Promise<KeepView>;
  /** Begins long work; `work` says how far it is. */
  beginWork(task: Task): Promise<void>;
  work(): Promise<WorkView>;
  cancelWork(): Promise<void>;
  /** The grower chooses a file for the work to come; its name, none if called off. */
  chooseFile(): Promise<string | null>;
  /** The grower chooses the folder that is shared; none if called off. */
  chooseFolder(): Promise<string | null>;
  leaveFolder(): Promise<void>;
  /** Saves a part for other programs; false if called off. */
  exportPart(part: string): Promise<boolean>;
  /** Ends the program. */
  quit(): Promise<void>;
  notices(): Promise<NoticesView>;
  /** None within two weeks. */
  nextNotice(): Promise<NextNoticeView | null>;
  /** Asks the system to allow notices, and so maybe the grower. */
  askNotices(): Promise<NoticesView>;
  testNotice(): Promise<void>;
  /** Has the app start at login, or not. */
  setAtLogin(wanted: boolean): Promise<NoticesView>;
  /** Where a notice asks to be opened, once: a tray by its id, or the round (empty). */
  opening(): Promise<string | null>;
  /** Calls back when a notice asks to be opened. */
  onOpening(opened: () => void): Promise<() => void>;
  /** Calls back with what was written from a notice. */
  onNoted(noted: (answer: Answer) => void): Promise<() => void>;
  labels(): Promise<LabelsView>;
  /** Saves labels as PDF where the grower says; false if that was called off. */
  saveLabels(sheet: LabelSheet): Promise<boolean>;
  /** The trays of a code as it was typed. */
  findLabel(text: string): Promise<FoundLabel>;
  /** The tray of a label in a photo. */
  readLabel(photo: Blob): Promise<FoundLabel>;
  /** Trays that may have lost their label. */
  lostLabel(lost: LostLabel): Promise<Candidate[]>;
  /** Calls back when time has moved on and views should be asked for again. */
  onDueChanged(changed: () => void): Promise<() => void>;
}

/** Whatever was thrown, as an error that can be shown. */
export function asAppError(thrown: unknown): AppError {
  if (typeof thrown === 'object' && thrown !== null && 'code' in thrown && 'say' in thrown) {
    return thrown as AppError;
  }
  const what = thrown instanceof Error ? thrown.message : String(thrown);
  return { code: 'unexpected', say: { key: 'screen-unexpected', args: { what: { as: 'text', value: what } } } };
}
