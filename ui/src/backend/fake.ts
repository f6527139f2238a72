import type { Backend, OfPhoto } from './backend';
import { bench, enough } from './fake-bench';
import * as data from './fake-data';
import * as labels from './fake-labels';
import * as photos from './fake-photos';
import { growing } from './fake-growing';
import * as keep from './fake-keep';
import { found } from './fake-search';
import * as season from './fake-season';
import * as box from './fake-seed';
import { fakeWords } from './fake-words';
import { planJob, year } from './fake-plans';
import { results } from './fake-year';
import type {
  Act,
  ActRequest,
  Answer,
  AppError,
  CorrectRequest,
  DeviceForm,
  ImportForm,
  EnoughAsk,
  FrostCsvOptions,
  FrostPreview,
  LabelSheet,
  LostLabel,
  JobView,
  ResultsAsked,
  PhotoView,
  NoticesView,
  PlaceRound,
  RoundView,
  StartView,
  Task,
  TrayLine,
  WorkView,
} from './generated/types';

export { fakeWords };

const gone: AppError = { code: 'not_found', say: data.say('fake-gone') };

/** Whether an act does a job's work. */
function answers(act: Act, job: JobView, tray: string | null, place: string): boolean {
  const ofPlants = 'plants' in act && (job.plants === null || job.plants.id === act.plants.id);
  switch (act.do) {
    case 'feel':
      return job.kind === 'feel_the_compost' && tray !== null && act.trays.includes(tray);
    case 'count':
      return ofPlants && (job.kind === 'look_for_seedlings' || job.kind === 'it_is_late');
    case 'read':
    case 'read_now':
      return job.kind === 'read_the_thermometer' && act.place === place;
    case 'move':
      return job.kind === 'into_the_light' && tray !== null && act.trays.includes(tray);
    case 'cover':
      return job.kind === 'cover_off' && act.tray === tray;
    case 'shelter':
      return (job.kind === 'frost_tonight' || job.kind === 'bring_in') && tray !== null && act.trays.includes(tray);
    case 'air':
      return job.kind === 'open_the_lid' && act.place === place;
    case 'harden_off':
      return job.kind === 'harden_off' && act.tray === tray;
    case 'leave':
    case 'go_on':
      return ofPlants && ['thin', 'plant_out', 'prick_out', 'pot_on'].includes(job.kind);
    case 'dig_up':
    case 'nothing_came_up':
      return job.kind === 'it_is_late' && job.plants?.id === act.sowing;
    case 'put_off':
    case 'dismiss':
      return job.key === act.job;
    default:
      return false;
  }
}

/**
 * Canned views, for tests and for looking at the screens in a plain browser.
 * Scenes: `demo`, `choose`, `empty`, `quiet`, `many` (200 trays, 300 packets), `one` (packet), `long` (names), `left` (hand), `inches`, `warnings`, `refusing` (acts fail), `broken` (views fail),
 * `season` (frost, away), `planned` (a plan to be sown for), `keep` (an own journal), `working` (long work that never ends), `damaged`, `newer` (can only be read).
 */
export class FakeBackend implements Backend {
  readonly scene: string;
  /** All that was asked to be written. */
  readonly requests: ActRequest[] = [];
  readonly undone: string[] = [];
  readonly imported: ImportForm[] = [];
  readonly withdrawn: string[] = [];
  readonly corrected: CorrectRequest[] = [];
  readonly tasks: Task[] = [];
  readonly exported: string[] = [];
  cancelled = false;
  #asked = 0;
  readonly drafts = new Map<string, string>();
  /** All photos that were taken in. */
  readonly added: OfPhoto[] = [];
  /** All sheets of labels that were saved. */
  readonly sheets: LabelSheet[] = [];
  #unnamed: PhotoView[] = photos.unnamed;
  /** Test notices that were sent. */
  tested = 0;
  #allowed = false;
  device: DeviceForm = structuredClone(data.device);
  #journal: string;
  #done: { act: string; request: Act; undone: boolean }[] = [];

