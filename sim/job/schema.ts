import * as v from 'valibot';
import { LogEntrySchema, MOST_ENTRIES } from './logSchema.ts';
import { ColourSchema, HourSchema, RoomSchema, SchemeSchema, SupplySchema, WorkingSchema } from './schemeSchema.ts';
import { LONGEST_RECORDING, SCHEMA_VERSION } from './schemaFacts.ts';
import { SetUpSchema } from './setUpSchema.ts';
import { SurveySchema } from './surveySchema.ts';
import { id, list, number, oneOf, record, text, wholeNumber, yesNo } from './words.ts';

/** Farthest a stated place may lie from the file's origin, mm. */
const FARTHEST_MM = 1e5;

const point = v.pipe(
  v.strictTuple(
    [number(-FARTHEST_MM, FARTHEST_MM, 'x, mm'), number(-FARTHEST_MM, FARTHEST_MM, 'y, mm')],
    'give two numbers, x and y in mm',
  ),
  v.description('x right and y up, mm'),
);

/** The four ways to state an outline, by the key that names them. */
export const SHAPES = {
  rectangle_mm: record(
    {
      rectangle_mm: v.pipe(
        v.strictTuple(
          [number(1, FARTHEST_MM, 'width, mm'), number(1, FARTHEST_MM, 'height, mm')],
          'give two numbers, width and height in mm',
        ),
        v.description('width and height of a rectangle whose lower-left corner is the origin, mm'),
      ),
    },
    'a rectangle',
  ),
  points_mm: record({ points_mm: list(point, 3, 20000, 'corners of a polygon, not repeated at the end') }, 'a polygon'),
  circle_mm: record(
    {
      circle_mm: v.pipe(
        v.strictTuple(
          [
            number(-FARTHEST_MM, FARTHEST_MM, 'centre x, mm'),
            number(-FARTHEST_MM, FARTHEST_MM, 'centre y, mm'),
            number(1, FARTHEST_MM, 'diameter, mm'),
          ],
          'give three numbers: centre x, centre y and diameter in mm',
        ),
        v.description('centre x, centre y and diameter, mm'),
      ),
    },
    'a circle',
  ),
  path_mm: record(
    { path_mm: text(200000, 'SVG path data (M L H V C S Q T A Z), one closed subpath, in mm with y up') },
    'a drawn outline',
  ),
} as const;

const ShapeSchema = v.union(
  [SHAPES.rectangle_mm, SHAPES.points_mm, SHAPES.circle_mm, SHAPES.path_mm],
  `give an object with one of the keys ${Object.keys(SHAPES).join(', ')}`,
);

const AttitudeSchema = record(
  {
    tilt_deg: number(0, 180, 'angle from level: 0 level, 90 upright, 180 face down'),
    down_deg: number(-360, 360, 'where gravity pulls in the panel, counter-clockwise from +x; -90 is down the page'),
  },
  'how the panel hangs',
);

/** What a panel is made of, as far as it lends the film heat. */
export const BACKING_WORDS = ['open-cloth', 'thin-sheet', 'thick-board'] as const;

const PanelSchema = record(
  {
    id,
    name: text(200, 'name of the panel'),
    outline: ShapeSchema,
    holes: v.optional(list(ShapeSchema, 0, 200, 'openings that take no film, in the outline\'s coordinates'), []),
    attitude: v.optional(AttitudeSchema, { tilt_deg: 90, down_deg: -90 }),
    backing: v.optional(
      oneOf(BACKING_WORDS, 'what lies under the film and lends it heat: cloth open to the air behind, thin metal sheet, thick board'),
      'open-cloth',
    ),
    hinge_mm: v.optional(
      v.pipe(
        v.strictTuple([point, point], 'give two points, each of x and y in mm'),
        v.description('hinge line of a moving surface: two points on it, in the outline\'s coordinates, mm'),
      ),
    ),
  },
  'a flat panel',
);

const TargetSchema = record(
  {
    film: oneOf(['wet', 'dry'], 'which film the target means'),
    thickness_um: number(0.1, 2000, 'target film of the whole coat, µm'),
    min_percent: v.optional(number(1, 100, 'below this share of the target: thin lap'), 80),
    max_percent: v.optional(number(100, 1000, 'above this share of the target: heavy spot'), 120),
    holiday_percent: v.optional(number(0, 100, 'below this share of the target: holiday'), 25),
    dry_percent: v.optional(number(0.1, 100, 'more than this share of the film arrived dry: dry spray'), 10),
  },
  'what the coat should be',
);

