import { at, say } from './fake-data';
import type { PhotoView, TimelineLine } from './generated/types';

/* Canned photos: seedlings in a tray, drawn. */

const leaf = (x: number, y: number, green: string) =>
  `<path d="M${x} ${y}v-26m0 2c-14 0-20-8-20-18 14 0 20 8 20 18zm0-4c0-12 8-20 22-20 0 14-8 20-22 20z" fill="${green}" stroke="#3f6b33" stroke-width="2"/>`;

function drawn(photo: string): string {
  const tint = photo.endsWith('2') ? '#6b5440' : '#4a382b';
  const green = photo.endsWith('3') ? '#b9b04e' : '#7da35c';
  const leaves = [60, 130, 200, 270, 340].map((x, i) => leaf(x, 150 + (i % 2) * 60, green)).join('');
  return `<svg xmlns="http://www.w3.org/2000/svg" width="400" height="300"><rect width="400" height="300" fill="${tint}"/>${leaves}</svg>`;
}

const urls = new Map<string, string>();

export function photoUrl(photo: string): string {
  const url = urls.get(photo) ?? URL.createObjectURL(new Blob([drawn(photo)], { type: 'image/svg+xml' }));
  urls.set(photo, url);
  return url;
}

const photo = (n: number, day: number, more: Partial<PhotoView> = {}): PhotoView => ({
  entry: `e-photo-${n}`,
  photo: `photo-${n}`,
  at: at(day, '17:45'),
  taken: null,
  hand: '',
  missing: false,
  ...more,
});

const ofTray = [photo(1, -1, { hand: 'RM' }), photo(2, -3), photo(3, -6, { missing: true })];
const ofPlants = [photo(21, -2)];
export const unnamed = [photo(12, 0), photo(13, -1, { taken: at(-2, '18:05') })];

/** Those about something: of a packet and of a sowing there are some. */
export const about = (of: string): PhotoView[] =>
  ({ 'packet:p-tomato': ofTray, 'sowing:s-cab': ofPlants })[of] ?? [];

export const lines = (): TimelineLine[] =>
  ofTray.map((it) => ({
    entry: it.entry,
    act: `act-${it.entry}`,
    at: it.at,
    say: say('line-photo-taken'),
    hand: it.hand,
    withdrawn: false,
    corrected: false,
    unknown: false,
    was: null,
    amended: null,
    fix: null,
    photo: it,
  }));
