import { screen, waitFor, within } from '@testing-library/svelte';
import { afterEach, expect, it, vi } from 'vitest';
import { open } from './open';

afterEach(() => vi.unstubAllGlobals());

it('draws the answers of far trays only when they come near, their labels always', async () => {
  const observers: { element: Element; come: () => void }[] = [];
  vi.stubGlobal(
    'IntersectionObserver',
    class {
      come: (seen: { isIntersecting: boolean }[]) => void;
      constructor(come: (seen: { isIntersecting: boolean }[]) => void) {
        this.come = come;
      }
      observe(element: Element) {
        observers.push({ element, come: () => this.come([{ isIntersecting: true }]) });
      }
      disconnect() {}
    },
  );
  const { session } = await open('#/round', 'many');
  await session.words.loadLater();
  const articles = screen.getAllByRole('article');
  expect(articles).toHaveLength(205);
  const jobs = (article: Element | undefined) => within(article as HTMLElement).queryAllByRole('heading', { level: 4 }).length;
  expect(articles.filter((article) => jobs(article) > 0)).toHaveLength(4);
  const last = articles.at(-1);
  expect(jobs(last)).toBe(0);
  expect(within(last as HTMLElement).getByRole('heading', { level: 3 })).toHaveTextContent('G9');
  observers.find((o) => last?.contains(o.element))?.come();
  await waitFor(() => expect(jobs(last)).toBe(1));
});
