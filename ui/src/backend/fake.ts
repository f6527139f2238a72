import type { Backend } from './backend';
import * as data from './fake-data';
import { fakeWords } from './fake-words';
import type {
  Act,
  ActRequest,
  Answer,
  AppError,
  DeviceForm,
  JobView,
  RoundView,
  StartView,
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
 * Scenes: `demo`, `choose`, `empty`, `quiet`, `many` (200 trays), `refusing` (acts fail), `broken` (views fail).
 */
export class FakeBackend implements Backend {
  readonly scene: string;
  /** All that was asked to be written. */
  readonly requests: ActRequest[] = [];
  readonly undone: string[] = [];
  readonly withdrawn: string[] = [];
  device: DeviceForm = structuredClone(data.device);
  #journal: string;
  #done: { act: string; request: Act; undone: boolean }[] = [];

  constructor(scene = 'demo') {
    this.scene = scene;
    this.#journal = scene === 'choose' ? 'choose' : scene === 'empty' ? 'own' : 'demo';
  }

  start = async (): Promise<StartView> => ({ journal: this.#journal, device: this.device, zone: 'Europe/London' });

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
    const places = this.#bare || quiet ? [] : data.round();
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
    if (this.scene === 'many') {
      const [first] = places;
      const cards = first?.cards ?? [];
      if (first) first.cards = Array.from({ length: 100 }, (_, i) => cards.map((c) => ({ ...c, tray: `${c.tray}-${i}`, jobs: c.jobs.map((j) => ({ ...j, key: `${j.key}-${i}` })) }))).flat();
    }
    return {
      at: data.now,
      evening: false,
      places,
      next: quiet
        ? { at: `${data.day(1)}T08:00:00`, say: data.say('fake-next', { place: { as: 'text', value: 'shed' } }) }
        : null,
      any_living: !this.#bare,
      away_until: quiet ? data.day(3) : null,
    };
  };

  trays = async () => {
    this.#mayFail();
    return this.#bare ? { places: [], nowhere: [], set_aside: [], past: [] } : data.trays();
  };

  tray = async (id: string) => {
    this.#mayFail();
    const view = data.tray(id);
    if (!view) throw gone;
    return view;
  };

  seed = async () => {
    this.#mayFail();
    return { packets: this.#bare ? [] : structuredClone(data.packets), crops: data.crops };
  };

  bench = async (packet: string | null) => {
    this.#mayFail();
    const view = data.bench(packet);
    return this.#bare ? { ...view, packets: [], places: [], trays: [], chosen: null } : view;
  };

  settings = async () => {
    this.#mayFail();
    const view = data.settings(this.#journal === 'demo');
    return { ...view, places: this.#bare ? [] : view.places, device: this.device };
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
