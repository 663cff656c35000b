/** Letters of one part of a file name. */
const LONGEST_PART = 40;

/** A text in small letters, digits and hyphens, which every file system takes. Accents fall off their letters; anything else parts words. */
export function fileStem(text: string, empty: string): string {
  const part = foldedText(text).replaceAll(/[^a-z0-9]+/g, '-').slice(0, LONGEST_PART).replaceAll(/^-+|-+$/g, '');
  return part === '' ? empty : part;
}

/** A text in small letters without accents, so that what is looked for is found however it was typed. */
export function foldedText(text: string): string {
  return text.normalize('NFD').replaceAll(/\p{Mn}/gu, '').toLowerCase();
}