const PlanSchema = record(
  {
    overlap_percent: number(0, 95, 'share of the full fan width laid over the previous stroke'),
    speed_m_s: number(0.01, 5, 'speed of the aim point, m/s'),
    distance_mm: number(20, 1000, 'gun to panel, mm'),
    direction_deg: v.optional(number(-360, 360, 'first stroke, counter-clockwise from +x'), 0),
    order: v.optional(oneOf(['serpentine', 'one-way'], 'order of the strokes'), 'serpentine'),
    lead_mm: v.optional(number(0, 1000, 'fluid opens this far before the edge, mm'), 50),
    lag_mm: v.optional(number(0, 1000, 'fluid closes this far past the edge, mm'), 50),
    firstStroke_mm: v.optional(number(-1000, 1000, 'first stroke in from the edge; 0 puts its centre on the edge, mm'), 0),
    cross: v.optional(yesNo('a second pass at right angles, before the first has flashed off'), false),
  },
  'how the strokes are meant to run',
);

const HANDS = [
  record(
    {
      kind: oneOf(
        ['steady', 'practised', 'beginner'],
        'steady lays the plan exactly; the others wander by a stated amount',
      ),
    },
    'a usual hand',
  ),
  record(
    {
      kind: v.literal('own'),
      name: text(200, 'whose hand it is'),
      distance_mm: number(0, 500, 'largest error of the distance from gun to panel, mm'),
      across_mm: number(0, 500, 'largest error of the aim, square to the travel, mm'),
      speed_percent: number(0, 89, 'largest error of the speed, share of the plan\'s, %'),
      pitch_deg: number(0, 60, 'largest error of the angle along the fan, degrees'),
      yaw_deg: number(0, 60, 'largest error of the angle along the travel, degrees'),
      trigger_ms: number(0, 1000, 'trigger early or late by at most this, ms'),
      correlation_s: number(0.1, 60, 'how long an error lasts before another takes its place, s'),
    },
    'a hand as measured: how far it strays at most',
  ),
] as const;

const HandSchema = v.pipe(
  v.variant('kind', HANDS, 'give the kind "steady", "practised", "beginner" or "own"'),
  v.description('the hand that follows the plan'),
);

const CoatSchema = record(
  {
    id,
    name: text(200, 'name of the coat'),
    panel: id,
    setUp: id,
    mix: v.optional(v.pipe(id, v.description('id of the mix in the cup; without one the set-up says solids and thinner'))),
    over: v.optional(
      record(
        {
          coat: v.pipe(id, v.description('id of the coat beneath, on the same panel')),
          wait_min: number(0, 20160, 'from the end of that coat to the start of this one, minutes'),
        },
        'the coat that this one is laid on while it may still hold solvent; without it the panel is bare',
      ),
    ),
    target: TargetSchema,
    plan: PlanSchema,
    hand: v.optional(HandSchema, { kind: 'steady' }),
    recording: v.optional(
      v.pipe(id, v.description('id of a recording that lays this coat; the plan then says what was meant')),
    ),
  },
  'a coat: one pass, or two at right angles',
);

const RecordingSchema = record(
  {
    id,
    name: text(200, 'name of the recording'),
    text: text(LONGEST_RECORDING, 'the whole text of a recorded-stroke CSV or trajectory file'),
  },
  'recorded strokes',
);

const AirSchema = record(
  {
    temperature_C: number(-20, 60, 'air temperature, °C'),
    humidity_percent: number(0, 100, 'relative humidity, %'),
    altitude_m: v.optional(number(-400, 5000, 'height above the sea, which fixes the pressure, m'), 0),
    speed_m_s: v.optional(number(0, 5, 'air speed over the panel, m/s'), 0.3),
    ceiling_C: v.optional(number(0, 60, 'warmest room that a cure may ask for, °C'), 32),
  },
  'the air of the room',
);

/** One solvent of a blend, by the names in `sim/materials`. */
const BlendPartSchema = record(
  {
    solvent: text(60, 'id of a solvent: acetone, toluene, n-butyl-acetate, …'),
    percent: number(0.01, 100, 'share of the blend by volume, %'),
  },
  'a solvent and its share',
);

const MixSchema = record(
  {
    id,
    name: text(200, 'name of the mix'),
    finish: text(60, 'id of a generic finish: clear-dope, aluminium-dope, colour-dope, lacquer, primer, enamel'),
    thinner: list(BlendPartSchema, 1, 12, 'the thinner, solvents by volume that add to 100 %'),
    thinnerPerFinish: number(0, 10, 'volumes of thinner, retarder included, to one volume of finish'),
    retarder: v.optional(BlendPartSchema),
    cup: v.optional(
      record(
        {
          kind: text(40, 'id of a cup: ford-4, zahn-2, iso-4, …'),
          seconds: number(1, 1000, 'time to the first break of the stream, s'),
          temperature_C: number(-20, 60, 'temperature of the liquid in the cup, °C'),
        },
        'a cup reading of the mix, which then says its viscosity',
      ),
    ),
  },
  'what is in the cup: a finish, thinned',
);

