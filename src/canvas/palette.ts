/** Inks of the drawing, as CSS colours: paper ground, ink lines, one accent for what is taken hold of. */
export interface Palette {
  readonly paper: string;
  readonly ink: string;
  /** Ink thinned for minor ticks and ruler edges; still 4.5 : 1 on paper. */
  readonly faint: string;
  readonly accent: string;
  /** The panel's shadow on the paper. */
  readonly shade: string;
}

/** The same inks as the page's style sheet (`src/style/paper.css`). */
export const palettes: Readonly<Record<'light' | 'dark', Palette>> = {
  light: { paper: '#f7f4ec', ink: '#1b222c', faint: '#47505c', accent: '#a8321a', shade: '#d8d3c5' },
  dark: { paper: '#14181e', ink: '#ece8dc', faint: '#b6b8b6', accent: '#ff9877', shade: '#07090c' },
};

/** Index of each ink in the shaders' `uTones`. */
export const TONE = { ink: 0, paper: 1, accent: 2, shade: 3 } as const;

/** The inks in the order of `TONE`, RGBA from 0 to 1, for the shaders. */
export function writeTones(palette: Palette, out: Float32Array): void {
  const inks = [palette.ink, palette.paper, palette.accent, palette.shade];
  inks.forEach((ink, tone) => {
    for (let channel = 0; channel < 3; channel++) {
      out[4 * tone + channel] = parseInt(ink.slice(1 + 2 * channel, 3 + 2 * channel), 16) / 255;
    }
    out[4 * tone + 3] = 1;
  });
}
