/** The languages the app speaks, by tag (BCP 47). What the others lack is said in British English, the only one that is there from the start. */
export const languages = ['en-GB', 'en-US', 'de'] as const;
export type Language = (typeof languages)[number];

const chunks: Record<Exclude<Language, 'en-GB'>, () => Promise<{ files: string[] }>> = {
  'en-US': () => import('./en-US'),
  de: () => import('./de'),
};

/** A tag as one of them. */
export const languageOf = (tag: string): Language => languages.find((it) => it === tag) ?? 'en-GB';

/** The messages of a language, loaded when it is first spoken. */
export async function messagesOf(language: Language): Promise<string[]> {
  return language === 'en-GB' ? [] : (await chunks[language]()).files;
}
