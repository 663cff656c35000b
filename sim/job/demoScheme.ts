import { GENERAL_THINNER } from './defaults.ts';
import type { ColourSpec, HourSpec, Job, MixSpec, RoomSpec, SchemeSpec, StepSpec, SupplySpec, WorkingSpec } from './schema.ts';

/** Where the steps of the demo's scheme come from. */
const CIRCULAR = 'after FAA AC 43.13-1B, paragraph 2-21';
const PRACTICE = 'common practice';
/** Share of the part that the second colour covers, %. */
const TIP_PERCENT = 18;

/** Mixes that only the scheme needs: for the brush, and the pigmented coats. */
export function schemeMixes(): MixSpec[] {
  const thinned = (id: string, name: string, finish: string, thinnerPerFinish: number): MixSpec => ({ id, name, finish, thinner: GENERAL_THINNER.map((part) => ({ ...part })), thinnerPerFinish });
  return [
    thinned('brush', 'Clear dope for the brush, 4:1', 'clear-dope', 0.25),
    thinned('aluminium', 'Aluminium dope, 3:1', 'aluminium-dope', 0.33),
    thinned('colour', 'Colour dope, 3:1', 'colour-dope', 0.33),
  ];
}

/** The rest of what the demo plans: its scheme, colours, room, five invented days of May, working hours, tins. */
export function demoPlanning(sprayedCoat: string, panel: string): Pick<Job, 'schemes' | 'colours' | 'room' | 'hours' | 'working' | 'supplies'> {
  return { schemes: [rudderScheme(sprayedCoat, panel)], colours: colours(), room: room(), hours: inventedDays(), working: working(), supplies: supplies() };
}

function rudderScheme(coat: string, panel: string): SchemeSpec {
  return {
    id: 'rudder',
    name: 'Rudder, natural-fibre scheme',
    note: 'Two brushed and one sprayed clear, two aluminium, three colour, a blue tip.',
    source: 'after FAA AC 43.13-1B, chapter 2; an example, not an authority',
    panels: [panel],
    sides: 2,
    clearCoats: 3,
    most_g_m2: 350,
    steps: [...clearSteps(coat), ...aluminiumSteps(coat), ...colourSteps(coat)],
  };
}

function clearSteps(coat: string): StepSpec[] {
  return [
    brushed('clear-1', 'First clear, brushed until the cloth is translucent', `${CIRCULAR}a, which says about 1 h; 3 h as this film needs`, { wait_h: 3, share_percent: 100, dry_um: 28 }),
    brushed('clear-2', 'Second clear, brushed across the first', `${CIRCULAR}b, 2 h from memory; 3.5 h as this film needs`, { wait_h: 3.5, share_percent: 100, dry_um: 29 }),
    {
      kind: 'fix', id: 'tapes', name: 'Tapes, patches, inspection ring, drain grommets', source: 'after FAA AC 43.13-1B, paragraphs 2-13 and 2-14', wait_h: 0,
      what: 'tape', length_mm: 9600, width_mm: 50, count: 6, weight_g: 95,
    },
    brushed('clear-tapes', 'Clear over tapes and patches', `${CIRCULAR}e; 3 h as this film needs`, { wait_h: 3, share_percent: 30, dry_um: 28 }),
    sprayed(coat, 'clear-3', 'Third clear, cross coat', `${CIRCULAR}f`, { wait_h: 2, layer: 'clear' }),
  ];
}

function aluminiumSteps(coat: string): StepSpec[] {
  return [
    sprayed(coat, 'aluminium-1', 'First aluminium, cross coat', `${CIRCULAR}g; sanded after 4 h`, { wait_h: 4, layer: 'aluminium' }),
    {
      kind: 'sand', id: 'level', name: 'Level the first aluminium', source: `${CIRCULAR}h`, wait_h: 0,
      grit: 280, wet: true, removes_um: 3, keepOff: ['rib lacing', 'tape edges', 'screw heads', 'sharp edges'],
    },
    sprayed(coat, 'aluminium-2', 'Second aluminium, not to be sanded', `${CIRCULAR}g`, { wait_h: 2, layer: 'aluminium' }),
  ];
}

