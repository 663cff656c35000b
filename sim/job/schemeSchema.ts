import * as v from 'valibot';
import { list, number, oneOf, record, text, wholeNumber, yesNo } from './words.ts';

/**
 * What is planned around the coats: schemes, colours, the room, its air by the hour, working hours, tins. Kinds of layer in
 * the order in which the trade lays them.
 */
export const LAYERS = ['primer', 'clear', 'aluminium', 'colour'] as const;

/** A local date and time to the minute, as ISO 8601 writes it without an offset: the wall clock of the shop. */
const LOCAL_TIME = /^\d{4}-(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])T([01]\d|2[0-3]):[0-5]\d$/;
const CLOCK_TIME = /^([01]\d|2[0-3]):[0-5]\d$/;

/** An id of something else in the job. */
function reference(description: string) {
  const advice = `give an id (${description})`;
  return v.pipe(v.string(advice), v.maxLength(64, advice), v.description(description));
}

/** A local date and time. */
export function localTime(description: string) {
  const advice = `give a local date and time such as 2026-05-04T08:00 (${description})`;
  return v.pipe(v.string(advice), v.regex(LOCAL_TIME, advice), v.description(description));
}

function clockTime(description: string) {
  const advice = `give a time of day such as 08:00 (${description})`;
  return v.pipe(v.string(advice), v.regex(CLOCK_TIME, advice), v.description(description));
}

/** What every step states. */
const STEP = {
  id: reference('stable name of the step'),
  name: text(200, 'what is done'),
  note: v.optional(text(2000, 'remark')),
  source: v.optional(text(500, 'whose advice the step is; it is shown beside it')),
  wait_h: v.optional(number(0, 2000, 'least wait after it at 21.1 °C (70 °F), h'), 0),
  latest_h: v.optional(number(0.1, 20000, 'latest start of the next step, h after it; none where not given')),
  work_min: v.optional(number(0, 10000, 'time at work, min; estimated where not given')),
};

/** What every coat of a scheme states. */
const LAYER_COAT = {
  layer: oneOf(LAYERS, 'what kind of film it is'),
  share_percent: v.optional(number(0.1, 100, 'share of the panels\' area that it covers, %'), 100),
  colour: v.optional(reference('id of a colour')),
  paste_g_L: v.optional(number(0, 500, 'aluminium paste to a litre of unthinned finish, g/L')),
};

const STEPS = [
  record(
    {
      kind: v.literal('brush'),
      ...STEP,
      ...LAYER_COAT,
      mix: reference('id of the mix'),
      dry_um: number(0.1, 500, 'dry film that it leaves, µm'),
      within_percent: v.optional(number(0, 100, 'the film is known within, ± %'), 30),
      loss_percent: v.optional(number(0, 90, 'share that stays in brush and pot, %'), 10),
    },
    'a brushed coat',
  ),
  record(
    {
      kind: v.literal('spray'),
      ...STEP,
      ...LAYER_COAT,
      coat: reference('id of the coat that says set-up, strokes and target, and the mix where none is given here'),
      mix: v.optional(reference('id of a mix in place of the coat\'s own')),
    },
    'a sprayed coat; its film is the model\'s',
  ),
  record(
    {
      kind: v.literal('fix'),
      ...STEP,
      what: oneOf(['tape', 'patch', 'ring', 'grommet', 'lacing'], 'what is set on'),
      length_mm: v.optional(number(0, 1e6, 'length of tape in all, mm')),
      width_mm: v.optional(number(1, 1000, 'width of the tape, mm')),
      count: v.optional(wholeNumber(0, 100000, 'how many')),
      weight_g: v.optional(number(0, 1e5, 'weight of them all, g')),
    },
    'tapes, patches, rings, grommets or lacing set on',
  ),
  record(
    {
      kind: v.literal('sand'),
      ...STEP,
      grit: wholeNumber(40, 5000, 'grit number of the paper'),
      wet: yesNo('sanded wet'),
      removes_um: v.optional(number(0, 500, 'dry film that it takes off, µm'), 3),
      keepOff: v.optional(list(text(100, 'a place'), 0, 20, 'where not to sand'), []),
    },
    'sanding',
  ),
  record({ kind: v.literal('mask'), ...STEP, share_percent: number(0.1, 100, 'share of the area left open, %'), edge_mm: v.optional(number(0, 1e6, 'length of the masked edge, mm')) }, 'masking for another colour'),
  record({ kind: v.literal('unmask'), ...STEP }, 'masks taken off'),
] as const;

/** A scheme: what is done to some panels, in order. */
export const SchemeSchema = record(
  {
    id: reference('stable name of the scheme'),
    name: text(200, 'name of the scheme'),
    note: v.optional(text(2000, 'remark')),
    source: v.optional(text(500, 'whose scheme it is')),
    panels: list(reference('id of a panel'), 1, 100, 'panels that it is laid on'),
    sides: v.optional(wholeNumber(1, 2, '2 where the other side of each panel is finished alike'), 1),
    clearCoats: v.optional(wholeNumber(0, 20, 'fewest clear coats'), 3),
    most_um: v.optional(number(1, 5000, 'most dry film in all, µm')),
    most_g_m2: v.optional(number(1, 5000, 'most weight added, g/m²')),
    steps: list(v.variant('kind', STEPS, 'give the kind "brush", "spray", "fix", "sand", "mask" or "unmask"'), 1, 200, 'steps in order'),
  },
  'a scheme of coats',
);

/** A colour, as far as hiding is concerned (Kubelka and Munk 1931). */
export const ColourSchema = record(
  {
    id: reference('stable name of the colour'),
    name: text(100, 'name of the colour'),
    reflectance_percent: number(1, 99, 'light thrown back by a film so thick that more changes nothing, %'),
    scatter_per_mm: number(0.1, 5000, 'scattering of the dry film, 1/mm; 100 for a white of good hiding'),
    bleeds: v.optional(yesNo('stains coats laid over it, as some reds and maroons do'), false),
  },
  'a colour of the scheme',
);

/** The room as far as vapour is concerned. */
export const RoomSchema = record(
  {
    volume_m3: number(1, 100000, 'volume of the room, m³'),
    fresh_m3_h: v.optional(number(0, 1e6, 'outside air that the fan brings, m³/h'), 0),
    face_m2: v.optional(number(0.1, 1000, 'open face of the booth, m²')),
    mixing: v.optional(number(1, 10, 'factor for uneven mixing of the air, 1 for perfect; 3 to 10 is usual'), 4),
  },
  'the room and its fan',
);

/** The air of one hour. */
export const HourSchema = record(
  {
    at: localTime('when it was read or is expected'),
    temperature_C: number(-20, 60, 'air temperature, °C'),
    humidity_percent: number(0, 100, 'relative humidity, %'),
  },
  'the air at one time',
);

/** When work is done. */
export const WorkingSchema = record(
  {
    start: localTime('when the first step may begin'),
    from: v.optional(clockTime('work begins each day'), '08:00'),
    to: v.optional(clockTime('work ends each day'), '18:00'),
    weekends: v.optional(yesNo('work on Saturdays and Sundays too'), true),
  },
  'working hours',
);

/** What a product is sold in. */
export const SupplySchema = record(
  {
    product: text(100, 'id of a finish, "thinner" or "retarder"'),
    tins: list(record({ size_mL: number(1, 1e6, 'what it holds, mL'), price: v.optional(number(0, 1e6, 'price of one')) }, 'a size of tin'), 1, 20, 'sizes sold'),
    currency: v.optional(text(10, 'currency of the prices')),
  },
  'tins of a product',
);
