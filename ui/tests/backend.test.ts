import { beforeEach, expect, it, vi } from 'vitest';
import { asAppError } from '../src/backend/backend';
import { FakeBackend } from '../src/backend/fake';
import { TauriBackend } from '../src/backend/tauri';

const invoke = vi.hoisted(() => vi.fn());
const listen = vi.hoisted(() => vi.fn());
vi.mock('@tauri-apps/api/core', () => ({ invoke }));
vi.mock('@tauri-apps/api/event', () => ({ listen }));
beforeEach(() => {
  invoke.mockReset();
  invoke.mockResolvedValue('answered');
  listen.mockReset();
});

it('calls each command of the shell by its name and with its arguments', async () => {
  const app = new TauriBackend();
  const request = { act: { do: 'feed' as const, tray: 't' }, happened: null, hand: '', confirmed: false };
  const device = new FakeBackend().device;
  await app.start();
  await app.choose('own');
  await app.leaveDemo();
  await app.round();
  await app.trays();
  await app.tray('t');
  await app.seed();
  await app.bench(null);
  await app.settings();
  await app.setDevice(device);
  await app.act(request);
  await app.undo('a', true);
  await app.correct({ entry: 'e', fix: null, happened: null, hand: '', confirmed: false });
  await app.history('place:p');
  await app.draft('sow');
  await app.keepDraft('sow', null);
  await app.keep();
  await app.beginWork({ work: 'check' });
  await app.work();
  await app.cancelWork();
  await app.chooseFile();
  await app.chooseFolder();
  await app.leaveFolder();
  await app.exportPart('report');
  await app.quit();
  expect(await app.withdraw('e', false)).toBe('answered');
  expect(invoke.mock.calls).toEqual([
    ['start'],
    ['choose', { journal: 'own' }],
    ['leave_demo'],
    ['round'],
    ['trays'],
    ['tray', { id: 't' }],
    ['seed'],
    ['bench', { packet: null }],
    ['settings'],
    ['set_device', { device }],
    ['act', { request }],
    ['undo', { act: 'a', confirmed: true }],
    ['correct', { request: { entry: 'e', fix: null, happened: null, hand: '', confirmed: false } }],
    ['history', { about: 'place:p' }],
    ['draft', { name: 'sow' }],
    ['keep_draft', { name: 'sow', text: null }],
    ['keep'],
    ['work_begin', { task: { work: 'check' } }],
    ['work'],
    ['work_cancel'],
    ['choose_file'],
    ['choose_folder'],
    ['leave_folder'],
    ['export', { part: 'report' }],
    ['quit'],
    ['withdraw', { entry: 'e', confirmed: false }],
  ]);
});

it('listens for the time moving on', async () => {
  const changed = () => {};
  await new TauriBackend().onDueChanged(changed);
  expect(listen).toHaveBeenCalledWith('due-changed', changed);
});

it('has the same calls in the fake', () => {
  const calls = (backend: object) => Object.entries(backend).filter(([, v]) => typeof v === 'function').map(([k]) => k).sort();
  expect(calls(new FakeBackend())).toEqual(calls(new TauriBackend()));
});

it('shows whatever is thrown as an error with words', () => {
  const error = { code: 'store', say: { key: 'error-store', args: {} } };
  expect(asAppError(error)).toBe(error);
  expect(asAppError(new Error('no such command')).say.args).toEqual({ what: { as: 'text', value: 'no such command' } });
});
