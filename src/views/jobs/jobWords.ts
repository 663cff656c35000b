const DAY = new Intl.DateTimeFormat('en-GB', { dateStyle: 'medium', timeStyle: 'short' });

/** When a job was changed, by this device's clock and place. */
export function dayWords(moment: string): string {
  const time = Date.parse(moment);
  return Number.isFinite(time) ? DAY.format(time) : 'at an unknown time';
}

/** About how much a job takes: a letter of it is a byte or two. */
export function sizeWords(letters: number): string {
  return letters < 1e6 ? `${Math.max(1, Math.round(letters / 1e3))} kB` : `${(letters / 1e6).toFixed(1)} MB`;
}
