import { within } from '@testing-library/svelte';
import { tick } from 'svelte';
import { afterEach, expect, it, vi } from 'vitest';
import { open } from './open';

afterEach(() => vi.unstubAllGlobals());

it('draws far trays when they come near, and not before', async () => {
  const watched = new Set<() => void>();
  vi.stubGlobal(
    'IntersectionObserver',
    class {
      come: () => void;
      constructor(seen: (entries: { isIntersecting: boolean }[]) => void) {
        this.come = () => seen([{ isIntersecting: true }]);
      }
      observe() {
        watched.add(this.come);
      }
      disconnect() {
        watched.delete(this.come);
      }
    },
  );
  const { session } = await open('#/round', 'many');
  await session.words.loadLater();
  const trays = () => [...document.querySelectorAll<HTMLElement>('article')];
  expect(trays()).toHaveLength(4);
  for (let before = 0; before < trays().length; await tick()) {
    before = trays().length;
    for (const come of watched) come();
  }
  expect(trays()).toHaveLength(205);
  const last = within(trays().at(-1) ?? document.body);
  expect(last.getByRole('heading', { level: 3 })).toHaveTextContent('G9');
  expect(last.getAllByRole('heading', { level: 4 })).toHaveLength(1);
});
