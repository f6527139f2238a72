import { fireEvent, screen, waitFor, within } from '@testing-library/svelte';
import { describe, expect, it } from 'vitest';
import { open } from './open';

const tray = (code: string) => screen.getByRole('link', { name: new RegExp(`^${code} `) }).closest('article') as HTMLElement;
const job = (within_: HTMLElement, name: string | RegExp) =>
  within(within_).getByRole('heading', { name }).closest('section') as HTMLElement;

describe('answering a feel', () => {
  it('writes it in one tap, drops the job and offers undo', async () => {
    const { backend, user } = await open();
    await user.click(within(job(tray('K2'), 'Feel the compost')).getByRole('button', { name: 'Moist' }));
    expect(backend.requests).toEqual([
      { act: { do: 'feel', trays: ['t-k2'], feel: 'moist', water: null }, happened: null, hand: '', confirmed: false },
    ]);
    await waitFor(() => expect(within(tray('K2')).queryByRole('heading', { name: 'Feel the compost' })).toBeNull());
    await user.click(screen.getByRole('button', { name: 'Undo' }));
    expect(backend.undone).toEqual(['act-1']);
    await waitFor(() => expect(within(tray('K2')).getByRole('heading', { name: 'Feel the compost' })).toBeVisible());
    expect(screen.getByRole('button', { name: 'Bring back' })).toBeVisible();
  });

  it('takes the watering in the same tap', async () => {
    const { backend, user } = await open();
    await user.click(within(tray('K7')).getByRole('button', { name: 'From below' }));
    expect(backend.requests[0]?.act).toEqual({ do: 'feel', trays: ['t-k7'], feel: 'dry', water: 'below' });
  });

  it('answers all trays of a place at once', async () => {
    const { backend, user } = await open();
    await user.click(screen.getByRole('button', { name: 'All moist (2)' }));
    expect(backend.requests[0]?.act).toEqual({ do: 'feel', trays: ['t-k7', 't-k2'], feel: 'moist', water: null });
  });
});

describe('counting', () => {
  it('counts what the stepper says', async () => {
    const { backend, user } = await open();
    const look = job(tray('K7'), /^Look for seedlings/);
    await user.click(within(look).getByRole('button', { name: 'Up now: one more' }));
    await user.click(within(look).getByRole('button', { name: 'Up now: one more' }));
    await user.click(within(look).getByRole('button', { name: 'Count' }));
    expect(backend.requests[0]?.act).toEqual({
      do: 'count',
      plants: { type: 'sowing', id: 's-tomato' },
      up: { as: 'number', number: 2 },
    });
  });

  it('takes a rough answer', async () => {
    const { backend, user } = await open();
    await user.click(within(job(tray('K7'), /^Look for seedlings/)).getByRole('button', { name: 'Nearly all' }));
    expect(backend.requests[0]?.act).toMatchObject({ do: 'count', up: { as: 'nearly_all' } });
  });

  async function countSeventy() {
    const opened = await open();
    const look = job(tray('K7'), /^Look for seedlings/);
    const up = within(look).getByRole('spinbutton', { name: 'Up now' });
    await fireEvent.change(up, { target: { value: '70' } });
    await opened.user.click(within(look).getByRole('button', { name: 'Count' }));
    const asked = await screen.findByRole('alertdialog');
    expect(asked).toHaveTextContent('70 up is more than the 12 sown');
    return { ...opened, asked };
  }

  it('asks about what is odd, and writes it once it is confirmed', async () => {
    const { backend, user, asked } = await countSeventy();
    await user.click(within(asked).getByRole('button', { name: 'Yes, write it down' }));
    expect(backend.requests.map((r) => r.confirmed)).toEqual([false, true]);
    expect(await screen.findByRole('button', { name: 'Undo' })).toBeVisible();
    expect(screen.queryByRole('alertdialog')).toBeNull();
  });

  it('writes nothing when it is declined', async () => {
    const { backend, user, asked } = await countSeventy();
    await user.click(within(asked).getByRole('button', { name: 'No, go back' }));
    await waitFor(() => expect(screen.queryByRole('alertdialog')).toBeNull());
    expect(backend.requests.map((r) => r.confirmed)).toEqual([false]);
    expect(screen.queryByRole('button', { name: 'Undo' })).toBeNull();
  });
});

it('reads the lowest and highest of a place', async () => {
  const { backend, user } = await open();
  const read = screen.getByRole('heading', { name: 'Read the thermometer' }).closest('section') as HTMLElement;
  await user.type(within(read).getByRole('textbox', { name: 'Lowest' }), '14.5');
  await user.type(within(read).getByRole('textbox', { name: 'Highest' }), '21');
  await user.click(within(read).getByRole('button', { name: 'Write down the reading' }));
  expect(backend.requests[0]?.act).toEqual({ do: 'read', place: 'sill', of: 'air', range: { min_c: 14.5, max_c: 21 } });
});

