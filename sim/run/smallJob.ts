import { DISTANCE_MM, USUAL_AIR, USUAL_BACKING, defaultMix, defaultSetUp } from '../job/defaults.ts';
import type { AirSpec, CoatSpec, HandSpec, Job, MixSpec, PlanSpec, SetUpSpec, ShapeSpec, TargetSpec } from '../job/schema.ts';
import { SCHEMA_VERSION } from '../job/schemaFacts.ts';

/** What a coat of a small job has that the usual one has not. */
export interface SmallCoatParts {
  readonly id: string;
  readonly name: string;
  readonly setUp?: string;
  readonly plan?: Partial<PlanSpec>;
  readonly target?: Partial<TargetSpec>;
  readonly hand?: Exclude<HandSpec['kind'], 'own'>;
}

/** What a small job has that the usual one has not. */
export interface SmallJobParts {
  readonly name: string;
  readonly note: string;
  readonly part: string;
  /** Width and height of the panel. */
  readonly panel_mm: readonly [number, number];
  readonly holes?: readonly ShapeSpec[];
  /** 90, upright, where not given. */
  readonly tilt_deg?: number;
  readonly air?: Partial<AirSpec>;
  readonly mix?: Partial<MixSpec>;
  readonly gun?: Partial<SetUpSpec>;
  readonly coat: SmallCoatParts;
  readonly seed?: number;
}

/** Coarse for a job, fine for a picture: a stroke of the usual fan is 50 cells wide. */
const CELL_MM = 4;

/** Half overlap at arm's pace, one pass: 50 µm wet with the usual gun and mix. */
const PLAN: PlanSpec = {
  overlap_percent: 50,
  speed_m_s: 0.36,
  distance_mm: DISTANCE_MM,
  direction_deg: 0,
  order: 'serpentine',
  lead_mm: 60,
  lag_mm: 60,
  firstStroke_mm: 0,
  cross: false,
};

const TARGET: TargetSpec = { film: 'wet', thickness_um: 50, min_percent: 80, max_percent: 120, holiday_percent: 25, dry_percent: 10 };

/** A job of one coat on one small panel of cloth: clear dope, the usual low-pressure gun, `parts` apart. */
export function smallJob(parts: SmallJobParts): Job {
  return {
    schemaVersion: SCHEMA_VERSION,
    name: parts.name,
    note: parts.note,
    seed: parts.seed ?? 1,
    cell_mm: CELL_MM,
    part: { name: parts.part, panels: [panelOf(parts)] },
    air: { ...USUAL_AIR, ...parts.air },
    mixes: [{ ...defaultMix('mix', 'Clear dope, general thinner'), ...parts.mix }],
    setUps: [{ ...defaultSetUp('low-pressure', 'gun', 'Low-pressure gun, 200 mm fan'), ...parts.gun }],
    coats: [smallCoat(parts.coat)],
    recordings: [],
  };
}

function panelOf({ panel_mm, holes = [], tilt_deg = 90 }: SmallJobParts): Job['part']['panels'][number] {
  return {
    id: 'panel',
    name: 'Panel',
    outline: { rectangle_mm: [...panel_mm] },
    holes: [...holes],
    attitude: { tilt_deg, down_deg: -90 },
    backing: USUAL_BACKING,
  };
}

/** A coat of a small job. */
export function smallCoat({ id, name, setUp = 'gun', plan, target, hand = 'steady' }: SmallCoatParts): CoatSpec {
  return {
    id,
    name,
    panel: 'panel',
    setUp,
    mix: 'mix',
    target: { ...TARGET, ...target },
    plan: { ...PLAN, ...plan },
    hand: { kind: hand },
  };
}
