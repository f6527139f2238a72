import type { Component } from 'svelte';
import type { RouteName } from '../state/route.svelte';
import type { Words } from '../text/words.svelte';

type Shown = Component<{ id: string }>;

/** Every screen but the round, which is there from the start. */
const screens: Record<Exclude<RouteName, 'round'>, () => Promise<{ default: unknown }>> = {
  sow: () => import('./Sow.svelte'),
  trays: () => import('./Trays.svelte'),
  tray: () => import('./Tray.svelte'),
  seed: () => import('./Seed.svelte'),
  year: () => import('./Year.svelte'),
  paper: () => import('./Paper.svelte'),
  labels: () => import('./Labels.svelte'),
  find: () => import('./Find.svelte'),
  search: () => import('./Search.svelte'),
  packet: () => import('./Packet.svelte'),
  settings: () => import('./Settings.svelte'),
  keep: () => import('./Keep.svelte'),
};

/** A screen and the words it may say. */
export async function load(name: Exclude<RouteName, 'round'>, words: Words): Promise<Shown> {
  const [screen] = await Promise.all([screens[name](), words.loadLater()]);
  return screen.default as Shown;
}