it('says what is wrong with a reading that is no number, and writes nothing', async () => {
  const { backend, user } = await open();
  const read = screen.getByRole('heading', { name: 'Read the thermometer' }).closest('section') as HTMLElement;
  await user.type(within(read).getByRole('textbox', { name: 'Lowest' }), 'mild');
  await user.click(within(read).getByRole('button', { name: 'Write down the reading' }));
  expect(within(read).getByRole('alert')).toHaveTextContent('has to be a number');
  expect(backend.requests).toEqual([]);
});

it('moves a tray into the light with one tap, to bright places only', async () => {
  const { backend, user } = await open();
  const light = job(tray('K7'), /^Into the light/);
  await user.click(await within(light).findByRole('button', { name: 'Kitchen sill (bright)' }));
  expect(within(light).queryByRole('button', { name: /Shed/ })).toBeNull();
  expect(backend.requests[0]?.act).toEqual({ do: 'move', trays: ['t-k7'], place: 'sill' });
});

it('puts a job off, and dismisses one', async () => {
  const { backend, user } = await open();
  await user.click(within(tray('K4')).getByRole('button', { name: 'Later: thin' }));
  await user.click(within(screen.getByRole('dialog')).getByRole('button', { name: 'Tomorrow' }));
  expect(backend.requests[0]?.act).toMatchObject({ do: 'put_off', until: { as: 'tomorrow' } });
  await user.click(await within(tray('K5')).findByRole('button', { name: 'Later: prick out' }));
  await user.click(within(screen.getByRole('dialog')).getByRole('button', { name: 'Not this one' }));
  expect(backend.requests[1]?.act).toMatchObject({ do: 'dismiss' });
});

it('dates answers back until one comes back to now, but not the putting off', async () => {
  const { backend, user } = await open();
  await user.click(screen.getByRole('button', { name: 'Writing down something earlier?' }));
  await user.click(screen.getByRole('button', { name: 'Yesterday evening' }));
  expect(screen.getByText('Writing down as of Wednesday 15 April, 18:00.')).toBeVisible();
  await user.click(within(tray('K2')).getByRole('button', { name: 'Wet' }));
  await user.click(within(tray('K4')).getByRole('button', { name: 'Later: thin' }));
  await user.click(within(screen.getByRole('dialog')).getByRole('button', { name: 'Next round' }));
  await user.click(screen.getByRole('button', { name: 'Back to now' }));
  await user.click(within(tray('H1')).getByRole('button', { name: 'Out today' }));
  expect(backend.requests.map((r) => r.happened)).toEqual(['2026-04-15T18:00:00', null, null]);
});

it('pricks out into several parts', async () => {
  const { backend, user } = await open();
  await user.click(within(tray('K5')).getByRole('button', { name: 'Prick out' }));
  const sheet = screen.getByRole('dialog');
  const [first] = await within(sheet).findAllByRole('spinbutton', { name: 'Plants into this one' });
  await fireEvent.change(first as HTMLElement, { target: { value: '12' } });
  await user.click(within(sheet).getByRole('button', { name: 'Into one more tray' }));
  await user.click(within(sheet).getByRole('button', { name: 'Write down' }));
  expect(backend.requests[0]?.act).toMatchObject({
    do: 'go_on',
    plants: { type: 'sowing', id: 's-cab' },
    step: 'pricked_out',
    rest_finished: false,
    parts: [
      { number: 12, into: { tray: 'new', container: 'cells', rows: 6, columns: 4, compost: 'potting', place: 'prop' } },
      { number: 7, into: { tray: 'new' } },
    ],
  });
});

it('shows what is refused where it happened', async () => {
  const { user } = await open('#/round', 'refusing');
  const feel = job(tray('K2'), 'Feel the compost');
  await user.click(within(feel).getByRole('button', { name: 'Dry' }));
  expect(within(feel).getByRole('alert')).toHaveTextContent('A place cannot be 80 °C warm.');
  expect(screen.queryByRole('button', { name: 'Undo' })).toBeNull();
});

it('keeps the focus near what was answered', async () => {
  const { user } = await open();
  await user.click(within(tray('K4')).getByRole('button', { name: 'Thinned' }));
  await waitFor(() => expect(document.activeElement).toHaveTextContent(/^K5/));
});

it('says when the next is when nothing is due', async () => {
  await open('#/round', 'quiet');
  expect(await screen.findByRole('heading', { name: 'Nothing is due' })).toBeVisible();
  expect(screen.getByText('Next: feel the compost in the shed, Friday 17 April, 08:00.')).toBeVisible();
});
