import '@testing-library/jest-dom/vitest';
import { configure } from '@testing-library/svelte';
import { afterEach, beforeEach, expect, vi } from 'vitest';

// A busy machine is not a fault.
configure({ asyncUtilTimeout: 10_000 });

// What Svelte warns of while it runs is one: a prop changed by whoever does not own it, a lost binding.
let warned: string[] = [];
beforeEach(() => {
  warned = [];
  vi.spyOn(console, 'warn').mockImplementation((...said: unknown[]) => void warned.push(said.join(' ')));
});
afterEach(() => expect(warned).toEqual([]));