  constructor(scene = 'demo', language = 'en-GB') {
    this.scene = scene;
    this.device.language = language;
    if (language === 'en-US') Object.assign(this.device, { temperature: 'fahrenheit', length: 'inch', clock: 'h12' });
    if (scene === 'left') this.device.hand = 'left';
    if (scene === 'inches') this.device.length = 'inch';
    this.#journal = scene === 'choose' || scene === 'damaged' ? scene : ['empty', 'keep', 'working'].includes(scene) ? 'own' : 'demo';
  }

  start = async (): Promise<StartView> => {
    const trouble = this.scene === 'damaged' ? { code: 'journal_damaged', say: data.say('error-journal-damaged') } : null;
    return { journal: this.#journal, trouble, read_only: this.scene === 'newer', device: this.device, language: 'en-GB', zone: 'Europe/London' };
  };

  choose = async (journal: 'own' | 'demo') => {
    this.#journal = journal;
    return this.start();
  };

  leaveDemo = async () => {
    this.#journal = 'choose';
    return this.start();
  };

  get #bare(): boolean {
    return this.scene === 'empty' || (this.scene === 'choose' && this.#journal === 'own');
  }

  round = async (): Promise<RoundView> => {
    this.#mayFail();
    const quiet = this.scene === 'quiet';
    let places: PlaceRound[] = this.#bare || quiet ? [] : data.round();
    if (this.scene === 'season') places = season.seasonRound(places);
    const [first] = places;
    if (this.scene === 'many' && first) first.cards = Array.from({ length: 100 }, (_, i) => first.cards.map((card) => data.another(card, i))).flat();
    for (const place of places) {
      const open = (jobs: JobView[], tray: string | null) =>
        jobs.filter((job) => !this.#done.some((d) => !d.undone && answers(d.request, job, tray, place.place.id)));
      place.jobs = open(place.jobs, null);
      for (const card of place.cards) card.jobs = open(card.jobs, card.tray);
      const idle = place.cards.filter((card) => card.jobs.length === 0).length;
      place.cards = place.cards.filter((card) => card.jobs.length > 0);
      place.quiet += idle;
      place.to_feel = place.cards.filter((card) => card.jobs.some((j) => j.kind === 'feel_the_compost')).map((card) => card.tray);
    }
    const grown = this.scene === 'growing' ? growing(places, data.lines) : { places, nowhere: [] };
    return {
      at: data.now,
      evening: false,
      ...grown,
      seed: this.#bare || quiet ? [] : [...(this.scene === 'planned' ? [planJob()] : []), ...box.seedJobs()].filter(({ job, test }) => !this.#done.some((d) => !d.undone && ((d.request.do === 'count_test' && d.request.test === test?.test) || answers(d.request, job, null, '')))),
      next: quiet
        ? { at: `${data.day(1)}T08:00:00`, say: data.say('fake-next', { place: { as: 'text', value: 'shed' } }) }
        : null,
      any_living: !this.#bare,
      away_until: quiet ? data.day(3) : null,
    };
  };

  sitterSheet = async () => {
    this.#mayFail();
    return season.sitterSheet(this.#bare);
  };

  trays = async () => {
    this.#mayFail();
    if (this.#bare) return { places: [], nowhere: [], set_aside: [], past: [] };
    const view = data.trays();
    const many = (line: TrayLine) => Array.from({ length: 33 }, (_, i) => (i === 0 ? line : { ...line, tray: `${line.tray}-${i}`, code: `${line.code}${i}` }));
    if (this.scene === 'many') for (const place of view.places) place.trays = place.trays.flatMap(many);
    return view;
  };

  tray = async (id: string) => {
    this.#mayFail();
    const view = data.tray(id);
    if (!view) throw gone;
    if (id === 't-k7') view.timeline = [...photos.lines(), ...view.timeline];
    return view;
  };

  /** All that was looked for. */
  readonly sought: string[] = [];
  search = async (typed: string) => {
    this.#mayFail();
    this.sought.push(typed);
    return found(typed, this.scene === 'many');
  };

  seed = async () => {
    this.#mayFail();
    const { scene } = this;
    return box.seed(this.#bare ? 'bare' : scene === 'many' || scene === 'one' || scene === 'long' ? scene : 'usual');
  };

  packet = async (id: string) => {
    this.#mayFail();
    const view = box.packet(id, this.scene === 'long');
    if (!view) throw gone;
    return view;
  };

  readPackets = async (_file: Blob, form: ImportForm) => box.table(form, this.scene === 'long');

  importPackets = async (...sent: [Blob, ImportForm]): Promise<Answer> => {
    this.imported.push(sent[1]);
    return this.#written('act-import', null);
  };

  bench = async (packet: string | null) => {
    this.#mayFail();
    const view = bench(packet, this.scene);
    // What was just sown leaves room beside it.
    const sown = this.#done.some((d) => !d.undone && d.request.do === 'sow');
    if (sown) view.trays.push({ tray: 't-k7', code: 'K10', container: 'cells', place: data.places.sill, rows: 6, columns: 4, taken: [0, 1, 2, 3, 4], warnings: [] });
    return this.#bare ? { ...view, packets: [], places: [], trays: [], last: null, chosen: null } : view;
  };

  enough = async (ask: EnoughAsk) => {
    this.#mayFail();
    return enough(ask);
  };

  results = async (asked: ResultsAsked) => {
    this.#mayFail();
    return results(asked, this.#bare);
  };

  year = async () => {
    this.#mayFail();
    return year(this.#bare);
  };

  settings = async () => {
    this.#mayFail();
    const view = data.settings(this.#journal === 'demo');
    if (this.scene === 'season') view.away = [{ from: data.day(-1), to: null, now: true }];
    return { ...view, places: this.#bare ? [] : view.places, device: this.device };
  };

  frostPreview = async (file: number[], options: FrostCsvOptions): Promise<FrostPreview> => {
    if (file.length === 0) {
      const error: AppError = { code: 'frost_csv_empty', say: data.say('error-frost-csv-empty') };
      throw error;
    }
    return season.frostPreview(options);
  };

  setDevice = async (device: DeviceForm) => {
    this.device = device;
    return this.settings();
  };

  act = async (request: ActRequest): Promise<Answer> => {
    this.requests.push(structuredClone(request));
    if (this.scene === 'refusing') {
      const error: AppError = { code: 'temperature_out_of_range', say: data.say('fake-refused', { temperature: { as: 'celsius', value: 80 } }) };
      throw error;
    }
    const { act } = request;
    if (act.do === 'count' && act.up.as === 'number' && act.up.number > 60 && !request.confirmed) {
      const args = { up: data.n(act.up.number), seeds: data.n(12) };
      return { answer: 'asks_first', questions: [{ code: 'more_than_sown', say: data.say('fake-asks-more-than-sown', args) }] };
    }
    if (act.do === 'name_photo') this.#unnamed = this.#unnamed.filter((photo) => photo.entry !== act.photo);
    const id = `act-${this.#done.length + 1}`;
    this.#done.push({ act: id, request: act, undone: false });
    return this.#written(id, act);
  };

  undo = async (act: string): Promise<Answer> => {
    this.undone.push(act);
    const done = this.#done.find((d) => d.act === act);
    if (done) done.undone = !done.undone;
    return { ...this.#written(act, null), say: data.say('fake-undone') };
  };

  withdraw = async (entry: string): Promise<Answer> => {
    this.withdrawn.push(entry);
    return { ...this.#written(`withdrawal-of-${entry}`, null), say: data.say('fake-withdrawn') };
  };

  correct = async (request: CorrectRequest): Promise<Answer> => {
    this.corrected.push(structuredClone(request));
    return this.#written(`correction-of-${request.entry}`, null);
  };

  history = async () => data.timeline;

  // Who looks at other scenes has put the tour away.
  draft = async (name: string) => this.drafts.get(name) ?? (name === 'tour' && this.scene !== 'tour' ? '{"off":true}' : null);

  keepDraft = async (name: string, text: string | null) => {
    if (text === null) this.drafts.delete(name);
    else this.drafts.set(name, text);
  };

  addPhoto = async (file: Blob, of: OfPhoto): Promise<Answer> => {
    if (file.size === 0 || this.scene === 'refusing') {
      const error: AppError = { code: 'photo_empty', say: data.say('error-photo-empty') };
      throw error;
    }
    this.added.push(of);
    return { ...this.#written(`act-photo-${this.added.length}`, null), say: data.say('line-photo-taken') };
  };

  photos = async (about: string | null) => {
    this.#mayFail();
    if (this.#bare) return [];
    return about === null ? this.#unnamed : photos.about(about);
  };

  removePhoto = (entry: string) => this.withdraw(entry);

  photoUrl = photos.photoUrl;
  keep = async () => keep.keep(this.#journal === 'demo');

  beginWork = async (task: Task) => {
    this.tasks.push(structuredClone(task));
    this.#asked = 0;
  };

  work = async (): Promise<WorkView> => {
    const task = this.tasks.at(-1);
    const running = this.scene === 'working' || (this.#asked++ === 0 && !this.cancelled);
    return keep.work(task, running, this.cancelled);
  };

  cancelWork = async () => {
    this.cancelled = true;
  };

  chooseFile = async () => 'plumule-2026-04-12.zip';

  chooseFolder = async () => keep.folder;

  leaveFolder = async () => {};

  exportPart = async (part: string) => this.exported.push(part) > 0;

  quit = async () => {};
  /** `refusing`: the person said no; `quiet`: not asked yet, on a phone. */
  notices = async (): Promise<NoticesView> => ({
    wanted: this.device.notices,
    permission: this.scene === 'refusing' ? 'refused' : this.#allowed ? 'granted' : this.scene === 'quiet' ? 'ask' : 'granted',
    held_back: this.scene === 'refusing',
    ...(['refusing', 'quiet'].includes(this.scene) ? { system: 'android', at_login: null } : { system: 'linux', at_login: this.atLogin }),
  });

  atLogin = false;
  setAtLogin = async (wanted: boolean) => {
    this.atLogin = wanted;
    return this.notices();
  };

  nextNotice = async () => ({
    at: '2026-04-17T08:00:00',
    says: 'Kitchen sill: 3 trays to feel\nGreenhouse: 1 tray to feel; Leek late',
  });

  askNotices = async () => {
    this.#allowed = true;
    return this.notices();
  };

  testNotice = async () => {
    if (this.scene === 'refusing') {
      const error: AppError = { code: 'notice_not_shown', say: { key: 'error-notice-not-shown', args: {} } };
      throw error;
    }
    this.tested += 1;
  };

  /** What a notice asks to be opened; tests press it by `press`. */
  asksToOpen: string | null = null;
  #opened: () => void = () => {};
  #noted: (answer: Answer) => void = () => {};

  opening = async () => {
    const asked = this.asksToOpen;
    this.asksToOpen = null;
    return asked;
  };

  onOpening = async (opened: () => void) => {
    this.#opened = opened;
    return () => {};
  };

  onNoted = async (noted: (answer: Answer) => void) => {
    this.#noted = noted;
    return () => {};
  };

  /** As if a notice about that tray was pressed. */
  press(tray: string) {
    this.asksToOpen = tray;
    this.#opened();
  }

  /** As if a notice was answered. */
  answerNotice() {
    this.#noted(this.#written('from-a-notice', null));
  }

  labels = async () => {
    this.#mayFail();
    return labels.labels(this.#bare);
  };

  saveLabels = async (sheet: LabelSheet) => {
    this.sheets.push(structuredClone(sheet));
    return this.scene !== 'refusing';
  };

  findLabel = async (text: string) => ({ code: text.trim(), trays: labels.ofCode(text) });

  readLabel = async (photo: Blob) => {
    if (photo.size === 0) {
      const error: AppError = { code: 'label_not_read', say: data.say('error-label-not-read') };
      throw error;
    }
    return { code: 'K7', trays: labels.ofCode('K7') };
  };

  lostLabel = async (asked: LostLabel) => labels.lost(asked);

  onDueChanged = async () => () => {};

  #written(act: string, request: Act | null): Extract<Answer, { answer: 'written' }> {
    const sown = request?.do === 'sow' || request?.do === 'start_batch';
    return {
      answer: 'written',
      act,
      say: data.say('fake-done'),
      tray: sown ? 't-k7' : null,
      sowing: request?.do === 'sow' ? 's-new' : null,
      packet: request?.do === 'add_packet' ? 'p-tomato' : null,
      place: null,
    };
  }

  #mayFail() {
    if (this.scene === 'broken') {
      const error: AppError = { code: 'store', say: data.say('fake-gone') };
      throw error;
    }
  }
}
