import { describe, expect, it } from 'vitest';
import { COLOUR_COUNT, colourTable, type ColourScheme } from '../../../sim/picture/colours.ts';

/** Relative luminance of sRGB (IEC 61966-2-1), 0 to 1. */
function luminance(table: Uint8Array, index: number): number {
  const linear = (byte: number) => {
    const share = byte / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  };
  const [red = 0, green = 0, blue = 0] = table.subarray(index * 4, index * 4 + 3);
  return 0.2126 * linear(red) + 0.7152 * linear(green) + 0.0722 * linear(blue);
}

describe('colourTable', () => {
  it.each<ColourScheme>(['film', 'target', 'passes', 'solids'])('%s holds 256 opaque colours', (scheme) => {
    const table = colourTable(scheme);
    expect(table).toHaveLength(COLOUR_COUNT * 4);
    for (let i = 0; i < COLOUR_COUNT; i++) expect(table[i * 4 + 3]).toBe(255);
  });

  it.each<ColourScheme>(['film', 'solids'])('%s grows lighter all the way, so that it reads without hue', (scheme) => {
    const table = colourTable(scheme);
    // Bytes are whole numbers: one byte of the darkest channel step is below 0.002 of luminance.
    for (let i = 1; i < COLOUR_COUNT; i++) expect(luminance(table, i)).toBeGreaterThan(luminance(table, i - 1) - 0.002);
    expect(luminance(table, COLOUR_COUNT - 1) - luminance(table, 0)).toBeGreaterThan(0.5);
  });

  it('shows a holiday dark against light paper', () => {
    expect(luminance(colourTable('film'), 0)).toBeLessThan(0.05);
  });

  it('is neutral and lightest where the film is on target', () => {
    const table = colourTable('target');
    const [red = 0, green = 0, blue = 0] = table.subarray(128 * 4, 128 * 4 + 3);
    expect(Math.max(red, green, blue) - Math.min(red, green, blue)).toBeLessThan(16);
    expect(luminance(table, 0)).toBeLessThan(luminance(table, 128));
    expect(luminance(table, 255)).toBeLessThan(luminance(table, 128));
    const thin = table.subarray(0, 3);
    expect(thin[2]).toBeGreaterThan(thin[0] as number);
    const heavy = table.subarray(255 * 4, 255 * 4 + 3);
    expect(heavy[0]).toBeGreaterThan(heavy[2] as number);
  });

  it('steps for passes: as many colours as asked for', () => {
    for (const steps of [1, 3, 16]) {
      const table = colourTable('passes', steps);
      const colours = new Set(Array.from({ length: COLOUR_COUNT }, (_, i) => table.subarray(i * 4, i * 4 + 3).join(',')));
      expect(colours.size).toBe(steps);
    }
  });

  it('refuses steps that cannot be told apart', () => {
    expect(() => colourTable('passes', 17)).toThrow(/steps = 17 is not from 1 to 16/);
    expect(() => colourTable('passes', NaN)).toThrow(/steps = NaN/);
  });
});
