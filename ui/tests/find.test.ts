import { expect, it } from 'vitest';
import { find, findable, slipsTo } from '../src/text/find';

const all = ['Tomato Amber Lantern 2025', 'Pepper Little Bell', 'Échinacée du jardin', 'Beet Red Moon', 'Leek Long Winter', 'Lettuce Winter Bell'].map((name) =>
  findable(name, name),
);

it('counts slips to the beginning of a word', () => {
  expect(slipsTo('tom', 'tomato')).toBe(0);
  expect(slipsTo('otm', 'tomato')).toBe(1);
  expect(slipsTo('lantren', 'lantern')).toBe(1);
  expect(slipsTo('letuce', 'lettuce')).toBe(1);
  expect(slipsTo('peper', 'pepper')).toBe(1);
  expect(slipsTo('leek', 'beet')).toBe(2);
});

it.each([
  ['tom', ['Tomato Amber Lantern 2025']],
  ['echin', ['Échinacée du jardin']],
  ['ÉCHINACÉE', ['Échinacée du jardin']],
  ['amber 2025', ['Tomato Amber Lantern 2025']],
  ['tomatoe', ['Tomato Amber Lantern 2025']],
  ['tamoto', ['Tomato Amber Lantern 2025']],
  ['bell', ['Pepper Little Bell', 'Lettuce Winter Bell']],
  ['winter bell', ['Lettuce Winter Bell']],
  ['tern', ['Tomato Amber Lantern 2025']],
  ['lek', []],
  ['leak', ['Leek Long Winter']],
  ['marrow', []],
])('finds %s', (typed, names) => {
  expect(find(all, typed)).toEqual(names);
});

it('puts what begins so before what only has it within', () => {
  const both = ['Old Amber', 'Clamber Bean'].map((name) => findable(name, name)).reverse();
  expect(find(both, 'amber')).toEqual(['Old Amber', 'Clamber Bean']);
});
