/** Where in the old list something may stand, from where it is looked for: an answer takes one or two away. */
const near = [0, 1, 2, 3, -1, -2, -3];

type Part = Record<string, unknown>;
const isPart = (it: unknown): it is Part => typeof it === 'object' && it !== null;

/**
 * What is new, made of the parts of the old that are the same: whoever shows those
 * has nothing to draw again. Of data as JSON has it.
 */
export function share<T>(old: unknown, fresh: T): T {
  if (isSame(old, fresh)) return old as T;
  if (Array.isArray(fresh)) return (Array.isArray(old) ? shareList(old, fresh) : fresh) as T;
  if (!isPart(old) || !isPart(fresh)) return fresh;
  return Object.fromEntries(Object.entries(fresh).map(([name, value]) => [name, share(old[name], value)])) as T;
}

function shareList(old: unknown[], fresh: unknown[]): unknown[] {
  let shift = 0;
  return fresh.map((item, i) => {
    const found = near.find((by) => isSame(old[i + shift + by], item)) ?? 0;
    shift += found;
    return share(old[i + shift], item);
  });
}

function isSame(one: unknown, other: unknown): boolean {
  if (Object.is(one, other)) return true;
  if (!isPart(one) || !isPart(other) || Array.isArray(one) !== Array.isArray(other)) return false;
  const names = Object.keys(one);
  return names.length === Object.keys(other).length && names.every((name) => name in other && isSame(one[name], other[name]));
}
