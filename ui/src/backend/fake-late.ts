import type { Backend } from './backend';
import type { FakeBackend } from './fake';

const sleep = (ms: number) => new Promise((go) => setTimeout(go, ms));

/**
 * Answers as the app does, never in the same turn: so long after it was asked,
 * ms, and each only so long after the one before it. How many are still to come
 * stands at the page's root.
 */
export function answeringLate(backend: FakeBackend, wait: number): Backend {
  let last: Promise<unknown> = Promise.resolve();
  let coming = 0;
  const count = (by: number) => (document.documentElement.dataset.coming = String((coming += by)));
  return new Proxy(backend, {
    get(_, name) {
      const found: unknown = Reflect.get(backend, name);
      if (typeof found !== 'function' || name === 'photoUrl') return found;
      return async (...asked: unknown[]) => {
        count(1);
        await (wait > 0 ? (last = last.then(() => sleep(wait))) : sleep(0));
        try {
          return await (found.apply(backend, asked) as Promise<unknown>);
        } finally {
          count(-1);
        }
      };
    },
  });
}
