/** German. */
export const files = Object.values(import.meta.glob<string>('./de/**/*.ftl', { query: '?raw', import: 'default', eager: true }));
