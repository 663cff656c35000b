import type { FilmMoment } from '../film/life/snapshot.ts';
import type { Target } from '../verdict/target.ts';
import { colourTable, type ColourScheme } from './colours.ts';
import { largest, thicknessDomain, type Field, type MomentFieldKind } from './field.ts';

/** How one field of a moment is drawn. */
interface Drawn {
  readonly title: string;
  readonly unit: Field['unit'];
  readonly scheme: ColourScheme;
  /** Fixed, so that a colour means the same at every time; null where the film itself sets it. */
  readonly domain: readonly [number, number] | null;
}

/**
 * Viscosity runs from 0.01 Pa s, thinner than any mix that is sprayed, to 10 000 Pa s, where nothing
 * flows any more. The dew point has its colours within 6 K on either side: beyond that the air has to
 * change much before anything happens. Runs of 0.1 m and more share a colour. Assumed, all three.
 */
const DRAWN: Readonly<Record<MomentFieldKind, Drawn>> = {
  'wet-now': { title: 'wet film now', unit: 'm', scheme: 'film', domain: null },
  'dry-now': { title: 'dry film now', unit: 'm', scheme: 'film', domain: null },
  viscosity: { title: 'viscosity of the top layer', unit: 'Pa s', scheme: 'solids', domain: [-2, 4] },
  'dew-margin': { title: 'film temperature above the dew point', unit: 'K', scheme: 'margin', domain: [-6, 6] },
  run: { title: 'distance that the film has run', unit: 'm', scheme: 'film', domain: [0, 0.1] },
  'top-solids': { title: 'solids of the top layer', unit: 'fraction', scheme: 'solids', domain: [0, 1] },
};

/** Every kind of field that a moment has, in the order in which a list shows them. */
export const MOMENT_FIELDS = Object.keys(DRAWN) as readonly MomentFieldKind[];

/**
 * A field of a film at one time of its life, to be shown like that of a film as laid. Cells outside the
 * panel and, where the field is a property of the film, cells without film are NaN.
 *
 * Thickness has the target's limits as marks only where they hold at every time: a dry target on the
 * dry film. A wet target speaks of the film as it landed.
 * @param dewPoint_K of the air that the film dries in.
 * @param held domain of a thickness, to keep colours and legend still through time; from the moment itself where not given.
 */
export function makeMomentField(
  kind: MomentFieldKind, moment: FilmMoment, target: Target, dewPoint_K: number, held?: readonly [number, number],
): Field {
  const values = momentValues(kind, moment, dewPoint_K);
  const { title, unit, scheme, domain: fixed } = DRAWN[kind];
  const domain = fixed ?? held ?? thicknessDomain(values);
  return {
    kind,
    grid: moment.grid,
    values,
    domain,
    isClipped: largest(values) > domain[1],
    unit,
    isLog: kind === 'viscosity',
    title,
    marks: momentMarks(kind, target),
    colours: colourTable(scheme),
  };
}

/** A new array each time: a moment's own arrays stay with it. */
function momentValues(kind: MomentFieldKind, moment: FilmMoment, dewPoint_K: number): Float32Array {
  const { wet_m, dry_m, run_m, temperature_K, viscosity_Pa_s, solidsFraction, film } = moment;
  switch (kind) {
    case 'wet-now':
      return whereInside(wet_m, film.inside);
    case 'dry-now':
      return whereInside(dry_m, film.inside);
    case 'run':
      return whereInside(run_m, film.inside);
    case 'viscosity':
      return viscosity_Pa_s.map(Math.log10);
    case 'top-solids':
      return solidsFraction.slice();
    case 'dew-margin':
      return temperature_K.map((temperature, cell) => ((wet_m[cell] as number) > 0 ? temperature - dewPoint_K : NaN));
  }
}

function whereInside(values: Float32Array, inside: Uint8Array): Float32Array {
  const kept = new Float32Array(values.length);
  for (let cell = 0; cell < values.length; cell++) kept[cell] = inside[cell] === 1 ? (values[cell] as number) : NaN;
  return kept;
}

function momentMarks(kind: MomentFieldKind, target: Target): number[] {
  if (kind === 'dew-margin') return [0];
  if (kind !== 'dry-now' || target.film !== 'dry') return [];
  return [target.holidayFraction, target.minFraction, 1, target.maxFraction].map((limit) => limit * target.thickness_m);
}
