import { USUAL_AIR } from '../../../sim/job/defaults.ts';
import type { CoatSpec, Job, PlanSpec, SetUpSpec, TargetSpec } from '../../../sim/job/schema.ts';
import { SCHEMA_VERSION } from '../../../sim/job/schemaFacts.ts';
import { settleCoat } from '../../../sim/run/settle.ts';
import type { CoatSetting } from '../../../sim/run/result.ts';

/** A fan of 250 × 50 mm at 200 mm, double-beta 3, 3 (flattest at 50.8 % overlap); nothing evaporates in flight. */
export const FAN: SetUpSpec = {
  id: 'gun',
  name: 'Known fan',
  fan: { width_mm: 250, depth_mm: 50, atDistance_mm: 200, profile: { family: 'double-beta', beta1: 3, beta2: 3 } },
  fluidRate_mL_min: 200,
  transfer: { efficiency_percent: 65, atDistance_mm: 200, decayLength_mm: 600 },
  volumeSolids_percent: 15,
  drops: { meanDiameter_um: 35, spread: 1.8, solventSpeed: 0, atViscosity_mPa_s: 50 },
  triggerLag_ms: 0,
  capPressure_kPa: 55,
  distanceRange_mm: [100, 400],
};

/** 50 % overlap at 0.3 m/s: (200e-6/60 · 0.65) / (0.3 · 0.125) = 57.78 µm wet. */
export const PLAN: PlanSpec = {
  overlap_percent: 50,
  speed_m_s: 0.3,
  distance_mm: 200,
  direction_deg: 0,
  order: 'serpentine',
  lead_mm: 60,
  lag_mm: 60,
  firstStroke_mm: 0,
  cross: false,
};

export const MEAN_um = ((200e-6 / 60) * 0.65) / (0.3 * 0.125) * 1e6;

export const TARGET_SPEC: TargetSpec = {
  film: 'wet',
  thickness_um: MEAN_um,
  min_percent: 80,
  max_percent: 120,
  holiday_percent: 25,
  dry_percent: 10,
};

export interface JobParts {
  readonly plan?: Partial<PlanSpec>;
  readonly target?: Partial<TargetSpec>;
  readonly setUp?: Partial<SetUpSpec>;
  readonly hand?: CoatSpec['hand'];
  readonly size_mm?: readonly [number, number];
  readonly cell_mm?: number;
}

/** A job of one coat, `coat`, on a rectangle of 700 × 500 mm: five strokes, 125 mm apart, on y = 0, 125 … 500. */
export function testJob(parts: JobParts = {}): Job {
  return {
    schemaVersion: SCHEMA_VERSION,
    name: 'Test',
    seed: 7,
    cell_mm: parts.cell_mm ?? 4,
    part: {
      name: 'Board',
      panels: [
        {
          id: 'board',
          name: 'Board',
          outline: { rectangle_mm: [...(parts.size_mm ?? [700, 500])] },
          holes: [],
          attitude: { tilt_deg: 90, down_deg: -90 },
          backing: 'open-cloth',
        },
      ],
    },
    air: { ...USUAL_AIR },
    mixes: [],
    setUps: [{ ...FAN, ...parts.setUp }],
    coats: [
      {
        id: 'coat',
        name: 'Coat',
        panel: 'board',
        setUp: 'gun',
        target: { ...TARGET_SPEC, ...parts.target },
        plan: { ...PLAN, ...parts.plan },
        hand: parts.hand ?? { kind: 'steady' },
      },
    ],
    recordings: [],
  };
}

export function testSetting(parts: JobParts = {}): CoatSetting {
  return settleCoat(testJob(parts), 'coat');
}
