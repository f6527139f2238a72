import { screen, waitFor, within } from '@testing-library/svelte';
import { describe, expect, it } from 'vitest';
import { open } from './open';

const jpeg = (bytes: string) => new File([bytes], 'leaf.jpg', { type: 'image/jpeg' });

describe('Photos', () => {
  it('takes one in about the tray and offers to undo it', async () => {
    const { backend, user } = await open('#/tray/t-k7');
    await user.upload(await screen.findByLabelText('Choose a photo'), jpeg('leaf'));
    expect(backend.added).toEqual([{ about: 'tray:t-k7', happened: null }]);
    await user.click(await screen.findByRole('button', { name: 'Undo' }));
    expect(backend.undone).toEqual(['act-photo-1']);
  });

  it('says what is wrong with one and takes the next', async () => {
    const { backend, user } = await open('#/tray/t-k7');
    const choose = await screen.findByLabelText('Choose a photo');
    await user.upload(choose, jpeg(''));
    expect(await screen.findByRole('alert')).toHaveTextContent('That file is empty.');
    await user.upload(choose, jpeg('leaf'));
    await waitFor(() => expect(backend.added).toHaveLength(1));
    expect(screen.queryByRole('alert')).toBeNull();
  });

  it('opens the camera with one of its buttons', async () => {
    await open('#/tray/t-k7');
    expect(await screen.findByLabelText('Take a photo')).toHaveAttribute('capture', 'environment');
    expect(screen.getByLabelText('Choose a photo')).not.toHaveAttribute('capture');
  });

  it('shows one large, by buttons and by keys, and takes it out', async () => {
    const { backend, user } = await open('#/tray/t-k7');
    const thumbs = await screen.findAllByRole('button', { name: /^Photo of/ });
    await user.click(thumbs[0] as HTMLElement);
    const full = await screen.findByRole('dialog');
    const size = () => within(full).getByText(/^Size/).textContent;
    await user.click(within(full).getByRole('button', { name: 'Larger' }));
    expect(size()).toBe('Size 150 %');
    await user.keyboard('+');
    expect(size()).toBe('Size 200 %');
    await user.keyboard('-');
    expect(size()).toBe('Size 150 %');
    await user.keyboard('0');
    expect(size()).toBe('Size 100 %');
    await user.keyboard('{ArrowRight}');
    expect(within(full).getByRole('heading')).toHaveTextContent('Monday 13 April');
    await user.click(within(full).getByRole('button', { name: 'Next photo' }));
    expect(within(full).getByText('The file of this photo is not on this device.')).toBeVisible();
    await user.click(within(full).getByRole('button', { name: 'Delete' }));
    expect(backend.withdrawn).toEqual(['e-photo-3']);
    await waitFor(() => expect(screen.queryByRole('dialog')).toBeNull());
  });

  it('does not even send one over 25 MB', async () => {
    const { backend, user } = await open('#/tray/t-k7');
    const large = new File([new Uint8Array(25_000_001)], 'leaf.jpg', { type: 'image/jpeg' });
    await user.upload(await screen.findByLabelText('Choose a photo'), large);
    expect(await screen.findByRole('alert')).toHaveTextContent('That file is over 25 MB.');
    expect(backend.added).toEqual([]);
  });

  it('is taken of a packet, seen on its page and deleted there, which can be undone', async () => {
    const { backend, user } = await open('#/packet/p-tomato');
    await user.upload(await screen.findByLabelText('Choose a photo: Tomato ‘Amber Lantern’'), jpeg('leaf'));
    expect(backend.added).toEqual([{ about: 'packet:p-tomato', happened: null }]);
    const strip = screen.getByRole('list', { name: 'Photos of Tomato ‘Amber Lantern’' });
    await user.click(within(strip).getAllByRole('button', { name: /^Photo of/ })[0] as HTMLElement);
    await user.click(within(await screen.findByRole('dialog')).getByRole('button', { name: 'Delete' }));
    expect(backend.withdrawn).toEqual(['e-photo-1']);
    await user.click(await screen.findByRole('button', { name: 'Undo' }));
    expect(backend.undone).toHaveLength(1);
  });

  it('is taken of what grows in a tray', async () => {
    const { backend, user } = await open('#/tray/t-k5');
    const section = await screen.findByRole('region', { name: /Cabbage/ });
    expect(within(section).getAllByRole('button', { name: /^Photo of/ })).toHaveLength(1);
    await user.click(within(section).getByText('Photograph Cabbage ‘Round Early’'));
    await user.upload(within(section).getByLabelText(/^Take a photo/), jpeg('leaf'));
    expect(backend.added).toEqual([{ about: 'sowing:s-cab', happened: null }]);
  });

  it('lists those that wait for a name and names one', async () => {
    const { backend, user } = await open('#/trays');
    expect(await screen.findByRole('heading', { name: '2 photos to name' })).toBeVisible();
    const [name] = screen.getAllByRole('button', { name: /^Name it: the photo/ });
    await user.click(name as HTMLElement);
    const sheet = await screen.findByRole('dialog', { name: 'What is it of?' });
    await user.type(within(sheet).getByRole('searchbox'), 'k7');
    await user.click(await within(sheet).findByRole('button', { name: /^K7/ }));
    expect(backend.requests.map((r) => r.act)).toEqual([{ do: 'name_photo', photo: 'e-photo-12', about: 'tray:t-k7' }]);
    expect(await screen.findByRole('heading', { name: 'A photo to name' })).toBeVisible();
    await user.click(screen.getByRole('button', { name: /^Name it: the photo/ }));
    await user.click(within(await screen.findByRole('dialog')).getByRole('radio', { name: 'Plants' }));
    await user.click(await screen.findByRole('button', { name: 'K7 Pepper ‘Little Bell’' }));
    expect(backend.requests.at(-1)?.act).toMatchObject({ do: 'name_photo', about: 'sowing:s-pepper' });
    await waitFor(() => expect(screen.queryByRole('heading', { name: /to name$/ })).toBeNull());
  });
});
