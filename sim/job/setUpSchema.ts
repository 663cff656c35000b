import * as v from 'valibot';
import { CardSchema, KnownWithinSchema } from './cardSchema.ts';
import { id, list, number, record, text } from './words.ts';

const PROFILES = [
  record(
    {
      family: v.literal('double-beta'),
      beta1: number(1, 8, 'exponent across the fan; 2.92 is flattest at half overlap'),
      beta2: number(1, 8, 'exponent along the travel'),
    },
    'elliptical double-beta fan',
  ),
  record({ family: v.literal('gaussian') }, 'Gaussian fan; full width and depth are 4 standard deviations'),
  record({ family: v.literal('parabola') }, 'parabola across the fan'),
  record({ family: v.literal('triangle') }, 'triangle across the fan'),
  record({ family: v.literal('cosine-squared') }, 'cosine squared across the fan'),
  record(
    {
      family: v.literal('flat-top'),
      taper_mm: number(0, 500, 'width of each tapered edge at the stated distance, mm'),
    },
    'even film with tapered edges',
  ),
  record(
    {
      family: v.literal('table'),
      place_mm: list(number(-2000, 2000, 'from the fan centre line, mm'), 3, 2000, 'places across a measured stroke, rising'),
      film: list(number(0, 1e9, 'any proportional unit'), 3, 2000, 'film at those places'),
    },
    'a measured stroke',
  ),
] as const;

const ProfileSchema = v.pipe(
  v.variant(
    'family',
    PROFILES,
    'give the family "double-beta", "gaussian", "parabola", "triangle", "cosine-squared", "flat-top" or "table"',
  ),
  v.description('film that one stroke leaves across the fan'),
);

/** A gun set-up: its fan, fluid, transfer, drops, pressure, and how well each is known. */
export const SetUpSchema = record(
  {
    id,
    name: text(200, 'name of the set-up'),
    note: v.optional(text(2000, 'remark')),
    fan: record(
      {
        width_mm: number(5, 1500, 'full fan width (long axis) on a square panel, mm'),
        depth_mm: number(1, 1500, 'full fan depth (short axis), mm'),
        atDistance_mm: number(20, 1000, 'distance at which width and depth were read, mm'),
        origin_mm: v.optional(number(-500, 500, 'where the fan\'s edges would meet if drawn on, in front of the nozzle (behind it if negative), mm; 0 where not given')),
        profile: ProfileSchema,
      },
      'the shape that the gun throws',
    ),
    fluidRate_mL_min: number(0.1, 5000, 'liquid leaving the gun, trigger full on, mL/min'),
    transfer: record(
      {
        efficiency_percent: number(1, 100, 'share of the solids that lands, at the distance below'),
        atDistance_mm: number(20, 1000, 'distance at which it holds, mm'),
        decayLength_mm: number(50, 1e6, 'added distance over which it falls to 37 %, mm'),
      },
      'transfer efficiency',
    ),
    volumeSolids_percent: number(0.1, 100, 'volume solids of what is in the cup, after thinning; a mix says it instead'),
    drops: record(
      {
        meanDiameter_um: number(1, 500, 'Sauter mean diameter, µm; with a mix, at the viscosity below'),
        spread: number(1, 5, 'geometric standard deviation of drop volume'),
        solventSpeed: number(0, 20, 'relative evaporation rate of the thinner, n-butyl acetate = 1; a mix says it instead'),
        atViscosity_mPa_s: v.optional(number(1, 2000, 'viscosity at which the drops have that diameter, mPa s'), 50),
        atPressure_kPa: v.optional(number(1, 500, 'air pressure at the cap at which they have it, kPa; the set-up\'s own where not given')),
      },
      'the drops in flight',
    ),
    triggerLag_ms: number(0, 1000, 'from trigger to fluid, both ways, ms'),
    capPressure_kPa: v.optional(number(1, 500, 'air pressure above the room at the cap, kPa'), 55),
    distanceRange_mm: v.optional(
      v.pipe(
        v.strictTuple(
          [number(10, 2000, 'nearest, mm'), number(10, 2000, 'farthest, mm')],
          'give two numbers, nearest and farthest in mm',
        ),
        v.description('distances for which the fan may be believed, mm'),
      ),
      [100, 400],
    ),
    knownWithin: v.optional(KnownWithinSchema),
    card: v.optional(CardSchema),
  },
  'a gun set-up',
);