function colourSteps(coat: string): StepSpec[] {
  const cream = (n: number, wait_h: number, source: string) => sprayed(coat, `cream-${n}`, `Cream ${n}, cross coat`, source, { wait_h, layer: 'colour', colour: 'cream' });
  return [
    cream(1, 2, `${CIRCULAR}i`),
    cream(2, 2, `${CIRCULAR}i`),
    cream(3, 20, `${CIRCULAR}i; a night before masking, ${PRACTICE}`),
    { kind: 'mask', id: 'mask', name: 'Mask for the blue tip, burnish the edge', source: PRACTICE, wait_h: 0, share_percent: TIP_PERCENT, edge_mm: 1400 },
    sprayed(coat, 'blue', 'Blue tip, light cross coat', PRACTICE, { wait_h: 1, layer: 'colour', colour: 'blue', share_percent: TIP_PERCENT }),
    { kind: 'unmask', id: 'unmask', name: 'Pull the tape back on itself as soon as the film has set', source: PRACTICE, wait_h: 0 },
  ];
}

type Brushed = Extract<StepSpec, { readonly kind: 'brush' }>;
type Sprayed = Extract<StepSpec, { readonly kind: 'spray' }>;

/** Keys stay in the schema's order, so that the job is written as it would be read back. */
function brushed(id: string, name: string, source: string, { wait_h, share_percent, dry_um }: Pick<Brushed, 'wait_h' | 'share_percent' | 'dry_um'>): Brushed {
  return { kind: 'brush', id, name, source, wait_h, layer: 'clear', share_percent, mix: 'brush', dry_um, within_percent: 30, loss_percent: 10 };
}

/** Pigmented coats take the mix of their layer in place of the coat's own. */
function sprayed(coat: string, id: string, name: string, source: string, { wait_h, layer, colour, share_percent = 100 }: Pick<Sprayed, 'wait_h' | 'layer' | 'colour'> & { readonly share_percent?: number }): Sprayed {
  return {
    kind: 'spray', id, name, source, wait_h, layer, share_percent,
    ...(colour === undefined ? {} : { colour }),
    ...(layer === 'aluminium' ? { paste_g_L: 22 } : {}),
    coat,
    ...(layer === 'clear' ? {} : { mix: layer }),
  };
}

/** Assumed: invented colours with usual hiding. */
function colours(): ColourSpec[] {
  return [
    { id: 'cream', name: 'Cream', reflectance_percent: 78, scatter_per_mm: 90, bleeds: false },
    { id: 'blue', name: 'Dark blue', reflectance_percent: 6, scatter_per_mm: 25, bleeds: false },
  ];
}

function room(): RoomSpec {
  return { volume_m3: 120, fresh_m3_h: 3000, face_m2: 6, mixing: 4 };
}

function working(): WorkingSpec {
  return { start: '2026-05-04T08:00', from: '08:00', to: '18:00', weekends: false };
}

/** Lowest and highest of each invented day, and the moisture at dawn: a front comes through on the second. */
const DAYS = [
  { date: '2026-05-04', low_C: 15, high_C: 22, dawn_percent: 74 },
  { date: '2026-05-05', low_C: 16, high_C: 20, dawn_percent: 92 },
  { date: '2026-05-06', low_C: 13, high_C: 23, dawn_percent: 72 },
  { date: '2026-05-07', low_C: 14, high_C: 24, dawn_percent: 70 },
  { date: '2026-05-08', low_C: 15, high_C: 25, dawn_percent: 68 },
] as const;

/** Assumed: five invented days, coldest at 5:00 and warmest at 15:00; humidity falls by 3.5 points for each degree of warming. */
function inventedDays(): HourSpec[] {
  return DAYS.flatMap(({ date, low_C, high_C, dawn_percent }) =>
    Array.from({ length: 12 }, (_, k) => {
      const hour = 2 * k;
      const warmth = (1 - Math.cos((Math.PI * (hour < 5 ? 5 - hour : hour <= 15 ? hour - 5 : (29 - hour) * (10 / 14))) / 10)) / 2;
      const rise_C = (high_C - low_C) * warmth;
      return { at: `${date}T${String(hour).padStart(2, '0')}:00`, temperature_C: Math.round((low_C + rise_C) * 10) / 10, humidity_percent: Math.round(dawn_percent - 3.5 * rise_C) };
    }));
}

/** Invented prices; the retarder's is not known. */
function supplies(): SupplySpec[] {
  return [
    { product: 'clear-dope', tins: [{ size_mL: 1000, price: 24 }, { size_mL: 5000, price: 98 }], currency: 'EUR' },
    { product: 'aluminium-dope', tins: [{ size_mL: 1000, price: 29 }], currency: 'EUR' },
    { product: 'colour-dope', tins: [{ size_mL: 1000, price: 34 }, { size_mL: 2500, price: 79 }], currency: 'EUR' },
    { product: 'thinner', tins: [{ size_mL: 1000 }, { size_mL: 5000 }], currency: 'EUR' },
  ];
}
