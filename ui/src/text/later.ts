/** Messages of the screens that are not needed for the first picture. */
const files = import.meta.glob<string>('./en-GB/later/*.ftl', { query: '?raw', import: 'default', eager: true });

export const later = Object.values(files);
