/** American English: only what is said otherwise than in Britain. */
export const files = Object.values(import.meta.glob<string>('./en-US/**/*.ftl', { query: '?raw', import: 'default', eager: true }));
