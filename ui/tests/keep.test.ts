import { fireEvent, screen, waitFor, within } from '@testing-library/svelte';
import { expect, it, vi } from 'vitest';
import { open } from './open';

const note = () => screen.getByRole<HTMLTextAreaElement>('textbox', { name: 'Note' });

it('keeps a note while it is typed, within half a second of the last key', async () => {
  const { backend, user } = await open('#/tray/t-k7');
  await user.click(await screen.findByRole('button', { name: 'Note' }, { timeout: 10_000 }));
  vi.useFakeTimers();
  try {
    await fireEvent.input(note(), { target: { value: 'The lid' } });
    await vi.advanceTimersByTimeAsync(200);
    await fireEvent.input(note(), { target: { value: 'The lid dri' } });
    await vi.advanceTimersByTimeAsync(400);
    expect(backend.drafts.get('note:tray:t-k7')).toBe('"The lid dri"');
  } finally {
    vi.useRealTimers();
  }
});

it('fills in what was kept, discards it, and brings it back', async () => {
  const { backend, user } = await open('#/tray/t-k7');
  backend.drafts.set('note:tray:t-k7', '"The lid dri"');
  await user.click(await screen.findByRole('button', { name: 'Note' }));
  await waitFor(() => expect(note()).toHaveValue('The lid dri'));
  await user.click(screen.getByRole('button', { name: 'Start afresh' }));
  expect(note()).toHaveValue('');
  await waitFor(() => expect(backend.drafts.size).toBe(0));
  await user.click(screen.getByRole('button', { name: 'Bring it back' }));
  expect(note()).toHaveValue('The lid dri');
  await waitFor(() => expect(backend.drafts.size).toBe(1));
  await user.type(note(), 'ps');
  await user.click(screen.getByRole('button', { name: 'Write down' }));
  await waitFor(() => expect(backend.drafts.size).toBe(0));
  expect(backend.requests.at(-1)?.act).toEqual({ do: 'note', about: 'tray:t-k7', text: 'The lid drips' });
});

it('keeps what is filled in for a packet, and an untouched form not at all', async () => {
  const { backend, user } = await open('#/seed');
  await user.click(await screen.findByRole('button', { name: 'Add packets' }));
  await user.click(screen.getByRole('button', { name: 'Close' }));
  expect(backend.drafts.size).toBe(0);
  await user.click(screen.getByRole('button', { name: 'Add packets' }));
  await user.type(screen.getByRole('textbox', { name: 'Variety' }), 'Amb');
  await user.click(screen.getByRole('button', { name: 'Close' }));
  expect(JSON.parse(backend.drafts.get('packet') ?? '{}')).toMatchObject({ variety: 'Amb' });
  await user.click(screen.getByRole('button', { name: 'Add packets' }));
  await waitFor(() => expect(screen.getByRole('textbox', { name: 'Variety' })).toHaveValue('Amb'));
});

it('keeps what is chosen at the bench, and forgets it once it is sown', async () => {
  const { backend, session, user } = await open('#/sow');
  await user.click(await screen.findByRole('button', { name: /Tomato ‘Amber Lantern’/ }));
  await user.click(await screen.findByRole('button', { name: 'Plants wanted: one more' }));
  await waitFor(() => expect(JSON.parse(backend.drafts.get('sow') ?? '{}')).toMatchObject({ packet: 'p-tomato', wanted: 7 }));
  session.router.go('seed');
  await screen.findByRole('heading', { name: 'Seed' });
  session.router.go('sow');
  expect(await screen.findByText('Kept from before, not yet written down.')).toBeVisible();
  expect(await screen.findByRole('spinbutton', { name: 'Plants wanted' })).toHaveValue(7);
  await user.click(screen.getByRole('button', { name: 'Start afresh' }));
  expect(await screen.findByRole('searchbox', { name: 'Find a packet' })).toBeVisible();
  await user.click(screen.getByRole('button', { name: 'Bring it back' }));
  await user.click(await screen.findByRole('radio', { name: /^Kitchen sill/ }));
  await user.click(screen.getByRole('button', { name: 'Save the sowing' }));
  await screen.findByRole('heading', { name: 'It is in the journal' });
  await waitFor(() => expect(backend.drafts.has('sow')).toBe(false));
});

it('shows what a corrected line said first, what holds, and when it was corrected', async () => {
  await open('#/tray/t-k7');
  const line = (await screen.findByText(/Corrected Wednesday 15 April, 19:05/)).closest('li');
  expect(line).toHaveTextContent('felt dry, watered from below');
  const was = within(line as HTMLElement).getByText(/First written as/);
  expect(was).toHaveTextContent('felt moist');
  expect(was.tagName).toBe('S');
});

it('corrects a count, and when it was', async () => {
  const { backend, user } = await open('#/tray/t-k7');
  await user.click(await screen.findByRole('button', { name: /^Correct: Counted.* 5 / }));
  const sheet = within(screen.getByRole('dialog'));
  await user.click(sheet.getByRole('button', { name: 'Up now: one more' }));
  await user.click(sheet.getByRole('button', { name: 'Save the correction' }));
  expect(backend.corrected).toEqual([
    { entry: 'e4', fix: { of: 'counted', up: { as: 'number', number: 6 } }, happened: null, hand: '', confirmed: false },
  ]);
  await user.click(screen.getByRole('button', { name: /^Correct: Counted.* 5 / }));
  await user.click(screen.getByRole('radio', { name: 'Half' }));
  const time = screen.getByLabelText('Time');
  await user.clear(time);
  await user.type(time, '07:30');
  await user.click(screen.getByRole('button', { name: 'Save the correction' }));
  expect(backend.corrected.at(-1)).toMatchObject({ fix: { of: 'counted', up: { as: 'half' } }, happened: '2026-04-16T07:30:00' });
});

it('brings a withdrawn line back', async () => {
  const { backend, user } = await open('#/tray/t-k7');
  await user.click(await screen.findByRole('button', { name: /^Bring back: Counted/ }));
  expect(backend.corrected).toMatchObject([{ entry: 'e3', fix: null, happened: null }]);
});