/** The job file, version `SCHEMA_VERSION`. */
export const JobSchema = record(
  {
    schemaVersion: v.pipe(v.literal(SCHEMA_VERSION), v.description('version of this file format')),
    name: text(200, 'name of the job'),
    note: v.optional(text(5000, 'remark')),
    seed: wholeNumber(0, 4294967295, 'fixes every chance in the job'),
    cell_mm: v.optional(number(1, 10, 'side of a grid cell, mm'), 2),
    part: record(
      {
        name: text(200, 'name of the part'),
        panels: list(PanelSchema, 1, 100, 'panels of the part'),
      },
      'the thing being finished',
    ),
    air: v.optional(AirSchema, { temperature_C: 21, humidity_percent: 50, altitude_m: 0, speed_m_s: 0.3, ceiling_C: 32 }),
    mixes: v.optional(list(MixSchema, 0, 100, 'what may be in the cup'), []),
    setUps: list(SetUpSchema, 1, 100, 'gun set-ups'),
    coats: list(CoatSchema, 1, 500, 'coats in order'),
    recordings: v.optional(list(RecordingSchema, 0, 100, 'recorded strokes'), []),
    schemes: v.optional(list(SchemeSchema, 0, 20, 'schemes of coats')),
    colours: v.optional(list(ColourSchema, 0, 50, 'colours of the schemes')),
    room: v.optional(RoomSchema),
    hours: v.optional(list(HourSchema, 0, 2000, 'the air hour by hour, in order of time')),
    working: v.optional(WorkingSchema),
    supplies: v.optional(list(SupplySchema, 0, 50, 'what products are sold in')),
    log: v.optional(list(LogEntrySchema, 0, MOST_ENTRIES, 'what was really done, in order')),
    surveys: v.optional(list(SurveySchema, 0, 200, 'what the gauges read')),
  },
  'a job',
);

/** A job as stated: the units are in the keys. Made by `parseJob`, then only read. */
export type Job = v.InferOutput<typeof JobSchema>;
/** One panel of the part: outline, holes, attitude. */
export type PanelSpec = Job['part']['panels'][number];
/** An outline or a hole: rectangle, corners, circle or SVG path, mm. */
export type ShapeSpec = PanelSpec['outline'];
/** What lies under the film. */
export type BackingWord = (typeof BACKING_WORDS)[number];
/** The air of the room in the file's units. */
export type AirSpec = Job['air'];
/** What is in the cup, as stated. */
export type MixSpec = Job['mixes'][number];
/** A gun set-up in the file's units. */
export type SetUpSpec = Job['setUps'][number];
/** What the shop measured of a set-up. */
export type CardSpec = NonNullable<SetUpSpec['card']>;
/** How well a set-up's numbers are known. */
export type KnownWithinSpec = NonNullable<SetUpSpec['knownWithin']>;
/** One coat: its panel, set-up, target, plan and hand. */
export type CoatSpec = Job['coats'][number];
/** The hand that follows a coat's plan: one of the usual ones by its word, or a measured one. */
export type HandSpec = CoatSpec['hand'];
/** A measured hand, by its largest errors. */
export type OwnHandSpec = Extract<HandSpec, { readonly kind: 'own' }>;
/** How a coat's strokes are meant to run. */
export type PlanSpec = CoatSpec['plan'];
/** The film that a coat should have, with its limits. */
export type TargetSpec = CoatSpec['target'];
/** A scheme of coats for some panels. */
export type SchemeSpec = NonNullable<Job['schemes']>[number];
/** One step of a scheme. */
export type StepSpec = SchemeSpec['steps'][number];
/** A colour as far as hiding is concerned. */
export type ColourSpec = NonNullable<Job['colours']>[number];
/** The room and its fan. */
export type RoomSpec = NonNullable<Job['room']>;
/** The air at one time. */
export type HourSpec = NonNullable<Job['hours']>[number];
/** When work is done. */
export type WorkingSpec = NonNullable<Job['working']>;
/** What a product is sold in. */
export type SupplySpec = NonNullable<Job['supplies']>[number];
/** A recorded path, kept as the text of its file. */
export type RecordingSpec = Job['recordings'][number];
/** What was really done at one time. */
export type LogEntrySpec = NonNullable<Job['log']>[number];
/** What an entry of the log is about. */
export type LogKind = LogEntrySpec['kind'];
/** A change made later: who, when, what was there before. */
export type ChangeSpec = LogEntrySpec['history'][number];
/** A sign-off: who, when, in which words, and the digest of what was signed. */
export type SignedSpec = NonNullable<LogEntrySpec['signed']>;
/** What the gauges read on one panel, and its rule. */
export type SurveySpec = NonNullable<Job['surveys']>[number];
/** One reading, by its kind. */
export type ReadingSpec = SurveySpec['readings'][number];
/** The rule that judges a survey, by its kind. */
export type RuleSpec = SurveySpec['rule'];
