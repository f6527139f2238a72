import { describe, expect, it } from 'vitest';
import { share } from '../src/state/share';

const cards = (...codes: string[]) => codes.map((code) => ({ code, jobs: [{ key: `feel ${code}`, why: { args: {} } }] }));

describe('what is new keeps the parts of the old that are the same', () => {
  it('is equal to what is new, whatever was there', () => {
    const some = [null, 1, 'a', [], {}, [1, 2], { a: 1 }, { a: [1, { b: null }] }, { a: undefined }, { b: undefined }, cards('A', 'B'), cards('B')];
    for (const old of some) for (const fresh of some) expect(share(old, structuredClone(fresh))).toStrictEqual(fresh);
  });

  it('is the old itself where nothing changed', () => {
    const old = { places: [{ cards: cards('A', 'B') }], at: '08:30' };
    expect(share(old, structuredClone(old))).toBe(old);
  });

  it('keeps what stands before and after one that went, came or changed', () => {
    const old = cards('A', 'B', 'C', 'D');
    const kept = (fresh: typeof old) => share(old, fresh).map((card) => old.indexOf(card));
    expect(kept(cards('A', 'C', 'D'))).toEqual([0, 2, 3]);
    expect(kept(cards('C', 'D'))).toEqual([2, 3]);
    const [a, b, c, d] = cards('A', 'B', 'C', 'D');
    expect(kept([a!, { ...b!, jobs: [] }, c!, d!])).toEqual([0, -1, 2, 3]);
    expect(kept(cards('A', 'X', 'C', 'D'))).toEqual([0, -1, 2, 3]);
    expect(kept(cards('X', 'A', 'B', 'Y', 'C', 'D'))).toEqual([-1, 0, 1, -1, 2, 3]);
  });
});
