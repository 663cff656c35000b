import * as v from 'valibot';
import { list, number, record, text, wholeNumber } from './words.ts';

/** Longest text of a card's readings, letters. */
export const LONGEST_READINGS = 200_000;

/** What the shop measured of a set-up: readings across its fan, and what paper, tape, cup and scales said. Every part may be left out. */
export const CardSchema = record(
  {
    distance_mm: v.optional(number(20, 1000, 'gun to card while its stroke was sprayed, mm; where the fan was read if not given')),
    readings: v.optional(text(LONGEST_READINGS, 'readings across the fan as CSV: x_mm and film_um, or any proportional measure')),
    caught: v.optional(
      record(
        {
          volume_mL: number(0.1, 5000, 'liquid caught, mL'),
          seconds: number(0.5, 3600, 'trigger full on for, s'),
          volumeWithin_mL: number(0, 500, 'the volume is right within, mL'),
          secondsWithin_s: number(0, 60, 'the time is right within, s'),
        },
        'fluid caught in a cup, air off',
      ),
    ),
    widths: v.optional(
      list(
        record({ distance_mm: number(20, 1000, 'gun to card, mm'), width_mm: number(5, 1500, 'full width of the fan there, mm') }, 'the fan\'s width at a distance'),
        0,
        20,
        'full width of the fan at two distances or more',
      ),
    ),
    widthWithin_mm: v.optional(number(0, 100, 'widths are right within, mm')),
    foil: v.optional(
      record(
        {
          gain_g: number(0.001, 1000, 'weight that a foil gained by the sprayed film, dry, g'),
          gainWithin_g: number(0, 100, 'the weight is right within, g'),
          length_mm: number(10, 5000, 'length of the foil along the travel, mm; across, it catches the whole fan'),
          strokes: wholeNumber(1, 100, 'strokes sprayed over it, each along the same line'),
          speed_m_s: number(0.01, 5, 'speed of those strokes, m/s'),
          speedWithin_percent: number(0, 50, 'the speed is right within, %'),
        },
        'a weighed foil, sprayed at the card\'s distance',
      ),
    ),
    comb: v.optional(
      record(
        {
          low_um: number(0, 2000, 'last tooth that was wetted, µm'),
          high_um: number(1, 2500, 'next tooth, which stayed dry, µm'),
          strokes: wholeNumber(1, 100, 'strokes sprayed, each along the same line'),
          speed_m_s: number(0.01, 5, 'speed of those strokes, m/s'),
          speedWithin_percent: number(0, 50, 'the speed is right within, %'),
        },
        'a wet-film comb read in the middle of the fan at once, at the card\'s distance',
      ),
    ),
  },
  'what the test card and its companions said',
);

/** How well a set-up's numbers are known: half-width of the 95 % interval. A number left out was not measured. */
export const KnownWithinSchema = record(
  {
    width_percent: v.optional(number(0, 100, 'fan width, ± % of it')),
    beta1: v.optional(number(0, 7, 'exponent across the fan, ±')),
    fluidRate_percent: v.optional(number(0, 100, 'fluid rate, ± % of it')),
    efficiency_percent: v.optional(number(0, 100, 'transfer efficiency, ± % of it')),
  },
  'how well the numbers are known, as 95 % intervals',
);
